package org.mensuration.internal.stem;

import org.mensuration.internal.catalogue.LogFormulas;
import org.mensuration.stem.SectionRule;

/** Readings of a stem worked as sections by a rule. Immutable and thread-safe. */
final class Sections {
  /** A middle reading may miss the middle by this share of its section. */
  private static final double MIDDLE_SHARE = 0.05;

  /** What sighted heights may put the upper end of Huber's last section above the stem, in m. */
  private static final double ABOVE = 1e-6;

  private final double[] heights;
  private final double[] diameters;
  private final double base;
  private final double top;

  /**
   * The sections of a stem.
   *
   * @param heights rising, in m; not copied
   * @param diameters in cm; not copied
   * @param base where the stem begins, in m
   * @param top where the stem ends as it stands, in m
   */
  Sections(double[] heights, double[] diameters, double base, double top) {
    this.heights = heights;
    this.diameters = diameters;
    this.base = base;
    this.top = top;
  }

  /**
   * The sections together.
   *
   * @param from lower end in m
   * @param to upper end in m
   * @param volume in m³
   */
  record Stretch(double from, double to, double volume) {}

  Stretch by(SectionRule rule) {
    return switch (rule) {
      case HUBER -> huber();
      case SMALIAN -> smalian();
      case NEWTON -> newton();
    };
  }

  private int last() {
    return heights.length - 1;
  }

  private Stretch smalian() {
    double volume = 0;
    for (int i = 0; i < last(); i++) {
      volume +=
          LogFormulas.SMALIAN.value(
              larger(i, i + 1), smaller(i, i + 1), heights[i + 1] - heights[i]);
    }
    return new Stretch(heights[0], heights[last()], volume);
  }

  private Stretch newton() {
    if (last() % 2 != 0) {
      throw new IllegalArgumentException(
          "Newton's rule (log/newton): "
              + heights.length
              + " readings, but each section takes lower end, middle and upper end; allowed an odd"
              + " number");
    }
    double volume = 0;
    for (int i = 0; i < last(); i += 2) {
      double length = heights[i + 2] - heights[i];
      double middle = heights[i] + length / 2;
      if (!(Math.abs(heights[i + 1] - middle) <= MIDDLE_SHARE * length)) {
        throw new IllegalArgumentException(
            "Newton's rule (log/newton): reading at "
                + heights[i + 1]
                + " m, but the middle of its section is at "
                + middle
                + " m; allowed within "
                + MIDDLE_SHARE
                + " of the section's length");
      }
      volume +=
          LogFormulas.NEWTON.value(larger(i, i + 2), diameters[i + 1], smaller(i, i + 2), length);
    }
    return new Stretch(heights[0], heights[last()], volume);
  }

  private Stretch huber() {
    double volume = 0;
    double from = base;
    for (int i = 0; i <= last(); i++) {
      double to = 2 * heights[i] - from;
      if (!(to > from)) {
        throw new IllegalArgumentException(
            "Huber's rule (log/huber): reading at "
                + heights[i]
                + " m is no middle of a section that begins at "
                + from
                + " m; allowed above that");
      }
      if (!(to <= top + ABOVE)) {
        throw new IllegalArgumentException(
            "Huber's rule (log/huber): reading at "
                + heights[i]
                + " m as the middle of a section from "
                + from
                + " m reaches "
                + to
                + " m, but the stem ends at "
                + top
                + " m");
      }
      volume += LogFormulas.HUBER.value(diameters[i], to - from);
      from = to;
    }
    return new Stretch(base, Math.min(from, top), volume);
  }

  private double larger(int i, int j) {
    return Math.max(diameters[i], diameters[j]);
  }

  private double smaller(int i, int j) {
    return Math.min(diameters[i], diameters[j]);
  }
}
