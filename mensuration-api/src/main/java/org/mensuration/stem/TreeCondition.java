package org.mensuration.stem;

/** Whether a tree lives, as far as its measurement is concerned. */
public enum TreeCondition {
  /** Alive. */
  LIVING,
  /** Dead and standing with its top. */
  DEAD,
  /** Dead and standing, its top broken off. */
  DEAD_BROKEN
}
