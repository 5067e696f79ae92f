package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.HeightSights;
import org.mensuration.source.Citation;

/** Heights from straight distances, staffs, shadows and other scales. Immutable and thread-safe. */
public final class HeightSightFormulas {
  private static final Domain LENGTH = Domain.above(0);
  private static final Domain ANGLE = Domain.open(-90, 90);
  private static final String VERTICAL =
      "gives the vertical height, not the length of a leaning stem";
  private static final String UPRIGHT = "the tip stands above the base in the plane of sight";

  /** Height above the eye. */
  public static final BoundFormula ABOVE_EYE =
      Definition.of("height/above-eye", "Height of a point above the eye", Nature.GEOMETRIC)
          .input("distance", "R", "m", LENGTH, "horizontal distance to the tree")
          .input("angle", "e", "deg", ANGLE, "angle to the point, up positive")
          .gives("height", "h", "m", times(sym("R"), tanDegrees(sym("e"))))
          .definedBy(Works.AWF_TRIG, "equation of the trigonometric principle")
          .note("a vertical height, negative below the eye")
          .kernel2(HeightSights::aboveEye);

  /** Height above the eye from the straight distance to the point. */
  public static final BoundFormula ABOVE_EYE_STRAIGHT =
      Definition.of(
              "height/above-eye-straight",
              "Height of a point above the eye from the straight distance to it",
              Nature.GEOMETRIC)
          .input("straight_distance", "S", "m", LENGTH, "straight distance to the point")
          .input("angle", "e", "deg", ANGLE, "angle to the point, up positive")
          .gives("height", "h", "m", times(sym("S"), sinDegrees(sym("e"))))
          .definedBy(OpticsWorks.ENTS_H, "text")
          .explainedBy(OpticsWorks.BRAGG11, "summary and a passage of p. 2")
          .note("a vertical height, negative below the eye")
          .kernel2(HeightSights::aboveEyeStraight);

  /** Height above the eye from the straight distance to the base. */
  public static final BoundFormula ABOVE_EYE_FROM_BASE =
      Definition.of(
              "height/above-eye-from-base",
              "Height of a point above the eye from the straight distance to the base",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", LENGTH, "straight distance from eye to base")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .input("angle", "e", "deg", ANGLE, "angle to the point, up positive")
          .gives("height", "h", "m", times(sym("S"), cosDegrees(sym("b")), tanDegrees(sym("e"))))
          .definedBy(OpticsWorks.MEN201_IV, "slide 32")
          .note(UPRIGHT)
          .note("a vertical height, negative below the eye")
          .kernel3(HeightSights::aboveEyeFromBase);

  /** Height on level ground. */
  public static final BoundFormula LEVEL_GROUND =
      Definition.of(
              "height/level-ground",
              "Height on level ground from one angle and the height of the eye",
              Nature.GEOMETRIC)
          .input("distance", "R", "m", LENGTH, "horizontal distance to the tree")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("eye_height", "h_e", "m", Domain.atLeast(0), "height of the eye above the base")
          .gives("height", "H", "m", plus(times(sym("R"), tanDegrees(sym("t"))), sym("h_e")))
          .definedBy(OpticsWorks.MEN201_IV, "notes, worked example 2")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel3(HeightSights::levelGround);

  /** Topographic scale. */
  public static final BoundFormula TOPOGRAPHIC =
      Definition.of("height/topographic", "Height from two topographic readings", Nature.GEOMETRIC)
          .input("distance", "R", "ft", LENGTH, "horizontal distance to the tree")
          .input("top_reading", "T_t", "1", Domain.any(), "reading to the tip, up positive")
          .input("base_reading", "T_b", "1", Domain.any(), "reading to the base, down negative")
          .relation("base_reading", AT_MOST, 1, "top_reading", "T_b ≤ T_t")
          .gives("height", "H", "ft", over(times(sym("R"), minus(sym("T_t"), sym("T_b"))), num(66)))
          .definedBy(OpticsWorks.DEY24, "Figure 2.8 example")
          .note("the scale reads feet at 66 ft")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel3(HeightSights::topographic);

  /** Sine method. */
  public static final BoundFormula SINE =
      Definition.of(
              "height/sine", "Height from straight distances to tip and base", Nature.GEOMETRIC)
          .input("top_distance", "S_t", "m", LENGTH, "straight distance to the tip")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_distance", "S_b", "m", LENGTH, "straight distance to the base")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .gives(
              "height",
              "H",
              "m",
              minus(
                  times(sym("S_t"), sinDegrees(sym("t"))), times(sym("S_b"), sinDegrees(sym("b")))))
          .definedBy(OpticsWorks.ENTS_H, "text")
          .explainedBy(OpticsWorks.BRAGG11, "summary and a passage of p. 2")
          .note("lean and a crown off the stem do no harm: the points themselves are measured")
          .note(VERTICAL)
          .kernel4(HeightSights::sine);

