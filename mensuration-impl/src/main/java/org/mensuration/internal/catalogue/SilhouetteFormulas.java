package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.ACOS;
import static org.mensuration.formula.Equation.FunctionName.ASIN;
import static org.mensuration.formula.Equation.FunctionName.COS;
import static org.mensuration.formula.Equation.FunctionName.IN_DEGREES;
import static org.mensuration.formula.Equation.FunctionName.TAN;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.Silhouette;
import org.mensuration.source.Citation;

/** What a viewer sees of a round stem. Immutable and thread-safe. */
public final class SilhouetteFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain ELEVATION = Domain.open(-90, 90);
  private static final String OUTSIDE = "D < 2R";

  /** Ratio sighted. */
  public static final BoundFormula SIGHTED_RATIO =
      Definition.of("optics/sighted-ratio", "Ratio sighted on a stem", Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("ratio", "b", "1", times(num(2), fn(TAN, halfAngle())))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .explainedBy(Works.ANGDIAM, "the edges seen are tangent points nearer than the centre")
          .note("forward model of the silhouette; level sight, circular section")
          .kernel2(Silhouette::ratio);

  /** Ratio sighted at an elevation. */
  public static final BoundFormula SIGHTED_RATIO_ELEVATED =
      Definition.of(
              "optics/sighted-ratio-elevated",
              "Ratio sighted on a stem at an elevation",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("ratio", "b'", "1", times(num(2), cosDegrees(sym("e")), fn(TAN, halfAngle())))
          .cites(
              Citation.derived(
                  "tangent planes of an upright cylinder are upright; the scale stands square to the sight"))
          .kernel3(Silhouette::ratioElevated);

  /** Ratio sighted of a leaning stem. */
  public static final BoundFormula SIGHTED_RATIO_LEANING =
      Definition.of(
              "optics/sighted-ratio-leaning",
              "Ratio sighted on a stem leaning in the plane of sight",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("slope_distance", "S", "m", POSITIVE, "distance to the sighted point of the axis")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .input("lean", "l", "deg", ELEVATION, "lean, away from the viewer positive")
          .relation(SightRelations.below())
          .relation(SightRelations.above())
          .gives(
              "ratio",
              "b'",
              "1",
              where(
                  "p",
                  times(sym("S"), cosDegrees(plus(sym("e"), sym("l")))),
                  times(
                      num(2),
                      cosDegrees(plus(sym("e"), sym("l"))),
                      fn(TAN, fn(ASIN, over(sym("D"), times(num(2), sym("p"))))))))
          .cites(
              Citation.derived(
                  "the section square to the axis is seen from the distance p to the axis line"))
          .explainedBy(OpticsWorks.GROS80, "abstract")
          .note("scale square to the sight; the eye must lie outside the stem, D < 2p")
          .kernel4(Silhouette::ratioLeaning);

  /** Width seen of a tapering stem. */
  public static final BoundFormula TAPERING_WIDTH =
      Definition.of(
              "optics/sighted-width-tapering",
              "Width that a tapering stem seems to have at its axis",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the section")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("height_above_eye", "h", "m", Domain.any(), "height of the section above the eye")
          .input("apex_height", "A", "m", POSITIVE, "height of the cone's apex above the eye")
          .relation("height_above_eye", LESS, 1, "apex_height", "h < A")
          .gives(
              "width",
              "w",
              "m",
              where(
                  "R_e",
                  times(sym("R"), minus(num(1), over(sym("h"), sym("A")))),
                  over(
                      sym("D"),
                      sqrt(minus(num(1), squared(over(sym("D"), times(num(2), sym("R_e")))))))))
          .cites(
              Citation.derived(
                  "the tangent planes of a cone meet in the line from the eye to its apex"))
          .explainedBy(OpticsWorks.GROS80, "abstract")
          .note("upright cone; the eye must lie outside it, D < 2 R_e")
          .kernel4(Silhouette::taperingWidth);

  /** Angle sighted. */
  public static final BoundFormula SIGHTED_ANGLE =
      Definition.of(
              "optics/sighted-angle", "Full angle between the edges of a stem", Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("angle", "t", "deg", fn(IN_DEGREES, times(num(2), halfAngle())))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .explainedBy(Works.ANGDIAM, "the edges seen are tangent points nearer than the centre")
          .kernel2(Silhouette::angle);

  /** Angle between the sights to the edges. */
  public static final BoundFormula SIGHTED_ANGLE_ELEVATED =
      Definition.of(
              "optics/sighted-angle-elevated",
              "Angle between the sights to the two tangent points at a height",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("height_above_eye", "h", "m", Domain.any(), "height of the points above the eye")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives(
              "angle",
              "t",
              "deg",
              where(
                  "T",
                  sqrt(minus(squared(sym("R")), squared(over(sym("D"), num(2))))),
                  fn(
                      IN_DEGREES,
                      times(
                          num(2),
                          fn(
                              ASIN,
                              over(
                                  times(sym("T"), over(sym("D"), num(2))),
                                  times(
                                      sym("R"),
                                      sqrt(plus(squared(sym("T")), squared(sym("h")))))))))))
          .cites(
              Citation.derived(
                  "T is the horizontal distance to the tangent points, T D/(2R) half their chord"))
          .kernel3(Silhouette::angleElevated);

  /** Share of the girth that is seen. */
  public static final BoundFormula VISIBLE_SHARE =
      Definition.of(
              "optics/visible-share", "Share of the girth visible from a station", Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("share", "s", "1", over(fn(ACOS, over(sym("D"), times(num(2), sym("R")))), pi()))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .kernel2(Silhouette::visibleShare);

  /** Chord between the tangent points. */
  public static final BoundFormula TANGENT_CHORD =
      Definition.of("optics/tangent-chord", "Chord between the tangent points", Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("chord", "c", "m", times(sym("D"), fn(COS, halfAngle())))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .kernel2(Silhouette::tangentChord);

  /** Distance to the tangent points. */
  public static final BoundFormula TANGENT_DISTANCE =
      Definition.of(
              "optics/tangent-distance",
              "Distance from the eye to the tangent points",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives(
              "distance", "T", "m", sqrt(minus(squared(sym("R")), squared(over(sym("D"), num(2))))))
          .cites(Citation.derived("a tangent stands square on the radius"))
          .kernel2(Silhouette::tangentDistance);

  /** Distance to the chord. */
  public static final BoundFormula CHORD_DISTANCE =
      Definition.of(
              "optics/chord-distance",
              "Distance from the eye to the chord between the tangent points",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives(
              "distance",
              "q",
              "m",
              minus(sym("R"), over(squared(over(sym("D"), num(2))), sym("R"))))
          .cites(Citation.derived("the chord cuts the line to the axis at r²/R before the axis"))
          .kernel2(Silhouette::chordDistance);

  /** Width seen. */
  public static final BoundFormula APPARENT_WIDTH =
      Definition.of(
              "optics/apparent-width",
              "Width that a stem seems to have at its axis",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives("width", "w", "m", times(num(2), sym("R"), fn(TAN, halfAngle())))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .kernel2(Silhouette::apparentWidth);

  /** Error of the proportional rule, to the axis. */
  public static final BoundFormula ERROR_AT_AXIS =
      Definition.of(
              "optics/proportional-error-axis",
              "Relative error of ratio times distance to the axis",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives(
              "error",
              "E",
              "1",
              minus(
                  over(
                      num(1),
                      sqrt(minus(num(1), squared(over(sym("D"), times(num(2), sym("R"))))))),
                  num(1)))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .note("0.02 % at a ratio of 0.04, 0.13 % at 0.1")
          .kernel2(Silhouette::errorAtAxis);

  /** Error of the proportional rule, to the face. */
  public static final BoundFormula ERROR_AT_FACE =
      Definition.of(
              "optics/proportional-error-face",
              "Relative error of ratio times distance to the near face",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .relation("diameter", LESS, 2, "axis_distance", OUTSIDE)
          .gives(
              "error",
              "E",
              "1",
              where(
                  "s",
                  over(sym("D"), times(num(2), sym("R"))),
                  minus(
                      over(minus(num(1), sym("s")), sqrt(minus(num(1), squared(sym("s"))))),
                      num(1))))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .note("the face taken for the axis reads 2 % low for 40 cm at 10 m, 5 % for 1 m at 10 m")
          .kernel2(Silhouette::errorAtFace);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          SIGHTED_RATIO,
          SIGHTED_RATIO_ELEVATED,
          SIGHTED_RATIO_LEANING,
          TAPERING_WIDTH,
          SIGHTED_ANGLE,
          SIGHTED_ANGLE_ELEVATED,
          VISIBLE_SHARE,
          TANGENT_CHORD,
          TANGENT_DISTANCE,
          CHORD_DISTANCE,
          APPARENT_WIDTH,
          ERROR_AT_AXIS,
          ERROR_AT_FACE);

  private SilhouetteFormulas() {}

  /** Half the angle between the tangent lines has the sine of radius over distance. */
  private static Equation halfAngle() {
    return fn(ASIN, over(sym("D"), times(num(2), sym("R"))));
  }
}
