package org.mensuration.height;

/** The forms of a height curve that can be fitted. All pass through breast height. */
public enum HeightCurveForm {
  /** Näslund, {@code height-curve/naslund}. */
  NASLUND,
  /** Petterson, {@code height-curve/petterson}. */
  PETTERSON,
  /** Curtis, {@code height-curve/curtis}. */
  CURTIS,
  /** A power of the diameter, {@code height-curve/power}. */
  POWER
}
