package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.internal.catalogue.DominantFormulas;
import org.mensuration.stand.DominantHeight;
import org.mensuration.stand.DominantHeightRule;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Dominant height of counted trees. Stateless and thread-safe. */
public final class ThickestTrees {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private ThickestTrees() {}

  /** A tree: diameter in cm, height in m, stems per hectare of the stand that it stands for. */
  private record Tree(double diameter, double height, double expansion) {}

  /**
   * The dominant height.
   *
   * @param plan what is counted and by which choices
   * @param points the points
   * @param rule which trees make it
   * @return the height
   * @throws IllegalArgumentException if a counted tree lacks diameter or height, or there are fewer
   *     stems than the rule asks for
   */
  public static DominantHeight height(
      TallyPlan plan, Iterable<? extends CountPoint> points, DominantHeightRule rule) {
    TreeWeights weights = TreeWeights.of(plan.selection());
    List<Tree> trees = new ArrayList<>();
    int number = 0;
    for (CountPoint point : points) {
      BeyondEdge.require(plan, point.id(), point.outside());
      if (!point.outside()) {
        number++;
      }
      List<Tree> here = new ArrayList<>();
      for (int i = 0; i < point.trees().size(); i++) {
        add(plan, weights, point, i, here);
      }
      if (rule.kind() == DominantHeightRule.Kind.THICKEST_OF_EACH_POINT) {
        if (!here.isEmpty() && !point.outside()) {
          trees.add(thickest(here));
        }
      } else {
        trees.addAll(here);
      }
    }
    if (trees.isEmpty()) {
      throw new IllegalArgumentException("no tree was counted, so there is no dominant height");
    }
    return height(trees, number, rule);
  }

  private static void add(
      TallyPlan plan, TreeWeights weights, CountPoint point, int index, List<Tree> trees) {
    CountedTree tree = point.trees().get(index);
    double weight = tree.weight() * tree.edgeWeight() * point.sweep().factor();
    if (!(weight > 0) || !plan.choices().counts(tree.detail().kind(), tree.detail().dead())) {
      return;
    }
    if (!tree.diameter().isPresent() || !tree.detail().height().isPresent()) {
      throw new IllegalArgumentException(
          Notices.tree(point.id(), index)
              + " lacks diameter or height; the dominant height needs both of every tree");
    }
    double diameter = CENTIMETRES.read(tree.diameter().get());
    double expansion = weight * weights.stemsPerHectare(diameter);
    if (expansion > 0) {
      trees.add(new Tree(diameter, METRES.read(tree.detail().height().get()), expansion));
    }
  }

  /** The thickest tree of a point; trees alike in diameter give their mean height. */
  private static Tree thickest(List<Tree> here) {
    double[] diameters = here.stream().mapToDouble(Tree::diameter).toArray();
    double[] heights = here.stream().mapToDouble(Tree::height).toArray();
    double[] one = {1};
    double height = DominantFormulas.DOMINANT_HEIGHT.applyTo(diameters, heights, one);
    double diameter = DominantFormulas.DOMINANT_HEIGHT.applyTo(diameters, diameters, one);
    return new Tree(diameter, height, 1);
  }

  private static DominantHeight height(List<Tree> trees, int points, DominantHeightRule rule) {
    double[] diameters = trees.stream().mapToDouble(Tree::diameter).toArray();
    double[] heights = trees.stream().mapToDouble(Tree::height).toArray();
    double[] expansions = trees.stream().mapToDouble(Tree::expansion).toArray();
    double all = 0;
    for (double expansion : expansions) {
      all += expansion;
    }
    double wanted =
        switch (rule.kind()) {
          case THICKEST_PER_HECTARE -> rule.number() * points;
          case THICKEST_PER_ACRE ->
              points
                  * Measures.in(
                      Measures.of(rule.number(), ForestUnits.PER_ACRE), ForestUnits.PER_HECTARE);
          case THICKEST_PERCENT -> rule.number() / 100 * all;
          case THICKEST_OF_EACH_POINT -> trees.size();
        };
    if (!(wanted <= all * (1 + 1e-9))) {
      throw new IllegalArgumentException(
          rule.text() + ": the points stand for only " + all / points + " stems per hectare");
    }
    double[] number = {Math.min(wanted, all)};
    return new DominantHeight(
        rule,
        Measures.metres(
            DominantFormulas.DOMINANT_HEIGHT_COUNTED.applyTo(
                diameters, heights, expansions, number)),
        Measures.centimetres(DominantFormulas.TOP_DIAMETER.applyTo(diameters, expansions, number)));
  }
}
