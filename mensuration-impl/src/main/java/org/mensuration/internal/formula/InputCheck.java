package org.mensuration.internal.formula;

import java.util.List;
import java.util.stream.Collectors;
import org.mensuration.formula.Domain;
import org.mensuration.formula.EquationText;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;

/**
 * Checks inputs against the domains and relations of a formula. Immutable and thread-safe.
 *
 * <p>Relations are kept as one row of factors an input, so that a check walks plain arrays.
 */
final class InputCheck {
  private final List<Parameter> parameters;
  private final List<Relation> relations;
  private final Domain[] domains;
  private final double[][] factors;

  InputCheck(List<Parameter> parameters, List<Relation> relations) {
    this.parameters = parameters;
    this.relations = relations;
    this.domains = parameters.stream().map(Parameter::domain).toArray(Domain[]::new);
    this.factors = new double[relations.size()][parameters.size()];
    for (int r = 0; r < factors.length; r++) {
      for (Relation.Term term : relations.get(r).terms()) {
        factors[r][position(term.input())] += term.factor();
      }
    }
  }

  private int position(String name) {
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("relation names an unknown input " + name);
  }

  boolean inDomain(int input, double value) {
    return domains[input].contains(value);
  }

  boolean related(double a, double b, double c, double d) {
    for (int r = 0; r < factors.length; r++) {
      double[] row = factors[r];
      double sum = row[0] * a;
      if (row.length > 1) {
        sum += row[1] * b;
      }
      if (row.length > 2) {
        sum += row[2] * c;
      }
      if (row.length > 3) {
        sum += row[3] * d;
      }
      Relation relation = relations.get(r);
      if (!relation.comparison().holds(sum, relation.bound())) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether all rows of all columns are allowed. Column by column, so that the loops stay simple; a
   * refusal is left to the walk row by row, which names the row.
   */
  boolean acceptsAll(double[][] columns, int rows) {
    boolean accepted = true;
    for (int i = 0; i < domains.length; i++) {
      Domain domain = domains[i];
      double[] column = columns[i];
      for (int row = 0; row < rows; row++) {
        accepted &= domain.contains(column[row]);
      }
    }
    for (int r = 0; r < factors.length && accepted; r++) {
      accepted = holdsInAll(r, columns, rows);
    }
    return accepted;
  }

  private boolean holdsInAll(int r, double[][] columns, int rows) {
    boolean holds = true;
    Relation relation = relations.get(r);
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int i = 0; i < columns.length; i++) {
        if (factors[r][i] != 0) {
          sum += factors[r][i] * columns[i][row];
        }
      }
      holds &= relation.comparison().holds(sum, relation.bound());
    }
    return holds;
  }

  /** Whether every relation holds; the domains are not looked at. */
  boolean holdsAll(double[][] x) {
    for (int r = 0; r < factors.length; r++) {
      if (!relations.get(r).comparison().holds(sum(r, x), relations.get(r).bound())) {
        return false;
      }
    }
    return true;
  }

  private double sum(int r, double[][] x) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      if (factors[r][i] != 0) {
        sum += factors[r][i] * x[i][0];
      }
    }
    return sum;
  }

  void requireAll(Formula formula, String where, double[][] x) {
    if (x.length != parameters.size()) {
      throw new IllegalArgumentException(
          formula.id()
              + ": "
              + x.length
              + " inputs given, "
              + parameters.size()
              + " needed: "
              + parameters.stream().map(Parameter::name).collect(Collectors.toList()));
    }
    int readings = -1;
    for (int i = 0; i < x.length; i++) {
      Parameter parameter = parameters.get(i);
      if (parameter.list() ? x[i].length == 0 : x[i].length != 1) {
        throw new IllegalArgumentException(
            formula.id()
                + ": "
                + parameter.name()
                + " has "
                + x[i].length
                + " values, "
                + (parameter.list() ? "at least one" : "one")
                + " needed");
      }
      if (parameter.list()) {
        if (readings >= 0 && readings != x[i].length) {
          throw new IllegalArgumentException(
              formula.id()
                  + ": the lists are of unlike length; "
                  + parameter.name()
                  + " has "
                  + x[i].length
                  + " values, the list before it "
                  + readings);
        }
        readings = x[i].length;
      }
      for (double value : x[i]) {
        if (!domains[i].contains(value)) {
          throw new OutOfDomainException(
              formula, where, parameter.symbol(), value, parameter.unit(), domains[i].toString());
        }
      }
    }
    for (int r = 0; r < factors.length; r++) {
      requireRelation(formula, where, r, x);
    }
  }

  private void requireRelation(Formula formula, String where, int r, double[][] x) {
    Relation relation = relations.get(r);
    if (!relation.comparison().holds(sum(r, x), relation.bound())) {
      int first = position(relation.terms().get(0).input());
      Parameter parameter = parameters.get(first);
      throw new OutOfDomainException(
          formula,
          where,
          parameter.symbol(),
          x[first][0],
          parameter.unit(),
          relation.text() + "; given " + given(r, x));
    }
  }

  private String given(int r, double[][] x) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < x.length; i++) {
      if (factors[r][i] != 0) {
        Parameter parameter = parameters.get(i);
        text.append(text.length() == 0 ? "" : ", ")
            .append(parameter.symbol())
            .append(" = ")
            .append(EquationText.number(x[i][0]));
        if (!"1".equals(parameter.unit())) {
          text.append(' ').append(parameter.unit());
        }
      }
    }
    return text.toString();
  }
}
