package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A line with the trees chosen from it to both sides; the list grows while the file is read. Not
 * thread-safe.
 *
 * @param name name of the line
 * @param stratum its stratum
 * @param length level metres
 * @param factor m²/ha of the gauge, if trees are chosen by their diameter
 * @param angle least elevation of the top in degrees, if they are chosen by their height
 * @param trees the trees
 */
record NotedLine(
    String name,
    Stratum stratum,
    double length,
    OptionalDouble factor,
    OptionalDouble angle,
    List<LineTree> trees) {

  /**
   * A tree chosen from a line. Immutable and thread-safe.
   *
   * @param tree name of the tree; empty for a line without trees
   * @param dbh centimetres, if measured
   * @param height metres above the eye, if measured
   * @param volume cubic metres, if noted
   * @param counts whether it is more than a remark that the line is empty, or a dead tree left out
   */
  record LineTree(
      String tree,
      OptionalDouble dbh,
      OptionalDouble height,
      OptionalDouble volume,
      boolean counts) {}

  /** The trees that count. */
  List<LineTree> counted() {
    return trees.stream().filter(LineTree::counts).toList();
  }
}
