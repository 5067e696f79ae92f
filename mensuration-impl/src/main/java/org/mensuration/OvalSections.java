package org.mensuration;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.OvalSectionFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Oval sections as ellipses: what tape and caliper read there, and by how much the area of the
 * circle of such a reading is off. Stateless and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when an axis is not
 * positive, the short axis is the longer one, or a value is outside the interval that the method
 * names.
 *
 * <p>Equation, limits and sources of an id such as {@code diameter/ellipse-area}: {@link
 * Catalogues#standard}.
 */
public final class OvalSections {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private OvalSections() {}

  /**
   * Area ({@code diameter/ellipse-area}).
   *
   * @param longAxis long axis
   * @param shortAxis short axis
   * @return area
   */
  public static Quantity<Area> area(Quantity<Length> longAxis, Quantity<Length> shortAxis) {
    return Measures.squareMetres(
        OvalSectionFormulas.AREA.value(CENTIMETRES.read(longAxis), CENTIMETRES.read(shortAxis)));
  }

  /**
   * Girth; over π it is the mean of the caliper readings in all directions ({@code
   * diameter/ellipse-girth}).
   *
   * @param longAxis long axis
   * @param shortAxis short axis
   * @return girth
   */
  public static Quantity<Length> girth(Quantity<Length> longAxis, Quantity<Length> shortAxis) {
    return Measures.centimetres(
        OvalSectionFormulas.GIRTH.value(CENTIMETRES.read(longAxis), CENTIMETRES.read(shortAxis)));
  }

  /**
   * Caliper reading in a direction; a single optical view is one too ({@code diameter/ellipse-
   * caliper}).
   *
   * @param longAxis long axis
   * @param shortAxis short axis
   * @param direction angle between the reading and the long axis, 0 to 90 degrees
   * @return diameter read
   */
  public static Quantity<Length> caliper(
      Quantity<Length> longAxis, Quantity<Length> shortAxis, Quantity<Angle> direction) {
    return Measures.centimetres(
        OvalSectionFormulas.CALIPER.value(
            CENTIMETRES.read(longAxis), CENTIMETRES.read(shortAxis), DEGREES.read(direction)));
  }

  /**
   * Relative error of the area from the girth ({@code diameter/ellipse-girth-excess}).
   *
   * @param axisRatio short over long axis, 0.1 to 1
   * @return share of the area, not below zero
   */
  public static double errorOfGirth(double axisRatio) {
    return OvalSectionFormulas.GIRTH_EXCESS.value(axisRatio);
  }

  /**
   * Relative error of the area from the arithmetic mean of the axes; the geometric mean has none
   * ({@code diameter/ellipse-mean-excess}).
   *
   * @param axisRatio short over long axis, 0.1 to 1
   * @return share of the area, not below zero
   */
  public static double errorOfArithmeticMean(double axisRatio) {
    return OvalSectionFormulas.MEAN_EXCESS.value(axisRatio);
  }

  /**
   * Relative error of the area from the quadratic mean of the axes ({@code diameter/ellipse-
   * quadratic-excess}).
   *
   * @param axisRatio short over long axis, 0.1 to 1
   * @return share of the area, not below zero
   */
  public static double errorOfQuadraticMean(double axisRatio) {
    return OvalSectionFormulas.QUADRATIC_EXCESS.value(axisRatio);
  }

  /**
   * Relative error of the area from one diameter ({@code diameter/ellipse-caliper-excess}).
   *
   * @param axisRatio short over long axis, 0.1 to 1
   * @param direction angle between the reading and the long axis, 0 to 90 degrees
   * @return share of the area
   */
  public static double errorOfOneDiameter(double axisRatio, Quantity<Angle> direction) {
    return OvalSectionFormulas.CALIPER_EXCESS.value(axisRatio, DEGREES.read(direction));
  }

  /**
   * Relative standard deviation of one view from a chance direction ({@code diameter/ellipse-view-
   * deviation}).
   *
   * @param axisRatio short over long axis, 0.1 to 1
   * @return share of the diameter
   */
  public static double deviationOfOneView(double axisRatio) {
    return OvalSectionFormulas.ONE_VIEW.value(axisRatio);
  }
}
