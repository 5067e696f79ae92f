package org.mensuration.optics;

/**
 * How a scale is divided: the divisions it has, and the smallest part of one that is read.
 * Immutable and thread-safe.
 *
 * @param divisions divisions side by side on the scale
 * @param part smallest part of a division that is read, such as 0.25
 */
public record Graduation(double divisions, double part) {

  /**
   * Checks the numbers.
   *
   * @param divisions divisions side by side on the scale
   * @param part smallest part of a division that is read
   * @throws IllegalArgumentException if the divisions are not above zero, or the part is not above
   *     zero and at most 1
   */
  public Graduation {
    if (!(divisions > 0 && divisions < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("graduation: " + divisions + " divisions, allowed (0, ∞)");
    }
    if (!(part > 0 && part <= 1)) {
      throw new IllegalArgumentException(
          "graduation: read to " + part + " of a division, allowed (0, 1]");
    }
  }

  /**
   * A scale read to whole divisions.
   *
   * @param divisions divisions side by side on the scale
   * @return the graduation
   */
  public static Graduation of(double divisions) {
    return new Graduation(divisions, 1);
  }

  /**
   * The scale read to halves of a division.
   *
   * @return a graduation
   */
  public Graduation readToHalves() {
    return new Graduation(divisions, 0.5);
  }

  /**
   * The scale read to quarters of a division.
   *
   * @return a graduation
   */
  public Graduation readToQuarters() {
    return new Graduation(divisions, 0.25);
  }
}
