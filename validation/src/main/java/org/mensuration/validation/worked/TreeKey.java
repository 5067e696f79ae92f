package org.mensuration.validation.worked;

/**
 * A counted tree: trees are numbered anew at each point. Immutable and thread-safe.
 *
 * @param point name of the point
 * @param tree name of the tree at that point
 */
record TreeKey(String point, String tree) {
  @Override
  public String toString() {
    return "point " + point + " tree " + tree;
  }
}
