package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.AngleGauges;
import org.mensuration.Estimators;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.stand.CombinedVolume;
import org.mensuration.stand.StandEstimate;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Volumes of strata from what was measured beside the count. Not thread-safe. */
final class MeasureWork {
  private final Arithmetic arithmetic;
  private final PointFile file;
  private final Cautions cautions;
  private final Map<String, Double> stems = new HashMap<>();

  MeasureWork(
      Arithmetic arithmetic, PointFile file, List<MeasuredTree> stemTrees, Cautions cautions) {
    this.arithmetic = arithmetic;
    this.file = file;
    this.cautions = cautions;
    for (MeasuredTree tree : stemTrees) {
      if (tree.ratio().isPresent()) {
        stems.put(tree.name(), tree.volume());
      }
    }
  }

  List<MeasuredVolume> volumes(Collection<Stratum> strata) {
    List<MeasuredVolume> volumes = new ArrayList<>();
    for (Stratum stratum : strata) {
      Optional<StandEstimate> counts =
          Objects.requireNonNull(file.tallies().get(stratum.name())).estimate();
      if (counts.isPresent()) {
        byTrees(stratum, counts.get()).ifPresent(volumes::add);
        byPoints(stratum, counts.get()).ifPresent(volumes::add);
        byHeights(stratum, counts.get()).ifPresent(volumes::add);
      }
    }
    return volumes;
  }

  private Optional<MeasuredVolume> byTrees(Stratum stratum, StandEstimate counts) {
    OptionalDouble factor = stratum.choices().measureFactor();
    if (factor.isEmpty()) {
      return Optional.empty();
    }
    List<CountedTree> trees = new ArrayList<>();
    for (MeasureNotes.Noted noted : file.measures().trees(stratum)) {
      Optional<CountedTree> tree = tree(noted);
      if (tree.isPresent()) {
        trees.add(tree.get());
      } else {
        cautions.add(
            "Measure trees left out, since their stem gives no volume", noted.key().toString());
      }
    }
    try {
      CombinedVolume product =
          Estimators.secondFactor(
              counts,
              AngleGauges.ofFactor(Measures.squareMetresPerHectare(factor.getAsDouble())),
              trees,
              stratum.choices().layout());
      return Optional.of(product(stratum, counts, 0, trees.size(), product));
    } catch (IllegalArgumentException | IllegalStateException refused) {
      cautions.add("No volume by the second factor of " + stratum.name(), why(refused));
      return Optional.empty();
    }
  }

  private Optional<MeasuredVolume> byPoints(Stratum stratum, StandEstimate counts) {
    List<MeasureNotes.NotedPoint> noted = file.measures().points(stratum);
    if (noted.isEmpty()) {
      return Optional.empty();
    }
    List<CountPoint> points = new ArrayList<>();
    int trees = 0;
    int withTrees = 0;
    for (MeasureNotes.NotedPoint point : noted) {
      List<CountedTree> measured = new ArrayList<>();
      for (MeasureNotes.Noted tree : point.trees()) {
        tree(tree).ifPresent(measured::add);
      }
      if (measured.size() < point.trees().size()) {
        cautions.add(
            "Measured points left out, since a stem there gives no volume",
            "point " + point.name());
        continue;
      }
      points.add(new CountPoint(point.name(), measured, point.sweep(), false));
      trees += measured.size();
      withTrees += measured.isEmpty() ? 0 : 1;
    }
    try {
      CombinedVolume product =
          Estimators.countAndMeasure(counts, points, stratum.choices().layout());
      return Optional.of(product(stratum, counts, withTrees, trees, product));
    } catch (IllegalArgumentException | IllegalStateException refused) {
      cautions.add("No volume by the measured points of " + stratum.name(), why(refused));
      return Optional.empty();
    }
  }

  private Optional<MeasuredVolume> byHeights(Stratum stratum, StandEstimate counts) {
    String gap = file.critical().gap(stratum);
    if (!gap.isEmpty()) {
      cautions.add(
          "No volume from critical heights, since a counted tree has none; the first of each"
              + " stratum",
          gap);
    }
    double[] volumes = file.critical().volumes(stratum);
    return volumes.length == 0
        ? Optional.empty()
        : Optional.of(
            new MeasuredVolume(
                stratum,
                volumes.length,
                counted(stratum),
                basalArea(counts),
                0,
                file.critical().trees(stratum),
                Optional.empty(),
                Optional.of(Estimate.ofSample(arithmetic, volumes)),
                List.of()));
  }

  private MeasuredVolume product(
      Stratum stratum, StandEstimate counts, int points, int trees, CombinedVolume product) {
    List<String> remarks = new ArrayList<>(product.remarks());
    remarks.removeAll(counts.remarks());
    return new MeasuredVolume(
        stratum,
        counts.points(),
        counted(stratum),
        basalArea(counts),
        points,
        trees,
        Optional.of(product),
        Optional.empty(),
        List.copyOf(remarks));
  }

  private Optional<CountedTree> tree(MeasureNotes.Noted noted) {
    if (noted.volume().isPresent()) {
      return Optional.of(
          noted.tree().withVolume(Measures.cubicMetres(noted.volume().getAsDouble())));
    }
    Double stem = stems.get(noted.key().toString());
    return stem == null
        ? Optional.empty()
        : Optional.of(noted.tree().withVolume(Measures.cubicMetres(stem)));
  }

  private double counted(Stratum stratum) {
    return file.points().stream()
        .filter(p -> p.stratum().name().equals(stratum.name()))
        .mapToDouble(PointSum::count)
        .sum();
  }

  private static double basalArea(StandEstimate counts) {
    return Measures.in(counts.basalArea().value(), ForestUnits.SQUARE_METRE_PER_HECTARE);
  }

  private static String why(RuntimeException refused) {
    return String.valueOf(refused.getMessage());
  }
}
