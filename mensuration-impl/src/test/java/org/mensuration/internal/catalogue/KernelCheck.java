package org.mensuration.internal.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.internal.tree.Tree;

/**
 * Compares a kernel with its printed equation at seeded points, and keeps the worst.
 *
 * <p>A bias ({@code bias/…}) is a ratio of volumes less one, in per cent. The ratio is what is held
 * to the bound: the digits of a bias near zero are those that the difference leaves.
 */
final class KernelCheck {
  private static final int DIGITS = 50;
  private static final int MOST_SHOWN = 5;

  private final List<String> broken = new ArrayList<>();
  private double ulps;
  private double shareOfBound;
  private String at = "";

  KernelCheck(Formula formula, int points) {
    for (double[][] point : new PointsOfDomain(formula).draw(points)) {
      compare(formula, point);
    }
  }

  private void compare(Formula formula, double[][] point) {
    BigDecimal exact = formula.exact(DIGITS, point);
    double kernel = formula.applyTo(point);
    double nearest = exact.doubleValue();
    double error =
        new BigDecimal(kernel).subtract(exact, MathContext.DECIMAL128).abs().doubleValue();
    double bound = 8 * ulp(formula, nearest) + inputPart(formula, point);
    String place = Arrays.deepToString(point);
    if (!(error <= bound) && broken.size() < MOST_SHOWN) {
      broken.add(place + ": kernel " + kernel + ", equation " + exact + ", bound " + bound);
    }
    if (error / bound > shareOfBound) {
      ulps = error / Math.ulp(nearest);
      shareOfBound = error / bound;
      at = place;
    }
  }

  private static double ulp(Formula formula, double nearest) {
    double own = Math.ulp(nearest);
    return formula.id().startsWith("bias/")
        ? Math.max(own, 100 * Math.ulp(1 + nearest / 100))
        : own;
  }

  private static double inputPart(Formula formula, double[][] point) {
    Gradient gradient = Tree.gradient(formula.equation(), formula.parameters(), point);
    double part = 0;
    int next = 0;
    for (double[] readings : point) {
      for (double value : readings) {
        double one = 2 * Math.abs(gradient.partial(next++)) * Math.ulp(value);
        // An input whose derivative is not finite allows for nothing; the others keep their part.
        part += one < Double.POSITIVE_INFINITY ? one : 0;
      }
    }
    return part;
  }

  List<String> broken() {
    return broken;
  }

  double ulps() {
    return ulps;
  }

  double shareOfBound() {
    return shareOfBound;
  }

  String at() {
    return at;
  }
}
