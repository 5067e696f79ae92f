package org.mensuration.diameter;

/** The point of the ground from which the heights of a stem are measured. */
public enum GroundPoint {
  /** The highest ground at the stem; usual on slopes. */
  UPHILL_SIDE,
  /** Half way between the highest and the lowest ground at the stem. */
  MEAN_OF_SIDES,
  /** The lowest ground at the stem. */
  DOWNHILL_SIDE
}
