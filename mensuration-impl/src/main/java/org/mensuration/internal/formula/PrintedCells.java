package org.mensuration.internal.formula;

import java.util.ArrayList;
import java.util.List;
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

  PrintedCells(Equation equation, List<Parameter> parameters) {
    collect(equation, parameters);
  }

  /** A table and the inputs that it is entered with. */
  private record Entry(PrintedTable table, List<Integer> inputs) {
    double[] keys(double[][] x) {
      double[] keys = new double[inputs.size()];
      for (int i = 0; i < keys.length; i++) {
        keys[i] = x[inputs.get(i)][0];
      }
      return keys;
    }
  }

  /** Look-ups by inputs only: the key of any other is the business of its own equation. */
  private void collect(Equation node, List<Parameter> parameters) {
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
        entries.add(new Entry(lookUp.table(), List.copyOf(inputs)));
      }
    } else if (node instanceof Equation.Where where) {
      collect(where.value(), parameters);
      collect(where.in(), parameters);
    } else if (node instanceof Equation.Rounded rounded) {
      collect(rounded.value(), parameters);
    } else if (node instanceof Equation.Product product) {
      product.factors().forEach(factor -> collect(factor, parameters));
    } else if (node instanceof Equation.Sum sum) {
      sum.terms().forEach(term -> collect(term, parameters));
    } else if (node instanceof Equation.Quotient quotient) {
      collect(quotient.numerator(), parameters);
      collect(quotient.denominator(), parameters);
    }
  }

  boolean holds(double[][] x) {
    for (Entry entry : entries) {
      if (!entry.table().cell(entry.keys(x)).isPresent()) {
        return false;
      }
    }
    return true;
  }

  void require(Formula formula, String where, double[][] x) {
    for (Entry entry : entries) {
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
