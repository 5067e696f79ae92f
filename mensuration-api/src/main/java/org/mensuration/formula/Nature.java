package org.mensuration.formula;

/** What kind of truth a formula has. */
public enum Nature {
  /** Follows from geometry alone. */
  GEOMETRIC,
  /** Fitted to measurements; holds for what was measured. */
  EMPIRICAL,
  /** Agreed upon; holds because a law, a standard or a trade says so. */
  CONVENTION,
  /** Follows from the theory of sampling. */
  STATISTICAL
}
