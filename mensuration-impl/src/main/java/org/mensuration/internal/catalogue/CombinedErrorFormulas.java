package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.kernel.Sampling;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Products of a count and a ratio, and how many of each. Immutable and thread-safe. */
public final class CombinedErrorFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** Combined error of the unbiased product estimate. */
  public static final BoundFormula COMBINED_ERROR_UNBIASED =
      errors(
              "sampling/combined-error-unbiased",
              "Combined error of count and volume ratio, unbiased product estimate",
              Domain.closed(0, 100))
          .gives("error", "e", "%", sqrt(minus(squares(), product())))
          .cites(Citation.fromMemory(Role.DEFINES, CountingWorks.AG_M07, "unbiased estimator"))
          .note("count and ratio are taken as independent")
          .note("an error above its mean says nothing and is refused")
          .kernel2(Sampling::combinedErrorUnbiased);

  /** Combined error of true moments. */
  public static final BoundFormula COMBINED_ERROR_OF_TRUE_MOMENTS =
      errors(
              "sampling/combined-error-of-true-moments",
              "True error of a product of independent means",
              NOT_NEGATIVE)
          .gives("error", "e", "%", sqrt(plus(squares(), product())))
          .cites(Citation.fromMemory(Role.DEFINES, CountingWorks.AG_M07, "variance of a product"))
          .note("for known errors, as in a simulation; estimated ones take the product away")
          .kernel2(Sampling::combinedErrorOfTrueMoments);

  /** Variance of a product of true moments. */
  public static final BoundFormula PRODUCT_VARIANCE_OF_TRUE_MOMENTS =
      Definition.of(
              "sampling/product-variance-of-true-moments",
              "True variance of a product of independent means",
              Nature.STATISTICAL)
          .input("first", "X", "1", Domain.any(), "first mean")
          .input("first_error", "a", "1", NOT_NEGATIVE, "its standard error")
          .input("second", "Y", "1", Domain.any(), "second mean")
          .input("second_error", "b", "1", NOT_NEGATIVE, "its standard error")
          .gives(
              "variance",
              "v",
              "1",
              plus(
                  times(squared(sym("X")), squared(sym("b"))),
                  times(squared(sym("Y")), squared(sym("a"))),
                  times(squared(sym("a")), squared(sym("b")))))
          .cites(Citation.fromMemory(Role.DEFINES, CountingWorks.AG_M07, "variance of a product"))
          .note("for known moments; the unbiased estimate takes the last term away")
          .kernel4(Sampling::productVarianceOfTrueMoments);

  /** Share of the counted trees that a second factor picks. */
  public static final BoundFormula SECOND_FACTOR_SHARE =
      Definition.of(
              "sampling/second-factor-share",
              "Share of the counted trees that a larger second factor picks",
              Nature.STATISTICAL)
          .input("factor", "k_c", "m2/ha", POSITIVE, "factor of the count")
          .input("second_factor", "k_v", "m2/ha", POSITIVE, "factor that picks measure trees")
          .gives("share", "p", "1", over(sym("k_c"), sym("k_v")))
          .cites(Citation.derived("circles of a tree are as the factors turned round"))
          .note("on the average; the second factor is the larger one")
          .kernel2(Sampling::secondFactorShare);

  /** Count points to a measured tree. */
  public static final BoundFormula COUNT_POINTS_TO_MEASURED_TREES =
      Definition.of(
              "sampling/count-points-per-measured-tree",
              "Count points to one measured tree at equal cost",
              Nature.STATISTICAL)
          .input("count_variation", "CV_g", "%", POSITIVE, "variation of the basal area of points")
          .input("ratio_variation", "CV_v", "%", POSITIVE, "variation of the ratio of trees")
          .gives("points", "q", "1", over(sym("CV_g"), sym("CV_v")))
          .cites(
              Citation.derived(
                  "least sum of CV_g²/n and CV_v²/m for a given n + m, the combined error of first"
                      + " order"))
          .note("a point and a measured tree cost the same; dear trees raise the number of points")
          .kernel2(Sampling::countPointsPerMeasuredTree);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          COMBINED_ERROR_UNBIASED,
          COMBINED_ERROR_OF_TRUE_MOMENTS,
          PRODUCT_VARIANCE_OF_TRUE_MOMENTS,
          SECOND_FACTOR_SHARE,
          COUNT_POINTS_TO_MEASURED_TREES);

  private CombinedErrorFormulas() {}

  private static Definition errors(String id, String title, Domain domain) {
    return Definition.of(id, title, Nature.STATISTICAL)
        .input("count_error", "a", "%", domain, "error of the mean count")
        .input("ratio_error", "b", "%", domain, "error of the mean ratio");
  }

  private static Equation squares() {
    return plus(squared(sym("a")), squared(sym("b")));
  }

  private static Equation product() {
    return squared(over(times(sym("a"), sym("b")), num(100)));
  }
}
