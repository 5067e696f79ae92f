package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.ratio;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

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
import org.mensuration.source.Role;

/** Factor and angle of angle gauges. Immutable and thread-safe. */
public final class GaugeFormulas {
  /** Factors in m²/ha: at the upper end the eye would touch the stem. */
  static final Domain FACTOR = GaugeDistanceFormulas.FACTOR;

  private static final Domain SIZE = Domain.above(0);

  /** Factor of an angle. */
  public static final BoundFormula FACTOR_FROM_ANGLE =
      Definition.of(
              "gauge/factor-from-angle", "Basal-area factor from the gauge angle", Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.open(0, 180), "full angle of the gauge")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(num(10000), squared(sinDegrees(over(sym("t"), num(2))))))
          .cites(
              Citation.derived(
                  "sin(t/2) = d/(2 R) of the tangents to a round stem, put into k = 2500 (d/R)²"))
          .explainedBy(
              CountingWorks.AG_S28, "principle section, revision of 9 January 2013, k = 2500/c²")
          .note("the stem is round and upright; distances are to its centre")
          .kernel1(GaugeFactor::ofAngle);

  /** Angle of a factor. */
  public static final BoundFormula ANGLE_FROM_FACTOR =
      Definition.of(
              "gauge/angle-from-factor", "Gauge angle from the basal-area factor", Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", FACTOR, "basal-area factor")
          .gives(
              "angle",
              "t",
              "deg",
              times(
                  num(2),
                  fn(
                      FunctionName.IN_DEGREES,
                      fn(FunctionName.ASIN, sqrt(over(sym("k"), num(10000)))))))
          .cites(Citation.derived("the inverse of k = 10 000 sin²(t/2)"))
          .kernel1(GaugeFactor::angle);

  /** Factor of a flat blade. */
  public static final BoundFormula FACTOR_FROM_FLAT_BLADE =
      Definition.of(
              "gauge/factor-from-flat-blade", "Basal-area factor of a flat blade", Nature.GEOMETRIC)
          .input("width", "w", "cm", SIZE, "width of the blade")
          .input("distance", "d", "cm", SIZE, "distance from the eye to the middle of the blade")
          .gives(
              "factor",
              "k",
              "m2/ha",
              over(num(10000), plus(num(1), times(num(4), squared(over(sym("d"), sym("w")))))))
          .definedBy(
              Works.AG_S02, "section Basal Area Factor, there for an acre of 43 560 square feet")
          .note("the blade is held square to the sight")
          .note(
              "the page sets the brackets wrongly, (1 + 4)(D/W)²; its own example needs 1 + 4"
                  + " (D/W)²")
          .kernel2(GaugeFactor::ofFlatBlade);

  /** Factor of a flat blade, small angles. */
  public static final BoundFormula FACTOR_FROM_FLAT_BLADE_APPROXIMATE =
      Definition.of(
              "gauge/factor-from-flat-blade-approximate",
              "Basal-area factor of a flat blade (small angle)",
              Nature.GEOMETRIC)
          .input("width", "w", "cm", SIZE, "width of the blade")
          .input("distance", "d", "cm", SIZE, "distance from the eye to the blade")
          .gives("factor", "k", "m2/ha", times(num(2500), squared(over(sym("w"), sym("d")))))
          .definedBy(Works.AG_S02, "section Basal Area Factor, there 10 890 (W/D)² for an acre")
          .tabulatedBy(CountingWorks.AG_S30, "list of string lengths")
          .note("high by the part (w/2d)²; exact for a round rod of diameter w at d to its axis")
          .kernel2(GaugeFactor::ofFlatBladeApproximate);

  /** Factor from a round target. */
  public static final BoundFormula FACTOR_FROM_TARGET_FACE =
      Definition.of(
              "gauge/factor-from-target-face",
              "Basal-area factor from a round target measured to its near face",
              Nature.GEOMETRIC)
          .input("width", "W", "m", SIZE, "diameter of the target")
          .input("face_distance", "D", "m", SIZE, "distance from the eye to its near face")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(num(10000), squared(over(sym("W"), plus(times(num(2), sym("D")), sym("W"))))))
          .cites(Citation.derived("k = 10 000 (W/2R)² with R = D + W/2 to the axis of the target"))
          .kernel2(GaugeFactor::ofTargetFace);

  /** Factor of a prism. */
  public static final BoundFormula FACTOR_FROM_PRISM =
      Definition.of(
              "gauge/factor-from-prism", "Basal-area factor from prism dioptres", Nature.GEOMETRIC)
          .input("dioptres", "P", "1", SIZE, "shift of the image at a hundred units of distance")
          .gives(
              "factor",
              "k",
              "m2/ha",
              times(
                  num(10000),
                  squared(
                      fn(
                          FunctionName.SIN,
                          over(fn(FunctionName.ATAN, over(sym("P"), num(100))), num(2))))))
          .cites(
              Citation.derived(
                  "a prism of P dioptres turns the sight by the angle of tangent P/100"))
          .note("the vertex of the angle is at the prism, held over the point")
          .kernel1(GaugeFactor::ofPrism);

  /** Distance of a blade. */
  public static final BoundFormula BLADE_DISTANCE =
      Definition.of(
              "gauge/blade-distance",
              "Eye distance for a blade and a wanted factor",
              Nature.GEOMETRIC)
          .input("width", "w", "cm", SIZE, "width of the blade")
          .input("factor", "k", "m2/ha", FACTOR, "basal-area factor wanted")
          .gives(
              "distance",
              "d",
              "cm",
              times(over(sym("w"), num(2)), sqrt(minus(over(num(10000), sym("k")), num(1)))))
          .cites(Citation.derived("the inverse of k = 10 000/(1 + 4 (d/w)²)"))
          .tabulatedBy(CountingWorks.AG_S30, "list of string lengths, by the rule of small angles")
          .kernel2(GaugeFactor::bladeDistance);

  /** Factor in force. */
  public static final BoundFormula WORKING_FACTOR =
      Definition.of(
              "gauge/working-factor",
              "Factor in force when borderline trees were checked with another radius factor",
              Nature.GEOMETRIC)
          .input(
              "radius_factor",
              "PRF",
              "ft/in",
              Domain.above(1.0 / 24),
              "radius factor to the centre that was used")
          .gives("factor", "k", "ft2/ac", over(num(43560), times(num(576), squared(sym("PRF")))))
          .cites(Citation.derived("the inverse of PRF = sqrt(43 560/k)/24"))
          .explainedBy(CountingWorks.AG_S08, "the check of trees at the limit decides the factor")
          .note("below 1/24 ft per in the limit would lie inside the stem")
          .kernel1(LimitingDistance::workingFactor);

  /** Slope of a whole sweep. */
  public static final BoundFormula SWEEP_SLOPE_FACTOR =
      Definition.of(
              "gauge/sweep-slope-factor",
              "Correction of a whole sweep with an uncompensated gauge",
              Nature.CONVENTION)
          .input("slope", "a", "deg", Domain.fromBelow(0, 90), "steepest slope at the point")
          .gives("factor", "c", "1", over(num(1), cosDegrees(sym("a"))))
          .cites(Citation.fromMemory(Role.DEFINES, CountingWorks.AG_M08, "pp. 206-207"))
          .note("for an even slope; better to correct tree by tree by the slope of its own sight")
          .kernel1(GaugeFactor::sweepSlope);

  /** Radius factor to the centre. */
  public static final BoundFormula PLOT_RADIUS_FACTOR_CENTRE =
      Definition.of(
              "gauge/plot-radius-factor-centre",
              "Plot radius factor to the stem centre",
              Nature.GEOMETRIC)
          .input("factor", "k", "ft2/ac", Domain.open(0, 43560), "basal-area factor")
          .gives("radius_factor", "PRF", "ft/in", centre())
          .cites(Citation.derived("PRF = R/d of k = 43 560 (d/2R)², d in inches and R in feet"))
          .tabulatedBy(Works.AG_S12, "slide Common BAF and PRF, constant 8.696")
          .explainedBy(Works.AG_S02, "section Plot Radius Factor")
          .note(
              "the shortened constant 8.696 gives 1.944 at 20 ft²/ac where the exact one rounds to"
                  + " 1.945")
          .kernel1(LimitingDistance::radiusFactorToCentre);

  /** Radius factor to the near face. */
  public static final BoundFormula PLOT_RADIUS_FACTOR_FACE =
      Definition.of(
              "gauge/plot-radius-factor-face",
              "Plot radius factor to the near face",
              Nature.GEOMETRIC)
          .input("factor", "k", "ft2/ac", Domain.open(0, 43560), "basal-area factor")
          .gives("radius_factor", "PRF_f", "ft/in", minus(centre(), ratio(1, 24)))
          .definedBy(CountingWorks.AG_S08, "radius factor less the radius of the stem")
          .kernel1(LimitingDistance::radiusFactorToFace);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FACTOR_FROM_ANGLE,
          ANGLE_FROM_FACTOR,
          FACTOR_FROM_FLAT_BLADE,
          FACTOR_FROM_FLAT_BLADE_APPROXIMATE,
          FACTOR_FROM_TARGET_FACE,
          FACTOR_FROM_PRISM,
          BLADE_DISTANCE,
          WORKING_FACTOR,
          SWEEP_SLOPE_FACTOR,
          PLOT_RADIUS_FACTOR_CENTRE,
          PLOT_RADIUS_FACTOR_FACE,
          GaugeDistanceFormulas.LIMITING_DISTANCE_CENTRE,
          GaugeDistanceFormulas.LIMITING_DISTANCE_FACE,
          GaugeDistanceFormulas.LIMITING_SLOPE_DISTANCE,
          GaugeDistanceFormulas.TREE_FACTOR,
          GaugeDistanceFormulas.INCLUSION_AREA);

  private GaugeFormulas() {}

  private static Equation centre() {
    return over(sqrt(over(num(43560), sym("k"))), num(24));
  }
}
