package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equation.FunctionName.FLOOR;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.ratio;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.BoardFeet;
import org.mensuration.kernel.BoardPolynomial;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Board-foot rules. Immutable and thread-safe. */
public final class BoardFormulas {
  static final String DIAMETER = "small-end diameter inside bark";

  /** Doyle. */
  public static final BoundFormula DOYLE =
      Definition.of("board/doyle", "Doyle", Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.atLeast(4), Domain.closed(8, 36), DIAMETER)
          .input("length", "L", "ft", Domain.above(0), Domain.closed(8, 36), "length of the log")
          .gives(
              "scale", "V", "bf", times(squared(over(minus(sym("D"), num(4)), num(4))), sym("L")))
          .definedBy(Works.LA4641, "paragraphs A-C")
          .tabulatedBy(Works.CHASE1913, "table \"Doyle Rule\", page 11 of the scan")
          .tabulatedBy(Works.MILLPAGE_DOYLE, "table, 8-36 in, 8-20 ft")
          .explainedBy(Works.CASSENS_FNR191, "section Log Rules")
          .note("taper is ignored; small logs scale low and logs over 28 in high")
          .note("below 4 in the square would grow again, so the rule refuses")
          .inBulk(PolynomialBoardFormulas.polynomial(BoardPolynomial.DOYLE))
          .kernel2(BoardFeet::doyle);

  /** International 1/4-inch by sections. */
  public static final BoundFormula INTERNATIONAL_QUARTER =
      Definition.of(
              "board/international-quarter",
              "International 1/4-inch by four-foot sections",
              Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.atLeast(3.23), Domain.closed(6, 26), DIAMETER)
          .input("length", "L", "ft", Domain.above(0), Domain.closed(6, 20), "length of the log")
          .gives("scale", "V", "bf", international())
          .definedBy(Works.MI290401, "Sec. 1")
          .definedBy(Works.MA96_11A, "whole section")
          .tabulatedBy(Works.WENGERT2001A, "International 1/4-inch table, 6-26 in, 6-16 ft")
          .tabulatedBy(Works.MILLPAGE_INT14, "table, 6-13 in, 8-18 ft")
          .explainedBy(Works.DOF_INT14, "three entries")
          .note(
              "the statutes print the factor 0.904762; it is 19/21, the ratio of a board with"
                  + " shrinkage and 1/8-inch kerf (1 + 1/16 + 1/8) to one with 1/4-inch kerf"
                  + " (1 + 1/16 + 1/4), and no printed cell tells the two apart")
          .note("a rest of less than four feet counts in proportion, at the butt; not rounded")
          .note("below 3.23 in a section would count negative, so the rule refuses")
          .kernel2(BoardFeet::internationalQuarter);

  /** International 1/8-inch by sections. */
  public static final BoundFormula INTERNATIONAL_EIGHTH =
      Definition.of(
              "board/international-eighth",
              "International 1/8-inch by four-foot sections",
              Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.atLeast(3.23), DIAMETER)
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives("scale", "V", "bf", sections(sym("L")))
          .definedBy(Works.DOF_INT14, "three entries")
          .explainedBy(Works.MI290401, "Sec. 1, coefficients of the section")
          .note("a rest of less than four feet counts in proportion, at the butt; not rounded")
          .kernel2(BoardFeet::internationalEighth);

  /** International 1/4-inch in continuous form. */
  public static final BoundFormula INTERNATIONAL_QUARTER_CONTINUOUS =
      Definition.of(
              "board/international-quarter-continuous",
              "International 1/4-inch in continuous form",
              Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.atLeast(3.49), DIAMETER)
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives(
              "scale",
              "V",
              "bf",
              plus(
                  times(num("0.04976191"), sym("L"), squared(sym("D"))),
                  times(num("0.006220239"), squared(sym("L")), sym("D")),
                  new Equation.Negative(times(num("0.1854762"), sym("L"), sym("D"))),
                  times(num("0.0002591767"), pow(sym("L"), num(3))),
                  new Equation.Negative(times(num("0.01159226"), squared(sym("L")))),
                  times(num("0.04222222"), sym("L"))))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES, BoardWorks.GROSENBAUGH1952, "continuous International formula"))
          .note(
              "equals the sum of sections, to the digits printed, at multiples of 4 ft only; not"
                  + " the printed table at 6, 10 and 14 ft")
          .note("a short log thinner than 3.49 in would count negative, so the rule refuses")
          .kernel2(BoardFeet::internationalQuarterContinuous);

  /** Doyle-Scribner. */
  public static final BoundFormula DOYLE_SCRIBNER =
      Definition.of("board/doyle-scribner", "Doyle-Scribner", Nature.CONVENTION)
          .input("small_diameter", "D", "in", Domain.wholeFrom(4), DIAMETER + ", whole inches")
          .input("length", "L", "ft", Domain.above(0), "length of the log")
          .gives(
              "scale",
              "V",
              "bf",
              new Equation.Cases(
                  List.of(
                      new Equation.Branch(
                          new Equation.Condition(sym("D"), Comparison.AT_MOST, num(28)),
                          DOYLE.equation())),
                  PolynomialBoardFormulas.SCRIBNER_FORMULA.equation()))
          .definedBy(BoardWorks.GLOSS_LOGRULE, "third definition")
          .note("Doyle up to 28 in, the Scribner formula above; the formula is from memory")
          .note(
              "the two cross at 24.7 in, so just above 28 in a fraction of an inch would scale"
                  + " lower than 28 in; therefore whole inches only")
          .kernel2(BoardFeet::doyleScribner);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          DOYLE,
          INTERNATIONAL_QUARTER,
          INTERNATIONAL_EIGHTH,
          INTERNATIONAL_QUARTER_CONTINUOUS,
          DOYLE_SCRIBNER);

  private BoardFormulas() {}

  private static Equation international() {
    return times(ratio(19, 21), sections(sym("L")));
  }

  /** The eighth-inch rule by sections, as the statutes print it. */
  static Equation sections(Equation length) {
    Equation diameter = plus(sym("D"), over(minus(sym("i"), num(1)), num(2)));
    Equation rest = plus(sym("D"), over(sym("n"), num(2)));
    return where(
        "n",
        fn(FLOOR, over(length, num(4))),
        where(
            "r",
            minus(over(length, num(4)), sym("n")),
            plus(
                new Equation.IndexSum("i", num(1), sym("n"), eighth(diameter)),
                times(sym("r"), eighth(rest)))));
  }

  /** A four-foot section by the 1/8-inch rule. */
  private static Equation eighth(Equation diameter) {
    return minus(times(num("0.22"), squared(diameter)), times(num("0.71"), diameter));
  }
}
