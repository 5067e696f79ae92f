package org.mensuration.internal.log;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.internal.catalogue.SectionFormulas;
import org.mensuration.log.Log;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.SolidRule;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Exact frustum of a solid of revolution of one exponent. Immutable and thread-safe.
 *
 * @param exponent power of the distance from the tip
 */
public record SolidFrustumRule(double exponent) implements SolidRule {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  /**
   * The rule of an exponent.
   *
   * @param exponent power of the distance from the tip
   * @return the rule
   * @throws IllegalArgumentException if the exponent is outside the domain of the formula
   */
  public static SolidFrustumRule of(double exponent) {
    // A cylinder of unit size asks the formula whether it takes the exponent.
    SectionFormulas.SOLID_FRUSTUM.value(1, 1, 1, exponent);
    return new SolidFrustumRule(exponent);
  }

  @Override
  public Formula formula() {
    return SectionFormulas.SOLID_FRUSTUM;
  }

  @Override
  public Quantity<Volume> volume(Log log) {
    return measure(log).volume();
  }

  @Override
  public MeasuredVolume measure(Log log) {
    double volume =
        SectionFormulas.SOLID_FRUSTUM.value(
            CENTIMETRES.read(Place.LARGE.needed(formula(), log)),
            CENTIMETRES.read(Place.SMALL.needed(formula(), log)),
            METRES.read(log.length()),
            exponent);
    return new MeasuredVolume(
        Measures.cubicMetres(volume), formula().title(), log.bark(), Tidiness.of(formula(), log));
  }
}
