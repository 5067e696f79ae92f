package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.GREATER;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.COS;
import static org.mensuration.formula.Equation.FunctionName.DEGREES;
import static org.mensuration.formula.Equation.FunctionName.IN_DEGREES;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.formula.Relation;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.HeightErrors;
import org.mensuration.kernel.HeightSights;
import org.mensuration.source.Citation;

/** Slopes, lean and error of tree heights. Immutable and thread-safe. */
public final class HeightErrorFormulas {
  private static final Domain LENGTH = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ANGLE = Domain.open(-90, 90);

  /** Angle of a per-cent reading. */
  public static final BoundFormula ANGLE_OF_PERCENT =
      Definition.of("height/angle-from-percent", "Angle of a per-cent reading", Nature.GEOMETRIC)
          .input("percent", "p", "%", Domain.any(), "rise in per cent of the horizontal distance")
          .gives("angle", "e", "deg", fn(IN_DEGREES, fn(ATAN, over(sym("p"), num(100)))))
          .definedBy(OpticsWorks.UPM2, "solution 2")
          .kernel1(HeightSights::angleOfPercent);

  /** Per-cent reading of an angle. */
  public static final BoundFormula PERCENT_OF_ANGLE =
      Definition.of("height/percent-from-angle", "Per-cent reading of an angle", Nature.GEOMETRIC)
          .input("angle", "e", "deg", ANGLE, "angle from the horizontal")
          .gives("percent", "p", "%", times(num(100), tanDegrees(sym("e"))))
          .cites(Citation.commonPractice("per cent are 100 times the tangent"))
          .kernel1(HeightSights::percentOfAngle);

  /** Topographic reading of an angle. */
  public static final BoundFormula TOPOGRAPHIC_OF_ANGLE =
      Definition.of(
              "height/topographic-from-angle", "Topographic reading of an angle", Nature.GEOMETRIC)
          .input("angle", "e", "deg", ANGLE, "angle from the horizontal")
          .gives("reading", "T", "1", times(num(66), tanDegrees(sym("e"))))
          .cites(Citation.derived("the scale reads feet at 66 ft"))
          .explainedBy(OpticsWorks.DEY24, "Figure 2.8 example")
          .kernel1(HeightSights::topographicOfAngle);

