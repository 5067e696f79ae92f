package org.mensuration.height;

/**
 * The forms of a height curve that can be fitted: height H in m over diameter d in cm, with breast
 * height bh and two coefficients. All pass through breast height. Immutable and thread-safe.
 */
public enum HeightCurveForm {
  /** Näslund: H = bh + (d / (b0 + b1 d))², {@code height-curve/naslund}. */
  NASLUND,
  /** Petterson: H = bh + (b0 + b1 / d)⁻³, {@code height-curve/petterson}. */
  PETTERSON,
  /**
   * H = bh + exp(b0 + b1 / d), {@code height-curve/curtis}. Other names for the same form are in
   * use; go by the formula.
   */
  CURTIS,
  /** A power of the diameter: H = bh + b0 dᵇ¹, {@code height-curve/power}. */
  POWER
}
