package org.mensuration.gauge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.Physical;

/**
 * Plots of fixed size around each sample point, one circle or several nested ones, each for trees
 * from a smallest diameter on. A tree belongs to the largest circle whose smallest diameter it
 * reaches; a tree thinner than all of them is not counted. Implementations are immutable and
 * thread-safe.
 */
public interface FixedPlots extends TreeSelection {

  /**
   * The circles, from the smallest diameter up.
   *
   * @return at least one
   */
  List<Circle> circles();

  /**
   * The circle of a tree.
   *
   * @param diameter diameter, above zero
   * @return the circle
   * @throws OutOfDomainException if the diameter is not above zero, or below every circle's
   *     smallest
   */
  Circle circleFor(Quantity<Length> diameter);

  /**
   * A circle and the trees it takes. Immutable and thread-safe; compares by physical value.
   *
   * @param area horizontal area
   * @param smallestDiameter trees count from this diameter on
   */
  record Circle(Quantity<Area> area, Quantity<Length> smallestDiameter) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Circle circle
          && Physical.same(area, circle.area)
          && Physical.same(smallestDiameter, circle.smallestDiameter);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(area), Physical.hash(smallestDiameter));
    }
  }
}
