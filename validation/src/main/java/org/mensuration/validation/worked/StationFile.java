package org.mensuration.validation.worked;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.mensuration.formula.Domain;

/** Reads the stations and calibrates their scales. */
final class StationFile {
  static final String NAME = "stations.csv";

  static final Domain ANGLE = Domain.open(-90, 90);
  static final String ANGLE_WANTED = "degrees between -90 and 90 from the horizontal";

  private static final List<String> REQUIRED =
      List.of(
          "station",
          "tree",
          "distance_m",
          "distance_to",
          "compensated",
          "calibration_diameter_cm",
          "calibration_height_m",
          "calibration_divisions",
          "calibration_sight_angle_deg");

  private StationFile() {}

  static Map<String, Station> read(
      Notes notes, Arithmetic arithmetic, Problems problems, Cautions cautions) {
    Map<String, Station> stations = new LinkedHashMap<>();
    var unknown =
        NoteTable.read(
            notes,
            NAME,
            REQUIRED,
            List.of("remark"),
            problems,
            row -> {
              Station station = station(row, arithmetic);
              if (stations.putIfAbsent(station.name(), station) != null) {
                throw row.bad("station", "each station once");
              }
            });
    cautions.unusedColumns(NAME, unknown);
    return stations;
  }

  private static Station station(Row row, Arithmetic arithmetic) {
    String name = row.required("station", "a name");
    boolean compensated = row.oneOf("compensated", List.of("yes", "no")).equals("yes");
    OptionalDouble diameter =
        row.number("calibration_diameter_cm", Domain.above(0), "centimetres above 0");
    OptionalDouble divisions =
        row.number("calibration_divisions", Domain.above(0), "divisions above 0");
    OptionalDouble angle = row.number("calibration_sight_angle_deg", ANGLE, ANGLE_WANTED);
    if (divisions.isPresent() && diameter.isEmpty()) {
      throw row.bad("calibration_diameter_cm", "the diameter that the divisions covered");
    }
    if (divisions.isPresent() && !compensated && angle.isEmpty()) {
      throw row.bad(
          "calibration_sight_angle_deg",
          "the sight angle of the calibration: this scale is not compensated");
    }
    boolean face = row.oneOf("distance_to", List.of("axis", "face", "")).equals("face");
    return new Station(
        name,
        row.text("tree"),
        axisDistance(row, face, diameter),
        face,
        compensated,
        diameter,
        row.number("calibration_height_m", Domain.atLeast(0), "metres from 0"),
        divisions,
        angle,
        divisions.isPresent()
            ? OptionalDouble.of(
                arithmetic.divisionWidth(diameter.orElseThrow(), divisions.getAsDouble()))
            : OptionalDouble.empty());
  }

  private static OptionalDouble axisDistance(Row row, boolean face, OptionalDouble diameter) {
    OptionalDouble distance = row.number("distance_m", Domain.above(0), "metres above 0");
    if (distance.isEmpty()) {
      return distance;
    }
    if (row.text("distance_to").isEmpty()) {
      throw row.bad("distance_to", "axis or face, to say where the distance ends");
    }
    if (!face) {
      return distance;
    }
    if (diameter.isEmpty()) {
      throw row.bad("calibration_diameter_cm", "the diameter, half of which reaches the axis");
    }
    return OptionalDouble.of(
        Arithmetic.axisDistance(distance.getAsDouble(), diameter.getAsDouble()));
  }
}
