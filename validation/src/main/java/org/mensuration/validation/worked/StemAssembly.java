package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.mensuration.formula.OutOfDomainException;

/** Turns the rows of one stem into heights and diameters. Not thread-safe. */
final class StemAssembly {
  private final Arithmetic arithmetic;
  private final Problems problems;
  private final Cautions cautions;
  private final Map<String, StemRow> bases = new HashMap<>();
  private final List<Reading> readings = new ArrayList<>();
  private OptionalDouble start = OptionalDouble.empty();
  private OptionalDouble top = OptionalDouble.empty();
  private String end = "";
  private String bark = "";

  StemAssembly(Arithmetic arithmetic, Problems problems, Cautions cautions) {
    this.arithmetic = arithmetic;
    this.problems = problems;
    this.cautions = cautions;
  }

  Stem assemble(List<StemRow> rows) {
    // Bases first: heights by angle count from them, wherever their row stands.
    each(rows.stream().filter(r -> r.is("base")).toList(), this::addBase);
    each(rows, this::addReading);
    each(rows.stream().filter(r -> r.is("break") || r.is("tip")).toList(), this::addEnd);
    readings.sort(Comparator.comparingDouble(Reading::height));
    StemRow first = rows.get(0);
    checkOrder(first.stem());
    return new Stem(
        first.row(),
        first.stem(),
        first.tree(),
        first.chosen(),
        bark,
        start,
        List.copyOf(readings),
        end,
        top);
  }

  private void each(List<StemRow> rows, Consumer<StemRow> step) {
    for (StemRow row : rows) {
      try {
        step.accept(row);
      } catch (BadNotes bad) {
        problems.add(bad);
      } catch (OutOfDomainException e) {
        problems.add(row.row().refused(e));
      }
    }
  }

  private void addBase(StemRow row) {
    double height = row.height().orElse(0);
    if (start.isPresent() && height != start.getAsDouble()) {
      throw row.row().bad("height_m", "the same height for each base row of a stem");
    }
    Station station = row.station();
    if (bases.putIfAbsent(station == null ? "" : station.name(), row) != null) {
      throw row.row().bad("kind", "one base row a station");
    }
    start = OptionalDouble.of(height);
  }

  private void addReading(StemRow row) {
    if (row.is("tip")) {
      return;
    }
    OptionalDouble height = height(row);
    if (!row.hasDiameter()) {
      if (row.is("reading")) {
        cautions.add("Readings without a diameter, not used", place(row));
      }
      return;
    }
    if (!bark.isEmpty() && !bark.equals(row.bark())) {
      throw row.row().bad("bark", bark + ", as in the other readings of this stem");
    }
    if (height.isEmpty()) {
      if (row.is("reading")) {
        cautions.add("Readings without a height, not used", place(row));
      }
      return;
    }
    bark = row.bark();
    double at = height.getAsDouble();
    for (Reading other : readings) {
      if (Math.abs(other.height() - at) < 1e-6) {
        throw row.row().bad("kind", "one diameter at a height: there are two at this one");
      }
    }
    readings.add(new Reading(row.row(), at, diameter(row), row.length(), how(row)));
  }

  private void addEnd(StemRow row) {
    if (!end.isEmpty()) {
      throw row.row().bad("kind", "one break or tip: a stem ends once");
    }
    end = row.kind();
    OptionalDouble height = height(row);
    if (height.isPresent()) {
      for (Reading reading : readings) {
        if (!(reading.height() <= height.getAsDouble())) {
          throw row.row()
              .bad(
                  row.height().isPresent() ? "height_m" : "sight_angle_deg",
                  "an end above every reading of the stem");
        }
      }
    }
    top = height;
  }

  private OptionalDouble height(StemRow row) {
    if (row.height().isPresent()) {
      return row.height();
    }
    if (row.is("base")) {
      return start;
    }
    if (row.angle().isEmpty()) {
      return OptionalDouble.empty();
    }
    Station station = row.station();
    StemRow base = station == null ? null : bases.get(station.name());
    if (station == null || base == null || base.angle().isEmpty()) {
      throw row.row()
          .missed(
              "sight_angle_deg",
              Problem.quote(row.row().text("sight_angle_deg")),
              "a base row of this stem with a sight angle from this station");
    }
    if (station.axisDistance().isEmpty()) {
      throw row.row().bad("station", "a station with a distance, to turn angles into heights");
    }
    double from = base.height().orElse(0);
    double baseAngle = base.angle().getAsDouble();
    if (!(row.angle().getAsDouble() >= baseAngle)) {
      throw row.row()
          .bad(
              "sight_angle_deg",
              "an angle not below that of the base, " + base.row().text("sight_angle_deg"));
    }
    double distance = station.axisDistance().getAsDouble();
    return OptionalDouble.of(
        from + arithmetic.height(distance, row.angle().getAsDouble(), baseAngle));
  }

  private double diameter(StemRow row) {
    Station station = row.station();
    if (row.diameter().isPresent() || station == null) {
      return row.diameter().orElseThrow();
    }
    double width = station.divisionWidth().orElseThrow();
    double divisions = row.divisions().orElseThrow();
    return station.compensated()
        ? arithmetic.diameter(width, divisions)
        : arithmetic.diameterElevated(
            width, divisions, row.angle().orElseThrow(), station.calibrationAngle().orElseThrow());
  }

  private static String how(StemRow row) {
    Station station = row.station();
    if (station == null || row.divisions().isEmpty()) {
      return "by hand";
    }
    String read =
        String.format(Locale.ROOT, "%.2f div at %s", row.divisions().getAsDouble(), station.name());
    return station.compensated()
        ? read
        : read + String.format(Locale.ROOT, ", %+.1f°", row.angle().orElseThrow());
  }

  private void checkOrder(String stem) {
    for (int i = 1; i < readings.size(); i++) {
      Reading upper = readings.get(i);
      if (upper.diameter() > readings.get(i - 1).diameter()) {
        cautions.add(
            "Stems that grow thicker upwards; look at these readings again",
            "stem " + stem + " line " + upper.row().line());
      }
    }
  }

  private static String place(StemRow row) {
    return "stem " + row.stem() + ", line " + row.row().line();
  }
}
