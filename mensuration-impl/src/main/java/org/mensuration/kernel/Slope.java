package org.mensuration.kernel;

/**
 * Functions of an angle in degrees that keep their precision up to 90°, where an angle turned into
 * radians first would lose it. Unchecked. Stateless and thread-safe.
 */
final class Slope {
  private static final double HALF_RIGHT = 45.0;
  private static final double RIGHT = 90.0;
  private static final double HALF_TURN = 180.0;
  private static final double TINY = 1e-8;

  private Slope() {}

  /** The cosine of −90° to 90°. */
  static double cos(double deg) {
    double size = Math.abs(deg);
    return size > HALF_RIGHT
        ? StrictMath.sin((RIGHT - size) * Math.PI / HALF_TURN)
        : StrictMath.cos(size * Math.PI / HALF_TURN);
  }

  /** The sine; where it is steep the angle is small and keeps its digits. */
  static double sin(double deg) {
    return StrictMath.sin(StrictMath.toRadians(deg));
  }

  /** The tangent of 0° to 90° over a length, also where one alone would be lost in rounding. */
  static double tanOver(double deg, double length) {
    if (deg < TINY) {
      // So small an angle is its own tangent; powers of two change no digit.
      return deg * 0x1p600 * (Math.PI / HALF_TURN) / length * 0x1p-600;
    }
    return tan(deg) / length;
  }

  /** The tangent of 0° to 90°. */
  static double tan(double deg) {
    return deg > HALF_RIGHT
        ? 1 / StrictMath.tan((RIGHT - deg) * Math.PI / HALF_TURN)
        : StrictMath.tan(deg * Math.PI / HALF_TURN);
  }
}
