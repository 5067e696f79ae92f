package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.internal.catalogue.CountFormulas;
import org.mensuration.internal.catalogue.TreeVolumeFormulas;
import org.mensuration.stand.TreeVolume;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Volumes of trees by rules. Stateless and thread-safe. */
public final class VolumeRules {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private VolumeRules() {}

  /**
   * A point with volumes for every tree that has a diameter and no volume yet.
   *
   * @param point the point
   * @param rule the rule
   * @return the new point
   * @throws IllegalArgumentException if the rule refuses a tree; the message names it
   */
  public static CountPoint fill(CountPoint point, TreeVolume rule) {
    List<CountedTree> trees = new ArrayList<>();
    for (CountedTree tree : point.trees()) {
      if (tree.detail().volume().isPresent() || !tree.diameter().isPresent()) {
        trees.add(tree);
        continue;
      }
      try {
        trees.add(tree.withVolume(rule.of(tree)));
      } catch (IllegalArgumentException refused) {
        throw new IllegalArgumentException(
            Notices.tree(point.id(), trees.size()) + ": " + refused.getMessage(), refused);
      }
    }
    return point.withTrees(trees);
  }

  /**
   * The diameter of a tree.
   *
   * @param tree the tree
   * @return its diameter
   * @throws IllegalArgumentException if it has none
   */
  public static Quantity<Length> diameter(CountedTree tree) {
    return tree.diameter()
        .orElseThrow(() -> new IllegalArgumentException("a volume needs a diameter"));
  }

  /**
   * The height of a tree, measured or predicted.
   *
   * @param tree the tree
   * @return its height
   * @throws IllegalArgumentException if it has none
   */
  public static Quantity<Length> height(CountedTree tree) {
    return tree.detail()
        .height()
        .orElseThrow(() -> new IllegalArgumentException("this rule needs the height of the tree"));
  }

  /**
   * A form factor.
   *
   * @param factor form factor at breast height
   * @return the rule
   */
  public static TreeVolume formFactor(double factor) {
    TreeVolumeFormulas.FROM_FORM_FACTOR.value(1, 1, factor); // refuses a bad factor at once
    return tree ->
        Measures.cubicMetres(
            TreeVolumeFormulas.FROM_FORM_FACTOR.value(
                CENTIMETRES.read(diameter(tree)), METRES.read(height(tree)), factor));
  }

  /**
   * A volume-basal-area ratio.
   *
   * @param ratioM3M2 the ratio
   * @return the rule
   */
  public static TreeVolume ratio(double ratioM3M2) {
    TreeVolumeFormulas.FROM_RATIO.value(1, ratioM3M2); // refuses a bad ratio at once
    return tree ->
        Measures.cubicMetres(
            TreeVolumeFormulas.FROM_RATIO.value(CENTIMETRES.read(diameter(tree)), ratioM3M2));
  }

  /**
   * Volume over basal area of a tree.
   *
   * @param tree a tree with diameter and volume
   * @return in m³ per m²
   * @throws IllegalArgumentException if it lacks one
   */
  public static double ratioOf(CountedTree tree) {
    return CountFormulas.TREE_RATIO.value(
        Measures.in(
            tree.detail()
                .volume()
                .orElseThrow(() -> new IllegalArgumentException("the tree has no volume")),
            ForestUnits.CUBIC_METRE),
        CENTIMETRES.read(diameter(tree)));
  }
}
