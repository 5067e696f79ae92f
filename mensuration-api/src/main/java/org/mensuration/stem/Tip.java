package org.mensuration.stem;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The choice made for the head of a stem, above its highest reading. Immutable and thread-safe.
 *
 * @param form what the stem is taken to be there
 * @param height height of the tip of the intact stem; empty if the stem ends at its highest reading
 * @param broken height at which the stem is broken off, if it is
 */
public record Tip(
    TipForm form, Optional<Quantity<Length>> height, Optional<Quantity<Length>> broken) {

  /**
   * Checks that the parts fit.
   *
   * @param form what the stem is taken to be there
   * @param height height of the tip of the intact stem
   * @param broken height at which the stem is broken off
   */
  public Tip {
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(broken, "broken");
    if (height.isPresent() == (form == TipForm.NOT_MEASURED)) {
      throw new IllegalArgumentException(
          form == TipForm.NOT_MEASURED
              ? "tip not measured: the stem ends at its highest reading, so no height can be given"
              : "tip as " + form + ": give the height of the tip");
    }
  }

  /**
   * A cone on the highest reading.
   *
   * @param height height of the tip
   * @return the choice
   */
  public static Tip cone(Quantity<Length> height) {
    return new Tip(TipForm.CONE, Optional.of(height), Optional.empty());
  }

  /**
   * A paraboloid on the highest reading.
   *
   * @param height height of the tip
   * @return the choice
   */
  public static Tip paraboloid(Quantity<Length> height) {
    return new Tip(TipForm.PARABOLOID, Optional.of(height), Optional.empty());
  }

  /**
   * A neiloid on the highest reading.
   *
   * @param height height of the tip
   * @return the choice
   */
  public static Tip neiloid(Quantity<Length> height) {
    return new Tip(TipForm.NEILOID, Optional.of(height), Optional.empty());
  }

  /**
   * The curve through the readings, carried on to zero at the tip.
   *
   * @param height height of the tip
   * @return the choice
   */
  public static Tip curve(Quantity<Length> height) {
    return new Tip(TipForm.CURVE, Optional.of(height), Optional.empty());
  }

  /**
   * A stem that ends at its highest reading, such as one measured up to a break.
   *
   * @return the choice
   */
  public static Tip atHighestReading() {
    return new Tip(TipForm.NOT_MEASURED, Optional.empty(), Optional.empty());
  }

  /**
   * The same stem broken off below its tip: the profile reaches the intact height, the volume the
   * break.
   *
   * @param broken height of the break
   * @return a new choice
   */
  public Tip brokenAt(Quantity<Length> broken) {
    return new Tip(form, height, Optional.of(broken));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tip tip
        && form == tip.form
        && Physical.same(height, tip.height)
        && Physical.same(broken, tip.broken);
  }

  @Override
  public int hashCode() {
    return Objects.hash(form, Physical.hash(height), Physical.hash(broken));
  }
}
