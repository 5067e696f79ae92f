package org.mensuration.internal.log;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.log.Log;

/** A place on a log where a rule wants a diameter. */
public enum Place {
  /** The large end. */
  LARGE("large end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.large();
    }
  },
  /** A quarter of the length from the large end. */
  QUARTER("point a quarter from the large end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.diameterAt(0.25);
    }
  },
  /** A third of the length from the large end. */
  THIRD("point a third from the large end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.diameterAt(1.0 / 3);
    }
  },
  /** Half way between the ends. */
  MIDDLE("middle") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.middle();
    }
  },
  /** Two thirds of the length from the large end. */
  TWO_THIRDS("point two thirds from the large end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.diameterAt(2.0 / 3);
    }
  },
  /** Three quarters of the length from the large end. */
  THREE_QUARTERS("point three quarters from the large end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.diameterAt(0.75);
    }
  },
  /** The small end. */
  SMALL("small end") {
    @Override
    Optional<Quantity<Length>> on(Log log) {
      return log.small();
    }
  };

  private final String words;

  Place(String words) {
    this.words = words;
  }

  abstract Optional<Quantity<Length>> on(Log log);

  /** The diameter here, or a refusal that names the rule and what it needs. */
  Quantity<Length> needed(Formula formula, Log log) {
    Optional<Quantity<Length>> diameter = on(log);
    if (!diameter.isPresent()) {
      throw missing(formula, words);
    }
    return diameter.get();
  }

  static IllegalArgumentException missing(Formula formula, String words) {
    return new IllegalArgumentException(
        formula.title() + " (" + formula.id() + ") needs the diameter of the " + words);
  }
}
