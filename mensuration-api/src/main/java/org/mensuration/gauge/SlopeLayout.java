package org.mensuration.gauge;

/** How a circular plot is laid out on a slope. Immutable and thread-safe. */
public enum SlopeLayout {
  /** Level ground, or every distance measured horizontally. */
  HORIZONTAL,
  /** An ellipse: the radius across the slope, radius over cosine along it. */
  ELLIPSE,
  /** A circle on the slope whose projection has the right area: radius over the root of cosine. */
  CIRCLE_ON_SLOPE,
  /** A circle of the plain radius on the slope: the results are multiplied by 1/cosine. */
  UNCORRECTED
}
