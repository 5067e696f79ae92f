package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.SIN;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.OpticalDiameter;
import org.mensuration.source.Citation;

/** Diameters through an optical scale. Immutable and thread-safe. */
public final class OpticsFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ELEVATION = Domain.open(-90, 90);

  /** Width of a division. */
  public static final BoundFormula DIVISION_WIDTH =
      Definition.of(
              "optics/division-width",
              "Width covered by one division at the working distance",
              Nature.GEOMETRIC)
          .input("diameter", "D", "cm", POSITIVE, "diameter measured by hand on the same stem")
          .input("divisions", "n", "1", POSITIVE, "divisions that it fills")
          .gives("width", "w", "cm", over(sym("D"), sym("n")))
          .cites(
              Citation.commonPractice(
                  "a division is calibrated on a measured diameter of the same stem"))
          .note("holds at the station and elevation of the calibration")
          .kernel2(OpticalDiameter::divisionWidth);

  /** Proportional diameter. */
  public static final BoundFormula DIAMETER_FROM_DIVISIONS =
      Definition.of(
              "optics/diameter-from-divisions",
              "Diameter from a division count, proportional",
              Nature.GEOMETRIC)
          .input("width", "w", "cm", POSITIVE, "width of a division at the station")
          .input("divisions", "n", "1", NOT_NEGATIVE, "divisions that the stem fills")
          .gives("diameter", "D", "cm", times(sym("w"), sym("n")))
          .cites(
              Citation.commonPractice("divisions are read in proportion to the calibrated width"))
          .note(
              "for a scale that compensates for slope, or a sight at the elevation of the"
                  + " calibration")
          .kernel2(OpticalDiameter::fromDivisions);

  /** Proportional diameter at an elevation. */
  public static final BoundFormula DIAMETER_FROM_DIVISIONS_ELEVATED =
      Definition.of(
              "optics/diameter-from-divisions-elevated",
              "Diameter from a division count on an uncompensated scale",
              Nature.GEOMETRIC)
          .input("width", "w", "cm", POSITIVE, "width of a division at the calibration")
          .input("divisions", "n", "1", NOT_NEGATIVE, "divisions that the stem fills")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the reading")
          .input("calibration_elevation", "e0", "deg", ELEVATION, "elevation of the calibration")
          .gives(
              "diameter",
              "D",
              "cm",
              over(times(sym("w"), sym("n"), cosDegrees(sym("e0"))), cosDegrees(sym("e"))))
          .cites(
              Citation.derived(
                  "the line of sight is longer than the horizontal distance by 1/cos e"))
          .note("leaving the elevation out at 30 degrees reads 13.4 % low")
          .kernel4(OpticalDiameter::fromDivisionsElevated);

  /** Exact diameter, level. */
  public static final BoundFormula DIAMETER_AXIS_DISTANCE =
      Definition.of(
              "optics/diameter-axis-distance",
              "Diameter from a sighted ratio and the distance to the axis",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, "width over distance seen on a flat scale")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .gives(
              "diameter",
              "D",
              "m",
              times(num(2), sym("R"), fn(SIN, fn(ATAN, over(sym("b"), num(2))))))
          .cites(Citation.derived("half the angle between the tangents has the sine D/(2R)"))
          .explainedBy(Works.ANGDIAM, "the edges seen are tangent points nearer than the centre")
          .note("circular section, level sight, distance to the axis and not to the bark")
          .kernel2(OpticalDiameter::axisDistance);

  /** Exact diameter at an elevation. */
  public static final BoundFormula DIAMETER_ELEVATED =
      Definition.of(
              "optics/diameter-elevated",
              "Diameter from an uncompensated scale at an elevation",
              Nature.GEOMETRIC)
          .input("ratio", "b", "1", NOT_NEGATIVE, "width over distance seen on a flat scale")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .gives(
              "diameter",
              "D",
              "m",
              times(
                  num(2),
                  sym("R"),
                  fn(SIN, fn(ATAN, over(sym("b"), times(num(2), cosDegrees(sym("e"))))))))
          .cites(
              Citation.derived(
                  "tangent planes of an upright cylinder are upright, so the azimuth between"
                      + " them does not change with the elevation"))
          .note("scale square to the sight; circular section of an upright stem")
          .kernel3(OpticalDiameter::elevated);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          DIVISION_WIDTH,
          DIAMETER_FROM_DIVISIONS,
          DIAMETER_FROM_DIVISIONS_ELEVATED,
          DIAMETER_AXIS_DISTANCE,
          DIAMETER_ELEVATED);

  private OpticsFormulas() {}
}
