package org.mensuration.gauge;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.StemsPerArea;

/**
 * A gauge that counts the trees which fill its angle. Implementations are immutable and
 * thread-safe.
 *
 * <p>Diameters are taken at breast height, distances from the sample point to the centre of the
 * stem at breast height. A tree at the limit or within is in; a distance that differs from the
 * limit by less than a thousand millionth of it is at the limit, so that feet and metres decide
 * alike.
 */
public interface AngleGauge {

  /**
   * Basal area per area that one counted tree stands for.
   *
   * @return the factor
   */
  Quantity<BasalAreaPerArea> factor();

  /**
   * The full angle.
   *
   * @return the angle
   */
  Quantity<Angle> angle();

  /**
   * Horizontal distance to the centre of a stem up to which it is counted.
   *
   * @param diameter diameter, above zero
   * @return the limiting distance
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<Length> limitingDistanceToCentre(Quantity<Length> diameter);

  /**
   * Distance along a slope to the centre of a stem up to which it is counted.
   *
   * @param diameter diameter, above zero
   * @param slope slope of the line from point to stem, between −90° and 90°
   * @return the limiting distance along the slope
   * @throws OutOfDomainException if the diameter or the slope is outside
   */
  Quantity<Length> limitingDistanceAlongSlope(Quantity<Length> diameter, Quantity<Angle> slope);

  /**
   * Whether a tree is counted.
   *
   * @param diameter diameter, above zero
   * @param distanceToCentre horizontal distance to the centre of the stem, not negative
   * @return true if the tree is at the limit or within
   * @throws OutOfDomainException if a value is outside
   */
  boolean counts(Quantity<Length> diameter, Quantity<Length> distanceToCentre);

  /**
   * Whether a tree is counted whose distance was measured along a slope.
   *
   * @param diameter diameter, above zero
   * @param slopeDistanceToCentre distance along the slope to the centre of the stem, not negative
   * @param slope slope of the line from point to stem, between −90° and 90°
   * @return true if the tree is at the limit or within
   * @throws OutOfDomainException if a value is outside
   */
  boolean counts(
      Quantity<Length> diameter, Quantity<Length> slopeDistanceToCentre, Quantity<Angle> slope);

  /**
   * Trees per area that one counted tree stands for.
   *
   * @param diameter diameter, above zero
   * @return the tree factor
   * @throws OutOfDomainException if the diameter is not above zero or not finite
   */
  Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter);
}
