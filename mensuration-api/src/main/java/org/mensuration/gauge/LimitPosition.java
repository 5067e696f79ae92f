package org.mensuration.gauge;

/** Where a measured tree stands beside its limiting distance. Immutable and thread-safe. */
public enum LimitPosition {
  /** Nearer than the limit. */
  IN,

  /** At the limit, within a thousand millionth of it. */
  AT_LIMIT,

  /** Beyond the limit. */
  OUT
}
