package org.mensuration.validation.check;

import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mensuration.AngleGauges;
import org.mensuration.EdgeCorrections;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;

/** A map of trees on a rectangle, as tables give it. Stateless and thread-safe. */
final class MapCase {
  private static final List<EdgeRule> RULES =
      List.of(
          EdgeRule.NONE,
          EdgeRule.MIRAGE_SIDES_ONLY,
          EdgeRule.MIRAGE,
          EdgeRule.TOROIDAL,
          EdgeRule.WALKTHROUGH);

  /** The inputs that every procedure on a map takes first. */
  static final List<Parameter> PARAMETERS =
      List.of(
          list("tree_id", "1", "numbers of the trees"),
          list("tree_x", "m", "first coordinate of the trees"),
          list("tree_y", "m", "second coordinate of the trees"),
          list("diameter", "cm", "diameters of the trees"),
          number("west", "m", "least first coordinate of the plot"),
          number("south", "m", "least second coordinate of the plot"),
          number("east", "m", "largest first coordinate of the plot"),
          number("north", "m", "largest second coordinate of the plot"),
          number("factor", "m2/ha", "factor of the gauge"),
          number(
              "edge",
              "1",
              "0 no correction, 1 mirage at sides only, 2 mirage, 3 toroidal, 4 walkthrough"));

  private MapCase() {}

  static Parameter number(String name, String unit, String meaning) {
    return new Parameter(name, name, unit, meaning, Domain.any(), Optional.empty(), false);
  }

  static Parameter list(String name, String unit, String meaning) {
    return new Parameter(name, name, unit, meaning, Domain.any(), Optional.empty(), true);
  }

  static MapTally tally(double[][] x) {
    List<MapTree> trees = new ArrayList<>();
    for (int i = 0; i < x[0].length; i++) {
      trees.add(MapTree.of(id(x[0][i]), place(x[1][i], x[2][i]), centimetres(x[3][i])));
    }
    Boundary plot = EdgeCorrections.rectangle(place(x[4][0], x[5][0]), place(x[6][0], x[7][0]));
    return EdgeCorrections.tally(
        trees,
        AngleGauges.ofFactor(squareMetresPerHectare(x[8][0])),
        plot,
        RULES.get((int) x[9][0]));
  }

  static Position place(double x, double y) {
    return Position.of(metres(x), metres(y));
  }

  static String id(double number) {
    return Long.toString((long) number);
  }
}
