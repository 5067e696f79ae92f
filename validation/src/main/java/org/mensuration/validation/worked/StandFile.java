package org.mensuration.validation.worked;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.formula.Domain;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.stand.SampleLayout;

/** Reads the strata. Stateless and thread-safe. */
final class StandFile {
  static final String NAME = "stand.csv";

  private static final List<String> REQUIRED =
      List.of("stand", "stratum", "gauge_factor_m2_per_ha", "breast_height_m", "tie_rule");
  private static final List<String> OPTIONAL =
      List.of(
          "area_ha",
          "minimum_dbh_cm",
          "stump_height_m",
          "points_chosen",
          "dead_trees",
          "edge_rule",
          "height_curve",
          "class_width_cm",
          "measure_factor_m2_per_ha",
          "remark");
  private static final List<String> EDGE_RULES =
      List.of("", "none", "walkthrough", "mirage", "part sweep", StratumChoices.EXTENDED_GRID);

  private StandFile() {}

  static Map<String, Stratum> read(Notes notes, Problems problems, Cautions cautions) {
    Map<String, Stratum> strata = new LinkedHashMap<>();
    var unknown =
        NoteTable.read(
            notes,
            NAME,
            REQUIRED,
            OPTIONAL,
            problems,
            row -> {
              Stratum stratum = stratum(row);
              for (Stratum other : strata.values()) {
                if (!other.stand().equals(stratum.stand())) {
                  throw row.bad("stand", "one stand in all rows, here " + other.stand());
                }
              }
              if (strata.putIfAbsent(stratum.name(), stratum) != null) {
                throw row.bad("stratum", "each stratum once");
              }
            });
    cautions.unusedColumns(NAME, unknown);
    if (strata.isEmpty() && problems.none()) {
      throw new BadNotes(new Problem(NAME, 2, "", "no row", "a row a stratum"));
    }
    return strata;
  }

  private static Stratum stratum(Row row) {
    double factor =
        row.requiredNumber(
            "gauge_factor_m2_per_ha", Domain.open(0, 10000), "a factor above 0 in m²/ha");
    return new Stratum(
        row.required("stand", "the name of the stand"),
        row.required("stratum", "a name, also for the only stratum"),
        row.number("area_ha", Domain.above(0), "hectares above 0, or empty"),
        factor,
        row.requiredNumber("breast_height_m", Domain.open(0, 3), "metres, above 0 and below 3"),
        row.oneOf("tie_rule", List.of("in", "out")).equals("in"),
        row.number("minimum_dbh_cm", Domain.atLeast(0), "centimetres from 0, or empty"),
        row.number("stump_height_m", Domain.fromBelow(0, 3), "metres from 0 to below 3, or empty"),
        choices(row, factor));
  }

  private static StratumChoices choices(Row row, double factor) {
    String layout = row.oneOf("points_chosen", List.of("", "random", "grid", "judgement"));
    String dead = row.oneOf("dead_trees", List.of("", "counted", "left out"));
    String edge = row.oneOf("edge_rule", EDGE_RULES);
    String curve =
        row.oneOf("height_curve", List.of("", "naslund", "petterson", "curtis", "power"));
    return new StratumChoices(
        layout.equals("grid")
            ? SampleLayout.SYSTEMATIC
            : layout.equals("judgement") ? SampleLayout.JUDGEMENT : SampleLayout.RANDOM,
        !dead.equals("left out"),
        edge.equals("none") ? "" : edge,
        curve.isEmpty()
            ? Optional.empty()
            : Optional.of(HeightCurveForm.valueOf(curve.toUpperCase(Locale.ROOT))),
        row.number("class_width_cm", Domain.above(0), "centimetres above 0, or empty"),
        measureFactor(row, factor),
        row);
  }

  /** A factor that is not the larger one would pick trees that were not counted. */
  private static OptionalDouble measureFactor(Row row, double factor) {
    return row.number(
        "measure_factor_m2_per_ha",
        Domain.open(factor, 10000),
        "a factor above that of the count, "
            + row.text("gauge_factor_m2_per_ha")
            + " m²/ha, or empty");
  }
}
