package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;
import org.mensuration.formula.Domain;
import org.mensuration.kernel.Limits;

/** Compares measured distances of counted trees with their limits. Not thread-safe. */
final class LimitCheck {
  private final Arithmetic arithmetic;
  private final Cautions cautions;
  private final PrintUnits units;
  private long checked;

  LimitCheck(Arithmetic arithmetic, Cautions cautions, PrintUnits units) {
    this.arithmetic = arithmetic;
    this.cautions = cautions;
    this.units = units;
  }

  /** Trees whose distance was compared with their limit. */
  long checked() {
    return checked;
  }

  /** Level metres from the point to the axis of the stem, if the distance was measured. */
  OptionalDouble centre(Row row, OptionalDouble dbh) {
    OptionalDouble distance = row.number("distance_m", Domain.above(0), "metres above 0, or empty");
    String to = row.oneOf("distance_to", List.of("axis", "face", ""));
    OptionalDouble slope = row.number("slope_deg", StationFile.ANGLE, StationFile.ANGLE_WANTED);
    if (distance.isEmpty()) {
      return distance;
    }
    if (to.isEmpty()) {
      throw row.bad("distance_to", "axis or face, to say where the distance ends");
    }
    if (dbh.isEmpty()) {
      throw row.bad("dbh_cm", "the diameter, without which the distance decides nothing");
    }
    double level =
        slope.isPresent()
            ? arithmetic.horizontal(distance.getAsDouble(), slope.getAsDouble())
            : distance.getAsDouble();
    return OptionalDouble.of(
        to.equals("face") ? Arithmetic.axisDistance(level, dbh.getAsDouble()) : level);
  }

  /** A tree that the larger factor takes and the smaller does not cannot be. */
  void refuse(CountedRow tree, OptionalDouble centre) {
    if (tree.measure().equals("tree") && centre.isPresent()) {
      double limit = arithmetic.limitingDistance(tree.stratum().factor(), tree.dbh().orElseThrow());
      if (!in(tree.stratum(), centre.getAsDouble(), limit)) {
        throw tree.row()
            .bad(
                MeasureNotes.COLUMN,
                "an empty cell: by its distance the tree is out even by the smaller factor, limit "
                    + units.finely(limit));
      }
    }
  }

  /** Points out a tree whose distance says otherwise than its weight. */
  void look(CountedRow tree, OptionalDouble centre) {
    if (centre.isEmpty()) {
      return;
    }
    checked++;
    Stratum stratum = tree.stratum();
    double dbh = tree.dbh().orElseThrow();
    double metres = centre.getAsDouble();
    double limit = arithmetic.limitingDistance(stratum.factor(), dbh);
    boolean in = in(stratum, metres, limit);
    if (in != tree.weight() > 0) {
      cautions.add(
          tree.weight() > 0
              ? "Trees counted although their distance puts them outside"
              : "Trees of weight 0 although their distance puts them inside",
          found(tree, metres, limit));
    }
    if (tree.measure().equals("tree")) {
      double second =
          arithmetic.limitingDistance(stratum.choices().measureFactor().orElseThrow(), dbh);
      if (!in(stratum, metres, second)) {
        cautions.add(
            "Measure trees although their distance puts them outside the second factor",
            found(tree, metres, second));
      }
    }
  }

  private static boolean in(Stratum stratum, double metres, double limit) {
    return Limits.on(metres, limit) ? stratum.tieIsIn() : metres < limit;
  }

  private String found(CountedRow tree, double metres, double limit) {
    return tree.key()
        + ", "
        + units.finely(metres)
        + " level to the axis, limit "
        + units.finely(limit);
  }
}
