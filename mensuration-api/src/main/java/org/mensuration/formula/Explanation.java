package org.mensuration.formula;

import java.util.List;
import java.util.Objects;

/**
 * A formula with numbers put in. Immutable and thread-safe.
 *
 * @param title name of the formula in the trade
 * @param equation the equation in symbols
 * @param inputs the inputs, a line each: symbol, value, unit, meaning
 * @param steps the intermediate results, a line each
 * @param substituted the equation with the numbers put in
 * @param result the result with its unit
 * @param sources the citations, a line each
 */
public record Explanation(
    String title,
    String equation,
    List<String> inputs,
    List<String> steps,
    String substituted,
    String result,
    List<String> sources) {

  /**
   * Copies the lists.
   *
   * @param title name of the formula in the trade
   * @param equation the equation in symbols
   * @param inputs the inputs, a line each
   * @param steps the intermediate results, a line each
   * @param substituted the equation with the numbers put in
   * @param result the result with its unit
   * @param sources the citations, a line each
   */
  public Explanation {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(equation, "equation");
    inputs = List.copyOf(inputs);
    steps = List.copyOf(steps);
    Objects.requireNonNull(substituted, "substituted");
    Objects.requireNonNull(result, "result");
    sources = List.copyOf(sources);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(title).append('\n').append("  ").append(equation);
    inputs.forEach(line -> text.append("\n  ").append(line));
    steps.forEach(line -> text.append("\n  ").append(line));
    text.append("\n  ").append(substituted).append("\n  ").append(result);
    sources.forEach(line -> text.append("\n  source: ").append(line));
    return text.toString();
  }
}
