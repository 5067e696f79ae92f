package org.mensuration.formula;

import java.util.List;
import java.util.Objects;

/**
 * A limit between inputs, such as small end ≤ large end or diameter &lt; 2 × distance: a sum of
 * multiples of inputs compared with a bound. Immutable and thread-safe.
 *
 * @param terms the multiples, each of an input by its public name
 * @param comparison how the sum is compared
 * @param bound what it is compared with
 * @param text the relation in symbols, as printed
 */
public record Relation(List<Term> terms, Comparison comparison, double bound, String text) {

  /**
   * A multiple of an input. Immutable and thread-safe.
   *
   * @param factor the factor
   * @param input public name of the input
   */
  public record Term(double factor, String input) {

    /**
     * Checks that the term counts.
     *
     * @param factor the factor
     * @param input public name of the input
     * @throws IllegalArgumentException if the factor is zero or not finite, or the name blank
     */
    public Term {
      if (!(Math.abs(factor) > 0 && Math.abs(factor) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("relation: factor " + factor + " of " + input);
      }
      Parameter.requireText(input, "input");
    }
  }

  /**
   * Checks that the relation says something.
   *
   * @param terms the multiples, each of an input by its public name
   * @param comparison how the sum is compared
   * @param bound what it is compared with
   * @param text the relation in symbols, as printed
   * @throws IllegalArgumentException if there are no terms or the text is blank
   */
  public Relation {
    terms = List.copyOf(terms);
    Objects.requireNonNull(comparison, "comparison");
    Parameter.requireText(text, "text");
    if (terms.isEmpty() || !(Math.abs(bound) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("relation: " + text + " has no terms or no bound");
    }
  }

  /**
   * One input compared with a multiple of another.
   *
   * @param left public name of the left input
   * @param comparison the comparison
   * @param factor factor of the right input
   * @param right public name of the right input
   * @param text the relation in symbols
   * @return the relation
   */
  public static Relation between(
      String left, Comparison comparison, double factor, String right, String text) {
    return new Relation(List.of(new Term(1, left), new Term(-factor, right)), comparison, 0, text);
  }

  @Override
  public String toString() {
    return text;
  }
}
