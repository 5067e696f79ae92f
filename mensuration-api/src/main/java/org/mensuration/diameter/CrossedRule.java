package org.mensuration.diameter;

/** How two diameters of one section, taken at right angles, become one. */
public enum CrossedRule {
  /** Half of their sum. */
  ARITHMETIC_MEAN,
  /** The diameter whose circle has the mean of both areas. */
  QUADRATIC_MEAN,
  /** The root of their product, exact for an ellipse along its axes. */
  GEOMETRIC_MEAN
}
