package org.mensuration.stand;

/** What strata are weighted by; areas and volumes give other points. Immutable and thread-safe. */
public enum StratumWeight {
  /** By area. */
  AREA,
  /** By expected volume. */
  VOLUME
}
