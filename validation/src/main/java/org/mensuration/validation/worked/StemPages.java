package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The part of the print about stems and stations. Not thread-safe. */
final class StemPages {
  private final Findings found;
  private final PrintUnits units;
  private final List<String> lines = new ArrayList<>();

  StemPages(Findings found, PrintUnits units) {
    this.found = found;
    this.units = units;
  }

  List<String> lines() {
    trees();
    sections();
    stations();
    return List.copyOf(lines);
  }

  private void trees() {
    lines.add("");
    lines.add("Measured trees");
    if (found.ratios().trees().isEmpty()) {
      lines.add("  none");
      return;
    }
    Grid grid = new Grid(2);
    grid.row(
        "tree",
        "stems",
        "dbh " + units.diameterUnit(),
        "volume " + units.volumeUnit(),
        "ratio " + units.ratioUnit(),
        "");
    for (MeasuredTree tree : found.ratios().trees()) {
      List<String> names = tree.stems().stream().map(s -> s.stem().name()).toList();
      grid.row(
          tree.name(),
          String.join(" + ", names),
          PrintUnits.orDash(tree.dbh(), units::diameter),
          units.volume(tree.volume()),
          PrintUnits.orDash(tree.ratio(), units::ratio),
          tree.ratio().isPresent() ? "" : "not used: " + tree.whyNot());
    }
    lines.addAll(grid.lines(true));
  }

  private void sections() {
    for (StemVolume volume : found.stems()) {
      Stem stem = volume.stem();
      lines.add("");
      lines.add(
          "Stem "
              + stem.name()
              + (stem.tree() == null ? "" : ", " + stem.tree())
              + ", diameters "
              + (stem.bark().isEmpty() ? "not measured" : stem.bark() + " bark")
              + ", chosen by "
              + (stem.chosen().isEmpty() ? "a way not noted" : stem.chosen()));
      Grid grid = new Grid(1);
      grid.row(
          "",
          "from " + units.lengthUnit(),
          "to " + units.lengthUnit(),
          "lower " + units.diameterUnit(),
          "middle",
          "upper",
          units.volumeUnit(),
          "");
      volume.pieces().forEach(piece -> row(grid, piece));
      String whole = volume.gaps().isEmpty() ? "" : "not the whole stem";
      grid.row("volume", "", "", "", "", "", units.volume(volume.volume()), whole);
      volume.profile().forEach(piece -> row(grid, piece));
      lines.addAll(grid.lines(true));
    }
  }

  private void row(Grid grid, Piece piece) {
    grid.row(
        piece.what(),
        height(piece.from()),
        height(piece.to()),
        diameter(piece.lower()),
        diameter(piece.middle()),
        diameter(piece.upper()),
        PrintUnits.orDash(piece.volume(), units::volume),
        piece.note());
  }

  private String height(OptionalDouble value) {
    return PrintUnits.orDash(value, units::height);
  }

  private String diameter(OptionalDouble value) {
    return PrintUnits.orDash(value, units::diameter);
  }

  private void stations() {
    lines.add("");
    lines.add("Stations");
    if (found.stations().isEmpty()) {
      lines.add("  none");
      return;
    }
    Grid grid = new Grid(2);
    grid.row(
        "station",
        "tree",
        "to axis " + units.lengthUnit(),
        "calibrated on " + units.diameterUnit(),
        "divisions",
        "division " + units.diameterUnit(),
        "");
    for (Station station : found.stations()) {
      grid.row(
          station.name(),
          station.tree(),
          PrintUnits.orDash(station.axisDistance(), units::height),
          PrintUnits.orDash(station.calibrationDiameter(), units::diameter),
          PrintUnits.orDash(station.calibrationDivisions(), d -> PrintUnits.fixed(d, 2)),
          PrintUnits.orDash(station.divisionWidth(), units::width),
          remark(station));
    }
    lines.addAll(grid.lines(true));
  }

  private static String remark(Station station) {
    List<String> words = new ArrayList<>();
    words.add(station.compensated() ? "compensated" : "not compensated");
    if (!station.compensated() && station.calibrationAngle().isPresent()) {
      words.add(
          "calibrated at " + PrintUnits.fixed(station.calibrationAngle().getAsDouble(), 1) + "°");
    }
    if (station.distanceFromFace()) {
      words.add("distance to the face plus half the diameter");
    }
    return String.join(", ", words);
  }
}
