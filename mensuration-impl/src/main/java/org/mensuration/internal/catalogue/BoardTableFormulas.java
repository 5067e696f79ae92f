package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.EQUAL;
import static org.mensuration.formula.Comparison.GREATER;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.lookUp;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.ratio;
import static org.mensuration.formula.Equations.rounded;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.formula.RoundingMode;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.internal.table.RuleTable;
import org.mensuration.kernel.BoardFeet;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Board-foot rules as tables print them, for whole inches and feet. Immutable and thread-safe. */
public final class BoardTableFormulas {
  /** Decimal C cells that are taken from print. */
  static final RuleTable DECIMAL_C_CELLS = RuleTable.read("scribner-decimal-c.csv");

  /** Scribner factors a foot of length. */
  static final RuleTable DECIMAL_C_FACTORS = RuleTable.read("scribner-factors.csv");

  /** International cells that no formula gives. */
  static final RuleTable INTERNATIONAL_DEVIATIONS = RuleTable.read("international-deviations.csv");

  /** International cells of 18 ft. */
  static final RuleTable INTERNATIONAL_18 = RuleTable.read("international-18.csv");

  /** Lengths that the International tables print. */
  static final RuleTable INTERNATIONAL_LENGTHS = RuleTable.read("international-lengths.csv");

  private static final double FACTORS_FROM = 12;
  private static final double LONGEST_IN_BOTH = 16;

  /** Scribner Decimal C. */
  public static final BoundFormula SCRIBNER_DECIMAL_C =
      Definition.of("board/scribner-decimal-c", "Scribner Decimal C", Nature.CONVENTION)
          .input("small_diameter", "D", "in", whole(6, 20), BoardFormulas.DIAMETER)
          .input("length", "L", "ft", whole(6, 16), "length of the log, whole feet")
          .gives(
              "scale",
              "V",
              "bf",
              cases(
                  tens(),
                  when("D", LESS, 12, lookUp(DECIMAL_C_CELLS, sym("D"), sym("L"))),
                  cell(20, 6, DECIMAL_C_CELLS, tens())))
          .definedBy(BoardWorks.IBSP_OVERRUN, "whole text: each Scribner value to the nearest ten")
          .definedBy(BoardWorks.GA2_14_80, "paragraphs (a)-(e), as legal standard")
          .tabulatedBy(Works.WENGERT2001A, "Scribner table, 6-20 in, 6-16 ft")
          .cites(
              Citation.fromMemory(
                  Role.TABULATES, BoardWorks.SCRIBNER_FACTORS_MEM, "factor by diameter"))
          .explainedBy(BoardWorks.BAILEY1911, "Scribner decimal rule: half units")
          .note(
              "from 12 in the factor of the diameter times length to the nearest ten; the factors"
                  + " are from memory and meet 32 of the 33 printed cells seen, the other, 20 in by"
                  + " 6 ft, is taken from print")
          .note(
              "below 12 in the published variants differ; only the 19 cells of one copy are held,"
                  + " any other is refused")
          .note("a log over 20 in or 16 ft is refused: no printed cell of it was seen")
          .kernel2(BoardTableFormulas::decimalC);

  /** International 1/4-inch as printed. */
  public static final BoundFormula INTERNATIONAL_QUARTER_TABLE =
      Definition.of(
              "board/international-quarter-table",
              "International 1/4-inch as printed",
              Nature.CONVENTION)
          .input("small_diameter", "D", "in", whole(6, 26), BoardFormulas.DIAMETER)
          .input("length", "L", "ft", whole(6, 18), "length of the log, even feet")
          .gives(
              "scale",
              "V",
              "bf",
              where(
                  "l",
                  lookUp(INTERNATIONAL_LENGTHS, sym("L")),
                  where(
                      "S",
                      rounded(
                          times(ratio(19, 21), BoardFormulas.sections(sym("l"))),
                          RoundingMode.HALF_UP,
                          "5"),
                      cases(
                          sym("S"),
                          when("L", GREATER, 16, lookUp(INTERNATIONAL_18, sym("D"))),
                          cell(15, 16, INTERNATIONAL_DEVIATIONS, sym("S")),
                          cell(17, 14, INTERNATIONAL_DEVIATIONS, sym("S")),
                          cell(21, 8, INTERNATIONAL_DEVIATIONS, sym("S"))))))
          .definedBy(Works.WENGERT2001A, "International 1/4-inch table, 6-26 in, 6-16 ft")
          .definedBy(Works.MILLPAGE_INT14, "table, 6-13 in, 8-18 ft")
          .explainedBy(Works.MI290401, "Sec. 1, the section")
          .note(
              "the sum of sections to the nearest five, as both copies print it, but for three"
                  + " cells that no formula gives: 15 in by 16 ft, 17 in by 14 ft, 21 in by 8 ft")
          .note(
              "73 of 76 cells of one copy and all 28 of the other were seen to follow the sum; the"
                  + " other cells from 6 to 26 in and 6 to 16 ft were not seen")
          .note("at 18 ft only the four cells seen are held")
          .kernel2(BoardTableFormulas::international);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(SCRIBNER_DECIMAL_C, INTERNATIONAL_QUARTER_TABLE);

  private BoardTableFormulas() {}

  private static double decimalC(double smallIn, double lengthFt) {
    double printed = DECIMAL_C_CELLS.value(smallIn, lengthFt);
    return smallIn < FACTORS_FROM || printed > 0
        ? printed
        : BoardFeet.nearest(DECIMAL_C_FACTORS.value(smallIn) * lengthFt, 10);
  }

  private static double international(double smallIn, double lengthFt) {
    double length = INTERNATIONAL_LENGTHS.value(lengthFt);
    if (length > LONGEST_IN_BOTH) {
      return INTERNATIONAL_18.value(smallIn);
    }
    double printed = INTERNATIONAL_DEVIATIONS.value(smallIn, lengthFt);
    return printed > 0
        ? printed
        : BoardFeet.nearest(BoardFeet.internationalQuarter(smallIn, length), 5);
  }

  private static Domain whole(double lower, double upper) {
    return new Domain(lower, true, upper, true, true);
  }

  private static Equation tens() {
    return rounded(
        times(lookUp(DECIMAL_C_FACTORS, sym("D")), sym("L")), RoundingMode.HALF_UP, "10");
  }

  private static Equation cases(Equation otherwise, Equation.Branch... branches) {
    return new Equation.Cases(Arrays.asList(branches), otherwise);
  }

  private static Equation.Branch when(
      String symbol, Comparison comparison, int bound, Equation then) {
    return new Equation.Branch(new Equation.Condition(sym(symbol), comparison, num(bound)), then);
  }

  /** A single cell as printed; other lengths of that diameter as otherwise. */
  private static Equation.Branch cell(int inches, int feet, RuleTable table, Equation otherwise) {
    return when(
        "D",
        EQUAL,
        inches,
        cases(otherwise, when("L", EQUAL, feet, lookUp(table, sym("D"), sym("L")))));
  }
}
