package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.ratio;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.BulkKernel;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.BoardFeet;
import org.mensuration.kernel.BoardPolynomial;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Board-foot rules that are one polynomial of the diameter. Immutable and thread-safe. */
public final class PolynomialBoardFormulas {
  private static final String RECALLED = "formula by rule";

  /** Scribner formula. */
  public static final BoundFormula SCRIBNER_FORMULA =
      rule(
              "board/scribner-formula",
              "Scribner formula",
              Nature.EMPIRICAL,
              Domain.atLeast(3.85),
              Domain.closed(6, 28))
          .gives(
              "scale",
              "V",
              "bf",
              over(
                  times(
                      plus(
                          times(num("0.79"), squared(sym("D"))),
                          new Equation.Negative(times(num(2), sym("D"))),
                          num(-4)),
                      sym("L")),
                  num(16)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.TEXTBOOK_MEM, "log-rule chapter"))
          .note("the regression is not the printed table: see the table rules")
          .note("negative below 3.85 in, so the rule refuses")
          .inBulk(polynomial(BoardPolynomial.SCRIBNER_FORMULA))
          .kernel2(BoardFeet::scribnerFormula);

  /** Vermont rule. */
  public static final BoundFormula VERMONT =
      rule("board/vermont", "Vermont rule", Nature.CONVENTION, Domain.above(0))
          .gives(
              "scale", "V", "bf", times(over(squared(sym("D")), num(2)), over(sym("L"), num(12))))
          .cites(Citation.published(Role.DEFINES, Works.VT2693, "whole section"))
          .note(
              "half the square for twelve feet, in proportion when shorter; the statute scales"
                  + " longer logs in twelve-foot sections, each with its own measured diameter")
          .inBulk(polynomial(BoardPolynomial.VERMONT))
          .kernel2(BoardFeet::vermont);

  /** Roy rule. */
  public static final BoundFormula ROY =
      rule("board/roy", "Roy rule", Nature.CONVENTION, Domain.atLeast(1))
          .gives(
              "scale", "V", "bf", over(times(squared(minus(sym("D"), num(1))), sym("L")), num(20)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.FREESE_FPL01, RECALLED))
          .note("best at 14 and 16 ft; the square would grow again below 1 in")
          .inBulk(polynomial(BoardPolynomial.ROY))
          .kernel2(BoardFeet::roy);

  /** Ontario rule. */
  public static final BoundFormula ONTARIO =
      rule(
              "board/ontario",
              "Ontario rule",
              Nature.CONVENTION,
              Domain.atLeast(2.19),
              Domain.closed(4, 40))
          .gives(
              "scale",
              "V",
              "bf",
              over(
                  times(
                      minus(times(num("0.55"), squared(sym("D"))), times(num("1.2"), sym("D"))),
                      sym("L")),
                  num(12)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.FREESE_FPL01, RECALLED))
          .note("negative below 2.19 in, so the rule refuses")
          .inBulk(polynomial(BoardPolynomial.ONTARIO))
          .kernel2(BoardFeet::ontario);

  /** British Columbia board-foot rule. */
  public static final BoundFormula BRITISH_COLUMBIA =
      rule(
              "board/british-columbia",
              "British Columbia board-foot rule",
              Nature.CONVENTION,
              Domain.atLeast(1.5))
          .gives(
              "scale",
              "V",
              "bf",
              times(
                  squared(minus(sym("D"), num("1.5"))),
                  over(pi(), num(4)),
                  ratio(8, 11),
                  over(sym("L"), num(12))))
          .cites(Citation.fromMemory(Role.DEFINES, Works.FREESE_FPL01, RECALLED))
          .note("3/4-inch slab ring, one-inch board and 3/8-inch kerf")
          .inBulk(polynomial(BoardPolynomial.BRITISH_COLUMBIA))
          .kernel2(BoardFeet::britishColumbia);

  /** Knouf rule of thumb. */
  public static final BoundFormula KNOUF =
      rule("board/knouf", "Knouf rule of thumb", Nature.CONVENTION, Domain.atLeast(3))
          .gives(
              "scale",
              "V",
              "bf",
              over(times(minus(squared(sym("D")), times(num(3), sym("D"))), sym("L")), num(20)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.TEXTBOOK_MEM, "log-rule chapter"))
          .note("a rule of thumb for Scribner")
          .inBulk(polynomial(BoardPolynomial.KNOUF))
          .kernel2(BoardFeet::knouf);

