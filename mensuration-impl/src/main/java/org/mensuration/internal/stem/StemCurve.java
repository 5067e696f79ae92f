package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.kernel.MonotoneCubic;
import org.mensuration.stem.ButtForm;
import org.mensuration.stem.TipForm;

/**
 * The squared diameter of a stem over its height, in cm² and m: pieces that follow each other
 * without a gap. Immutable and thread-safe.
 */
final class StemCurve {
  private final List<CurvePiece> pieces;

  private StemCurve(List<CurvePiece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /**
   * Lays the curve through readings.
   *
   * @param heights rising, in m
   * @param diameters in cm
   * @param butt what lies below the lowest
   * @param base where the stem begins, at most the lowest height
   * @param tip what lies above the highest
   * @param top where the intact stem ends, at least the highest height
   */
  static StemCurve through(
      double[] heights, double[] diameters, ButtForm butt, double base, TipForm tip, double top) {
    int n = heights.length;
    boolean curved = tip == TipForm.CURVE && top > heights[n - 1];
    double[] x = new double[curved ? n + 1 : n];
    double[] y = new double[x.length];
    for (int i = 0; i < n; i++) {
      x[i] = heights[i];
      y[i] = diameters[i] * diameters[i];
    }
    if (curved) {
      x[n] = top;
    }
    List<CurvePiece> pieces = new ArrayList<>();
    if (base < x[0]) {
      double slope = butt == ButtForm.EXTENDED ? lowestSlope(heights, diameters) : 0;
      double foot = y[0] - slope * (x[0] - base);
      pieces.add(new CurvePiece(base, x[0], true, foot, y[0], new double[] {y[0], -slope, 0, 0}));
    }
    if (x.length > 1) {
      double[] slope = MonotoneCubic.slopes(x, y);
      for (int i = 0; i + 1 < x.length; i++) {
        boolean last = i + 2 == x.length;
        double length = x[i + 1] - x[i];
        // The last piece counts downward, so that it keeps its digits where it ends in a tip.
        pieces.add(
            new CurvePiece(
                x[i],
                x[i + 1],
                last,
                y[i],
                y[i + 1],
                last
                    ? MonotoneCubic.piece(length, y[i + 1], y[i], -slope[i + 1], -slope[i])
                    : MonotoneCubic.piece(length, y[i], y[i + 1], slope[i], slope[i + 1])));
      }
    }
    if (!curved && top > x[n - 1]) {
      pieces.add(CurvePiece.tip(x[n - 1], top, y[n - 1], power(tip)));
    }
    return new StemCurve(pieces);
  }

  /** Squared diameter at the base of a butt extended from the two lowest readings. */
  static double extendedFoot(double[] heights, double[] diameters, double base) {
    return diameters[0] * diameters[0] - lowestSlope(heights, diameters) * (heights[0] - base);
  }

  private static double lowestSlope(double[] heights, double[] diameters) {
    return (diameters[1] * diameters[1] - diameters[0] * diameters[0]) / (heights[1] - heights[0]);
  }

  private static int power(TipForm tip) {
    return switch (tip) {
      case PARABOLOID -> 1;
      case CONE -> 2;
      case NEILOID -> 3;
      case CURVE, NOT_MEASURED -> throw new IllegalStateException(tip + " is no solid");
    };
  }

  /** Squared diameter at a height of the curve. */
  double square(double height) {
    int i = 0;
    while (i + 1 < pieces.size() && height > pieces.get(i).to()) {
      i++;
    }
    return pieces.get(i).square(height);
  }

  /** Integral of the squared diameter between two heights of the curve. */
  double integral(double from, double to) {
    double sum = 0;
    for (CurvePiece piece : pieces) {
      double low = Math.max(from, piece.from());
      double high = Math.min(to, piece.to());
      if (low < high) {
        sum += piece.integral(low, high);
      }
    }
    return sum;
  }

  /** Every height with a squared diameter; of a stretch with that value, both ends. */
  List<Double> heightsOf(double square) {
    List<Double> heights = new ArrayList<>();
    for (CurvePiece piece : pieces) {
      double low = piece.low();
      double high = piece.high();
      if (low == square) {
        add(heights, piece.from());
      }
      if (Math.min(low, high) < square && square < Math.max(low, high)) {
        add(heights, piece.crossing(square, piece.from(), piece.to()));
      }
      if (high == square) {
        add(heights, piece.to());
      }
    }
    return heights;
  }

  private static void add(List<Double> heights, double height) {
    if (heights.isEmpty() || heights.get(heights.size() - 1) < height) {
      heights.add(height);
    }
  }

  /** The first height from one up at which the curve becomes smaller than a value, or a limit. */
  double firstBelow(double square, double from, double limit) {
    if (square(from) < square) {
      return from;
    }
    for (CurvePiece piece : pieces) {
      double low = Math.max(from, piece.from());
      if (low < piece.to() && piece.high() < square) {
        return Math.min(limit, piece.crossing(square, low, piece.to()));
      }
    }
    return limit;
  }
}
