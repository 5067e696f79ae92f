package org.mensuration.internal.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.formula.Result;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.source.Source;

/** Collects what is said about a formula while its constant is made. Not thread-safe. */
public final class Definition {
  private final String id;
  private final String title;
  private final Nature nature;
  private final List<Parameter> parameters = new ArrayList<>();
  private final List<Relation> relations = new ArrayList<>();
  private final List<Citation> citations = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private Optional<Result> result = Optional.empty();
  private Optional<Equation> equation = Optional.empty();
  private Optional<BulkKernel> bulk = Optional.empty();

  private Definition(String id, String title, Nature nature) {
    this.id = id;
    this.title = title;
    this.nature = nature;
  }

  /**
   * Starts a formula.
   *
   * @param id topic and name
   * @param title name in the trade
   * @param nature what kind of truth it is
   * @return the definition
   */
  public static Definition of(String id, String title, Nature nature) {
    return new Definition(id, title, nature);
  }

  /**
   * Adds an input.
   *
   * @param name public name
   * @param symbol symbol in the equation
   * @param unit unit of the print
   * @param domain values with a meaning
   * @param meaning what is measured
   * @return this
   */
  public Definition input(String name, String symbol, String unit, Domain domain, String meaning) {
    parameters.add(new Parameter(name, symbol, unit, meaning, domain, Optional.empty(), false));
    return this;
  }

  /**
   * Adds an input with the range of the data behind the formula.
   *
   * @param name public name
   * @param symbol symbol in the equation
   * @param unit unit of the print
   * @param domain values with a meaning
   * @param published range of the data
   * @param meaning what is measured
   * @return this
   */
  public Definition input(
      String name, String symbol, String unit, Domain domain, Domain published, String meaning) {
    parameters.add(
        new Parameter(name, symbol, unit, meaning, domain, Optional.of(published), false));
    return this;
  }

  /**
   * Adds a list of readings.
   *
   * @param name public name
   * @param symbol symbol in the equation
   * @param unit unit of the print
   * @param domain values with a meaning
   * @param meaning what is measured
   * @return this
   */
  public Definition list(String name, String symbol, String unit, Domain domain, String meaning) {
    parameters.add(new Parameter(name, symbol, unit, meaning, domain, Optional.empty(), true));
    return this;
  }

  /**
   * Adds a limit between two inputs.
   *
   * @param left public name of the left input
   * @param comparison the comparison
   * @param factor factor of the right input
   * @param right public name of the right input
   * @param text the relation in symbols
   * @return this
   */
  public Definition relation(
      String left, Comparison comparison, double factor, String right, String text) {
    relations.add(Relation.between(left, comparison, factor, right, text));
    return this;
  }

  /**
   * Adds a limit between inputs that has more terms or a bound.
   *
   * @param relation the limit
   * @return this
   */
  public Definition relation(Relation relation) {
    relations.add(relation);
    return this;
  }

  /**
   * States the result.
   *
   * @param name public name
   * @param symbol symbol left of the equals sign
   * @param unit unit of the print
   * @param printed the right side as the source prints it
   * @return this
   */
  public Definition gives(String name, String symbol, String unit, Equation printed) {
    result = Optional.of(new Result(name, symbol, unit));
    equation = Optional.of(printed);
    return this;
  }

  /**
   * Adds the place that defines it, as read.
   *
   * @param source the work
   * @param place the place
   * @return this
   */
  public Definition definedBy(Source source, String place) {
    return cites(Citation.published(Role.DEFINES, source, place));
  }

  /**
   * Adds a place that prints values, as read.
   *
   * @param source the work
   * @param place the place
   * @return this
   */
  public Definition tabulatedBy(Source source, String place) {
    return cites(Citation.published(Role.TABULATES, source, place));
  }

  /**
   * Adds a place that explains, as read.
   *
   * @param source the work
   * @param place the place
   * @return this
   */
  public Definition explainedBy(Source source, String place) {
    return cites(Citation.published(Role.EXPLAINS, source, place));
  }

  /**
   * Adds a citation.
   *
   * @param citation the citation
   * @return this
   */
  public Definition cites(Citation citation) {
    citations.add(citation);
    return this;
  }

  /**
   * Adds an assumption or limit.
   *
   * @param note the note
   * @return this
   */
  public Definition note(String note) {
    notes.add(note);
    return this;
  }

  /**
   * Adds a kernel for many rows at once, of the same arithmetic as the kernel.
   *
   * @param kernel the arithmetic
   * @return this
   */
  public Definition inBulk(BulkKernel kernel) {
    bulk = Optional.of(kernel);
    return this;
  }

  /**
   * Binds the kernel.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernel(Kernel kernel) {
    return new BoundFormula(
        new Facts(
            id,
            title,
            nature,
            List.copyOf(parameters),
            List.copyOf(relations),
            result.orElseThrow(() -> new IllegalStateException(id + " gives nothing")),
            equation.orElseThrow(() -> new IllegalStateException(id + " has no equation")),
            List.copyOf(citations),
            List.copyOf(notes)),
        kernel,
        bulk);
  }

  /**
   * Binds a kernel of one number.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernel1(Kernel.Of1 kernel) {
    return kernel(kernel);
  }

  /**
   * Binds a kernel of two numbers.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernel2(Kernel.Of2 kernel) {
    return kernel(kernel);
  }

  /**
   * Binds a kernel of three numbers.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernel3(Kernel.Of3 kernel) {
    return kernel(kernel);
  }

  /**
   * Binds a kernel of four numbers.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernel4(Kernel.Of4 kernel) {
    return kernel(kernel);
  }

  /**
   * Binds a kernel of lists or of more than four numbers.
   *
   * @param kernel the arithmetic
   * @return the formula
   */
  public BoundFormula kernelOfArrays(Kernel.OfArrays kernel) {
    return kernel(kernel);
  }
}
