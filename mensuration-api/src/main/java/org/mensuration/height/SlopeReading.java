package org.mensuration.height;

/**
 * A reading on a per-cent scale. A type of its own, because per cent, radians and counts are all
 * plain numbers to a units library. Immutable and thread-safe.
 *
 * @param percent rise in per cent of the horizontal distance, down negative
 */
public record SlopeReading(double percent) {

  /**
   * Checks the reading.
   *
   * @param percent rise in per cent of the horizontal distance, down negative
   * @throws IllegalArgumentException if it is NaN or infinite
   */
  public SlopeReading {
    if (!(Math.abs(percent) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("slope reading: " + percent + " % is no reading");
    }
  }

  /**
   * A reading in per cent.
   *
   * @param percent rise in per cent of the horizontal distance
   * @return the reading
   */
  public static SlopeReading ofPercent(double percent) {
    return new SlopeReading(percent);
  }
}
