package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.DEGREES;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.OpticalRatio;
import org.mensuration.kernel.TwoStations;
import org.mensuration.source.Citation;

/**
 * Position and error from two sights: of two stations in line with the tree, and of the two ends of
 * a base held at the eye. Immutable and thread-safe.
 */
public final class TwoStationFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain UPWARD = Domain.open(0, 90);

  /** Distance from the near station. */
  public static final BoundFormula DISTANCE =
      twoAngles(
              "height/two-stations-distance",
              "Horizontal distance from the near one of two stations",
              Nature.GEOMETRIC)
          .gives("distance", "R", "m", over(times(sym("B"), tanDegrees(sym("f"))), tangents()))
          .cites(Citation.derived("height/two-stations over the tangent of the near angle"))
          .explainedBy(Works.TWOPOS1, "worked answer")
          .note("eye at one level at both stations; ill-conditioned when the angles are close")
          .kernel3(TwoStations::distance);

  /** Error of the height. */
  public static final BoundFormula HEIGHT_ERROR =
      twoAngles(
              "height/two-stations-error",
              "Standard error of a height from two stations",
              Nature.STATISTICAL)
          .input("baseline_error", "s_B", "m", NOT_NEGATIVE, "standard error of the baseline")
          .input("angle_error", "s_e", "deg", NOT_NEGATIVE, "standard error of each angle")
          .gives(
              "error",
              "s",
              "m",
              where(
                  "T",
                  tangents(),
                  sqrt(
                      plus(
                          squared(
                              times(
                                  over(times(tanDegrees(sym("f")), tanDegrees(sym("n"))), sym("T")),
                                  sym("s_B"))),
                          squared(times(angleSlope("n", "f"), fn(DEGREES, sym("s_e")))),
                          squared(times(angleSlope("f", "n"), fn(DEGREES, sym("s_e"))))))))
          .cites(
              Citation.derived(
                  "first-order propagation through height/two-stations, angles independent"))
          .note("relative error near s_e over the difference of the angles")
          .kernelOfArrays(
              x -> TwoStations.heightError(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Distance from a base at the eye. */
  public static final BoundFormula OWN_BASE =
      Definition.of(
              "optics/distance-from-own-base",
              "Distance from a rangefinder with a base of its own",
              Nature.GEOMETRIC)
          .input("base", "b", "m", POSITIVE, "length of the base, square to one sight")
          .input("parallax", "p", "deg", UPWARD, "angle by which the other sight leans in")
          .gives("distance", "R", "m", over(sym("b"), tanDegrees(sym("p"))))
          .cites(Citation.derived("right triangle over the base"))
          .note("along the line of sight")
          .kernel2(OpticalRatio::distanceFromOwnBase);

  /** Error of a distance from a base at the eye. */
  public static final BoundFormula OWN_BASE_ERROR =
      Definition.of(
              "optics/own-base-error",
              "Standard error of the distance from a base at the eye",
              Nature.STATISTICAL)
          .input("base", "b", "m", POSITIVE, "length of the base, square to one sight")
          .input("distance", "R", "m", POSITIVE, "distance along the line of sight")
          .input("angle_error", "s_p", "deg", NOT_NEGATIVE, "standard error of the parallax")
          .gives(
              "error",
              "s",
              "m",
              over(
                  times(plus(squared(sym("b")), squared(sym("R"))), fn(DEGREES, sym("s_p"))),
                  sym("b")))
          .cites(Citation.derived("first-order propagation through optics/distance-from-own-base"))
          .note("grows with the square of the distance")
          .note("a diameter read over that distance has the same relative error from it")
          .kernel3(OpticalRatio::ownBaseError);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(DISTANCE, HEIGHT_ERROR, OWN_BASE, OWN_BASE_ERROR);

  private TwoStationFormulas() {}

  private static Definition twoAngles(String id, String title, Nature nature) {
    return Definition.of(id, title, nature)
        .input("baseline", "B", "m", POSITIVE, "horizontal distance between the stations")
        .input("far_angle", "f", "deg", UPWARD, "angle to the tip from the far station")
        .input("near_angle", "n", "deg", UPWARD, "angle to the tip from the near station")
        .relation("far_angle", LESS, 1, "near_angle", "f < n");
  }

  private static Equation tangents() {
    return minus(tanDegrees(sym("n")), tanDegrees(sym("f")));
  }

  /** Derivative of the height by the second angle, without its sign. */
  private static Equation angleSlope(String other, String angle) {
    return over(
        times(
            sym("B"),
            squared(tanDegrees(sym(other))),
            over(num(1), squared(cosDegrees(sym(angle))))),
        squared(sym("T")));
  }
}
