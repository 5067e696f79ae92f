package org.mensuration.internal.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.PrintedTable;

/**
 * The tables that a formula looks its inputs up in, so that a cell that is not printed is refused
 * like any other value outside the domain. Immutable and thread-safe.
 */
final class PrintedCells {
  private final List<Entry> entries = new ArrayList<>();

  private final List<Parameter> parameters;

  PrintedCells(Equation equation, List<Parameter> parameters) {
    this.parameters = parameters;
    collect(equation, List.of());
  }

  /** A case that must hold for a table to be looked at. */
  private record Guard(Equation.Cases cases, Equation chosen) {}

  /** A table, the inputs that it is entered with and the cases that it stands in. */
  private record Entry(PrintedTable table, List<Integer> inputs, List<Guard> guards) {
    boolean looked(Map<String, Double> values) {
      for (Guard guard : guards) {
        Optional<Equation> chosen = guard.cases().chosen(values);
        if (chosen.isPresent() && chosen.get() != guard.chosen()) {
          return false;
        }
      }
      return true;
    }

    double[] keys(double[][] x) {
      double[] keys = new double[inputs.size()];
      for (int i = 0; i < keys.length; i++) {
        keys[i] = x[inputs.get(i)][0];
      }
      return keys;
    }
  }

  /** Look-ups by inputs only: the key of any other is the business of its own equation. */
  private void collect(Equation node, List<Guard> guards) {
    if (node instanceof Equation.LookUp lookUp) {
      List<Integer> inputs = new ArrayList<>();
      for (Equation key : lookUp.keys()) {
        for (int i = 0; i < parameters.size(); i++) {
          if (key instanceof Equation.Symbol symbol
              && symbol.name().equals(parameters.get(i).symbol())) {
            inputs.add(i);
          }
        }
      }
      if (inputs.size() == lookUp.keys().size()) {
        entries.add(new Entry(lookUp.table(), List.copyOf(inputs), guards));
      }
    } else if (node instanceof Equation.Where where) {
      collect(where.value(), guards);
      collect(where.in(), guards);
    } else if (node instanceof Equation.Rounded rounded) {
      collect(rounded.value(), guards);
    } else if (node instanceof Equation.Product product) {
      product.factors().forEach(factor -> collect(factor, guards));
    } else if (node instanceof Equation.Sum sum) {
      sum.terms().forEach(term -> collect(term, guards));
    } else if (node instanceof Equation.Quotient quotient) {
      collect(quotient.numerator(), guards);
      collect(quotient.denominator(), guards);
    } else if (node instanceof Equation.Cases cases) {
      cases.branches().forEach(branch -> collect(branch.then(), in(guards, cases, branch.then())));
      collect(cases.otherwise(), in(guards, cases, cases.otherwise()));
    }
  }

  private static List<Guard> in(List<Guard> outer, Equation.Cases cases, Equation chosen) {
    List<Guard> guards = new ArrayList<>(outer);
    guards.add(new Guard(cases, chosen));
    return guards;
  }

  private Map<String, Double> values(double[][] x) {
    Map<String, Double> values = new HashMap<>();
    for (int i = 0; i < x.length; i++) {
      values.put(parameters.get(i).symbol(), x[i][0]);
    }
    return values;
  }

  boolean holds(double[][] x) {
    for (Entry entry : entries) {
      if (entry.looked(values(x)) && !entry.table().cell(entry.keys(x)).isPresent()) {
        return false;
      }
    }
    return true;
  }

  void require(Formula formula, String where, double[][] x) {
    for (Entry entry : entries) {
      if (!entry.looked(values(x))) {
        continue;
      }
      Optional<PrintedTable.Gap> gap = entry.table().gap(entry.keys(x));
      if (gap.isPresent()) {
        int input = entry.inputs().get(gap.get().key());
        Parameter parameter = formula.parameters().get(input);
        throw new OutOfDomainException(
            formula, where, parameter.symbol(), x[input][0], parameter.unit(), gap.get().printed());
      }
    }
  }
}
