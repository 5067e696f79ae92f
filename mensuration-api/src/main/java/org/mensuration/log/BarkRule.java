package org.mensuration.log;

import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;

/** Bark thickness from the diameter over bark. Implementations are immutable and thread-safe. */
public interface BarkRule {

  /**
   * What is said about the rule.
   *
   * @return its formula
   */
  Formula formula();

  /**
   * Bark on both sides together.
   *
   * @param outside diameter over bark
   * @return double bark thickness
   * @throws OutOfDomainException if the diameter has no meaning for the rule
   */
  Quantity<Length> doubleBark(Quantity<Length> outside);

  /**
   * The diameter inside bark.
   *
   * @param outside diameter over bark
   * @return the diameter less the double thickness
   * @throws OutOfDomainException if the diameter has no meaning for the rule, or the bark would be
   *     thicker than the stem
   */
  Quantity<Length> inside(Quantity<Length> outside);

  /**
   * A log with the bark taken off every diameter.
   *
   * @param outside a log measured over bark
   * @return the same log under bark
   * @throws IllegalArgumentException if the log does not state that it was measured over bark; the
   *     message names the rule and the basis found
   * @throws OutOfDomainException as {@link #inside(Quantity)}
   */
  default Log inside(Log outside) {
    if (outside.bark() != BarkBasis.OVER) {
      throw new IllegalArgumentException(
          formula().title()
              + " ("
              + formula().id()
              + ") takes logs over bark, this one is "
              + outside.bark().words());
    }
    return new Log(
        outside.large().map(diameter -> inside(diameter)),
        outside.middle().map(diameter -> inside(diameter)),
        outside.small().map(diameter -> inside(diameter)),
        outside.length(),
        BarkBasis.UNDER,
        outside.between().stream()
            .map(reading -> new DiameterAt(reading.share(), inside(reading.diameter())))
            .collect(Collectors.toList()));
  }
}
