package org.mensuration.kernel;

/**
 * Overrun, board-foot ratio and stacks. Units as named. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class Conversion {
  private Conversion() {}

  /**
   * Overrun: what the lumber tally exceeds the net log scale by, in per cent of the scale.
   *
   * @param lumberBf lumber tally in board feet
   * @param scaleBf net log scale in board feet
   * @return overrun in per cent; below zero an underrun
   */
  public static double overrun(double lumberBf, double scaleBf) {
    return 100 * (lumberBf - scaleBf) / scaleBf;
  }

  /**
   * Board feet by a rule in a cubic foot of log.
   *
   * @param scaleBf log scale in board feet
   * @param volumeFt3 solid volume of the same logs in cubic feet
   * @return board feet in a cubic foot
   */
  public static double boardFootRatio(double scaleBf, double volumeFt3) {
    return scaleBf / volumeFt3;
  }

  /**
   * Outer volume of a stack.
   *
   * @param lengthM length in m
   * @param heightM height in m
   * @param depthM length of the pieces in m
   * @return volume of wood and air in m³
   */
  public static double stack(double lengthM, double heightM, double depthM) {
    return lengthM * heightM * depthM;
  }

  /**
   * Cords in a stack.
   *
   * @param lengthFt length in feet
   * @param heightFt height in feet
   * @param depthFt length of the pieces in feet
   * @return cords of 128 cubic feet
   */
  public static double cords(double lengthFt, double heightFt, double depthFt) {
    return lengthFt * heightFt * depthFt / 128;
  }
}
