package org.mensuration.log;

import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.LogScale;

/**
 * A convention whose print is in cubic metres. They are the rule's own: 0.36 m³ by a square of the
 * small end and 0.283 m³ solid are the same log. Implementations are immutable and thread-safe.
 */
public interface CubicConvention extends ConventionRule {

  /**
   * A scale of this rule taken as a volume, for whoever must. From then on nothing tells it from
   * solid wood.
   *
   * @param scale a scale or a sum of scales of this rule
   * @return as many cubic metres
   * @throws IllegalArgumentException if the scale is another rule's; the message names both
   */
  Quantity<Volume> takenAsVolume(LogScale scale);
}
