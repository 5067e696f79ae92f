package org.mensuration.stem;

/** What a stem is taken to be between its highest reading and its tip. */
public enum TipForm {
  /** A cone: the area falls with the square of the distance from the tip. */
  CONE,
  /** A paraboloid: the area falls with the distance from the tip. */
  PARABOLOID,
  /** A neiloid: the area falls with the cube of the distance from the tip. */
  NEILOID,
  /** The curve through the readings goes on to an area of zero at the tip. */
  CURVE,
  /** Nothing: the stem ends at its highest reading. */
  NOT_MEASURED
}
