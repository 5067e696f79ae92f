package org.mensuration.stand;

/** What a stand table tells apart besides diameter classes. Immutable and thread-safe. */
public enum TableGroup {
  /** Species. */
  SPECIES("species"),
  /** The class or condition that the crew noted by its own key. */
  TREE_CLASS("class of the tree"),
  /** Living and dead. */
  CONDITION("condition, living or dead");

  private final String text;

  TableGroup(String text) {
    this.text = text;
  }

  /**
   * The grouping in words, to be printed beside the table.
   *
   * @return the words
   */
  public String text() {
    return text;
  }
}
