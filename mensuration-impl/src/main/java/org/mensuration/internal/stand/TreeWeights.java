package org.mensuration.internal.stand;

import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.internal.plot.NestedPlots;
import org.mensuration.kernel.CountedTrees;
import org.mensuration.kernel.GaugeFactor;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** What one counted tree stands for, on plain numbers. Implementations are immutable. */
interface TreeWeights {

  /** The weights of a gauge or of plots. */
  static TreeWeights of(TreeSelection selection) {
    if (selection instanceof AngleGauge gauge) {
      double factor = Measures.in(gauge.factor(), ForestUnits.SQUARE_METRE_PER_HECTARE);
      return new OfGauge(factor, gauge.compensated());
    }
    if (selection instanceof FixedPlots plots) {
      return new OfPlots(NestedPlots.of(plots.circles()));
    }
    throw new IllegalArgumentException(
        "trees are chosen by an angle gauge or on fixed plots, not by "
            + selection.getClass().getName());
  }

  /** Stems per hectare of a tree; 0 if a tree of this size is not taken. */
  double stemsPerHectare(double diameterCm);

  /**
   * Share of basal area: what is summed for basal area, in units of {@link #basalAreaUnit}, of a
   * tree of stems per hectare.
   */
  double basalArea(double diameterCm, double stemsPerHectare);

  /** m²/ha of one in the sums of basal area. */
  double basalAreaUnit();

  /** Whether trees without diameter can be counted. */
  boolean countsUnmeasured();

  /** Whether each sight needs its slope. */
  boolean needsSlope();

  /** What a sight along a slope weighs. */
  double ofSlope(double slopeDeg);

  /** Limiting distance in m. */
  double limit(double diameterCm);

  /**
   * A gauge: basal area is the count times the factor, which is taken last.
   *
   * @param factor in m²/ha
   * @param compensated whether it allows for slope
   */
  record OfGauge(double factor, boolean compensated) implements TreeWeights {
    @Override
    public double stemsPerHectare(double diameterCm) {
      return LimitingDistance.treeFactor(factor, diameterCm);
    }

    @Override
    public double basalArea(double diameterCm, double stemsPerHectare) {
      return 1;
    }

    @Override
    public double basalAreaUnit() {
      return factor;
    }

    @Override
    public boolean countsUnmeasured() {
      return true;
    }

    @Override
    public boolean needsSlope() {
      return !compensated;
    }

    @Override
    public double ofSlope(double slopeDeg) {
      return GaugeFactor.alongSight(1, slopeDeg);
    }

    @Override
    public double limit(double diameterCm) {
      return LimitingDistance.toCentre(factor, diameterCm);
    }
  }

  /**
   * Plots of fixed size.
   *
   * @param plots the circles
   */
  record OfPlots(NestedPlots plots) implements TreeWeights {
    @Override
    public double stemsPerHectare(double diameterCm) {
      return plots.stemsPerHectare(diameterCm);
    }

    @Override
    public double basalArea(double diameterCm, double stemsPerHectare) {
      return stemsPerHectare * CountedTrees.basalArea(diameterCm);
    }

    @Override
    public double basalAreaUnit() {
      return 1;
    }

    @Override
    public boolean countsUnmeasured() {
      return false;
    }

    @Override
    public boolean needsSlope() {
      return false;
    }

    @Override
    public double ofSlope(double slopeDeg) {
      return 1;
    }

    @Override
    public double limit(double diameterCm) {
      return plots.radius(diameterCm);
    }
  }
}
