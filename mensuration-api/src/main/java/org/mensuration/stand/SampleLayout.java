package org.mensuration.stand;

import java.util.Optional;

/** How sample points or sample stems were chosen. Immutable and thread-safe. */
public enum SampleLayout {
  /** At random: what the formulas for errors assume. */
  RANDOM(""),
  /** On a grid. */
  SYSTEMATIC(
      "points on a systematic grid: errors are computed as if at random; they are usually too"
          + " large, and too small where the grid runs with a pattern of the ground"),
  /** By judgement. */
  JUDGEMENT(
      "chosen by judgement: the computed error says nothing about the bias of the choice; do not"
          + " quote it as the error of the stand");

  private final String caution;

  SampleLayout(String caution) {
    this.caution = caution;
  }

  /**
   * What must be printed beside errors computed from such a sample.
   *
   * @return the caution; empty for a random sample
   */
  public Optional<String> caution() {
    return caution.isEmpty() ? Optional.empty() : Optional.of(caution);
  }
}
