package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.ASIN;
import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.IN_DEGREES;
import static org.mensuration.formula.Equation.FunctionName.TAN;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.OpticalRatio;
import org.mensuration.source.Citation;

/** Ratios of divisions, targets and angles. Immutable and thread-safe. */
public final class OpticalRatioFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ELEVATION = Domain.open(-90, 90);
  private static final String DIVISIONS = "divisions that it fills";

  /** Calibration on a flat target. */
  public static final BoundFormula FLAT_TARGET =
      Definition.of(
              "optics/division-ratio-flat-target",
              "Division ratio from a flat target",
              Nature.GEOMETRIC)
          .input("target_width", "W", "m", POSITIVE, "width of the target")
          .input("distance", "d", "m", POSITIVE, "horizontal distance to the target")
          .input("divisions", "n", "1", POSITIVE, DIVISIONS)
          .gives("ratio", "u", "1", over(sym("W"), times(sym("n"), sym("d"))))
          .cites(Citation.derived("the target stands square to the sight"))
          .kernel3(OpticalRatio::flatTarget);

  /** Calibration on a round post. */
  public static final BoundFormula ROUND_TARGET =
      Definition.of(
              "optics/division-ratio-round-target",
              "Division ratio from a round post",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the post")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to its axis")
          .input("divisions", "n", "1", POSITIVE, DIVISIONS)
          .relation("diameter", LESS, 2, "axis_distance", "D < 2R")
          .gives(
              "ratio",
              "u",
              "1",
              times(
                  over(num(2), sym("n")),
                  fn(TAN, fn(ASIN, over(sym("D"), times(num(2), sym("R")))))))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .kernel3(OpticalRatio::roundTarget);

  /** Scale held at a distance. */
  public static final BoundFormula HELD =
      Definition.of(
              "optics/division-ratio-held",
              "Division ratio of a scale held at a distance from the eye",
              Nature.GEOMETRIC)
          .input("division_width", "w_0", "cm", POSITIVE, "width of a division on the scale")
          .input("eye_distance", "L", "cm", POSITIVE, "distance from the eye to the scale")
          .gives("ratio", "u", "1", over(sym("w_0"), sym("L")))
          .cites(Citation.derived("similar triangles"))
          .note("an eye position good to 1 cm in 60 cm costs 1.7 % of every diameter")
          .kernel2(OpticalRatio::held);

  /** Calibration on many targets. */
  public static final BoundFormula THROUGH_ORIGIN =
      Definition.of(
              "optics/division-ratio-calibration",
              "Division ratio from many targets, least squares through the origin",
              Nature.STATISTICAL)
          .list("divisions", "n", "1", POSITIVE, "divisions read")
          .list("ratio", "b", "1", POSITIVE, "width over distance of each target")
          .gives(
              "division_ratio",
              "u",
              "1",
              over(sumOver(times(sym("n"), sym("b")), "n", "b"), sumOver(squared(sym("n")), "n")))
          .cites(Citation.derived("least squares of b = u n"))
          .kernelOfArrays(x -> OpticalRatio.throughOrigin(x[0], x[1]));

  /** Divisions side by side. */
  public static final BoundFormula OF_DIVISIONS =
      Definition.of(
              "optics/ratio-from-divisions",
              "Sighted ratio from a count of divisions",
              Nature.GEOMETRIC)
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("divisions", "n", "1", NOT_NEGATIVE, "divisions that the stem fills")
          .gives("sighted_ratio", "b", "1", times(sym("n"), sym("u")))
          .cites(
              Citation.derived("divisions stand side by side on a flat scale, so their ratios add"))
          .kernel2(OpticalRatio::ofDivisions);

  /** Ratio of an angle. */
  public static final BoundFormula FROM_ANGLE =
      Definition.of("optics/ratio-from-angle", "Ratio of a full angle", Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.open(0, 180), "full angle")
          .gives("ratio", "u", "1", times(num(2), tanDegrees(over(sym("t"), num(2)))))
          .cites(Citation.derived("a flat scale square to the sight"))
          .kernel1(OpticalRatio::fromAngle);

  /** Angle of a ratio. */
  public static final BoundFormula TO_ANGLE =
      Definition.of("optics/angle-from-ratio", "Full angle of a ratio", Nature.GEOMETRIC)
          .input("ratio", "u", "1", POSITIVE, "width over distance")
          .gives(
              "angle", "t", "deg", fn(IN_DEGREES, times(num(2), fn(ATAN, over(sym("u"), num(2))))))
          .cites(Citation.derived("a flat scale square to the sight"))
          .kernel1(OpticalRatio::toAngle);

  /** Ratio of a basal-area factor. */
  public static final BoundFormula FROM_FACTOR =
      Definition.of(
              "optics/ratio-from-factor",
              "Ratio of a flat gauge of a basal-area factor",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", Domain.open(0, 10_000), "basal-area factor")
          .gives("ratio", "b", "1", over(num(2), sqrt(minus(over(num(10_000), sym("k")), num(1)))))
          .cites(Citation.derived("solved from the factor of a flat gauge"))
          .explainedBy(Works.AWF_BIT, "section Exact solution")
          .kernel1(OpticalRatio::fromFactor);

  /** Basal-area factor of a ratio. */
  public static final BoundFormula TO_FACTOR =
      Definition.of(
              "optics/factor-from-ratio",
              "Basal-area factor of a flat gauge of a ratio",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", POSITIVE, "width over distance of the gauge")
          .gives(
              "factor",
              "k",
              "m2/ha",
              over(num(10_000), plus(num(1), over(num(4), squared(sym("b"))))))
          .definedBy(Works.AWF_BIT, "section Exact solution")
          .note("n divisions of ratio u side by side make a gauge of b = n u")
          .note("gauge/factor-from-divisions is this with n and u apart")
          .kernel1(OpticalRatio::toFactor);

  /** Ratio put back to level. */
  public static final BoundFormula COMPENSATED =
      Definition.of(
              "optics/ratio-compensated",
              "Ratio of a level sight from a ratio seen at an elevation",
              Nature.GEOMETRIC)
          .input("ratio", "b'", "1", NOT_NEGATIVE, "ratio seen square to the sight")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .gives("level_ratio", "b", "1", over(sym("b'"), cosDegrees(sym("e"))))
          .cites(
              Citation.derived(
                  "the line of sight is longer than the horizontal distance by 1/cos e"))
          .note("width across the sight takes one cosine, length along the vertical two")
          .kernel2(OpticalRatio::compensated);

  /** Ratio seen at an elevation. */
  public static final BoundFormula UNCOMPENSATED =
      Definition.of(
              "optics/ratio-uncompensated",
              "Ratio seen at an elevation from the ratio of a level sight",
              Nature.GEOMETRIC)
          .input("level_ratio", "b", "1", NOT_NEGATIVE, "ratio of a level sight")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .gives("ratio", "b'", "1", times(sym("b"), cosDegrees(sym("e"))))
          .cites(
              Citation.derived(
                  "the line of sight is longer than the horizontal distance by 1/cos e"))
          .kernel2(OpticalRatio::uncompensated);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FLAT_TARGET,
          ROUND_TARGET,
          HELD,
          THROUGH_ORIGIN,
          OF_DIVISIONS,
          FROM_ANGLE,
          TO_ANGLE,
          FROM_FACTOR,
          TO_FACTOR,
          COMPENSATED,
          UNCOMPENSATED);

  private OpticalRatioFormulas() {}
}
