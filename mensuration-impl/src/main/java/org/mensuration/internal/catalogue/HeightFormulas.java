package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.TreeHeight;
import org.mensuration.source.Citation;

/** Heights from angles. Immutable and thread-safe. */
public final class HeightFormulas {
  private static final Domain DISTANCE = Domain.above(0);
  private static final Domain ANGLE = Domain.open(-90, 90);
  private static final Domain STEEP = Domain.open(0, 90);
  private static final String UPRIGHT = "the tip stands above the base in the plane of sight";
  private static final String VERTICAL =
      "gives the vertical height, not the length of a leaning stem";

  /** Tangent method. */
  public static final BoundFormula TANGENT =
      Definition.of(
              "height/tangent",
              "Height from two angles and the horizontal distance",
              Nature.GEOMETRIC)
          .input("distance", "R", "m", DISTANCE, "horizontal distance to the tree")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .gives("height", "H", "m", times(sym("R"), tangents()))
          .definedBy(Works.AWF_TRIG, "equation of the trigonometric principle")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel3(TreeHeight::tangent);

  /** Per-cent method. */
  public static final BoundFormula PERCENT =
      Definition.of("height/percent", "Height from two per-cent readings", Nature.GEOMETRIC)
          .input("distance", "R", "m", DISTANCE, "horizontal distance to the tree")
          .input("top_percent", "p_t", "%", Domain.any(), "reading to the tip, up positive")
          .input("base_percent", "p_b", "%", Domain.any(), "reading to the base, down negative")
          .relation("base_percent", AT_MOST, 1, "top_percent", "p_b ≤ p_t")
          .gives("height", "H", "m", over(times(sym("R"), minus(sym("p_t"), sym("p_b"))), num(100)))
          .definedBy(Works.DEY23, "Example 1, Figures 2.3-2.4")
          .explainedBy(Works.AWF_TRIG, "per-cent form")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel3(TreeHeight::percent);

  /** Tangent method with the straight distance to the base. */
  public static final BoundFormula TANGENT_SLOPE_DISTANCE =
      Definition.of(
              "height/tangent-slope-distance",
              "Height from two angles and the straight distance from eye to base",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", DISTANCE, "straight distance from eye to base")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .gives(
              "height",
              "H",
              "m",
              times(
                  sym("S"),
                  minus(times(cosDegrees(sym("b")), tanDegrees(sym("t"))), sinDegrees(sym("b")))))
          .definedBy(Works.BW98_H2, "whole page, sloping ground")
          .explainedBy(Works.AWF_DIST, "horizontal distance = slope distance × cos")
          .note(UPRIGHT)
          .note(VERTICAL)
          .note("a tape laid along the ground is height/tangent-ground-slope")
          .kernel3(TreeHeight::tangentSlopeDistance);

  /** Tangent method with a tape along the ground. */
  public static final BoundFormula TANGENT_GROUND_SLOPE =
      Definition.of(
              "height/tangent-ground-slope",
              "Height when the distance was taped along the ground",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", DISTANCE, "distance taped along the ground")
          .input("ground_slope", "a", "deg", ANGLE, "slope of the ground along the tape")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .gives("height", "H", "m", times(sym("S"), cosDegrees(sym("a")), tangents()))
          .cites(
              Citation.derived(
                  "the tape's horizontal part is S cos a; put into the tangent method"))
          .explainedBy(Works.AWF_DIST, "horizontal distance = slope distance × cos")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel4(TreeHeight::tangentGroundSlope);

  /** Two stations. */
  public static final BoundFormula TWO_STATIONS =
      Definition.of(
              "height/two-stations",
              "Height above the eye from two stations in line",
              Nature.GEOMETRIC)
          .input("baseline", "B", "m", DISTANCE, "horizontal distance between the stations")
          .input("far_angle", "f", "deg", STEEP, "angle to the tip from the far station")
          .input("near_angle", "n", "deg", STEEP, "angle to the tip from the near station")
          .relation("far_angle", LESS, 1, "near_angle", "f < n")
          .gives(
              "height",
              "H",
              "m",
              over(
                  times(sym("B"), tanDegrees(sym("f")), tanDegrees(sym("n"))),
                  minus(tanDegrees(sym("n")), tanDegrees(sym("f")))))
          .definedBy(Works.TWOPOS1, "worked answer")
          .note("the eye stands at one level at both stations, in line with the tree")
          .note("a vertical height above the eye")
          .note("ill-conditioned when the angles are close")
          .kernel3(TreeHeight::twoStations);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(TANGENT, PERCENT, TANGENT_SLOPE_DISTANCE, TANGENT_GROUND_SLOPE, TWO_STATIONS);

  private HeightFormulas() {}

  private static Equation tangents() {
    return minus(tanDegrees(sym("t")), tanDegrees(sym("b")));
  }
}
