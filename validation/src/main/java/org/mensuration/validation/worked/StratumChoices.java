package org.mensuration.validation.worked;

import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.stand.SampleLayout;

/**
 * Choices of a stratum that a crew may leave open. Immutable and thread-safe.
 *
 * @param layout how the points were chosen
 * @param dead whether dead trees count
 * @param edgeRule the rule by which edge weights were recorded; empty for none
 * @param curve form of the height curve for missing heights; empty for none
 * @param classWidth width of the classes of the stand table in centimetres; empty for no table
 * @param measureFactor m²/ha of the second gauge, which picks the trees to be measured; empty for
 *     none
 * @param row the row of the notes, to point at
 */
record StratumChoices(
    SampleLayout layout,
    boolean dead,
    String edgeRule,
    Optional<HeightCurveForm> curve,
    OptionalDouble classWidth,
    OptionalDouble measureFactor,
    Row row) {
  /** The rule that has points beyond the edge. */
  static final String EXTENDED_GRID = "extended grid";

  /** Whether points stand beyond the edge too. */
  boolean extendedGrid() {
    return edgeRule.equals(EXTENDED_GRID);
  }
}
