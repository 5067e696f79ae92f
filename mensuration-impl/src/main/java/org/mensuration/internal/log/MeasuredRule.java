package org.mensuration.internal.log;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.log.Log;
import org.mensuration.log.LogWarning;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.SolidRule;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** A solid rule of diameters at fixed places and the length. Immutable and thread-safe. */
public final class MeasuredRule implements SolidRule {
  private final BoundFormula formula;
  private final Place[] places;
  private final UnitReader<Length> diameters;
  private final UnitReader<Length> lengths;
  private final Unit<Volume> unit;

  private MeasuredRule(BoundFormula formula, Place[] places) {
    boolean inches = formula.parameters().get(0).unit().equals("in");
    this.formula = formula;
    this.places = places;
    this.diameters = UnitReader.in(inches ? ForestUnits.INCH : ForestUnits.CENTIMETRE);
    this.lengths = UnitReader.in(inches ? ForestUnits.FOOT : ForestUnits.METRE);
    this.unit = inches ? ForestUnits.CUBIC_FOOT : ForestUnits.CUBIC_METRE;
  }

  /**
   * A rule.
   *
   * @param formula its formula: the diameters in the order of the places, then the length
   * @param places where the diameters are measured
   * @return the rule
   */
  public static MeasuredRule of(BoundFormula formula, Place... places) {
    return new MeasuredRule(formula, places.clone());
  }

  @Override
  public Formula formula() {
    return formula;
  }

  @Override
  public Quantity<Volume> volume(Log log) {
    Quantity<Volume> volume = Measures.of(value(log), unit);
    Tidiness.of(formula, log);
    return volume;
  }

  @Override
  public MeasuredVolume measure(Log log) {
    Quantity<Volume> volume = Measures.of(value(log), unit);
    List<LogWarning> warnings = Tidiness.of(formula, log);
    return new MeasuredVolume(volume, formula.title(), log.bark(), warnings);
  }

  private double value(Log log) {
    double length = lengths.read(log.length());
    return switch (places.length) {
      case 1 -> formula.value(at(0, log), length);
      case 2 -> formula.value(at(0, log), at(1, log), length);
      case 3 -> formula.value(at(0, log), at(1, log), at(2, log), length);
      default -> formula.apply(all(log, length));
    };
  }

  private double at(int place, Log log) {
    return diameters.read(places[place].needed(formula, log));
  }

  private double[] all(Log log, double length) {
    double[] inputs = new double[places.length + 1];
    for (int i = 0; i < places.length; i++) {
      inputs[i] = at(i, log);
    }
    inputs[places.length] = length;
    return inputs;
  }
}
