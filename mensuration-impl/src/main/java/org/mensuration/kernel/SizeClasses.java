package org.mensuration.kernel;

/**
 * Readings in classes of any width, on {@link ClassRounding}. A reading next to a class or to the
 * half way to the next counts as on it ({@link Limits}). Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class SizeClasses {
  private SizeClasses() {}

  /**
   * A reading in widths, put on a whole or a half that it misses by next to nothing.
   *
   * @param value the reading
   * @param width width of a class
   * @return number of widths
   */
  public static double widths(double value, double width) {
    double widths = value / width;
    double halves = Math.rint(2 * widths);
    return Limits.on(2 * widths, halves) ? halves / 2 : widths;
  }

  /**
   * The class below.
   *
   * @param value the reading
   * @param width width of a class
   * @return the class
   */
  public static double down(double value, double width) {
    return ClassRounding.down(value / width, 1, 1) * width;
  }

  /**
   * The class above.
   *
   * @param value the reading
   * @param width width of a class
   * @return the class
   */
  public static double up(double value, double width) {
    return ClassRounding.up(value / width, 1, 1) * width;
  }

  /**
   * The nearest class, a half up.
   *
   * @param value the reading
   * @param width width of a class
   * @return the class
   */
  public static double nearestHalfUp(double value, double width) {
    return ClassRounding.halfUp(value / width, 1, 1) * width;
  }

  /**
   * The nearest class, a half down.
   *
   * @param value the reading
   * @param width width of a class
   * @return the class
   */
  public static double nearestHalfDown(double value, double width) {
    return ClassRounding.halfDown(value / width, 1, 1) * width;
  }

  /**
   * Whether a reading lies half way between two classes.
   *
   * @param value the reading
   * @param width width of a class
   * @return true if it does
   */
  public static boolean half(double value, double width) {
    double widths = widths(value, width);
    return widths - Math.floor(widths) == 0.5;
  }

  /**
   * Two readings at right angles: each to the nearest class, a half up, but of two halves one up
   * and one down; then their mean with the fraction dropped.
   *
   * @param first one reading
   * @param second the other reading
   * @param width width of a class
   * @return the class
   */
  public static double ofTwoReadings(double first, double second, double width) {
    double other =
        half(first, width) ? nearestHalfDown(second, width) : nearestHalfUp(second, width);
    return down((nearestHalfUp(first, width) + other) / 2, width);
  }

  /**
   * How many parts a length takes, none longer than the longest.
   *
   * @param length the length
   * @param longest longest part
   * @return number of parts, at least one
   */
  public static int parts(double length, double longest) {
    return (int) Math.max(1, Math.ceil(widths(length, longest)));
  }

  /**
   * A part of a whole number shared out in whole numbers, near equal, the larger parts last.
   *
   * @param whole the number shared out
   * @param parts number of parts
   * @param part which part, counted from zero
   * @return its share
   */
  public static double wholeShare(double whole, int parts, int part) {
    double least = Math.floor(whole / parts);
    double over = whole - least * parts;
    return part >= parts - over ? least + 1 : least;
  }

  /**
   * A diameter on a straight line between the ends.
   *
   * @param small diameter of the small end
   * @param large diameter of the large end
   * @param fromSmall distance from the small end
   * @param length distance between the ends
   * @return the diameter
   */
  public static double alongTaper(double small, double large, double fromSmall, double length) {
    return small + (large - small) * fromSmall / length;
  }
}
