package org.mensuration.internal.diameter;

import java.util.Arrays;

/**
 * Finds points that stand alone on the circumference. A stray that happens to lie near the curve,
 * but away from the arc that was scanned, pulls harder than any other point. Stateless and
 * thread-safe.
 */
final class Neighbours {
  private static final int NEIGHBOUR = 5;
  private static final double ALONE = 6;
  private static final double TURN = 2 * Math.PI;

  private Neighbours() {}

  /**
   * Takes from a choice the points whose fifth neighbour is more than six times as far as usual.
   *
   * @param chosen which points; changed
   * @param x abscissas from the centre
   * @param y ordinates from the centre
   */
  static void dropLonely(boolean[] chosen, double[] x, double[] y) {
    double[] angles = new double[chosen.length];
    double[] sorted = new double[chosen.length];
    int count = 0;
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i]) {
        angles[i] = StrictMath.atan2(y[i], x[i]);
        sorted[count++] = angles[i];
      }
    }
    if (count <= 2 * NEIGHBOUR) {
      return;
    }
    sorted = Arrays.copyOf(sorted, count);
    Arrays.sort(sorted);
    double[] reach = new double[chosen.length];
    double[] known = new double[count];
    int next = 0;
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i]) {
        reach[i] = reach(sorted, Arrays.binarySearch(sorted, angles[i]));
        known[next++] = reach[i];
      }
    }
    Arrays.sort(known);
    double usual = known[count / 2];
    for (int i = 0; i < chosen.length; i++) {
      chosen[i] &= reach[i] <= ALONE * usual;
    }
  }

  /**
   * Angle to the fifth nearest neighbour on the circle: the narrowest window of six that holds it.
   */
  private static double reach(double[] sorted, int at) {
    double least = TURN;
    for (int before = 0; before <= NEIGHBOUR; before++) {
      double back = between(sorted, at - before, at);
      double ahead = between(sorted, at, at + NEIGHBOUR - before);
      least = Math.min(least, Math.max(back, ahead));
    }
    return least;
  }

  private static double between(double[] sorted, int from, int to) {
    int count = sorted.length;
    double angle = sorted[Math.floorMod(to, count)] - sorted[Math.floorMod(from, count)];
    return angle < 0 ? angle + TURN : angle;
  }
}
