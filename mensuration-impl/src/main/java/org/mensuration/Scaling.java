package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.scaling.ConventionScaler;
import org.mensuration.internal.scaling.PublishedConventions;
import org.mensuration.internal.scaling.TwoReadings;
import org.mensuration.log.ScaleRule;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.SizeClass;

/**
 * Scaling of logs as it is done in practice. Stateless and thread-safe.
 *
 * <p>The conventions are those that sources document; each carries its citations and, in its notes,
 * what the sources leave open. Change a part with its {@code with} methods, or make your own with
 * {@link ScalingConvention#of}. Figures for trade or tax follow local scaling law and a licensed
 * scaler.
 */
public final class Scaling {
  private Scaling() {}

  /**
   * A scaler.
   *
   * @param convention the customs
   * @param rule the rule, this library's or a caller's own
   * @return the scaler
   */
  public static LogScaler scaler(ScalingConvention convention, ScaleRule rule) {
    return new ConventionScaler(convention, rule);
  }

  /**
   * Idaho: nearest inch, a half up, at least 5.51 in, full 2-ft lengths.
   *
   * @return the convention
   */
  public static ScalingConvention idaho() {
    return PublishedConventions.IDAHO;
  }

  /**
   * Georgia: nearest inch, halves by turns, even feet, logs from 18 ft split.
   *
   * @return the convention
   */
  public static ScalingConvention georgia() {
    return PublishedConventions.GEORGIA;
  }

  /**
   * Vermont: nearest inch, an exact half refused, 12-ft sections from the small end.
   *
   * @return the convention
   */
  public static ScalingConvention vermont() {
    return PublishedConventions.VERMONT;
  }

  /**
   * National forests of the United States about 1918: nearest inch, logs over 16 ft split.
   *
   * @return the convention
   */
  public static ScalingConvention nationalForests1918() {
    return PublishedConventions.NATIONAL_FORESTS_1918;
  }

  /**
   * National forests of the United States, east side: longest scaling length 20 ft.
   *
   * @return the convention; parts of it are from memory, see its notes
   */
  public static ScalingConvention eastSide() {
    return PublishedConventions.EAST_SIDE;
  }

  /**
   * National forests of the United States, west side: longest scaling length 40 ft.
   *
   * @return the convention; parts of it are from memory, see its notes
   */
  public static ScalingConvention westSide() {
    return PublishedConventions.WEST_SIDE;
  }

  /**
   * Landowners: nearest inch, halves by turns, the first down, 4 in of trim, full feet.
   *
   * @return the convention
   */
  public static ScalingConvention landowner() {
    return PublishedConventions.LANDOWNER;
  }

  /**
   * All conventions above.
   *
   * @return the conventions
   */
  public static List<ScalingConvention> published() {
    return PublishedConventions.ALL;
  }

  /**
   * The class of two readings at right angles: each to the nearest class, of two halves one up and
   * one down, their mean with the fraction dropped (USDA Forest Service, Region 6, 1998, supplement
   * 98-2, 21-4).
   *
   * @param first one reading
   * @param second the other reading
   * @param width width of a class, such as 1 in
   * @return the class in the unit of the width
   * @throws IllegalArgumentException if a reading is negative or not finite, or the width not above
   *     zero
   */
  public static Quantity<Length> ofTwoReadings(
      Quantity<Length> first, Quantity<Length> second, Quantity<Length> width) {
    return TwoReadings.classOf(first, second, SizeClass.nearest(width));
  }
}
