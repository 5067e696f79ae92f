package org.mensuration.log;

import java.util.Objects;

/**
 * What is odd about a log whose volume was computed all the same. Immutable and thread-safe.
 *
 * @param reading the reading it is about, such as {@code middle}
 * @param message what was found, with value and unit, and what was expected
 */
public record LogWarning(String reading, String message) {
  /**
   * Checks that nothing is null.
   *
   * @param reading the reading it is about
   * @param message what was found and what was expected
   */
  public LogWarning {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(message, "message");
  }

  @Override
  public String toString() {
    return message;
  }
}
