package org.mensuration.gauge;

import java.util.List;

/**
 * Which stems count besides living single ones. Stems left out by a choice stay on record and are
 * reported as a number. Immutable and thread-safe.
 *
 * @param forks whether further stems of a tree forked below breast height count as trees
 * @param coppice whether further stems of a coppice stool count as trees
 * @param dead whether dead trees count
 */
public record CountChoices(boolean forks, boolean coppice, boolean dead) {
  /** Each stem at breast height counts as a tree, dead trees do not. */
  public static final CountChoices STANDARD = new CountChoices(true, true, false);

  /**
   * Whether a stem counts.
   *
   * @param kind what the stem is to its tree
   * @param isDead whether the tree is dead
   * @return true if it counts
   */
  public boolean counts(StemKind kind, boolean isDead) {
    return (dead || !isDead)
        && (kind == StemKind.SINGLE || (kind == StemKind.FURTHER_OF_FORK ? forks : coppice));
  }

  /**
   * The choices in words, to be printed beside the figures.
   *
   * @return one line a choice
   */
  public List<String> text() {
    return List.of(
        "fork below breast height: " + stems(forks),
        "coppice stool: " + stems(coppice),
        "dead trees: " + (dead ? "counted" : "not counted"));
  }

  private static String stems(boolean each) {
    return each ? "each stem counts as a tree" : "only the leading stem counts";
  }
}
