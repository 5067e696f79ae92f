package org.mensuration.stand;

/**
 * What strata are weighted by; areas and volumes give other points. With the variation of each
 * stratum over its own mean, volume weights give the error of the whole; area weights do so where
 * the means are alike. Immutable and thread-safe.
 */
public enum StratumWeight {
  /** By area. */
  AREA,
  /** By expected volume. */
  VOLUME,
  /** By the number of units, such as plots that fit into each. */
  UNITS
}
