package org.mensuration.internal.stem;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Lengths between equal steps of diameter, accumulated from the tip. Stateless and thread-safe. */
public final class HeightAccumulation {
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);

  private HeightAccumulation() {}

  /**
   * The sums that the formulas take, in feet.
   *
   * @param lengths lengths between successive diameters, the one at the tip first
   * @return sum of L, of (j - 1) L and of j (j - 1) L / 2, j counted from one at the tip
   * @throws IllegalArgumentException if there are none, or one is negative or no number
   */
  public static double[] sums(List<Quantity<Length>> lengths) {
    if (lengths.isEmpty()) {
      throw new IllegalArgumentException("height accumulation: no lengths, allowed at least one");
    }
    double[] sums = new double[3];
    for (int j = 1; j <= lengths.size(); j++) {
      double length = FEET.read(lengths.get(j - 1));
      if (!(length >= 0 && length < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "height accumulation: length "
                + j
                + " from the tip is "
                + length
                + " ft, allowed [0, ∞) ft");
      }
      sums[0] += length;
      sums[1] += (j - 1) * length;
      sums[2] += j * (j - 1) / 2.0 * length;
    }
    return sums;
  }
}
