package org.mensuration.validation.worked;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.Stands;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.StandEstimate;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Heights, densities and classes of a stratum. Stateless and thread-safe. */
final class StandFigures {
  /** Which trees make the dominant height of the print. */
  static final DominantHeightRule DOMINANT = DominantHeightRule.HUNDRED_PER_HECTARE;

  private StandFigures() {}

  static Group.Figures of(Stratum stratum, StratumTally tally, StandEstimate estimate) {
    boolean heights = stratum.choices().curve().isPresent();
    return new Group.Figures(
        heights ? lorey(estimate) : OptionalDouble.empty(),
        heights ? dominant(tally) : OptionalDouble.empty(),
        OptionalDouble.of(Measures.in(estimate.densityIndex().stems(), ForestUnits.PER_HECTARE)),
        estimate.relativeDensityMetric().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
        estimate.predictedHeights(),
        stratum.choices().classWidth().isPresent()
            ? Optional.of(estimate.table())
            : Optional.empty());
  }

  private static OptionalDouble lorey(StandEstimate estimate) {
    try {
      return metres(estimate.loreyHeight());
    } catch (IllegalStateException e) {
      // A tree without height and without a curve for its species; the cautions say which.
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble dominant(StratumTally tally) {
    try {
      return metres(
          Optional.of(Stands.dominantHeight(tally.plan(), tally.kept(), DOMINANT).height()));
    } catch (IllegalArgumentException e) {
      // Fewer than a hundred stems a hectare, or a tree without height.
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble metres(Optional<Quantity<Length>> height) {
    return height.isPresent()
        ? OptionalDouble.of(Measures.in(height.get(), ForestUnits.METRE))
        : OptionalDouble.empty();
  }
}
