package org.mensuration.uncertainty;

import java.util.Arrays;

/**
 * A draw that gave no value, and the inputs drawn: outside the domain of a formula, or a result
 * that is no finite number. Immutable and thread-safe.
 */
public final class DrawException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Which draw, from 1. */
  private final int draw;

  /** The inputs drawn, in their order. */
  private final double[] inputs;

  /**
   * States the draw.
   *
   * @param draw which draw, from 1
   * @param inputs the inputs drawn
   * @param found what was wrong
   */
  public DrawException(int draw, double[] inputs, String found) {
    super(message(draw, inputs, found));
    this.draw = draw;
    this.inputs = inputs.clone();
  }

  /**
   * States the draw and what the function threw.
   *
   * @param draw which draw, from 1
   * @param inputs the inputs drawn
   * @param cause what the function threw
   */
  public DrawException(int draw, double[] inputs, RuntimeException cause) {
    super(message(draw, inputs, String.valueOf(cause.getMessage())), cause);
    this.draw = draw;
    this.inputs = inputs.clone();
  }

  private static String message(int draw, double[] inputs, String found) {
    return "draw " + draw + ", inputs " + Arrays.toString(inputs) + ": " + found;
  }

  /**
   * Which draw.
   *
   * @return from 1
   */
  public int draw() {
    return draw;
  }

  /**
   * The inputs drawn.
   *
   * @return in their order; a copy
   */
  public double[] inputs() {
    return inputs.clone();
  }
}
