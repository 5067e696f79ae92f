package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Equation.FunctionName;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.GaugeFactor;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.source.Citation;

/** Gauges by what they are made of, by calibration and on slopes. Immutable and thread-safe. */
public final class GaugeDeviceFormulas {
  private static final Domain SIZE = Domain.above(0);
  private static final Domain FACTOR = GaugeFormulas.FACTOR;
  private static final Domain SIGHT = Domain.open(-90, 90);

  /** Factor of an angle, small angles. */
  public static final BoundFormula FACTOR_FROM_ANGLE_APPROXIMATE =
      Definition.of(
              "gauge/factor-from-angle-approximate",
              "Basal-area factor from the gauge angle (small angle)",
              Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.open(0, 180), "full angle of the gauge")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(num(2500), squared(over(times(sym("t"), pi()), num(180)))))
          .cites(Citation.derived("10 000 sin²(t/2) with the angle in place of its sine"))
          .kernel1(GaugeFactor::ofAngleApproximate);

  /** Small-angle factor of an exact one. */
  public static final BoundFormula SMALL_ANGLE_OF_FACTOR =
      Definition.of(
              "gauge/small-angle-of-factor",
              "Factor that the small-angle rule gives a flat blade of an exact factor",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", FACTOR, "exact basal-area factor")
          .gives(
              "small_angle_factor",
              "k_s",
              "m2/ha",
              over(sym("k"), minus(num(1), over(sym("k"), num(10000)))))
          .cites(Citation.derived("2500 (w/d)² with w/d of k = 10 000/(1 + 4 (d/w)²)"))
          .kernel1(GaugeFactor::smallAngle);

  /** Factor of a prism, small angles. */
  public static final BoundFormula FACTOR_FROM_PRISM_APPROXIMATE =
      Definition.of(
              "gauge/factor-from-prism-approximate",
              "Basal-area factor from prism dioptres (small angle)",
              Nature.GEOMETRIC)
          .input("dioptres", "P", "1", SIZE, "shift of the image at a hundred units of distance")
          .gives("factor", "k", "m2/ha", times(num(10000), squared(over(sym("P"), num(200)))))
          .cites(Citation.derived("the exact rule with the tangent in place of the sine"))
          .note("high by 0.07 % at 10 ft²/ac")
          .kernel1(GaugeFactor::ofPrismApproximate);

  /** Factor of joined prisms. */
  public static final BoundFormula FACTOR_FROM_JOINED_PRISMS =
      Definition.of(
              "gauge/factor-from-joined-prisms",
              "Basal-area factor of two prisms joined with their bases on one side",
              Nature.GEOMETRIC)
          .input("first", "P", "1", SIZE, "strength of one in prism dioptres")
          .input("second", "Q", "1", SIZE, "strength of the other in prism dioptres")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(
                  num(10000),
                  squared(
                      fn(FunctionName.SIN, over(plus(deviation("P"), deviation("Q")), num(2))))))
          .cites(Citation.derived("the deviations of joined prisms add"))
          .note("bases on one side; with bases opposed the weaker prism is subtracted")
          .kernel2(GaugeFactor::ofJoinedPrisms);

  /** Factor of joined prisms, small angles. */
  public static final BoundFormula FACTOR_FROM_JOINED_PRISMS_APPROXIMATE =
      Definition.of(
              "gauge/factor-from-joined-prisms-approximate",
              "Basal-area factor of two joined prisms (small angle)",
              Nature.GEOMETRIC)
          .input("first_factor", "k_1", "m2/ha", FACTOR, "factor of one prism")
          .input("second_factor", "k_2", "m2/ha", FACTOR, "factor of the other prism")
          .gives("factor", "k", "m2/ha", squared(plus(sqrt(sym("k_1")), sqrt(sym("k_2")))))
          .cites(Citation.derived("deviations add, and each is as the root of its factor"))
          .note("slightly above the exact rule")
          .kernel2(GaugeFactor::ofJoinedPrismsApproximate);

  /** Factor of divisions. */
  public static final BoundFormula FACTOR_FROM_DIVISIONS =
      Definition.of(
              "gauge/factor-from-divisions",
              "Basal-area factor of divisions of an optical scale",
              Nature.GEOMETRIC)
          .input("divisions", "n", "1", SIZE, "divisions that a counted tree must fill")
          .input("ratio", "u", "1", SIZE, "width over distance of one division, flat")
          .gives(
              "factor",
              "k",
              "m2/ha",
              where(
                  "b",
                  times(sym("n"), sym("u")),
                  over(num(10000), plus(num(1), over(num(4), squared(sym("b")))))))
          .cites(Citation.derived("n divisions are a flat blade of width n u at distance 1"))
          .note("optics/factor-from-ratio of the ratio n u")
          .kernel2(GaugeFactor::ofDivisions);

  /** Factor of divisions, small angles. */
  public static final BoundFormula FACTOR_FROM_DIVISIONS_APPROXIMATE =
      Definition.of(
              "gauge/factor-from-divisions-approximate",
              "Basal-area factor of divisions of an optical scale (small angle)",
              Nature.GEOMETRIC)
          .input("divisions", "n", "1", SIZE, "divisions that a counted tree must fill")
          .input("ratio", "u", "1", SIZE, "width over distance of one division, flat")
          .gives("factor", "k", "m2/ha", times(num(2500), squared(times(sym("n"), sym("u")))))
          .cites(Citation.derived("2500 (w/d)² of a flat blade with w/d = n u"))
          .kernel2(GaugeFactor::ofDivisionsApproximate);

  /** Factor in force, metric. */
  public static final BoundFormula WORKING_FACTOR_METRIC =
      Definition.of(
              "gauge/working-factor-metric",
              "Factor in force when borderline trees were checked with another radius factor,"
                  + " metric",
              Nature.GEOMETRIC)
          .input(
              "radius_factor",
              "PRF",
              "m/cm",
              Domain.above(0.005),
              "radius factor to the centre that was used")
          .gives("factor", "k", "m2/ha", over(num("0.25"), squared(sym("PRF"))))
          .cites(Citation.derived("the inverse of PRF = 0.5/sqrt(k)"))
          .explainedBy(CountingWorks.AG_S08, "the check of trees at the limit decides the factor")
          .note("below 0.005 m per cm the limit would lie inside the stem")
          .kernel1(LimitingDistance::workingFactorMetric);

  /** Flat target, middle. */
  public static final BoundFormula FACTOR_FROM_TARGET_MIDDLE =
      target("gauge/factor-from-target-middle", "a flat target measured square to its middle")
          .input("distance", "D", "m", SIZE, "distance from the eye to its middle")
          .gives(
              "factor",
              "k",
              "m2/ha",
              over(num(10000), plus(num(1), times(num(4), squared(over(sym("D"), sym("W")))))))
          .definedBy(
              Works.AG_S02, "section Basal Area Factor, there for an acre of 43 560 square feet")
          .note("average the distances of repeated readings, not their factors")
          .kernel2(GaugeFactor::ofFlatBlade);

  /** Round target, axis. */
  public static final BoundFormula FACTOR_FROM_TARGET_AXIS =
      target("gauge/factor-from-target-axis", "a round target measured to its axis")
          .input("axis_distance", "D", "m", SIZE, "distance from the eye to its axis")
          .relation("width", AT_MOST, 2, "axis_distance", "W ≤ 2 D")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(num(10000), squared(over(sym("W"), times(num(2), sym("D"))))))
          .cites(Citation.derived("k = 2500 (d/R)², the target in place of a stem"))
          .note("average the distances of repeated readings, not their factors")
          .kernel2(GaugeFactor::ofFlatBladeApproximate);

  /** Flat target, one edge. */
  public static final BoundFormula FACTOR_FROM_TARGET_EDGE =
      target("gauge/factor-from-target-edge", "a flat target measured square to one edge")
          .input("edge_distance", "D", "m", SIZE, "distance from the eye to the edge")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(
                  num(10000),
                  squared(
                      fn(
                          FunctionName.SIN,
                          over(fn(FunctionName.ATAN, over(sym("W"), sym("D"))), num(2))))))
          .cites(Citation.derived("the target is seen under the angle of tangent W/D"))
          .note("average the distances of repeated readings, not their factors")
          .kernel2(GaugeFactor::ofTargetEdge);

  /** Width of a blade. */
  public static final BoundFormula BLADE_WIDTH =
      Definition.of(
              "gauge/blade-width",
              "Width of a flat blade for a wanted factor at a distance from the eye",
              Nature.GEOMETRIC)
          .input("distance", "d", "cm", SIZE, "distance from the eye to the middle of the blade")
          .input("factor", "k", "m2/ha", FACTOR, "basal-area factor wanted")
          .gives(
              "width",
              "w",
              "cm",
              times(num(2), sym("d"), sqrt(over(sym("k"), minus(num(10000), sym("k"))))))
          .cites(Citation.derived("the inverse of k = 10 000/(1 + 4 (d/w)²)"))
          .kernel2(GaugeFactor::bladeWidth);

  /** Factor along a sloping sight. */
  public static final BoundFormula FACTOR_ALONG_SIGHT =
      Definition.of(
              "gauge/factor-along-sight",
              "Factor in force along a sloping sight of an uncompensated gauge",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", FACTOR, "basal-area factor on level ground")
          .input("slope", "a", "deg", SIGHT, "slope of the sight from the eye to the stem")
          .gives("factor", "k_a", "m2/ha", over(sym("k"), squared(cosDegrees(sym("a")))))
          .cites(
              Citation.derived(
                  "along the sight a tree is counted up to the horizontal distance R cos(a)"))
          .note("over all directions of an even slope it gives the sweep factor 1/cos(slope)")
          .kernel2(GaugeFactor::alongSight);

  /** Distance to a leaning stem. */
  public static final BoundFormula LEANING_DISTANCE =
      Definition.of(
              "gauge/leaning-distance",
              "Distance to the centre of a leaning stem at breast height",
              Nature.GEOMETRIC)
          .input(
              "foot_distance",
              "r",
              "m",
              Domain.atLeast(0),
              "horizontal distance to the centre of the stem at the ground")
          .input("breast_height", "b", "m", Domain.atLeast(0), "breast height along the stem")
          .input("lean", "l", "deg", Domain.fromBelow(0, 90), "lean from the vertical")
          .input(
              "direction",
              "c",
              "deg",
              Domain.closed(-180, 180),
              "angle between the line from the point and the lean, 0 straight away")
          .gives(
              "distance",
              "R",
              "m",
              where(
                  "s",
                  times(sym("b"), sinDegrees(sym("l"))),
                  sqrt(
                      plus(
                          squared(sym("r")),
                          squared(sym("s")),
                          times(num(2), sym("r"), sym("s"), cosDegrees(sym("c")))))))
          .cites(Citation.derived("the section at breast height is shifted by b sin(l)"))
          .note("that the section at breast height decides is common practice")
          .kernel4(LimitingDistance::leaning);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FACTOR_FROM_ANGLE_APPROXIMATE,
          SMALL_ANGLE_OF_FACTOR,
          FACTOR_FROM_PRISM_APPROXIMATE,
          FACTOR_FROM_JOINED_PRISMS,
          FACTOR_FROM_JOINED_PRISMS_APPROXIMATE,
          FACTOR_FROM_DIVISIONS,
          FACTOR_FROM_DIVISIONS_APPROXIMATE,
          WORKING_FACTOR_METRIC,
          FACTOR_FROM_TARGET_MIDDLE,
          FACTOR_FROM_TARGET_AXIS,
          FACTOR_FROM_TARGET_EDGE,
          BLADE_WIDTH,
          FACTOR_ALONG_SIGHT,
          LEANING_DISTANCE);

  private GaugeDeviceFormulas() {}

  private static Equation deviation(String dioptres) {
    return fn(FunctionName.ATAN, over(sym(dioptres), num(100)));
  }

  private static Definition target(String id, String what) {
    return Definition.of(id, "Basal-area factor from " + what, Nature.GEOMETRIC)
        .input("width", "W", "m", SIZE, "width of the target");
  }
}
