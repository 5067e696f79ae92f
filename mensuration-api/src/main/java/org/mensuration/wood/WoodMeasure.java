package org.mensuration.wood;

import java.util.Objects;

/**
 * A way of counting wood, such as a cubic metre of stack. Two measures of one unit are not the same
 * thing: a cubic metre of stacked wood holds air, one of loose chips more, and one by a measuring
 * custom is as large as the custom makes it. Immutable and thread-safe.
 *
 * @param code short name, such as {@code se:m3sk}: the country or trade and the measure
 * @param kind what the unit is filled with
 * @param unit the unit, such as {@code m3}
 * @param meaning the measure in words
 */
public record WoodMeasure(String code, Kind kind, String unit, String meaning) {

  /** What the unit of a measure is filled with. */
  public enum Kind {
    /** Wood, or wood and bark: true volume. */
    SOLID("solid volume"),
    /** Volume by a measuring custom that is not the true one. */
    CUSTOM("volume by a custom"),
    /** Pieces laid in a stack, with the air between. */
    STACKED("stacked volume"),
    /** Pieces or chips poured loosely, with the air between. */
    LOOSE("loose volume"),
    /** Mass; the measure says of what and how moist. */
    MASS("mass"),
    /** Sawn lumber. */
    LUMBER("lumber");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code stacked volume}
     */
    public String words() {
      return words;
    }
  }

  /**
   * Checks that nothing is null.
   *
   * @param code short name
   * @param kind what the unit is filled with
   * @param unit the unit
   * @param meaning the measure in words
   */
  public WoodMeasure {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(meaning, "meaning");
  }

  @Override
  public String toString() {
    return code + " (" + meaning + ")";
  }
}
