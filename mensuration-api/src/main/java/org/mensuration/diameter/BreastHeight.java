package org.mensuration.diameter;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;
import org.mensuration.source.Citation;

/**
 * The height at which the diameter of a standing tree is measured. It differs between countries, so
 * it is always given, never assumed. Immutable and thread-safe; compared by its height.
 *
 * @param height height above the ground point
 * @param used where it is used
 * @param citation where that is stated
 */
public record BreastHeight(Quantity<Length> height, String used, Citation citation) {

  /**
   * Checks that nothing is null.
   *
   * @param height height above the ground point
   * @param used where it is used
   * @param citation where that is stated
   */
  public BreastHeight {
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(used, "used");
    Objects.requireNonNull(citation, "citation");
  }

  /**
   * Any other height.
   *
   * @param height height above the ground point
   * @return the breast height, its use stated by the caller
   */
  public static BreastHeight of(Quantity<Length> height) {
    return new BreastHeight(
        height, "as given", Citation.commonPractice("breast height as given by the caller"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BreastHeight that && Physical.same(height, that.height);
  }

  @Override
  public int hashCode() {
    return Physical.hash(height);
  }
}
