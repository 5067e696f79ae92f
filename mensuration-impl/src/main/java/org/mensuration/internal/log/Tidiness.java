package org.mensuration.internal.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.kernel.Limits;
import org.mensuration.log.DiameterAt;
import org.mensuration.log.Log;
import org.mensuration.log.LogWarning;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Looks at the readings of a log from the large end to the small, whether or not the rule uses
 * them: a contradiction among them is more likely a slip of the pen than a log of that shape.
 *
 * <p>A reading between the ends may exceed the one before it by a tenth or by 1 cm, whichever is
 * more: a whorl swells a stem by some per cent, and reading to whole centimetres moves a thin log
 * by more than a tenth. Nothing published sets this limit; it is a choice of this library.
 */
final class Tidiness {
  private static final double SHARE = 0.1;
  private static final Quantity<Length> LEAST = Measures.centimetres(1);

  private static final String LARGE = "large end";
  private static final String MIDDLE = "middle";
  private static final String SMALL = "small end";
  private static final String NUMBER = "[0, ∞)";

  private final Formula formula;
  private final Unit<Length> unit;
  private final UnitReader<Length> reader;
  private final List<LogWarning> warnings = new ArrayList<>();
  private String before = "";
  private double last = Double.NaN;

  private Tidiness(Formula formula) {
    this.formula = formula;
    this.unit = "in".equals(unit(formula)) ? ForestUnits.INCH : ForestUnits.CENTIMETRE;
    this.reader = UnitReader.in(unit);
  }

  /** Rules of inches are answered in inches. */
  private static String unit(Formula formula) {
    return formula.parameters().get(0).unit();
  }

  /**
   * What is odd about a log.
   *
   * @throws OutOfDomainException if it is beyond the limit
   */
  static List<LogWarning> of(Formula formula, Log log) {
    boolean endsOnly = !log.middle().isPresent() && log.between().isEmpty();
    if (endsOnly && !(log.large().isPresent() && log.small().isPresent())) {
      return List.of();
    }
    Tidiness look = new Tidiness(formula);
    look.requireEnds(log);
    return endsOnly ? List.of() : look.at(log);
  }

  private void requireEnds(Log log) {
    if (log.large().isPresent() && log.small().isPresent()) {
      double large = reader.read(log.large().get());
      double small = reader.read(log.small().get());
      require(LARGE, large, Double.MAX_VALUE, NUMBER);
      if (!(small >= 0 && Limits.keepsTo(small, large))) {
        throw refusal(SMALL, small, "at most that of the large end, " + shown(large));
      }
    }
  }

  private List<LogWarning> at(Log log) {
    next(LARGE, log.large());
    boolean middle = false;
    for (DiameterAt reading : log.between()) {
      if (!middle && reading.share() > 0.5) {
        middle = true;
        next(MIDDLE, log.middle());
      }
      next(
          "point at " + Math.rint(reading.share() * 1000) / 1000 + " of the length",
          Optional.of(reading.diameter()));
    }
    if (!middle) {
      next(MIDDLE, log.middle());
    }
    next(SMALL, log.small());
    return List.copyOf(warnings);
  }

  private void next(String place, Optional<Quantity<Length>> diameter) {
    if (!diameter.isPresent()) {
      return;
    }
    double value = reader.read(diameter.get());
    if (before.isEmpty()) {
      // The first reading has none before it; NaN and negative values are refused all the same.
      require(place, value, Double.MAX_VALUE, NUMBER);
    } else {
      double limit = last + Math.max(SHARE * last, reader.read(LEAST));
      require(
          place,
          value,
          limit,
          "at most "
              + shown(limit)
              + ", a tenth or 1 cm above the "
              + before
              + " of "
              + shown(last));
      if (!Limits.keepsTo(value, last)) {
        warnings.add(
            new LogWarning(
                place,
                "the "
                    + place
                    + " of "
                    + shown(value)
                    + " is larger than the "
                    + before
                    + " of "
                    + shown(last)
                    + "; computed as measured"));
      }
    }
    before = place;
    last = value;
  }

  private void require(String place, double value, double limit, String allowed) {
    if (!(value >= 0 && value <= Double.MAX_VALUE && Limits.keepsTo(value, limit))) {
      throw refusal(place, value, allowed);
    }
  }

  private OutOfDomainException refusal(String place, double value, String allowed) {
    return new OutOfDomainException(
        formula, "diameter of the " + place, value, unit.toString(), allowed);
  }

  private String shown(double value) {
    return Measures.text(Measures.of(value, unit), unit, 2);
  }
}