  /** Ropp rule of thumb. */
  public static final BoundFormula ROPP =
      rule("board/ropp", "Ropp rule of thumb", Nature.CONVENTION, Domain.atLeast(7.75))
          .gives(
              "scale", "V", "bf", over(times(minus(squared(sym("D")), num(60)), sym("L")), num(20)))
          .cites(Citation.fromMemory(Role.DEFINES, Works.TEXTBOOK_MEM, "log-rule chapter"))
          .note("negative below 7.75 in, so the rule refuses")
          .inBulk(polynomial(BoardPolynomial.ROPP))
          .kernel2(BoardFeet::ropp);

  /** Blodgett. */
  public static final BoundFormula BLODGETT =
      Definition.of("board/blodgett", "Blodgett rule", Nature.CONVENTION)
          .input("diameter", "D", "in", Domain.above(0), "diameter inside bark")
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives("blodgett_feet", "U", "1", units())
          .definedBy(Works.AMERICANA_WM, "page 6 of the web copy")
          .note("one unit is a piece 16 in across and 1 ft long")
          .inBulk(polynomial(BoardPolynomial.BLODGETT))
          .kernel2(BoardFeet::blodgett);

  /** Blodgett in board feet by the middle. */
  public static final BoundFormula BLODGETT_MIDDLE =
      Definition.of(
              "board/blodgett-middle",
              "Blodgett rule in board feet by the middle diameter",
              Nature.CONVENTION)
          .input("middle_diameter", "D", "in", Domain.above(0), "middle diameter inside bark")
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives("scale", "V", "bf", times(ratio(1000, 115), units()))
          .definedBy(Works.AMERICANA_WM, "page 6 of the web copy")
          .note("practice: 115 units to the thousand board feet; the law has 10 bf to the unit")
          .kernel2(BoardFeet::blodgettMiddle);

  /** Blodgett in board feet by the small end. */
  public static final BoundFormula BLODGETT_SMALL_END =
      Definition.of(
              "board/blodgett-small-end",
              "Blodgett rule in board feet by the small end",
              Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.above(0), BoardFormulas.DIAMETER)
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives("scale", "V", "bf", times(ratio(1000, 106), units()))
          .definedBy(Works.AMERICANA_WM, "page 6 of the web copy")
          .note("practice: 106 units to the thousand board feet; the law has 10 bf to the unit")
          .kernel2(BoardFeet::blodgettSmallEnd);

  /** Vermont by measured sections. */
  public static final BoundFormula VERMONT_SECTIONS =
      Definition.of("board/vermont-sections", "Vermont rule by sections", Nature.CONVENTION)
          .list(
              "small_diameter",
              "D",
              "in",
              Domain.above(0),
              "small-end diameter of each section inside bark, from the small end of the log")
          .list("length", "L", "ft", Domain.aboveUpTo(0, 12), "length of each section")
          .gives(
              "scale",
              "V",
              "bf",
              sumOver(times(over(squared(sym("D")), num(2)), over(sym("L"), num(12))), "D", "L"))
          .definedBy(Works.VT2693, "whole section")
          .note("sections of 12 ft from the small end, the rest at the butt in proportion")
          .note(
              "the statute takes diameters to the nearest inch and leaves an exact half open; a"
                  + " scaling convention does that rounding")
          .kernelOfArrays(x -> BoardFeet.vermontSections(x[0], x[1]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          SCRIBNER_FORMULA,
          VERMONT,
          VERMONT_SECTIONS,
          ROY,
          ONTARIO,
          BRITISH_COLUMBIA,
          KNOUF,
          ROPP,
          BLODGETT,
          BLODGETT_MIDDLE,
          BLODGETT_SMALL_END);

  private PolynomialBoardFormulas() {}

  private static Equation units() {
    return times(squared(over(sym("D"), num(16))), sym("L"));
  }

  static BulkKernel polynomial(BoardPolynomial rule) {
    return (columns, results) -> rule.scales(columns[0], columns[1], results);
  }

  private static Definition rule(String id, String title, Nature nature, Domain diameter) {
    return Definition.of(id, title, nature)
        .input("small_diameter", "D", "in", diameter, BoardFormulas.DIAMETER)
        .input("length", "L", "ft", Domain.above(0), "length of the log");
  }

  private static Definition rule(
      String id, String title, Nature nature, Domain diameter, Domain published) {
    return Definition.of(id, title, nature)
        .input("small_diameter", "D", "in", diameter, published, BoardFormulas.DIAMETER)
        .input("length", "L", "ft", Domain.above(0), "length of the log");
  }
}
