package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.internal.statistics.StrataPoints;
import org.mensuration.kernel.Sampling;
import org.mensuration.source.Citation;

/** Numbers of points for a tract and for strata. Immutable and thread-safe. */
public final class SampleSizeFormulas {
  private static final String ERROR_OF_SHARES =
      " and E ≥ t(f, C) · √(Σ (w_h CV_h)²/n_h)/Σ w, f the effective degrees of freedom over the"
          + " strata";

  /** Points by the area of a tract. */
  public static final BoundFormula POINTS_BY_AREA =
      Definition.of("sampling/points-by-area", "Points for a tract by its area", Nature.CONVENTION)
          .input("area", "A", "ac", Domain.aboveUpTo(0, 200), "area of the tract")
          .gives(
              "points",
              "n",
              "1",
              new Equation.Cases(
                  List.of(
                      upTo(10, num(10)),
                      upTo(40, sym("A")),
                      upTo(80, plus(num(20), times(num("0.5"), sym("A"))))),
                  plus(num(40), times(num("0.25"), sym("A")))))
          .definedBy(Works.AG_S12, "slides 13-14, number of points by acres")
          .note("not rounded; a rule of thumb that knows nothing of how the stand varies")
          .kernel1(Sampling::pointsByArea);

  /** Points over strata by Neyman. */
  public static final BoundFormula POINTS_NEEDED_NEYMAN =
      needed(
              "sampling/points-needed-neyman",
              "Points needed over strata by Neyman allocation",
              "n · w_h CV_h/Σ w CV")
          .definedBy(Works.AG_S15, "steps one to three, there with t = 2 and one stratum's rule")
          .cites(Citation.derived("error over strata of shares rounded up, with its own t"))
          .note("the half width is that of the estimate over strata, with its degrees of freedom")
          .kernelOfArrays(x -> StrataPoints.neyman(x[0], x[1]).needed(x[2][0], x[3][0]).total());

  /** Points over strata in proportion. */
  public static final BoundFormula POINTS_NEEDED_PROPORTIONAL =
      needed(
              "sampling/points-needed-proportional",
              "Points needed over strata in proportion to their weights",
              "n · w_h/Σ w")
          .cites(Citation.derived("error over strata of shares rounded up, with its own t"))
          .note("never fewer than by Neyman but for rounding; needed where variation is not known")
          .kernelOfArrays(
              x -> StrataPoints.proportional(x[0], x[1]).needed(x[2][0], x[3][0]).total());

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(POINTS_BY_AREA, POINTS_NEEDED_NEYMAN, POINTS_NEEDED_PROPORTIONAL);

  private SampleSizeFormulas() {}

  private static Equation.Branch upTo(int acres, Equation points) {
    return new Equation.Branch(new Equation.Condition(sym("A"), AT_MOST, num(acres)), points);
  }

  private static Definition needed(String id, String title, String share) {
    return Definition.of(id, title, Nature.STATISTICAL)
        .list("weight", "w", "1", Domain.above(0), "weights of the strata, by area or by volume")
        .list(
            "coefficient_of_variation",
            "CV",
            "%",
            Domain.atLeast(0),
            "standard deviation of the points of each stratum over its mean")
        .input("allowable_error", "E", "%", Domain.above(0), "half width over the mean")
        .input(
            "confidence", "C", "%", SamplingFormulas.CONFIDENCE, "chance that the interval holds")
        .gives(
            "points",
            "N",
            "1",
            new Equation.Solved(
                "Σ n_h of the smallest n with n_h = max(2, ⌈" + share + "⌉)" + ERROR_OF_SHARES))
        .note("weights by area or by volume give other points: state which")
        .note("volume weights are right for variations over each stratum's own mean");
  }
}
