package org.mensuration.validation.worked;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.stand.CombinedVolume;

/**
 * Volume of a stratum from a count and from what was measured beside it. Immutable and thread-safe.
 *
 * @param stratum the stratum
 * @param points points of the count
 * @param counted trees of the count with their weights
 * @param basalArea m²/ha of the count
 * @param measuredPoints measured points with trees; 0 if the second factor picked the trees
 * @param measuredTrees trees whose volume was used
 * @param product the volume; empty if it comes from critical heights
 * @param critical the volume from critical heights, m³/ha
 * @param remarks what must be printed beside it
 */
record MeasuredVolume(
    Stratum stratum,
    int points,
    double counted,
    double basalArea,
    int measuredPoints,
    long measuredTrees,
    Optional<CombinedVolume> product,
    Optional<Estimate> critical,
    List<String> remarks) {

  /** Square metres a hectare of the second gauge; empty if it did not pick the trees. */
  OptionalDouble secondFactor() {
    return measuredPoints == 0 && product.isPresent()
        ? stratum.choices().measureFactor()
        : OptionalDouble.empty();
  }
}