  /** Horizontal part of a straight distance. */
  public static final BoundFormula HORIZONTAL =
      Definition.of(
              "height/horizontal-distance",
              "Horizontal part of a straight distance to a point",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", LENGTH, "straight distance to the point")
          .input("angle", "e", "deg", ANGLE, "angle to the point")
          .gives("distance", "R", "m", times(sym("S"), cosDegrees(sym("e"))))
          .definedBy(Works.AWF_DIST, "horizontal distance = slope distance × cos")
          .note("correct the distance or the height, never both")
          .note("the equation of plot/horizontal-distance, at a tree in place of a plot")
          .kernel2(HeightSights::horizontal);

  /** Straight distance along a slope. */
  public static final BoundFormula ALONG_PERCENT =
      Definition.of(
              "height/slope-distance-from-percent",
              "Distance along a slope in per cent from the horizontal distance",
              Nature.GEOMETRIC)
          .input("distance", "R", "m", LENGTH, "horizontal distance")
          .input("percent", "p", "%", Domain.any(), "slope in per cent")
          .gives(
              "slope_distance",
              "S",
              "m",
              over(sym("R"), fn(COS, fn(ATAN, over(sym("p"), num(100))))))
          .definedBy(OpticsWorks.UPM2, "solution 2")
          .kernel2(HeightSights::alongPercent);

  /** Error of a leaning tree. */
  public static final BoundFormula LEAN_ERROR =
      Definition.of(
              "height/lean-error",
              "Relative height error of a leaning stem measured from the base distance",
              Nature.GEOMETRIC)
          .input(
              "offset",
              "x",
              "m",
              Domain.any(),
              "horizontal offset of the tip, toward the viewer positive")
          .input("distance", "R", "m", LENGTH, "horizontal distance to the base")
          .relation("offset", LESS, 1, "distance", "x < R")
          .gives("error", "E", "1", minus(over(sym("R"), minus(sym("R"), sym("x"))), num(1)))
          .cites(Citation.derived("the tip stands R - x away"))
          .explainedBy(OpticsWorks.BW98_H3, "whole page, sign of the error")
          .note("error of the vertical height; take the distance to the point below the tip")
          .kernel2(HeightErrors::lean);

  /** Height measured of a leaning tree. */
  public static final BoundFormula MEASURED_OF_LEANING =
      Definition.of(
              "height/measured-of-leaning",
              "Height that the base distance gives for a leaning stem",
              Nature.GEOMETRIC)
          .input("true_height", "h", "m", NOT_NEGATIVE, "vertical height above the eye")
          .input(
              "offset",
              "x",
              "m",
              Domain.any(),
              "horizontal offset of the tip, toward the viewer positive")
          .input("distance", "R", "m", LENGTH, "horizontal distance to the base")
          .relation("offset", LESS, 1, "distance", "x < R")
          .gives("height", "H", "m", over(times(sym("h"), sym("R")), minus(sym("R"), sym("x"))))
          .cites(Citation.derived("the tip stands R - x away"))
          .explainedBy(OpticsWorks.BW98_H3, "whole page, sign of the error")
          .note("a wrong vertical height, shown to tell how wrong")
          .kernel3(HeightErrors::measuredOfLeaning);

  /** Vertical height of a leaning stem. */
  public static final BoundFormula VERTICAL_OF_LENGTH =
      Definition.of(
              "height/vertical-from-length",
              "Vertical height of a leaning stem from its length",
              Nature.GEOMETRIC)
          .input("length", "L", "m", NOT_NEGATIVE, "length along the stem")
          .input("lean", "l", "deg", ANGLE, "lean from the vertical")
          .gives("height", "H", "m", times(sym("L"), cosDegrees(sym("l"))))
          .cites(Citation.derived("right triangle"))
          .explainedBy(OpticsWorks.AWF_HEIGHT, "height and stem length are different quantities")
          .note("gives the vertical height, not the length of a leaning stem")
          .note("the equation of stem/vertical-height, for a lean with its sign")
          .kernel2(HeightErrors::verticalOfLength);

  /** Length of a leaning stem. */
  public static final BoundFormula LENGTH_OF_VERTICAL =
      Definition.of(
              "height/length-from-vertical",
              "Length of a leaning stem from its vertical height",
              Nature.GEOMETRIC)
          .input("height", "H", "m", NOT_NEGATIVE, "vertical height")
          .input("lean", "l", "deg", ANGLE, "lean from the vertical")
          .gives("length", "L", "m", over(sym("H"), cosDegrees(sym("l"))))
          .cites(Citation.derived("right triangle"))
          .explainedBy(OpticsWorks.AWF_HEIGHT, "height and stem length are different quantities")
          .note("gives the length along the stem, not the vertical height")
          .kernel2(HeightErrors::lengthOfVertical);

  /** Length of a stem that leans in the plane of sight. */
  public static final BoundFormula LENGTH_OF_LEANING =
      Definition.of(
              "height/length-of-leaning",
              "Length of a stem leaning in the plane of sight, from two angles and the distance to the base",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", LENGTH, "straight distance from eye to base")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .input("lean", "l", "deg", ANGLE, "lean from the vertical, away from the viewer positive")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .relation(
              new Relation(
                  List.of(new Relation.Term(1, "top_angle"), new Relation.Term(1, "lean")),
                  LESS,
                  90,
                  "t + l < 90"))
          .relation(
              new Relation(
                  List.of(new Relation.Term(1, "top_angle"), new Relation.Term(1, "lean")),
                  GREATER,
                  -90,
                  "t + l > -90"))
          .gives(
              "length",
              "L",
              "m",
              over(
                  times(sym("S"), sinDegrees(minus(sym("t"), sym("b")))),
                  cosDegrees(plus(sym("t"), sym("l")))))
          .definedBy(OpticsWorks.MEN201_IV, "slide 46")
          .note(
              "gives the length along the stem, not the vertical height; the source calls it height")
          .kernel4(HeightErrors::lengthOfLeaning);

  /** Error of the tangent method. */
  public static final BoundFormula TANGENT_ERROR =
      Definition.of(
              "height/tangent-error",
              "Standard error of a height by the tangent method",
              Nature.STATISTICAL)
          .input("distance", "R", "m", LENGTH, "horizontal distance to the tree")
          .input("top_angle", "t", "deg", ANGLE, "angle to the tip, up positive")
          .input("base_angle", "b", "deg", ANGLE, "angle to the base, down negative")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .input("angle_error", "s_e", "deg", NOT_NEGATIVE, "standard error of each angle")
          .relation("base_angle", AT_MOST, 1, "top_angle", "b ≤ t")
          .gives(
              "error",
              "s",
              "m",
              sqrt(
                  plus(
                      squared(times(minus(tanDegrees(sym("t")), tanDegrees(sym("b"))), sym("s_R"))),
                      times(
                          squared(times(sym("R"), fn(DEGREES, sym("s_e")))),
                          plus(
                              over(num(1), squared(squared(cosDegrees(sym("t"))))),
                              over(num(1), squared(squared(cosDegrees(sym("b"))))))))))
          .cites(
              Citation.derived(
                  "first-order propagation through height/tangent, angles independent"))
          .note(
              "error of the vertical height; with a level base the angle part is least at 45 degrees")
          .kernelOfArrays(x -> HeightErrors.tangent(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Best distance. */
  public static final BoundFormula BEST_DISTANCE =
      Definition.of(
              "height/best-distance",
              "Distance at which the tangent method has its least error",
              Nature.STATISTICAL)
          .input("above_eye", "h", "m", NOT_NEGATIVE, "height of the tip above the eye")
          .input("below_eye", "k", "m", NOT_NEGATIVE, "depth of the base below the eye")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .input("angle_error", "s_e", "deg", LENGTH, "standard error of each angle")
          .gives(
              "distance",
              "R",
              "m",
              sqrt(
                  sqrt(
                      over(
                          plus(
                              squared(squared(sym("h"))),
                              squared(squared(sym("k"))),
                              squared(
                                  over(
                                      times(plus(sym("h"), sym("k")), sym("s_R")),
                                      fn(DEGREES, sym("s_e"))))),
                          num(2)))))
          .cites(Citation.derived("least value of height/tangent-error over the distance"))
          .note(
              "without error of the distance and with two alike parts it is the height of one part: sights at 45 degrees")
          .kernel4(HeightErrors::bestDistance);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          ANGLE_OF_PERCENT,
          PERCENT_OF_ANGLE,
          TOPOGRAPHIC_OF_ANGLE,
          HORIZONTAL,
          ALONG_PERCENT,
          LEAN_ERROR,
          MEASURED_OF_LEANING,
          VERTICAL_OF_LENGTH,
          LENGTH_OF_VERTICAL,
          LENGTH_OF_LEANING,
          TANGENT_ERROR,
          BEST_DISTANCE);

  private HeightErrorFormulas() {}
}
