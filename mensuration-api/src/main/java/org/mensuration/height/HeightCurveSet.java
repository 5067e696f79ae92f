package org.mensuration.height;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Height curves by species, and why a species has none. Immutable and thread-safe.
 *
 * @param curves the curve of each species that could be fitted
 * @param refusals the reason for each species that could not
 */
public record HeightCurveSet(Map<String, HeightCurve> curves, Map<String, String> refusals) {

  /**
   * Copies the maps.
   *
   * @param curves the curve of each species that could be fitted
   * @param refusals the reason for each species that could not
   */
  public HeightCurveSet {
    curves = Collections.unmodifiableMap(new LinkedHashMap<>(curves));
    refusals = Collections.unmodifiableMap(new LinkedHashMap<>(refusals));
  }

  /**
   * The curve of a species.
   *
   * @param species name of the species
   * @return its curve
   * @throws HeightCurveException if it has none; the message says why
   */
  public HeightCurve curve(String species) {
    HeightCurve curve = curves.get(species);
    if (curve == null) {
      throw new HeightCurveException(without(species));
    }
    return curve;
  }

  private String without(String species) {
    return "species \""
        + species
        + "\" has no height curve: "
        + refusals.getOrDefault(species, "none of its heights was measured");
  }

  /**
   * The height of a tree: the measured one if there is one, else what the curve of its species
   * gives.
   *
   * @param tree the tree
   * @return the height, marked as measured or predicted
   * @throws HeightCurveException if the height is missing and the species has no curve; the message
   *     says why
   */
  public TreeHeight heightOf(HeightSample tree) {
    if (tree.height().isPresent()) {
      return TreeHeight.measured(tree.height().get());
    }
    if (!curves.containsKey(tree.species())) {
      throw new HeightCurveException("a height is missing and " + without(tree.species()));
    }
    return curve(tree.species()).height(tree.diameter());
  }

  /**
   * The heights of trees, missing ones filled.
   *
   * @param trees the trees
   * @return one height a tree, in the order of the trees
   * @throws HeightCurveException as for {@link #heightOf(HeightSample)}
   */
  public List<TreeHeight> heightsOf(List<HeightSample> trees) {
    return Collections.unmodifiableList(
        trees.stream().map(this::heightOf).collect(Collectors.toList()));
  }
}
