package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The volume-basal-area ratio of the measured trees. Immutable and thread-safe.
 *
 * @param trees every measured tree, used or not
 * @param mean mean ratio of those used; null if there is none
 * @param whyNone why there is no mean, empty if there is
 * @param bark over or under
 */
record Ratios(List<MeasuredTree> trees, @Nullable Estimate mean, String whyNone, String bark) {

  /** How near to breast height a reading must be to stand for the diameter there, in metres. */
  private static final double NEAR = 0.05;

  static Ratios of(
      Arithmetic arithmetic,
      List<StemVolume> stems,
      Map<TreeKey, OptionalDouble> diameters,
      double breastHeight) {
    Map<String, List<StemVolume>> byTree = new LinkedHashMap<>();
    for (StemVolume stem : stems) {
      TreeKey key = stem.stem().tree();
      String name = key == null ? "stem " + stem.stem().name() : key.toString();
      byTree.computeIfAbsent(name, n -> new ArrayList<>()).add(stem);
    }
    List<MeasuredTree> trees = new ArrayList<>();
    Set<String> barks = new TreeSet<>();
    for (Map.Entry<String, List<StemVolume>> entry : byTree.entrySet()) {
      OptionalDouble dbh = dbh(entry.getValue(), diameters, breastHeight);
      MeasuredTree tree = tree(arithmetic, entry.getKey(), entry.getValue(), dbh);
      trees.add(tree);
      if (tree.ratio().isPresent()) {
        entry.getValue().forEach(s -> barks.add(s.stem().bark()));
      }
    }
    double[] ratios =
        trees.stream()
            .map(MeasuredTree::ratio)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .toArray();
    String whyNone = "";
    if (stems.isEmpty()) {
      whyNone = "no stem was measured";
    } else if (ratios.length == 0) {
      whyNone = "no measured tree can be used, see the cautions";
    } else if (barks.size() > 1) {
      whyNone = "the measured stems are partly over and partly under bark";
    }
    Estimate mean = whyNone.isEmpty() ? Estimate.ofSample(arithmetic, ratios) : null;
    return new Ratios(List.copyOf(trees), mean, whyNone, String.join(" and ", barks));
  }

  /** Volume per hectare of a basal area per hectare by the mean ratio; empty if there is none. */
  OptionalDouble volume(Arithmetic arithmetic, double basalArea) {
    return mean == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(arithmetic.volume(basalArea, mean.mean()));
  }

  private static MeasuredTree tree(
      Arithmetic arithmetic, String name, List<StemVolume> stems, OptionalDouble dbh) {
    double volume = 0;
    List<String> why = new ArrayList<>();
    for (StemVolume stem : stems) {
      volume += stem.volume();
      for (String gap : stem.gaps()) {
        why.add((stems.size() > 1 ? "stem " + stem.stem().name() + ": " : "") + gap);
      }
    }
    if (dbh.isEmpty()) {
      why.add("no diameter at breast height");
    }
    OptionalDouble ratio =
        dbh.isPresent() && why.isEmpty()
            ? OptionalDouble.of(arithmetic.ratio(volume, dbh.getAsDouble()))
            : OptionalDouble.empty();
    return new MeasuredTree(name, List.copyOf(stems), dbh, volume, ratio, String.join("; ", why));
  }

  private static OptionalDouble dbh(
      List<StemVolume> stems, Map<TreeKey, OptionalDouble> diameters, double breastHeight) {
    TreeKey key = stems.get(0).stem().tree();
    OptionalDouble counted =
        key == null ? OptionalDouble.empty() : diameters.getOrDefault(key, OptionalDouble.empty());
    if (counted.isPresent() || stems.size() > 1) {
      return counted;
    }
    Stem stem = stems.get(0).stem();
    if (!stem.bark().equals("over")) {
      return OptionalDouble.empty();
    }
    for (Reading reading : stem.readings()) {
      if (Math.abs(reading.height() - breastHeight) <= NEAR) {
        return OptionalDouble.of(reading.diameter());
      }
    }
    return OptionalDouble.empty();
  }
}
