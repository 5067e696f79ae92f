package org.mensuration.stand;

import java.util.Objects;

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
    THICKEST_PER_HECTARE,
    /** A number per acre. */
    THICKEST_PER_ACRE,
    /** A percentage of the stems. */
    THICKEST_PERCENT,
    /** The thickest of each point or plot: the number is 1. */
    THICKEST_OF_EACH_POINT
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
    double most =
        switch (kind) {
          case THICKEST_PERCENT -> 100;
          case THICKEST_OF_EACH_POINT -> 1;
          default -> Double.MAX_VALUE;
        };
    double least = kind == Kind.THICKEST_OF_EACH_POINT ? 1 : Double.MIN_VALUE;
    if (!(number >= least && number <= most)) {
      throw new IllegalArgumentException(
          "dominant height of " + number + " by " + kind + ": allowed up to " + most);
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
      case THICKEST_PER_HECTARE -> "mean height of the thickest " + number + " per hectare";
      case THICKEST_PER_ACRE -> "mean height of the thickest " + number + " per acre";
      case THICKEST_PERCENT -> "mean height of the thickest " + number + " % of the stems";
      case THICKEST_OF_EACH_POINT -> "mean height of the thickest tree of each point";
    };
  }
}
