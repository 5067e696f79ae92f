package org.mensuration.source;

import java.util.Objects;

/**
 * The place in a work: page, table, equation or example. Immutable and thread-safe.
 *
 * @param text the place in words, such as {@code Table 2-1} or {@code slide 12}
 */
public record Locator(String text) {

  /**
   * Checks that a place is named.
   *
   * @param text the place in words, such as {@code Table 2-1} or {@code slide 12}
   * @throws IllegalArgumentException if the text is blank
   */
  public Locator {
    if (Objects.requireNonNull(text, "text").trim().isEmpty()) {
      throw new IllegalArgumentException("locator: text is blank");
    }
  }

  @Override
  public String toString() {
    return text;
  }
}
