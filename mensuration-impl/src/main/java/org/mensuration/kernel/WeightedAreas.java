package org.mensuration.kernel;

/**
 * Rules whose volume is a weighted mean of sectional areas times the length, the weights as data:
 * one arithmetic for the single log and for arrays of logs, so that both give the same bits.
 * Diameters in cm, length in m, volume in m³. Unchecked: NaN in, NaN out. Immutable and
 * thread-safe.
 */
public final class WeightedAreas {
  /** Huber: the middle. */
  public static final WeightedAreas HUBER = new WeightedAreas(1, 1, 0, 0, 0);

  /** Smalian: large end and small end. */
  public static final WeightedAreas SMALIAN = new WeightedAreas(2, 1, 1, 0, 0);

  /** Newton: large end, middle and small end. */
  public static final WeightedAreas NEWTON = new WeightedAreas(6, 1, 4, 1, 0);

  /** Butt-log rule: large end and small end. */
  public static final WeightedAreas BRUCE_BUTT = new WeightedAreas(1, 0.25, 0.75, 0, 0);

  /** Hossfeld: a third from the large end, and the top. */
  public static final WeightedAreas HOSSFELD = new WeightedAreas(4, 3, 1, 0, 0);

  /** Simony: a quarter, the middle and three quarters. */
  public static final WeightedAreas SIMONY = new WeightedAreas(3, 2, -1, 2, 0);

  /** Three-eighths rule: large end, both thirds and small end. */
  public static final WeightedAreas THREE_EIGHTHS = new WeightedAreas(8, 1, 3, 3, 1);

  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private final double divisor;
  private final double first;
  private final double second;
  private final double third;
  private final double fourth;

  private WeightedAreas(double sum, double first, double second, double third, double fourth) {
    this.divisor = sum * AREA_DIVISOR;
    this.first = first;
    this.second = second;
    this.third = third;
    this.fourth = fourth;
  }

  /**
   * Volume of one log; places that the rule does not take count nothing.
   *
   * @param firstCm diameter of the first place in cm
   * @param secondCm diameter of the second place in cm, or 0
   * @param thirdCm diameter of the third place in cm, or 0
   * @param fourthCm diameter of the fourth place in cm, or 0
   * @param lengthM length in m
   * @return volume in m³
   */
  public double volume(
      double firstCm, double secondCm, double thirdCm, double fourthCm, double lengthM) {
    double squares =
        first * (firstCm * firstCm)
            + second * (secondCm * secondCm)
            + third * (thirdCm * thirdCm)
            + fourth * (fourthCm * fourthCm);
    return Math.PI * squares * lengthM / divisor;
  }

  /**
   * Volumes of many logs, without allocation. One array a place, in the order in which the rule
   * takes them; all arrays are at least as long as the results.
   *
   * @param diametersCm one array of diameters in cm a place; further arrays count nothing
   * @param lengthM lengths in m
   * @param volumeM3 filled with volumes in m³; none of the other arrays
   */
  public void volumes(double[][] diametersCm, double[] lengthM, double[] volumeM3) {
    double[] one = diametersCm[0];
    // A place of no weight reads the first array: nothing times a finite number adds nothing.
    double[] two = diametersCm.length > 1 ? diametersCm[1] : one;
    double[] three = diametersCm.length > 2 ? diametersCm[2] : one;
    double[] four = diametersCm.length > 3 ? diametersCm[3] : one;
    for (int i = 0; i < volumeM3.length; i++) {
      volumeM3[i] = volume(one[i], two[i], three[i], four[i], lengthM[i]);
    }
  }
}
