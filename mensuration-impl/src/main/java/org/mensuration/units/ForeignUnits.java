package org.mensuration.units;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * Factors of units that are not ours, asked of the units library once and kept. The only mutable
 * static state of the library; bounded and thread-safe.
 */
final class ForeignUnits {
  private static final int LIMIT = 256;
  private static final Map<Unit<?>, Double> TO_SYSTEM_UNIT = new ConcurrentHashMap<>();

  private ForeignUnits() {}

  /** How many system units one of this unit holds. */
  static double toSystemUnit(Unit<?> unit) {
    Double cached = TO_SYSTEM_UNIT.get(unit);
    if (cached != null) {
      return cached;
    }
    UnitConverter converter = toSystem(unit);
    if (!converter.isLinear()) {
      throw new IllegalArgumentException("unit " + unit + " is not a multiple of another");
    }
    double factor = converter.convert(1.0);
    if (TO_SYSTEM_UNIT.size() < LIMIT) {
      TO_SYSTEM_UNIT.put(unit, factor);
    }
    return factor;
  }

  private static UnitConverter toSystem(Unit<?> unit) {
    try {
      return unit.getConverterToAny(unit.getSystemUnit());
    } catch (IncommensurableException unlike) {
      throw new IllegalArgumentException("unit " + unit + " has no system unit", unlike);
    }
  }
}
