package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.formula.Relation;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.DefectDeduction;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** What defects take off a scaled log. Immutable and thread-safe. */
public final class DeductionFormulas {
  private static final Domain SIZE = Domain.atLeast(0);
  private static final Domain LOG = Domain.above(0);
  private static final String RULES = "percent-defect rules";

  /** Squared defect. */
  public static final BoundFormula SQUARED_DEFECT =
      Definition.of(
              "deduction/squared-defect", "Board feet lost to a boxed defect", Nature.CONVENTION)
          .input("width", "W", "in", SIZE, "width of the defect as measured")
          .input("height", "H", "in", SIZE, "height of the defect as measured")
          .input("length", "L", "ft", SIZE, "length of the defect")
          .gives("loss", "X", "bf", over(times(inchMore("W"), inchMore("H"), sym("L")), num(15)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.TEXTBOOK_MEM, "squared-defect deduction"))
          .explainedBy(BoardWorks.FSH11_20_1985, "s.21, names the method; its formula was not seen")
          .note("1/15 is 1/12 for the board foot less a fifth for kerf: feet of Scribner's kind")
          .note(
              "the handbook counts a board only if it is at least 6 ft long and, of softwood, 4 in"
                  + " wide")
          .note("an inch is added to width and height")
          .kernel3(DefectDeduction::squaredDefect);

  /** Sector. */
  public static final BoundFormula SECTOR =
      Definition.of("deduction/sector", "Share lost to a sector", Nature.CONVENTION)
          .input("defect_length", "l", "ft", SIZE, "length of the defect")
          .input("log_length", "L", "ft", LOG, "length of the log")
          .input("angle", "a", "deg", Domain.closed(0, 360), "angle of the sector")
          .relation("defect_length", AT_MOST, 1, "log_length", "l ≤ L")
          .gives("share", "p", "1", times(over(sym("l"), sym("L")), over(sym("a"), num(360))))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .explainedBy(BoardWorks.FSH11_20_1985, "s.21, names the method; its formula was not seen")
          .kernel3(DefectDeduction::sector);

  /** Length cut. */
  public static final BoundFormula LENGTH_CUT =
      Definition.of("deduction/length-cut", "Share lost to a length cut", Nature.CONVENTION)
          .input("defect_length", "l", "ft", SIZE, "length of the defect")
          .input("log_length", "L", "ft", LOG, "length of the log")
          .relation("defect_length", AT_MOST, 1, "log_length", "l ≤ L")
          .gives("share", "p", "1", over(sym("l"), sym("L")))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .explainedBy(BoardWorks.FSH11_20_1985, "s.21, names the method; its formula was not seen")
          .kernel2(DefectDeduction::lengthCut);

  /** Interior rot by its diameter. */
  public static final BoundFormula INTERIOR_ROT_SHARE =
      Definition.of(
              "deduction/interior-rot-share",
              "Share lost to interior rot by diameters",
              Nature.CONVENTION)
          .input("defect_diameter", "w", "in", SIZE, "diameter of the rot")
          .input("log_diameter", "D", "in", Domain.above(1), BoardFormulas.DIAMETER)
          .input("defect_length", "l", "ft", SIZE, "length of the rot")
          .input("log_length", "L", "ft", LOG, "length of the log")
          .relation(inside("defect_diameter", "w ≤ D - 2"))
          .relation("defect_length", AT_MOST, 1, "log_length", "l ≤ L")
          .gives(
              "share",
              "p",
              "1",
              times(
                  squared(over(inchMore("w"), minus(sym("D"), num(1)))), over(sym("l"), sym("L"))))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .note("the rule for a box with width and height alike; rot nearer the bark takes all")
          .kernel4(DefectDeduction::interiorRot);

  /** Interior defect by width and height. */
  public static final BoundFormula INTERIOR_SHARE =
      Definition.of(
              "deduction/interior-share",
              "Share lost to an interior defect by width and height",
              Nature.CONVENTION)
          .input("defect_width", "W", "in", SIZE, "width of the defect")
          .input("defect_height", "H", "in", SIZE, "height of the defect")
          .input("log_diameter", "D", "in", Domain.above(1), BoardFormulas.DIAMETER)
          .input("defect_length", "l", "ft", SIZE, "length of the defect")
          .input("log_length", "L", "ft", LOG, "length of the log")
          .relation(inside("defect_width", "W ≤ D - 2"))
          .relation(inside("defect_height", "H ≤ D - 2"))
          .relation("defect_length", AT_MOST, 1, "log_length", "l ≤ L")
          .gives(
              "share",
              "p",
              "1",
              times(
                  over(times(inchMore("W"), inchMore("H")), squared(minus(sym("D"), num(1)))),
                  over(sym("l"), sym("L"))))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .kernelOfArrays(
              x -> DefectDeduction.interior(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Sweep. */
  public static final BoundFormula SWEEP_SHARE =
      Definition.of("deduction/sweep-share", "Share lost to sweep", Nature.CONVENTION)
          .input("sweep", "S", "in", SIZE, "departure from a straight line")
          .input("log_diameter", "D", "in", LOG, BoardFormulas.DIAMETER)
          .relation("sweep", AT_MOST, 1, "log_diameter", "S ≤ D")
          .gives(
              "share",
              "p",
              "1",
              new Equation.Cases(
                  List.of(
                      new Equation.Branch(
                          new Equation.Condition(sym("S"), AT_MOST, num(2)), num(0))),
                  over(minus(sym("S"), num(2)), sym("D"))))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .note("for logs of 16 ft; two inches of sweep are allowed")
          .kernel2(DefectDeduction::sweep);

  /** Crook. */
  public static final BoundFormula CROOK_SHARE =
      Definition.of("deduction/crook-share", "Share lost to crook", Nature.CONVENTION)
          .input("deflection", "C", "in", SIZE, "deflection of the crook")
          .input("log_diameter", "D", "in", LOG, BoardFormulas.DIAMETER)
          .input("crook_length", "l", "ft", SIZE, "length of the crook")
          .input("log_length", "L", "ft", LOG, "length of the log")
          .relation("deflection", AT_MOST, 1, "log_diameter", "C ≤ D")
          .relation("crook_length", AT_MOST, 1, "log_length", "l ≤ L")
          .gives("share", "p", "1", times(over(sym("C"), sym("D")), over(sym("l"), sym("L"))))
          .cites(Citation.fromMemory(Role.DEFINES, BoardWorks.GROSENBAUGH1952, RULES))
          .kernel4(DefectDeduction::crook);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          SQUARED_DEFECT,
          SECTOR,
          LENGTH_CUT,
          INTERIOR_ROT_SHARE,
          INTERIOR_SHARE,
          SWEEP_SHARE,
          CROOK_SHARE);

  private DeductionFormulas() {}

  private static Equation inchMore(String symbol) {
    return plus(sym(symbol), num(1));
  }

  /** Keeps an inch of sound wood on either side, so that no share exceeds the whole. */
  private static Relation inside(String defect, String text) {
    return new Relation(
        List.of(new Relation.Term(1, defect), new Relation.Term(-1, "log_diameter")),
        AT_MOST,
        -2,
        text);
  }
}
