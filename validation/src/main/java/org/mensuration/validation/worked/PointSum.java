package org.mensuration.validation.worked;

import java.util.OptionalDouble;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.StandEstimate;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/**
 * One point as it is printed. Trees are counted and forgotten, so a million of them take no room.
 * Not thread-safe.
 */
final class PointSum {
  private final String name;
  private final Stratum stratum;
  private final boolean taken;
  private final boolean outside;
  private final SweepCorrection sweep;
  private final boolean measured;
  private boolean saidEmpty;
  private long trees;
  private long withoutDbh;
  private double count;
  private boolean edge;
  private double basalArea;
  private OptionalDouble stems = OptionalDouble.empty();

  PointSum(
      String name,
      Stratum stratum,
      boolean taken,
      boolean outside,
      SweepCorrection sweep,
      boolean measured) {
    this.name = name;
    this.stratum = stratum;
    this.taken = taken;
    this.outside = outside;
    this.sweep = sweep;
    this.measured = measured;
  }

  void sayEmpty() {
    saidEmpty = true;
  }

  /** A row of a tree that is left out of the sums still shows that the point is not empty. */
  void meet() {
    trees++;
  }

  void add(double weight, double edgeWeight, boolean measured) {
    count += weight * edgeWeight * sweep.factor();
    edge |= edgeWeight != 1;
    if (!measured && weight > 0) {
      withoutDbh++;
    }
  }

  /** Takes the figures of the point by itself. */
  void close(StandEstimate alone) {
    basalArea = Measures.in(alone.basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE);
    if (withoutDbh == 0) {
      stems = OptionalDouble.of(Measures.in(alone.stems().value(), ForestUnits.PER_HECTARE));
    }
  }

  String name() {
    return name;
  }

  Stratum stratum() {
    return stratum;
  }

  boolean taken() {
    return taken;
  }

  /** Whether the point was taken beyond the edge. */
  boolean outside() {
    return outside;
  }

  /** Whether the whole sweep was made. */
  SweepCorrection sweep() {
    return sweep;
  }

  /** Whether every counted tree was measured. */
  boolean measured() {
    return measured;
  }

  boolean saidEmpty() {
    return saidEmpty;
  }

  long trees() {
    return trees;
  }

  long withoutDbh() {
    return withoutDbh;
  }

  /** Trees times their weights. */
  double count() {
    return count;
  }

  /** Square metres a hectare. */
  double basalArea() {
    return basalArea;
  }

  /** Stems a hectare, if no tree lacks its diameter. */
  OptionalDouble stems() {
    return stems;
  }

  boolean edge() {
    return edge;
  }
}
