package org.mensuration.units;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Reads quantities of one kind as numbers in one unit. A value given in that unit passes untouched.
 * Immutable and thread-safe.
 *
 * @param <Q> kind of quantity
 */
public final class UnitReader<Q extends Quantity<Q>> {
  private final Unit<Q> target;
  private final Unit<?>[] units;
  private final Ratio[] ratios;
  private final double fromSystemMultiplier;

  private UnitReader(KnownUnit<Q> target) {
    this.target = target.unit();
    List<Unit<?>> found = new ArrayList<>();
    List<Ratio> factors = new ArrayList<>();
    for (KnownUnit<?> known : UnitTable.ALL) {
      if (known.kind() == target.kind()) {
        found.add(known.unit());
        factors.add(known.to(target));
      }
    }
    this.units = found.toArray(new Unit<?>[0]);
    this.ratios = factors.toArray(new Ratio[0]);
    this.fromSystemMultiplier = ForeignUnits.toSystemUnit(target.unit());
  }

  /**
   * A reader for one of this library's units.
   *
   * @param unit a constant of {@link ForestUnits}
   * @param <Q> kind of quantity
   * @return the reader
   * @throws IllegalArgumentException if the unit is not one of this library's
   */
  @SuppressWarnings("unchecked") // the entry found holds this very unit, so it has its kind
  public static <Q extends Quantity<Q>> UnitReader<Q> in(Unit<Q> unit) {
    KnownUnit<?> known = UnitTable.find(unit);
    if (known == null) {
      throw new IllegalArgumentException("unit " + unit + " is not one of ForestUnits");
    }
    return new UnitReader<>((KnownUnit<Q>) known);
  }

  /**
   * The value of a quantity in the reader's unit.
   *
   * @param quantity the quantity
   * @return its number; NaN if the quantity holds NaN, for the domain check to refuse
   */
  public double read(Quantity<Q> quantity) {
    Unit<Q> unit = quantity.getUnit();
    double value = quantity.getValue().doubleValue();
    if (unit == target) {
      return value;
    }
    for (int i = 0; i < units.length; i++) {
      if (units[i] == unit) {
        return ratios[i].apply(value);
      }
    }
    for (int i = 0; i < units.length; i++) {
      if (units[i].equals(unit)) {
        return ratios[i].apply(value);
      }
    }
    return value * ForeignUnits.toSystemUnit(unit) / fromSystemMultiplier;
  }
}
