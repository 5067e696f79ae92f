package org.mensuration.source;

/** What a work is cited for. */
public enum Role {
  /** The work states the formula or rule. */
  DEFINES,
  /** The work prints values of it. */
  TABULATES,
  /** The work derives, explains or limits it. */
  EXPLAINS
}
