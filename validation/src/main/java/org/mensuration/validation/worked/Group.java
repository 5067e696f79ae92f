package org.mensuration.validation.worked;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

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
    OptionalDouble pointsNeeded) {}
