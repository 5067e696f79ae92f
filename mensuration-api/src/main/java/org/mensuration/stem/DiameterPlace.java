package org.mensuration.stem;

/** Why the diameter of a stem was taken where it was taken. */
public enum DiameterPlace {
  /** At breast height. */
  BREAST_HEIGHT,
  /** Above the buttresses. */
  ABOVE_BUTTRESS,
  /** Above a swelling, branch or wound at breast height. */
  ABOVE_SWELLING,
  /** Below a swelling, branch, wound or fork at breast height. */
  BELOW_SWELLING
}
