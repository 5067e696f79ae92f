package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Where a curve that gives no formula for it turns from rising to falling or back. Bends narrower
 * than the grid are not seen. Stateless and thread-safe.
 */
final class TurningPoints {
  /** Steps of the root of the relative height: finer near the ground, where stems bend. */
  private static final int STEPS = 512;

  private static final double ACCURACY = 1e-10;
  private static final int MOST_EVALUATIONS = 500;

  private TurningPoints() {}

  /**
   * Turning points between 0 and 1.
   *
   * @param curve the curve over the relative height
   * @return from the lowest on
   */
  static double[] of(UnivariateFunction curve) {
    List<Double> turns = new ArrayList<>();
    double before = curve.value(0);
    double here = curve.value(at(1));
    for (int i = 2; i <= STEPS; i++) {
      double next = curve.value(at(i));
      boolean summit = here > before && here >= next;
      boolean valley = here < before && here <= next;
      if (summit || valley) {
        turns.add(refined(curve, summit, at(i - 2), at(i)));
      }
      before = here;
      here = next;
    }
    return turns.stream().mapToDouble(turn -> turn).toArray();
  }

  private static double at(int step) {
    double root = (double) step / STEPS;
    return root * root;
  }

  private static double refined(UnivariateFunction curve, boolean summit, double from, double to) {
    return new BrentOptimizer(ACCURACY, ACCURACY)
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            new UnivariateObjectiveFunction(curve),
            summit ? GoalType.MAXIMIZE : GoalType.MINIMIZE,
            new SearchInterval(from, to))
        .getPoint();
  }
}
