package org.mensuration.gauge;

/**
 * What a counted stem is to its tree; {@link CountChoices} says which kinds count. Immutable and
 * thread-safe.
 */
public enum StemKind {
  /** The only stem of its tree, or the leading one. */
  SINGLE,
  /** A further stem of a tree that forks below breast height. */
  FURTHER_OF_FORK,
  /** A further stem of a coppice stool. */
  FURTHER_OF_COPPICE
}
