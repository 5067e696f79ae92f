package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.SolidWorks;
import org.mensuration.kernel.SectionBias;
import org.mensuration.source.Citation;

/**
 * What rules give too much of a whole solid of revolution in sections of equal length. Two figures
 * are in use that must not be confused: the error of the summed volume, and the mean of the
 * absolute errors of the single sections. Only the three solids that the sources treat are taken.
 * Immutable and thread-safe.
 */
public final class SectionBiasFormulas {
  private static final Domain SOLIDS = new Domain(1, true, 3, true, true);
  private static final Domain SECTIONS = new Domain(1, true, 30, true, true);

  /** Sum by Huber. */
  public static final BoundFormula TOTAL_HUBER =
      total("huber", "Huber", sum(pow(over(oddIndex(), times(num(2), sym("n"))), sym("k"))))
          .kernel2(SectionBias::totalHuber);

  /** Sum by Smalian. */
  public static final BoundFormula TOTAL_SMALIAN =
      total(
              "smalian",
              "Smalian",
              sum(
                  over(
                      plus(pow(share(below()), sym("k")), pow(share(sym("i")), sym("k"))), num(2))))
          .kernel2(SectionBias::totalSmalian);

  /** Sum by the mean diameter. */
  public static final BoundFormula TOTAL_MEAN_DIAMETER =
      total(
              "mean-diameter",
              "the mean of the end diameters",
              sum(
                  squared(
                      over(
                          plus(
                              pow(share(below()), over(sym("k"), num(2))),
                              pow(share(sym("i")), over(sym("k"), num(2)))),
                          num(2)))))
          .kernel2(SectionBias::totalMeanDiameter);

  /** Mean of the sections' errors by Huber. */
  public static final BoundFormula MEAN_HUBER =
      mean("huber", "Huber", pow(over(oddIndex(), num(2)), sym("k")))
          .kernel2(SectionBias::meanHuber);

  /** Mean of the sections' errors by Smalian. */
  public static final BoundFormula MEAN_SMALIAN =
      mean(
              "smalian",
              "Smalian",
              over(plus(pow(below(), sym("k")), pow(sym("i"), sym("k"))), num(2)))
          .kernel2(SectionBias::meanSmalian);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(TOTAL_HUBER, TOTAL_SMALIAN, TOTAL_MEAN_DIAMETER, MEAN_HUBER, MEAN_SMALIAN);

  private SectionBiasFormulas() {}

  private static Definition total(String name, String words, Equation sum) {
    return of("bias/sectional-" + name, "Bias of sections by " + words + ", summed")
        .gives(
            "bias",
            "B",
            "%",
            times(num(100), minus(over(times(plus(sym("k"), num(1)), sum), sym("n")), num(1))))
        .cites(Citation.derived("sum of the sections over the integral of the area, tip included"));
  }

  private static Definition mean(String name, String words, Equation section) {
    Equation power = plus(sym("k"), num(1));
    Equation whole = over(minus(pow(sym("i"), power), pow(below(), power)), power);
    Equation error = minus(over(section, whole), num(1));
    Equation absolute =
        new Equation.Function(
            Equation.FunctionName.MAX, List.of(error, new Equation.Negative(error)));
    return of("bias/section-" + name, "Mean absolute error of single sections by " + words)
        .gives("bias", "B", "%", over(times(num(100), sum(absolute)), sym("n")))
        .definedBy(SolidWorks.CRUZ2013, "abstract, mean absolute per cent error of equal segments")
        .note("the error of the summed volume is much smaller: see bias/sectional-" + name);
  }

  private static Definition of(String id, String title) {
    return Definition.of(id, title, Nature.GEOMETRIC)
        .input("exponent", "k", "1", SOLIDS, BiasFormulas.EXPONENT_MEANING)
        .input("sections", "n", "1", SECTIONS, "number of sections of equal length");
  }

  private static Equation sum(Equation term) {
    return new Equation.IndexSum("i", num(1), sym("n"), term);
  }

  private static Equation oddIndex() {
    return minus(times(num(2), sym("i")), num(1));
  }

  private static Equation below() {
    return minus(sym("i"), num(1));
  }

  private static Equation share(Equation distance) {
    return over(distance, sym("n"));
  }
}
