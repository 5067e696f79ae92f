package org.mensuration.diameter;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The diameter of a section, from one reading or a crossed pair. Immutable and thread-safe;
 * compared physically, whatever the units.
 *
 * @param height height above the ground point
 * @param diameter diameter, for a pair by the rule that was named
 * @param crossed whether two readings stand behind it
 */
public record SectionDiameter(Quantity<Length> height, Quantity<Length> diameter, boolean crossed) {

  /**
   * Checks that nothing is null.
   *
   * @param height height above the ground point
   * @param diameter diameter
   * @param crossed whether two readings stand behind it
   */
  public SectionDiameter {
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(diameter, "diameter");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SectionDiameter that
        && crossed == that.crossed
        && Physical.same(height, that.height)
        && Physical.same(diameter, that.diameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(crossed, Physical.hash(height), Physical.hash(diameter));
  }
}
