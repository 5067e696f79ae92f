package org.mensuration.scaling;

import java.util.Objects;

/**
 * A defect and the segment that it lies in. Immutable and thread-safe.
 *
 * @param segment number of the segment, counted from 1 at the small end
 * @param defect the defect
 */
public record LocatedDefect(int segment, Defect defect) {
  /**
   * Checks the number.
   *
   * @param segment number of the segment, counted from 1 at the small end
   * @param defect the defect
   * @throws IllegalArgumentException if the number is below 1
   */
  public LocatedDefect {
    Objects.requireNonNull(defect, "defect");
    if (segment < 1) {
      throw new IllegalArgumentException("segment " + segment + ", allowed from 1");
    }
  }

  /**
   * A defect in the first segment, which is the whole log if it is not split.
   *
   * @param defect the defect
   * @return the defect in its place
   */
  public static LocatedDefect of(Defect defect) {
    return new LocatedDefect(1, defect);
  }
}
