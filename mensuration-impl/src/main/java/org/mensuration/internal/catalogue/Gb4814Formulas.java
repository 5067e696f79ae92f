package org.mensuration.internal.catalogue;

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
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.kernel.ScaledVolume;

/** The log volumes of GB 4814-84. Immutable and thread-safe. */
public final class Gb4814Formulas {
  private static final Domain LENGTH = Domain.above(0);
  private static final Domain READ = Domain.closed(2, 6.8);
  private static final String DIAMETER = "class of the small-end diameter";

  /** Classes below 14 cm. */
  public static final BoundFormula SMALL =
      Definition.of("log/gb4814-small", "GB 4814-84, 4 to 12 cm", Nature.CONVENTION)
          .input(
              "small_diameter", "D", "cm", Domain.fromBelow(4, 14), Domain.closed(4, 12), DIAMETER)
          .input("length", "L", "m", LENGTH, READ, "length of the log")
          .gives("volume", "V", "m3", small())
          .definedBy(ConventionWorks.GB4814_EXAMPLES, "formulas and example 1")
          .definedBy(ConventionWorks.GB4814_FORMULAS, "three formulas")
          .tabulatedBy(ConventionWorks.GB4814_COPY_1, "rows 8 to 12 cm")
          .tabulatedBy(ConventionWorks.GB4814_COPY_2, "rows 4 to 12 cm")
          .tabulatedBy(ConventionWorks.GB4814_COPY_3, "rows 4 and 6 cm")
          .note("printed to four decimals for 4 and 6 cm and to three from 8 cm, halves up")
          .kernel2(ScaledVolume::gb4814Small);

  /** Classes from 14 cm. */
  public static final BoundFormula LARGE =
      Definition.of("log/gb4814-large", "GB 4814-84, from 14 cm", Nature.CONVENTION)
          .input("small_diameter", "D", "cm", Domain.atLeast(14), Domain.closed(14, 50), DIAMETER)
          .input("length", "L", "m", LENGTH, READ, "length of the log")
          .gives("volume", "V", "m3", large())
          .definedBy(ConventionWorks.GB4814_EXAMPLES, "formulas and example 2")
          .definedBy(ConventionWorks.GB4814_FORMULAS, "three formulas")
          .tabulatedBy(ConventionWorks.GB4814_COPY_1, "rows 14 to 40 cm")
          .tabulatedBy(ConventionWorks.GB4814_COPY_2, "rows 14 to 50 cm")
          .note("printed to three decimals, halves up")
          .kernel2(ScaledVolume::gb4814Large);

  /** Both branches. */
  public static final BoundFormula BOTH =
      Definition.of("log/gb4814", "GB 4814-84", Nature.CONVENTION)
          .input("small_diameter", "D", "cm", Domain.atLeast(4), Domain.closed(4, 50), DIAMETER)
          .input("length", "L", "m", Domain.closed(2, 10), READ, "length of the log")
          .gives("volume", "V", "m3", SmallEndFormulas.cases(sym("D"), "14", small(), large()))
          .definedBy(ConventionWorks.GB4814_FORMULAS, "three formulas")
          .definedBy(ConventionWorks.GB4814_EXAMPLES, "formulas and examples")
          .note("the standard's own text was not read; the upper end of 10 m is from memory")
          .note("shorter and longer logs: log/gb4814-outside")
          .kernel2(ScaledVolume::gb4814);

  /** Outside the table. */
  public static final BoundFormula OUTSIDE =
      Definition.of("log/gb4814-outside", "GB 4814-84 outside its table", Nature.CONVENTION)
          .input("small_diameter", "D", "cm", Domain.atLeast(4), DIAMETER)
          .input("length", "L", "m", LENGTH, "length of the log")
          .gives(
              "volume",
              "V",
              "m3",
              over(
                  times(num("0.8"), sym("L"), squared(plus(sym("D"), times(num("0.5"), sym("L"))))),
                  num(10000)))
          .definedBy(ConventionWorks.GB4814_EXAMPLES, "example 3")
          .definedBy(ConventionWorks.GB4814_FORMULAS, "three formulas")
          .note("for short logs below 2 m and for logs longer than the table")
          .kernel2(ScaledVolume::gb4814Outside);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(SMALL, LARGE, BOTH, OUTSIDE);

  private Gb4814Formulas() {}

  private static Equation small() {
    return volume(plus(sym("D"), times(num("0.45"), sym("L")), num("0.2")));
  }

  private static Equation large() {
    return volume(
        plus(
            sym("D"),
            times(num("0.5"), sym("L")),
            times(num("0.005"), squared(sym("L"))),
            times(
                num("0.000125"),
                sym("L"),
                squared(minus(num(14), sym("L"))),
                minus(sym("D"), num(10)))));
  }

  private static Equation volume(Equation diameter) {
    return over(times(num("0.7854"), sym("L"), squared(diameter)), num(10000));
  }
}
