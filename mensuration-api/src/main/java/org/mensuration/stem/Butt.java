package org.mensuration.stem;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The choice made for the foot of a stem, below its lowest reading. Immutable and thread-safe.
 *
 * @param form what the stem is taken to be there
 * @param base height at which the stem begins; empty for the ground, or for the lowest reading if
 *     nothing was measured below it
 */
public record Butt(ButtForm form, Optional<Quantity<Length>> base) {

  /**
   * Checks that the parts fit.
   *
   * @param form what the stem is taken to be there
   * @param base height at which the stem begins
   */
  public Butt {
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(base, "base");
    if (form == ButtForm.NOT_MEASURED && base.isPresent()) {
      throw new IllegalArgumentException(
          "butt not measured: the stem begins at its lowest reading, so no base can be given");
    }
  }

  /**
   * A cylinder from the ground, as wide as the lowest reading: no credit for butt swell.
   *
   * @return the choice
   */
  public static Butt cylinder() {
    return new Butt(ButtForm.CYLINDER, Optional.empty());
  }

  /**
   * The line of the two lowest areas, carried on to the ground. With butt swell it follows the
   * lowest readings; take them above the swell, or take a cylinder.
   *
   * @return the choice
   */
  public static Butt extended() {
    return new Butt(ButtForm.EXTENDED, Optional.empty());
  }

  /**
   * A stem that begins at its lowest reading.
   *
   * @return the choice
   */
  public static Butt atLowestReading() {
    return new Butt(ButtForm.NOT_MEASURED, Optional.empty());
  }

  /**
   * The same form from another height than the ground, such as a stump.
   *
   * @param base height at which the stem begins
   * @return a new choice
   * @throws IllegalArgumentException if the stem begins at its lowest reading
   */
  public Butt from(Quantity<Length> base) {
    return new Butt(form, Optional.of(base));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Butt butt && form == butt.form && Physical.same(base, butt.base);
  }

  @Override
  public int hashCode() {
    return Objects.hash(form, Physical.hash(base));
  }
}
