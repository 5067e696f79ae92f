package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.mensuration.Catalogues;
import org.mensuration.formula.OutOfDomainException;

/** Reads the notes, works them out and gives the print. Not thread-safe. */
final class WorkedStand {
  private final Notes notes;
  private final Options options;
  private final Problems problems;
  private final Cautions cautions = new Cautions();
  private final Arithmetic arithmetic = new Arithmetic(Catalogues.standard());

  private WorkedStand(Notes notes, Options options, Problems problems) {
    this.notes = notes;
    this.options = options;
    this.problems = problems;
  }

  /**
   * Works the notes out.
   *
   * @return the lines of the print; none if the notes are bad, and the problems say why
   */
  static List<String> work(Notes notes, Options options, Problems problems) {
    try {
      return new WorkedStand(notes, options, problems).work();
    } catch (BadNotes bad) {
      // A file that cannot be read at all; skipping rows would not help.
      problems.add(bad);
      return List.of();
    }
  }

  private List<String> work() {
    Map<String, Stratum> strata = StandFile.read(notes, problems, cautions);
    Map<String, Station> stations = StationFile.read(notes, arithmetic, problems, cautions);
    List<Stem> stems = StemFile.read(notes, stations, arithmetic, problems, cautions);
    Set<TreeKey> measured = new HashSet<>();
    for (Stem stem : stems) {
      TreeKey key = stem.tree();
      if (key != null) {
        measured.add(key);
      }
    }
    PointFile file =
        PointFile.read(notes, arithmetic, strata, measured, options.units(), problems, cautions);
    List<StemVolume> volumes = volumes(stems, strata, file);
    PlotNotes plots = PlotFile.read(notes, strata, problems, cautions);
    List<NotedLine> lines = LineFile.read(notes, strata, arithmetic, problems, cautions);
    if (!problems.none()) {
      if (!options.skipBadRows() || strata.isEmpty() || file.points().isEmpty()) {
        return List.of();
      }
      sayWhatWasSkipped();
    }
    return Report.of(findings(strata, stations, file, volumes, plots, lines), options);
  }

  private List<StemVolume> volumes(List<Stem> stems, Map<String, Stratum> strata, PointFile file) {
    List<StemVolume> volumes = new ArrayList<>();
    for (Stem stem : stems) {
      TreeKey key = stem.tree();
      try {
        if (key != null && !file.diameters().containsKey(key)) {
          throw stem.row().missed("tree", key.toString(), "a counted tree of " + PointFile.NAME);
        }
        OptionalDouble stump = stumpHeight(key, strata, file);
        volumes.add(StemWork.measure(arithmetic, options, stem, stump));
      } catch (BadNotes bad) {
        problems.add(bad);
      } catch (OutOfDomainException e) {
        problems.add(stem.row().refused(e));
      }
    }
    return volumes;
  }

  private static OptionalDouble stumpHeight(
      @Nullable TreeKey key, Map<String, Stratum> strata, PointFile file) {
    for (PointSum point : file.points()) {
      if (key != null && point.name().equals(key.point())) {
        return point.stratum().stumpHeight();
      }
    }
    return strata.values().stream()
        .findFirst()
        .map(Stratum::stumpHeight)
        .orElse(OptionalDouble.empty());
  }

  private Findings findings(
      Map<String, Stratum> strata,
      Map<String, Station> stations,
      PointFile file,
      List<StemVolume> volumes,
      PlotNotes plots,
      List<NotedLine> lines) {
    List<Stratum> listed = List.copyOf(strata.values());
    Stratum first = listed.get(0);
    Ratios ratios = Ratios.of(arithmetic, volumes, file.diameters(), first.breastHeight());
    StandWork work = new StandWork(arithmetic, ratios.mean(), file.tallies());
    List<Group> groups = work.strata(listed, file.points());
    Group stand = stand(work, listed, groups);
    sayOfPoints(listed, file.points());
    sayOfChoices(listed, file.heights());
    sayOfStems(ratios);
    List<MeasuredVolume> measuredVolumes =
        new MeasureWork(arithmetic, file, ratios.trees(), cautions).volumes(listed);
    return new Findings(
        listed,
        List.copyOf(stations.values()),
        file.points(),
        file.checked(),
        file.heights(),
        volumes,
        ratios,
        groups,
        stand,
        measuredVolumes,
        PlotWork.estimates(arithmetic, listed, plots, cautions),
        LineWork.estimates(arithmetic, listed, lines, cautions),
        cautions.lines(),
        cautions.unused());
  }

  private @Nullable Group stand(StandWork work, List<Stratum> listed, List<Group> groups) {
    if (groups.size() < listed.size()) {
      cautions.add("A stratum has no point, so the strata are not put together");
      return null;
    }
    if (groups.size() == 1) {
      return null;
    }
    if (groups.stream().anyMatch(g -> g.area().isEmpty())) {
      cautions.add("An area is missing, so the strata are not put together");
      return null;
    }
    return work.stand(listed.get(0).stand(), listed, groups);
  }

  private void sayWhatWasSkipped() {
    cautions.add(
        "Bad rows were skipped, as asked: "
            + problems.count()
            + "; every figure is without them, and a point that lost a tree is too low");
    for (Problem problem : problems.kept()) {
      cautions.add("Skipped", problem.text());
    }
  }

  private void sayOfPoints(List<Stratum> strata, List<PointSum> points) {
    for (PointSum point : points) {
      String name = "point " + point.name();
      if (!point.taken()) {
        cautions.add("Points not taken, left out of every mean", name);
      } else if (point.withoutDbh() > 0) {
        cautions.add("Trees without a diameter, so no stems a hectare in their stratum", name);
      }
      if (point.sweep().factor() > 1) {
        cautions.add(
            "Part sweeps, right only if a rule moved points near the edge onto it",
            name + ", " + point.sweep().name());
      }
    }
    if (strata.stream().anyMatch(s -> s.area().isEmpty())) {
      cautions.add("Without an area there is no total");
    }
    if (strata.stream().map(Stratum::breastHeight).distinct().count() > 1) {
      cautions.add("Strata differ in breast height: their diameters are not the same measure");
    }
  }

  private void sayOfChoices(List<Stratum> strata, HeightNotes heights) {
    for (Stratum stratum : strata) {
      Optional<String> caution = stratum.choices().layout().caution();
      if (caution.isPresent()) {
        cautions.add("Stratum " + stratum.name() + ": " + caution.get());
      }
    }
    heights
        .refusals()
        .forEach(
            (species, why) ->
                cautions.add(
                    "No height curve",
                    (species.isEmpty() ? "trees without a species" : species) + " (" + why + ")"));
  }

  private void sayOfStems(Ratios ratios) {
    for (MeasuredTree tree : ratios.trees()) {
      if (tree.ratio().isEmpty()) {
        cautions.add(
            "Measured trees left out of the volume ratio",
            tree.name() + " (" + tree.whyNot() + ")");
      }
      for (StemVolume stem : tree.stems()) {
        if (stem.pieces().stream().anyMatch(p -> p.what().equals("stump") && !p.known())) {
          cautions.add(
              "Stumps within the sections, so in the volume", "stem " + stem.stem().name());
        }
        String chosen = stem.stem().chosen();
        if (chosen.equals("judgement") || chosen.isEmpty()) {
          cautions.add(
              "Stems not chosen by chance, so the error of the ratio is no sampling error",
              "stem " + stem.stem().name());
        }
      }
    }
    Estimate mean = ratios.mean();
    if (mean != null && mean.error().isEmpty()) {
      cautions.add("One measured tree gives no error of the ratio, so volume has none");
    }
  }
}
