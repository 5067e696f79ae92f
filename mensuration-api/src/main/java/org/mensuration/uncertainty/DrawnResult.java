package org.mensuration.uncertainty;

import java.util.Objects;

/**
 * A result whose distribution was drawn. Numbers in the unit of the result. Immutable and
 * thread-safe.
 *
 * <p>All of it is itself uncertain, since it was drawn: the mean by the standard uncertainty over
 * the root of the number of draws, which is a thousandth of it for a million. Ends of intervals are
 * known less well, those of the shortest least of all; draw with another seed to see.
 *
 * @param mean mean of the values drawn
 * @param standardUncertainty their standard deviation
 * @param symmetric the interval with as many values below as above it
 * @param shortest the shortest interval that holds as many values
 * @param draws how many values were drawn
 * @param seed what the drawing started from
 */
public record DrawnResult(
    double mean,
    double standardUncertainty,
    CoverageInterval symmetric,
    CoverageInterval shortest,
    int draws,
    long seed) {

  /**
   * Checks the numbers.
   *
   * @param mean mean of the values drawn
   * @param standardUncertainty their standard deviation
   * @param symmetric the interval with as many values below as above it
   * @param shortest the shortest interval that holds as many values
   * @param draws how many values were drawn
   * @param seed what the drawing started from
   * @throws IllegalArgumentException if a number is not finite, the uncertainty negative, or there
   *     are fewer than two draws
   */
  public DrawnResult {
    Objects.requireNonNull(symmetric, "symmetric");
    Objects.requireNonNull(shortest, "shortest");
    if (!(Math.abs(mean) < Double.POSITIVE_INFINITY
        && standardUncertainty >= 0
        && standardUncertainty < Double.POSITIVE_INFINITY
        && draws >= 2)) {
      throw new IllegalArgumentException(
          "drawn result: mean "
              + mean
              + " with the standard uncertainty "
              + standardUncertainty
              + " of "
              + draws
              + " draws, wanted finite numbers of at least 2 draws");
    }
  }
}
