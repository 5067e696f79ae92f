package org.mensuration.internal.log;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.LogFormulas;
import org.mensuration.log.Log;
import org.mensuration.log.LogTotal;
import org.mensuration.log.MeasuredVolume;
import org.mensuration.log.SolidRule;
import org.mensuration.log.Tip;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Adds the volumes of logs and of the sections of a stem. Stateless and thread-safe. */
public final class Totals {
  private static final SolidRule CONE =
      MeasuredRule.of(LogFormulas.CONE_FRUSTUM, Place.LARGE, Place.SMALL);

  // Smalian's rule is exact for a paraboloid down to its tip.
  private static final SolidRule PARABOLOID =
      MeasuredRule.of(LogFormulas.SMALIAN, Place.LARGE, Place.SMALL);

  private Totals() {}

  /**
   * The sum of measured volumes, the same whatever their order.
   *
   * @param volumes what is added
   * @return the total; of none, zero with the bark not stated
   * @throws IllegalArgumentException if the bark bases differ
   */
  public static LogTotal of(Iterable<MeasuredVolume> volumes) {
    List<MeasuredVolume> parts = new ArrayList<>();
    List<Quantity<Volume>> summands = new ArrayList<>();
    for (MeasuredVolume part : volumes) {
      parts.add(part);
      summands.add(part.volume());
    }
    BarkBasis bark = parts.isEmpty() ? BarkBasis.UNKNOWN : parts.get(0).bark();
    return new LogTotal(Measures.sum(summands, ForestUnits.CUBIC_METRE), bark, parts);
  }

  /**
   * The sum of sections by one rule.
   *
   * @param rule the rule
   * @param sections the sections
   * @return the total
   * @throws IllegalArgumentException if the bark bases differ, or as the rule
   */
  public static LogTotal of(SolidRule rule, Iterable<Log> sections) {
    return of(measured(rule, sections));
  }

  /**
   * The sum of sections by one rule and a tip, which has the bark basis of the sections.
   *
   * @param rule the rule
   * @param sections the sections, at least one
   * @param tip the tip
   * @return the total; the tip is its last part
   * @throws IllegalArgumentException if there is no section, if the bark bases differ, or as the
   *     rule
   */
  public static LogTotal of(SolidRule rule, Iterable<Log> sections, Tip tip) {
    List<MeasuredVolume> parts = measured(rule, sections);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a tip needs at least one section below it; none given");
    }
    Log log =
        Log.of(tip.foot(), Measures.centimetres(0), tip.length()).withBark(parts.get(0).bark());
    parts.add((tip.form() == Tip.Form.CONE ? CONE : PARABOLOID).measure(log));
    return of(parts);
  }

  private static List<MeasuredVolume> measured(SolidRule rule, Iterable<Log> sections) {
    List<MeasuredVolume> parts = new ArrayList<>();
    for (Log section : sections) {
      parts.add(rule.measure(section));
    }
    return parts;
  }
}
