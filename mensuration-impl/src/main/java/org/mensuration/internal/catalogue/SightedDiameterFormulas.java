package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.SIN;
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
import org.mensuration.kernel.OpticalDiameter;
import org.mensuration.source.Citation;

/** Exact diameters from what is seen. Immutable and thread-safe. */
public final class SightedDiameterFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ANGLE = Domain.open(-90, 90);
  private static final String SEEN = "width over distance seen on a flat scale";
  private static final String FACE = "horizontal distance to the near face";

  /** Exact diameter from the face. */
  public static final BoundFormula FACE_DISTANCE =
      Definition.of(
              "optics/diameter-face-distance",
              "Diameter from a sighted ratio and the distance to the near face",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, SEEN)
          .input("face_distance", "R_f", "m", POSITIVE, FACE)
          .gives(
              "diameter",
              "D",
              "m",
              where("s", fn(SIN, fn(ATAN, over(sym("b"), num(2)))), fromFace()))
          .cites(
              Citation.derived("the axis lies half a diameter behind the face, so r = s (R_f + r)"))
          .note("circular section, level sight or compensated scale")
          .kernel2(OpticalDiameter::faceDistance);

  /** Exact diameter from the face at an elevation. */
  public static final BoundFormula FACE_ELEVATED =
      Definition.of(
              "optics/diameter-face-elevated",
              "Diameter from an uncompensated scale at an elevation and the distance to the near face",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, SEEN)
          .input("face_distance", "R_f", "m", POSITIVE, FACE)
          .input("elevation", "e", "deg", ANGLE, "elevation of the sight")
          .gives(
              "diameter",
              "D",
              "m",
              where(
                  "s",
                  fn(SIN, fn(ATAN, over(sym("b"), times(num(2), cosDegrees(sym("e")))))),
                  fromFace()))
          .cites(
              Citation.derived(
                  "the level ratio is b/cos e; the axis lies half a diameter behind the face"))
          .note("upright stem; the distance is to the face at the sighted height")
          .kernel3(OpticalDiameter::faceElevated);

  /** Proportional diameter from the line of sight. */
  public static final BoundFormula SLOPE_DISTANCE =
      Definition.of(
              "optics/diameter-slope-distance",
              "Diameter from the line-of-sight distance",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, SEEN)
          .input("slope_distance", "S", "m", POSITIVE, "distance along the sight to the axis")
          .gives("diameter", "D", "m", times(sym("b"), sym("S")))
          .cites(Citation.derived("second order in b of the exact rule"))
          .note("scale square to the sight and not compensated")
          .note("lean in the plane of sight does no harm; high by about b²/8 of the diameter")
          .kernel2(OpticalDiameter::slopeDistance);

  /** Exact diameter of a leaning stem. */
  public static final BoundFormula LEANING =
      Definition.of(
              "optics/diameter-leaning",
              "Diameter of a stem leaning in the plane of sight",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, SEEN)
          .input("slope_distance", "S", "m", POSITIVE, "distance to the sighted point of the axis")
          .input("elevation", "e", "deg", ANGLE, "elevation of the sight")
          .input("lean", "l", "deg", ANGLE, "lean, away from the viewer positive")
          .relation(SightRelations.below())
          .relation(SightRelations.above())
          .gives(
              "diameter",
              "D",
              "m",
              where(
                  "p",
                  times(sym("S"), cosDegrees(plus(sym("e"), sym("l")))),
                  times(
                      num(2),
                      sym("p"),
                      fn(
                          SIN,
                          fn(
                              ATAN,
                              over(
                                  sym("b"),
                                  times(num(2), cosDegrees(plus(sym("e"), sym("l"))))))))))
          .cites(
              Citation.derived(
                  "the section square to the axis is seen from the distance p to the axis line"))
          .explainedBy(OpticsWorks.GROS80, "abstract")
          .note("scale square to the sight and not compensated")
          .kernel4(OpticalDiameter::leaning);

  /** Lean across the sight. */
  public static final BoundFormula LEAN_ACROSS =
      Definition.of(
              "optics/diameter-lean-across",
              "Diameter of a stem leaning across the sight, read level",
              Nature.GEOMETRIC)
          .input("level_diameter", "D_l", "m", NOT_NEGATIVE, "diameter read on a scale held level")
          .input("lean", "l", "deg", ANGLE, "lean across the sight")
          .gives("diameter", "D", "m", times(sym("D_l"), cosDegrees(sym("l"))))
          .cites(Citation.derived("a level line cuts a stem leaning by l over D/cos l"))
          .note("a scale turned square to the stem's image needs no correction")
          .kernel2(OpticalDiameter::leanAcross);

  /** Diameter from an angle. */
  public static final BoundFormula ANGLE_AXIS =
      Definition.of(
              "optics/diameter-angle",
              "Diameter from the full angle between the edges",
              Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.fromBelow(0, 180), "full angle between the edges")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .gives("diameter", "D", "m", times(num(2), sym("R"), sinDegrees(over(sym("t"), num(2)))))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .explainedBy(Works.ANGDIAM, "the edges seen are tangent points nearer than the centre")
          .note("level sight, or the azimuth between the edges of an upright stem")
          .kernel2(OpticalDiameter::angle);

  /** Diameter from an angle and the face. */
  public static final BoundFormula ANGLE_FACE =
      Definition.of(
              "optics/diameter-angle-face",
              "Diameter from the full angle between the edges and the distance to the near face",
              Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.fromBelow(0, 180), "full angle between the edges")
          .input("face_distance", "R_f", "m", POSITIVE, FACE)
          .gives("diameter", "D", "m", where("s", sinDegrees(over(sym("t"), num(2))), fromFace()))
          .cites(
              Citation.derived("the axis lies half a diameter behind the face, so r = s (R_f + r)"))
          .kernel2(OpticalDiameter::angleFace);

  /** Diameter of a tapering stem. */
  public static final BoundFormula TAPERING =
      Definition.of(
              "optics/diameter-tapering",
              "Diameter of an upright stem that tapers like a cone",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, SEEN)
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("height_above_eye", "h", "m", Domain.any(), "height of the section above the eye")
          .input("apex_height", "A", "m", POSITIVE, "height of the cone's apex above the eye")
          .relation("height_above_eye", LESS, 1, "apex_height", "h < A")
          .gives(
              "diameter",
              "D",
              "m",
              where(
                  "y",
                  over(times(sym("b"), sqrt(plus(squared(sym("R")), squared(sym("h"))))), num(2)),
                  where(
                      "R_e",
                      times(sym("R"), minus(num(1), over(sym("h"), sym("A")))),
                      over(
                          times(num(2), sym("y")),
                          sqrt(plus(num(1), squared(over(sym("y"), sym("R_e")))))))))
          .cites(
              Citation.derived(
                  "the tangent planes of a cone meet in the line from the eye to its apex"))
          .explainedBy(OpticsWorks.GROS80, "abstract")
          .note("scale square to the sight and not compensated")
          .note("without taper it reads about 0.1 % high; worth doing below R_e = 5 D")
          .kernel4(OpticalDiameter::tapering);

  /** Axis behind the face. */
  public static final BoundFormula AXIS_FROM_FACE =
      Definition.of(
              "optics/axis-from-face",
              "Distance to the axis from the distance to the near face",
              Nature.GEOMETRIC)
          .input("face_distance", "R_f", "m", POSITIVE, FACE)
          .input("diameter", "D", "m", NOT_NEGATIVE, "diameter where the distance was measured")
          .gives("axis_distance", "R", "m", plus(sym("R_f"), over(sym("D"), num(2))))
          .cites(
              Citation.commonPractice(
                  "half the diameter is added once, and the distance kept for all heights of an upright stem"))
          .kernel2(OpticalDiameter::axisFromFace);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FACE_DISTANCE,
          FACE_ELEVATED,
          SLOPE_DISTANCE,
          LEANING,
          LEAN_ACROSS,
          ANGLE_AXIS,
          ANGLE_FACE,
          TAPERING,
          AXIS_FROM_FACE);

  private SightedDiameterFormulas() {}

  private static Equation fromFace() {
    return over(times(num(2), sym("R_f"), sym("s")), minus(num(1), sym("s")));
  }
}
