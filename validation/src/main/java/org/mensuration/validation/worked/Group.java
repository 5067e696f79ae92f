package org.mensuration.validation.worked;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.mensuration.stand.StandTable;

/**
 * What is estimated for a stratum or for the stand, a hectare. Immutable and thread-safe.
 *
 * @param name name of the stratum or stand
 * @param area hectares, if known
 * @param points points taken
 * @param notTaken points not taken
 * @param basalArea m²/ha
 * @param stems 1/ha, if no counted tree lacks its diameter
 * @param quadraticMean centimetres
 * @param volume m³/ha, if any stem was measured
 * @param pointsNeeded points for a 10 % error of basal area at 95 %
 * @param figures figures of a stratum besides; empty for the stand
 */
record Group(
    String name,
    OptionalDouble area,
    int points,
    int notTaken,
    Estimate basalArea,
    @Nullable Estimate stems,
    OptionalDouble quadraticMean,
    @Nullable Estimate volume,
    OptionalDouble pointsNeeded,
    Optional<Figures> figures) {

  /**
   * Figures that are printed without an error. Immutable and thread-safe.
   *
   * @param loreyHeight metres, if every counted tree has a height
   * @param dominantHeight metres, of the thickest hundred stems a hectare, if it can be told
   * @param densityIndex stems a hectare at a mean diameter of 25.4 cm
   * @param relativeDensity of m²/ha and cm
   * @param predictedHeights heights read from a curve
   * @param table the stand table, if classes were asked for
   */
  record Figures(
      OptionalDouble loreyHeight,
      OptionalDouble dominantHeight,
      OptionalDouble densityIndex,
      OptionalDouble relativeDensity,
      long predictedHeights,
      Optional<StandTable> table) {}
}
