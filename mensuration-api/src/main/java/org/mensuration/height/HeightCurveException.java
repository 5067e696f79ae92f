package org.mensuration.height;

/** A height curve that cannot be fitted; the message says why. Immutable and thread-safe. */
public final class HeightCurveException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * States the reason.
   *
   * @param message what was wrong and what is wanted
   */
  public HeightCurveException(String message) {
    super(message);
  }
}
