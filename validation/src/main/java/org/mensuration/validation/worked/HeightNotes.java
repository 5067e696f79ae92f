package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.HeightCurves;
import org.mensuration.formula.Domain;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightCurveSet;
import org.mensuration.height.HeightSample;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/**
 * The measured heights of all points and the curves through them. The points are read once before
 * for this, since a height may be missing above the row that measures one. Immutable.
 */
final class HeightNotes {
  private final Map<Kind, HeightCurveSet> curves;

  private HeightNotes(Map<Kind, HeightCurveSet> curves) {
    this.curves = curves;
  }

  /** Strata that share a curve. */
  private record Kind(HeightCurveForm form, double breastHeight) {}

  private static Optional<Kind> kind(Stratum stratum) {
    return stratum.choices().curve().map(form -> new Kind(form, stratum.breastHeight()));
  }

  static HeightNotes read(Notes notes, Map<String, Stratum> strata) {
    Map<Kind, List<HeightSample>> samples = new LinkedHashMap<>();
    strata.values().forEach(s -> kind(s).ifPresent(k -> samples.put(k, new ArrayList<>())));
    if (!samples.isEmpty()) {
      // What is wrong with a row is said when the points are read in earnest.
      NoteTable.read(
          notes,
          PointFile.NAME,
          PointFile.REQUIRED,
          PointFile.OPTIONAL,
          new Problems(),
          row -> add(row, strata, samples));
    }
    Map<Kind, HeightCurveSet> curves = new LinkedHashMap<>();
    samples.forEach(
        (kind, trees) ->
            curves.put(
                kind,
                HeightCurves.fitBySpecies(
                    kind.form(), Measures.metres(kind.breastHeight()), trees)));
    return new HeightNotes(curves);
  }

  private static void add(
      Row row, Map<String, Stratum> strata, Map<Kind, List<HeightSample>> samples) {
    Stratum stratum = strata.get(row.text("stratum"));
    OptionalDouble dbh = row.number("dbh_cm", Domain.above(0), "");
    OptionalDouble height = row.number("height_m", Domain.above(0), "");
    Optional<Kind> kind = stratum == null ? Optional.empty() : kind(stratum);
    if (kind.isPresent()
        && dbh.isPresent()
        && height.isPresent()
        && height.getAsDouble() > kind.get().breastHeight()) {
      samples
          .getOrDefault(kind.get(), new ArrayList<>())
          .add(
              HeightSample.of(
                  row.text("species"),
                  Measures.centimetres(dbh.getAsDouble()),
                  Measures.metres(height.getAsDouble())));
    }
  }

  /** The height of a tree, measured or from the curve of its species. */
  Optional<NotedHeight> of(
      Stratum stratum, String species, OptionalDouble dbh, OptionalDouble measured) {
    if (measured.isPresent()) {
      return Optional.of(new NotedHeight(measured.getAsDouble(), false));
    }
    HeightCurve curve =
        kind(stratum).map(curves::get).map(set -> set.curves().get(species)).orElse(null);
    if (curve == null || dbh.isEmpty()) {
      return Optional.empty();
    }
    double metres =
        Measures.in(
            curve.height(Measures.centimetres(dbh.getAsDouble())).value(), ForestUnits.METRE);
    return Optional.of(new NotedHeight(metres, true));
  }

  /** All curves. */
  List<HeightCurve> curves() {
    return curves.values().stream().flatMap(set -> set.curves().values().stream()).toList();
  }

  /** Why a species has none, by species. */
  Map<String, String> refusals() {
    Map<String, String> refusals = new LinkedHashMap<>();
    curves.values().forEach(set -> refusals.putAll(set.refusals()));
    return refusals;
  }
}