  /** Sine method, hidden base. */
  public static final BoundFormula SINE_HIDDEN_BASE =
      Definition.of(
              "height/sine-hidden-base",
              "Height from straight distances when the base is hidden",
              Nature.GEOMETRIC)
          .input("top_distance", "S_t", "m", LENGTH, "straight distance to the tip")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input(
              "visible_distance",
              "S_q",
              "m",
              LENGTH,
              "straight distance to a visible point of the stem")
          .input("visible_angle", "q", "deg", ANGLE, "angle to that point")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .gives(
              "height",
              "H",
              "m",
              minus(
                  times(sym("S_t"), sinDegrees(sym("t"))),
                  times(sym("S_q"), cosDegrees(sym("q")), tanDegrees(sym("b")))))
          .cites(
              Citation.derived(
                  "a visible point of an upright stem has the horizontal distance of the base"))
          .note("the stem is upright from the base to the visible point")
          .note(VERTICAL)
          .kernelOfArrays(
              x -> HeightSights.sineHiddenBase(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Staff at the stem. */
  public static final BoundFormula STAFF =
      Definition.of(
              "height/staff", "Height from a staff at the stem and three angles", Nature.GEOMETRIC)
          .input("staff", "L", "m", LENGTH, "length of the staff held on the base")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("staff_top_angle", "s", "deg", ANGLE, "angle to the top of the staff")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .relation("base_angle", LESS, 1, "staff_top_angle", "b < s")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .gives(
              "height",
              "H",
              "m",
              over(
                  times(sym("L"), minus(tanDegrees(sym("t")), tanDegrees(sym("b")))),
                  minus(tanDegrees(sym("s")), tanDegrees(sym("b")))))
          .cites(Citation.derived("distance and slope cancel in the quotient"))
          .explainedBy(Works.AWF_TRIG, "a pole method is mentioned; its formula was not read")
          .note("needs no distance; poor with a short staff on a tall tree")
          .note(UPRIGHT)
          .note(VERTICAL)
          .kernel4(HeightSights::staff);

  /** Similar triangles. */
  public static final BoundFormula SIMILAR_TRIANGLES =
      Definition.of(
              "height/similar-triangles",
              "Height from a pole at the stem and a ruler held at the eye",
              Nature.GEOMETRIC)
          .input("pole", "L", "m", LENGTH, "length of the pole at the base")
          .input("pole_image", "P", "cm", LENGTH, "length on the ruler that covers the pole")
          .input("tree_image", "T", "cm", LENGTH, "length on the ruler that covers the tree")
          .gives("height", "H", "m", over(times(sym("L"), sym("T")), sym("P")))
          .definedBy(OpticsWorks.AWF_GEOM, "similar triangles, ruler and 4 m pole")
          .note("the ruler is held parallel to the tree")
          .note(VERTICAL)
          .kernel3(HeightSights::similarTriangles);

  /** Mark of a pole on a ruler. */
  public static final BoundFormula RULER_MARK =
      Definition.of(
              "height/ruler-mark",
              "Place of the pole's top on a ruler that spans the tree",
              Nature.GEOMETRIC)
          .input("ruler", "k", "cm", LENGTH, "length of the ruler")
          .input("pole", "L", "m", LENGTH, "length of the pole at the base")
          .input("tree_height", "H", "m", LENGTH, "vertical height of the tree")
          .relation("pole", AT_MOST, 1, "tree_height", "L ≤ H")
          .gives("mark", "x", "cm", over(times(sym("k"), sym("L")), sym("H")))
          .definedBy(OpticsWorks.AWF_GEOM, "similar triangles, ruler and 4 m pole")
          .note("from the base end; for graduating a ruler")
          .kernel3(HeightSights::rulerMark);

  /** Mark on the stem. */
  public static final BoundFormula FRACTION =
      Definition.of(
              "height/fraction",
              "Height from a mark on the stem and a stick that covers the tree",
              Nature.GEOMETRIC)
          .input("mark_height", "h", "m", LENGTH, "height of a mark on the stem")
          .input("stick", "k", "cm", LENGTH, "length of the stick that covers the tree")
          .input("stick_to_mark", "k_m", "cm", LENGTH, "length that covers the stem up to the mark")
          .relation("stick_to_mark", AT_MOST, 1, "stick", "k_m ≤ k")
          .gives("height", "H", "m", over(times(sym("h"), sym("k")), sym("k_m")))
          .cites(Citation.derived("similar triangles"))
          .explainedBy(OpticsWorks.AWF_GEOM, "similar triangles, ruler and 4 m pole")
          .note("the stick is held parallel to the tree")
          .note(VERTICAL)
          .kernel3(HeightSights::fraction);

  /** Shadow. */
  public static final BoundFormula SHADOW =
      Definition.of("height/shadow", "Height from the length of a shadow", Nature.GEOMETRIC)
          .input("tree_shadow", "S", "m", LENGTH, "shadow of the tree on level ground")
          .input("staff", "L", "m", LENGTH, "length of an upright staff")
          .input("staff_shadow", "s", "m", LENGTH, "shadow of the staff")
          .gives("height", "H", "m", over(times(sym("S"), sym("L")), sym("s")))
          .definedBy(OpticsWorks.SCOUT, "shadow method")
          .note(VERTICAL)
          .kernel3(HeightSights::shadow);

  /** Height of a mark on a rod. */
  public static final BoundFormula ROD =
      Definition.of(
              "height/rod",
              "Height above the eye from the intercept on an upright rod",
              Nature.GEOMETRIC)
          .input("multiplier", "K", "1", LENGTH, "constant of the instrument, often 100")
          .input("intercept", "i", "m", LENGTH, "length of rod between the hairs")
          .input("elevation", "e", "deg", ANGLE, "elevation of the sight")
          .gives(
              "height",
              "h",
              "m",
              times(num("0.5"), sym("K"), sym("i"), sinDegrees(times(num(2), sym("e")))))
          .definedBy(OpticsWorks.STADIA_T, "p. 48 (screen 50)")
          .note("a vertical height, negative below the eye")
          .kernel3(HeightSights::rod);

  /** Scale read at another distance. */
  public static final BoundFormula OTHER_DISTANCE =
      Definition.of(
              "height/at-other-distance",
              "Height from a scale graduated for one distance and read at another",
              Nature.GEOMETRIC)
          .input("reading", "h_s", "m", Domain.any(), "height read on the scale")
          .input("distance", "d", "m", LENGTH, "horizontal distance of the reading")
          .input("scale_distance", "d_s", "m", LENGTH, "distance that the scale is graduated for")
          .gives("height", "h", "m", over(times(sym("h_s"), sym("d")), sym("d_s")))
          .definedBy(OpticsWorks.UPM2, "p. 1-2")
          .note("a vertical height, negative below the eye")
          .kernel3(HeightSights::atOtherDistance);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          ABOVE_EYE,
          ABOVE_EYE_STRAIGHT,
          ABOVE_EYE_FROM_BASE,
          LEVEL_GROUND,
          TOPOGRAPHIC,
          SINE,
          SINE_HIDDEN_BASE,
          STAFF,
          SIMILAR_TRIANGLES,
          RULER_MARK,
          FRACTION,
          SHADOW,
          ROD,
          OTHER_DISTANCE);

  private HeightSightFormulas() {}
}
