package org.mensuration.internal.diameter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Least trimmed squares: of all fits, the one whose three quarters of nearest points have the least
 * squared distances; then points farther than three standard deviations, or alone on the
 * circumference, are left out as strays and the rest is fitted. The subsets tried first are drawn
 * with a fixed seed from the points in sorted order, so the same points give the same fit.
 * Immutable and thread-safe, as long as nobody writes into what it hands out.
 */
final class TrimmedFit {
  /** Below so many points none is taken for a stray. */
  static final int FEWEST = 20;

  private static final double KEEP = 0.75;
  private static final int SUBSETS = 80;
  private static final int BEST = 12;
  private static final int MOST_STEPS = 30;
  private static final long SEED = 20_190_501L;

  /** Variance of the nearer three quarters of normal errors, and of those within three sigma. */
  private static final double VARIANCE_OF_KEPT = 0.3684;

  private static final double VARIANCE_WITHIN = 0.9733;
  private static final double LIMIT = 3;

  private final GeometricFit fit;
  private final boolean[] kept;
  private final double deviation;

  private TrimmedFit(GeometricFit fit, boolean[] kept, double deviation) {
    this.fit = fit;
    this.kept = kept;
    this.deviation = deviation;
  }

  /** A fit to all points. */
  static TrimmedFit ofAll(GeometricFit fit, int points, int parameters) {
    boolean[] all = new boolean[points];
    Arrays.fill(all, true);
    return new TrimmedFit(fit, all, Math.sqrt(fit.squares() / (points - parameters)));
  }

  /** The fit to the points kept. */
  GeometricFit fit() {
    return fit;
  }

  /** Which points were kept, in the order given. */
  boolean[] kept() {
    return kept;
  }

  /** Standard deviation of the distances. */
  double deviation() {
    return deviation;
  }

  /**
   * Fits a curve.
   *
   * @param curve the curve
   * @param x abscissas
   * @param y ordinates
   * @return the fit; null if none converges
   */
  static @Nullable TrimmedFit of(SectionCurve curve, double[] x, double[] y) {
    List<Candidate> candidates = new ArrayList<>();
    candidates.add(candidate(curve, curve.start(x, y), x, y));
    Random random = new Random(SEED);
    Integer[] order = sorted(x, y);
    for (int i = 0; i < SUBSETS; i++) {
      int[] chosen = new int[curve.subset()];
      for (int j = 0; j < chosen.length; j++) {
        chosen[j] = order[random.nextInt(order.length)];
      }
      candidates.add(candidate(curve, curve.start(pick(x, chosen), pick(y, chosen)), x, y));
    }
    candidates.sort(Comparator.comparingDouble(Candidate::squares));
    Candidate best = Candidate.none();
    for (Candidate candidate : candidates.subList(0, BEST)) {
      Candidate settled = settle(curve, candidate, x, y);
      if (settled.squares < best.squares) {
        best = settled;
      }
    }
    return Double.isInfinite(best.squares) ? null : reweight(curve, best, x, y);
  }

  /** Parameters and the squares of their nearest points; infinite squares are no fit. */
  private static final class Candidate {
    private final double[] parameters;
    private final double squares;

    Candidate(double[] parameters, double squares) {
      this.parameters = parameters;
      this.squares = squares;
    }

    static Candidate none() {
      return new Candidate(new double[0], Double.POSITIVE_INFINITY);
    }

    double squares() {
      return squares;
    }
  }

  /** Steps with the geometric fit until the squares fall no more. */
  private static Candidate settle(SectionCurve curve, Candidate from, double[] x, double[] y) {
    Candidate best = Candidate.none();
    double[] parameters = from.parameters;
    for (int step = 0; step < MOST_STEPS; step++) {
      int[] near = nearest(curve, parameters, x, y);
      GeometricFit fit = GeometricFit.of(curve, parameters, pick(x, near), pick(y, near));
      if (fit == null) {
        break;
      }
      Candidate next = candidate(curve, fit.parameters(), x, y);
      if (!(next.squares < best.squares)) {
        break;
      }
      best = next;
      parameters = next.parameters;
    }
    return best;
  }

  /** Once only: repeated, it would let a clump of strays beside the curve in, bit by bit. */
  private static @Nullable TrimmedFit reweight(
      SectionCurve curve, Candidate best, double[] x, double[] y) {
    double spread = Math.sqrt(best.squares / count(x.length) / VARIANCE_OF_KEPT);
    boolean[] kept = within(curve, best.parameters, x, y, LIMIT * spread);
    int[] chosen = indices(kept);
    // At least 14 of the 15 nearest lie within, and of them at most half are alone.
    int freedom = chosen.length - curve.parameters();
    GeometricFit fit = GeometricFit.of(curve, best.parameters, pick(x, chosen), pick(y, chosen));
    return fit == null
        ? null
        : new TrimmedFit(fit, kept, Math.sqrt(fit.squares() / freedom / VARIANCE_WITHIN));
  }

  private static Candidate candidate(
      SectionCurve curve, double[] parameters, double[] x, double[] y) {
    double sum =
        Arrays.stream(squares(curve, parameters, x, y)).sorted().limit(count(x.length)).sum();
    // Acceptance, so that NaN counts as the worst.
    return sum < Double.POSITIVE_INFINITY ? new Candidate(parameters, sum) : Candidate.none();
  }

  private static int[] nearest(SectionCurve curve, double[] parameters, double[] x, double[] y) {
    double[] squares = squares(curve, parameters, x, y);
    Integer[] order = new Integer[x.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> squares[i]));
    int[] near = new int[count(x.length)];
    Arrays.setAll(near, i -> order[i]);
    return near;
  }

  private static double[] squares(SectionCurve curve, double[] parameters, double[] x, double[] y) {
    double[] squares = new double[x.length];
    double[] gradient = new double[curve.parameters()];
    for (int i = 0; i < x.length; i++) {
      double distance =
          parameters.length == 0 ? Double.NaN : curve.distance(parameters, x[i], y[i], gradient);
      squares[i] = distance * distance;
    }
    return squares;
  }

  private static boolean[] within(
      SectionCurve curve, double[] parameters, double[] x, double[] y, double limit) {
    double[] squares = squares(curve, parameters, x, y);
    boolean[] within = new boolean[x.length];
    for (int i = 0; i < x.length; i++) {
      within[i] = squares[i] <= limit * limit;
    }
    double[] fromX = new double[x.length];
    double[] fromY = new double[y.length];
    Arrays.setAll(fromX, i -> x[i] - parameters[0]);
    Arrays.setAll(fromY, i -> y[i] - parameters[1]);
    Neighbours.dropLonely(within, fromX, fromY);
    return within;
  }

  private static int count(int points) {
    return (int) Math.ceil(KEEP * points);
  }

  private static Integer[] sorted(double[] x, double[] y) {
    Integer[] order = new Integer[x.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order, Comparator.<Integer>comparingDouble(i -> x[i]).thenComparingDouble(i -> y[i]));
    return order;
  }

  private static int[] indices(boolean[] kept) {
    int[] all = new int[kept.length];
    int count = 0;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        all[count++] = i;
      }
    }
    return Arrays.copyOf(all, count);
  }

  private static double[] pick(double[] values, int[] indices) {
    double[] picked = new double[indices.length];
    Arrays.setAll(picked, i -> values[indices[i]]);
    return picked;
  }
}
