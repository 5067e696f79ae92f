package org.mensuration.stem;

/** What a stem is taken to be between its base and its lowest reading. */
public enum ButtForm {
  /** A cylinder as wide as the lowest reading. */
  CYLINDER,
  /** The sectional area goes on in the straight line of the two lowest readings. */
  EXTENDED,
  /** Nothing: the stem begins at its lowest reading. */
  NOT_MEASURED
}
