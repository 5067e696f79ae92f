package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Volumes of points from the heights at which the stems just fill the gauge. Keeps a number a
 * point. Not thread-safe.
 */
final class CriticalHeights {
  private final Arithmetic arithmetic;
  private final Map<String, List<Double>> volumes = new HashMap<>();
  private final Map<String, TreeKey> missing = new HashMap<>();
  private final Map<String, Long> trees = new HashMap<>();
  private final List<Double> open = new ArrayList<>();

  CriticalHeights(Arithmetic arithmetic) {
    this.arithmetic = arithmetic;
  }

  /** A counted tree of the open point. */
  void add(CountedRow tree, OptionalDouble height, double sweep) {
    if (!tree.counts()) {
      return;
    }
    if (height.isEmpty()) {
      missing.putIfAbsent(tree.stratum().name(), tree.key());
    } else if (!missing.containsKey(tree.stratum().name())) {
      // A tree that counts twice has its height twice in the sum.
      open.add(height.getAsDouble() * tree.weight() * tree.edgeWeight() * sweep);
    }
    if (height.isPresent()) {
      trees.merge(tree.stratum().name(), 1L, Long::sum);
    }
  }

  void close(Stratum stratum) {
    double[] heights = open.stream().mapToDouble(Double::doubleValue).toArray();
    open.clear();
    if (!missing.containsKey(stratum.name())) {
      volumes
          .computeIfAbsent(stratum.name(), s -> new ArrayList<>())
          .add(arithmetic.criticalHeightVolume(stratum.factor(), heights));
    }
  }

  /** Trees with a critical height. */
  long trees(Stratum stratum) {
    return trees.getOrDefault(stratum.name(), 0L);
  }

  /** The first counted tree without one, if others have it. */
  String gap(Stratum stratum) {
    TreeKey key = missing.get(stratum.name());
    return key == null || trees(stratum) == 0 ? "" : key.toString();
  }

  /** m³/ha of each point; empty unless every counted tree has its critical height. */
  double[] volumes(Stratum stratum) {
    return missing.containsKey(stratum.name()) || trees(stratum) == 0
        ? new double[0]
        : volumes.getOrDefault(stratum.name(), List.of()).stream()
            .mapToDouble(Double::doubleValue)
            .toArray();
  }
}
