package org.mensuration.scaling;

import java.util.List;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;

/**
 * Scales logs by a rule under a convention. Implementations are immutable and thread-safe.
 *
 * <p>Refusals are {@link IllegalArgumentException}s whose message names the convention or the rule,
 * the value and what is allowed.
 */
public interface LogScaler {

  /**
   * The customs.
   *
   * @return the convention
   */
  ScalingConvention convention();

  /**
   * The rule.
   *
   * @return the rule
   */
  ScaleRule rule();

  /**
   * Scales a log.
   *
   * @param log the log as measured, trim included
   * @param defects its defects; if the log is split they lie in the segment of the small end, see
   *     {@link LogToScale} for others
   * @return gross, deductions, net and every step
   * @throws IllegalArgumentException if convention or rule refuses the log or a defect
   */
  ScaledLog scale(Log log, Defect... defects);

  /**
   * Scales logs one after another, so that exact halves alternate from log to log where the
   * convention shares them.
   *
   * @param logs the logs
   * @return one result a log, in order
   * @throws IllegalArgumentException if convention or rule refuses one; the message says which
   */
  List<ScaledLog> scaleAll(List<LogToScale> logs);
}
