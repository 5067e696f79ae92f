package org.mensuration.kernel;

/**
 * Which of the sorted values of a drawing bound an interval, and a value that swings. After JCGM
 * 101, from memory. Ranks count from 1. Unchecked. Stateless and thread-safe.
 */
public final class CoverageRanks {
  private static final double FULL_TURN = 2 * Math.PI;

  private CoverageRanks() {}

  /**
   * How many ranks an interval reaches from its lower end to its upper end (JCGM 101, clause
   * 7.7.2).
   *
   * @param draws how many values there are
   * @param confidencePercent the part of them that the interval holds, in per cent
   * @return the nearest whole number to that part of the draws, a half up
   */
  public static int reach(int draws, double confidencePercent) {
    return (int) Math.floor(confidencePercent * draws / 100 + 0.5);
  }

  /**
   * The lower end of the interval with as many values below as above it (JCGM 101, clause 7.7.2).
   *
   * @param draws how many values there are
   * @param reach ranks from end to end
   * @return rank of the lower end
   */
  public static int symmetric(int draws, int reach) {
    return (draws - reach + 1) / 2;
  }

  /**
   * The lower end of the shortest interval (JCGM 101, clause 7.7.4); of equal ones the first.
   *
   * @param sorted the values in rising order
   * @param reach ranks from end to end
   * @return rank of the lower end
   */
  public static int shortest(double[] sorted, int reach) {
    int first = 0;
    double least = sorted[reach] - sorted[0];
    for (int i = 1; i + reach < sorted.length; i++) {
      double length = sorted[i + reach] - sorted[i];
      if (length < least) {
        least = length;
        first = i;
      }
    }
    return first + 1;
  }

  /**
   * A value that swings between two ends, at a part of its turn (JCGM 101, clause 6.4.6).
   *
   * @param middle middle of the swing
   * @param halfWidth how far it swings to either side
   * @param turn part of the turn, 0 to 1
   * @return the value
   */
  public static double swung(double middle, double halfWidth, double turn) {
    return middle + halfWidth * StrictMath.sin(FULL_TURN * turn);
  }
}
