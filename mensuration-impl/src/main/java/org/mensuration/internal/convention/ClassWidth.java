package org.mensuration.internal.convention;

import org.mensuration.kernel.Limits;

/** Width of a diameter class as a caller names it. Stateless and thread-safe. */
public final class ClassWidth {
  private static final int WIDEST_MM = 100;

  private ClassWidth() {}

  /**
   * A width as whole millimetres.
   *
   * @param widthMm width as named, mm
   * @return the width, 1 to 100 mm
   * @throws IllegalArgumentException if it is not a whole number of millimetres from 1 to 100
   */
  public static int millimetres(double widthMm) {
    int whole = (int) Math.rint(widthMm);
    if (!(whole >= 1 && whole <= WIDEST_MM && Limits.on(widthMm, whole))) {
      throw new IllegalArgumentException(
          "classes of " + widthMm + " mm, allowed [1, 100] mm, whole numbers");
    }
    return whole;
  }
}
