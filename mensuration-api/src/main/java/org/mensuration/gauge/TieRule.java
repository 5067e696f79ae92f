package org.mensuration.gauge;

/**
 * What a tree exactly at its limit counts. The usual rule is {@link #IN}: at the limit or within is
 * in. Immutable and thread-safe.
 */
public enum TieRule {
  /** At the limit is in. */
  IN,
  /** At the limit is out. */
  OUT,
  /** At the limit counts one half. */
  HALF,
  /** Of the trees at the limit every second one is in, the first of them first. */
  EVERY_SECOND;

  /**
   * The count weight of a tree.
   *
   * @param position where it stands
   * @param earlierTies trees found at their limit before it, of use for {@link #EVERY_SECOND} only
   * @return 1, 1/2 or 0
   * @throws IllegalArgumentException if {@code earlierTies} is negative
   */
  public double weight(LimitPosition position, int earlierTies) {
    if (!(earlierTies >= 0)) {
      throw new IllegalArgumentException(
          "trees at the limit so far: " + earlierTies + ", allowed from 0");
    }
    if (position != LimitPosition.AT_LIMIT) {
      return position == LimitPosition.IN ? 1 : 0;
    }
    return switch (this) {
      case IN -> 1;
      case OUT -> 0;
      case HALF -> 0.5;
      case EVERY_SECOND -> earlierTies % 2 == 0 ? 1 : 0;
    };
  }
}
