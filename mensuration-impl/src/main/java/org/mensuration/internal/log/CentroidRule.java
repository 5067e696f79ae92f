package org.mensuration.internal.log;

import java.util.Optional;
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

/** The centroid rule, whose middle place depends on the ends. Immutable and thread-safe. */
public final class CentroidRule implements SolidRule {
  /** The rule. */
  public static final CentroidRule RULE = new CentroidRule();

  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private CentroidRule() {}

  @Override
  public Formula formula() {
    return SectionFormulas.CENTROID;
  }

  /**
   * Where the reading is wanted.
   *
   * @param log a log with both ends and its length
   * @return distance from the large end as a share of the length
   */
  public double share(Log log) {
    double length = METRES.read(log.length());
    return 1 - SectionFormulas.CENTROID_POSITION.value(large(log), small(log), length) / length;
  }

  @Override
  public Quantity<Volume> volume(Log log) {
    return measure(log).volume();
  }

  @Override
  public MeasuredVolume measure(Log log) {
    double share = share(log);
    Optional<Quantity<Length>> centroid = log.diameterAt(share);
    if (!centroid.isPresent()) {
      throw Place.missing(
          formula(), "point at " + Math.rint(share * 1000) / 1000 + " of the length");
    }
    double volume =
        SectionFormulas.CENTROID.value(
            large(log), CENTIMETRES.read(centroid.get()), small(log), METRES.read(log.length()));
    return new MeasuredVolume(
        Measures.cubicMetres(volume), formula().title(), log.bark(), Tidiness.of(formula(), log));
  }

  private double large(Log log) {
    return CENTIMETRES.read(Place.LARGE.needed(formula(), log));
  }

  private double small(Log log) {
    return CENTIMETRES.read(Place.SMALL.needed(formula(), log));
  }
}
