package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What lines of one kind say of a stratum. Immutable and thread-safe.
 *
 * @param stratum the stratum
 * @param lines the lines
 * @param basalArea m²/ha
 * @param stems 1/ha
 * @param volume m³/ha, if every tree has its volume
 */
record LineEstimate(
    Stratum stratum,
    List<LineSum> lines,
    Estimate basalArea,
    Estimate stems,
    @Nullable Estimate volume) {

  /**
   * A line by itself. Immutable and thread-safe.
   *
   * @param line the line
   * @param basalArea m²/ha
   * @param stems 1/ha
   * @param volume m³/ha, if every tree has its volume
   */
  record LineSum(NotedLine line, double basalArea, double stems, OptionalDouble volume) {}
}
