package org.mensuration.stand;

import java.util.Objects;
import org.mensuration.formula.EquationText;

/**
 * Which trees make the dominant height; the figure says nothing without it. Trees that are alike in
 * diameter at the cut share it evenly, so that order does not show; a fraction of a tree is kept.
 * Immutable and thread-safe.
 *
 * @param kind how the thickest are told
 * @param number how many of them, in the unit of the kind
 */
public record DominantHeightRule(Kind kind, double number) {

  /** How the thickest trees are told. */
  public enum Kind {
    /** A number per hectare. */
    THICKEST_PER_HECTARE("thickest per hectare", "above 0"),
    /** A number per acre. */
    THICKEST_PER_ACRE("thickest per acre", "above 0"),
    /** A percentage of the stems. */
    THICKEST_PERCENT("thickest per cent of the stems", "above 0 up to 100"),
    /** The thickest of each point or plot: the number is 1. */
    THICKEST_OF_EACH_POINT("thickest of each point", "1");

    private final String words;
    private final String allowed;

    Kind(String words, String allowed) {
      this.words = words;
      this.allowed = allowed;
    }
  }

  /** The thickest hundred per hectare. */
  public static final DominantHeightRule HUNDRED_PER_HECTARE =
      new DominantHeightRule(Kind.THICKEST_PER_HECTARE, 100);

  /** The thickest forty per acre. */
  public static final DominantHeightRule FORTY_PER_ACRE =
      new DominantHeightRule(Kind.THICKEST_PER_ACRE, 40);

  /** The thickest tree of each plot, meant for plots of 100 m². */
  public static final DominantHeightRule THICKEST_OF_EACH_POINT =
      new DominantHeightRule(Kind.THICKEST_OF_EACH_POINT, 1);

  /**
   * Checks the number.
   *
   * @param kind how the thickest are told
   * @param number how many of them
   * @throws IllegalArgumentException if the number is not above zero, above 100 per cent, or not 1
   *     for the thickest of each point
   */
  public DominantHeightRule {
    Objects.requireNonNull(kind, "kind");
    boolean allowed =
        switch (kind) {
          case THICKEST_PERCENT -> number > 0 && number <= 100;
          case THICKEST_OF_EACH_POINT -> number == 1;
          default -> number > 0 && number < Double.POSITIVE_INFINITY;
        };
    if (!allowed) {
      throw new IllegalArgumentException(
          "dominant height, "
              + kind.words
              + ": "
              + EquationText.number(number)
              + "; allowed "
              + kind.allowed);
    }
  }

  /**
   * The thickest of a hundred stems.
   *
   * @param percent share of the stems in per cent, above 0 up to 100
   * @return the rule
   * @throws IllegalArgumentException if the share is outside
   */
  public static DominantHeightRule thickestPercent(double percent) {
    return new DominantHeightRule(Kind.THICKEST_PERCENT, percent);
  }

  /**
   * The rule in words, to be printed beside the figure.
   *
   * @return the words
   */
  public String text() {
    return switch (kind) {
      case THICKEST_PER_HECTARE ->
          "mean height of the thickest " + EquationText.number(number) + " per hectare";
      case THICKEST_PER_ACRE ->
          "mean height of the thickest " + EquationText.number(number) + " per acre";
      case THICKEST_PERCENT ->
          "mean height of the thickest " + EquationText.number(number) + " % of the stems";
      case THICKEST_OF_EACH_POINT -> "mean height of the thickest tree of each point";
    };
  }
}
