package org.mensuration.internal.statistics;

import java.util.Arrays;
import java.util.Comparator;
import org.mensuration.kernel.Limits;

/** Means over the thickest trees. Unchecked. Stateless and thread-safe. */
public final class Thickest {
  private Thickest() {}

  /**
   * Mean of a figure over the thickest trees. Trees alike in diameter at the cut share it evenly; a
   * fraction of a tree is kept.
   *
   * @param diameters diameters of the trees
   * @param figures the figure of each tree
   * @param expansions trees that each tree stands for
   * @param number how many of the thickest, in trees that they stand for
   * @return the mean; NaN if there are not so many
   */
  public static double mean(
      double[] diameters, double[] figures, double[] expansions, double number) {
    Integer[] order = new Integer[diameters.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -diameters[i]));
    ExactSum weighted = ExactSum.ofProducts();
    double left = number;
    int from = 0;
    while (left > 0 && from < order.length) {
      int to = from + 1;
      while (to < order.length && Limits.on(diameters[order[to]], diameters[order[from]])) {
        to++;
      }
      ExactSum group = ExactSum.ofNumbers();
      for (int i = from; i < to; i++) {
        group.add(expansions[order[i]]);
      }
      double stands = group.value();
      double share = Math.min(1, left / stands);
      for (int i = from; i < to; i++) {
        weighted.addProduct(expansions[order[i]] * share, figures[order[i]]);
      }
      left = share < 1 ? 0 : left - stands;
      from = to;
    }
    // What rounding leaves of the number is no missing tree.
    return Limits.reaches(number - left, number) ? weighted.value() / number : Double.NaN;
  }
}
