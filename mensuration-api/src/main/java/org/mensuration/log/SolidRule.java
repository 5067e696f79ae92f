package org.mensuration.log;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;

/**
 * A rule for the solid volume of a log. Implementations are immutable and thread-safe. A third
 * party's rule implements {@link #formula} and {@link #volume} and is passed in.
 *
 * <p>Real logs are not tidy. The rules of this library compute a log on which a reading between the
 * ends is a little larger than its neighbour nearer the large end, as at a whorl or after rounding,
 * and warn in the result of {@link #measure}. They refuse it when the excess is more than a tenth
 * of that neighbour and more than 1 cm; the limit is a choice of this library. A large end far
 * above the next reading is butt swell, and no oddity. A small end larger than the large end is
 * refused.
 */
public interface SolidRule {

  /**
   * What is said about the rule.
   *
   * @return its formula
   */
  Formula formula();

  /**
   * The solid volume of a log.
   *
   * @param log the log as measured
   * @return its volume
   * @throws IllegalArgumentException if a measurement that the rule needs is missing; the message
   *     names the rule and what it needs
   * @throws OutOfDomainException if a measurement has no meaning for the rule
   */
  Quantity<Volume> volume(Log log);

  /**
   * The solid volume of a log with its bark basis and with warnings if the log is odd.
   *
   * @param log the log as measured
   * @return volume, rule, bark basis and warnings; without warnings unless the rule looks for them
   * @throws IllegalArgumentException as {@link #volume}
   * @throws OutOfDomainException as {@link #volume}
   */
  default MeasuredVolume measure(Log log) {
    return new MeasuredVolume(volume(log), formula().title(), log.bark(), List.of());
  }
}
