package org.mensuration.internal.convention;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.kernel.ClassRounding;
import org.mensuration.log.LogReadings;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Where on the log a diameter is read. Immutable and thread-safe. */
public enum ReadingPlace {
  /** The large end. */
  LARGE("large end", "D"),
  /** Half way. */
  MIDDLE("middle", "d"),
  /** The small end. */
  SMALL("small end", "d");

  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  private final String words;
  private final String symbol;

  ReadingPlace(String words, String symbol) {
    this.words = words;
    this.symbol = symbol;
  }

  String words() {
    return words;
  }

  String symbol() {
    return symbol;
  }

  private List<Quantity<Length>> of(LogReadings readings) {
    return switch (this) {
      case LARGE -> readings.large();
      case MIDDLE -> readings.middle();
      case SMALL -> readings.small();
    };
  }

  /** The readings in cm, as they were read; a place without any is refused. */
  double[] centimetres(RuleFacts facts, LogReadings readings) {
    return read(CENTIMETRES, facts, readings);
  }

  /** The readings in the unit of a reader, as they were read. */
  double[] read(UnitReader<Length> reader, RuleFacts facts, LogReadings readings) {
    List<Quantity<Length>> taken = of(readings);
    if (taken.isEmpty()) {
      throw facts.needs("the diameter of the " + words);
    }
    double[] values = new double[taken.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = ClassRounding.snapped(reader.read(taken.get(i)));
    }
    return values;
  }
}
