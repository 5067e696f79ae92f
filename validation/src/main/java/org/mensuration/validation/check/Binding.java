package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Parameter;
import org.mensuration.validation.table.InputColumn;
import org.mensuration.validation.table.ResultColumn;
import org.mensuration.validation.table.Table;
import org.mensuration.validation.table.TableException;
import org.mensuration.validation.table.TableHead;

/**
 * A result column tied to what gives its values. Immutable and thread-safe.
 *
 * @param column the result column
 * @param position its position among the result columns
 * @param subject formula or procedure
 * @param columns position of the input column of each parameter
 * @param ratios factor of each parameter from the unit of its column to that of the formula
 * @param result factor from the unit of the formula to that of the column
 */
record Binding(
    ResultColumn column,
    int position,
    Subject subject,
    List<Integer> columns,
    List<ColumnUnit.Ratio> ratios,
    ColumnUnit.Ratio result) {

  /** Ties all result columns of a table, or says which name or unit does not fit. */
  static List<Binding> of(Table table, Catalogue catalogue) {
    TableHead head = table.head();
    List<Binding> bindings = new ArrayList<>();
    Set<Integer> used = new HashSet<>();
    for (int i = 0; i < head.results().size(); i++) {
      Binding binding = of(table, head.results().get(i), i, catalogue);
      used.addAll(binding.columns());
      bindings.add(binding);
    }
    for (int i = 0; i < head.inputs().size(); i++) {
      if (!used.contains(i)) {
        throw TableException.of(
            table.name(),
            "column "
                + shown(head.inputs().get(i))
                + " is no input of "
                + bindings.get(0).subject().id()
                + ", which takes "
                + shown(bindings.get(0).subject().parameters()));
      }
    }
    return bindings;
  }

  private static Binding of(Table table, ResultColumn column, int position, Catalogue catalogue) {
    Subject subject = subject(table, table.head().subject(column), catalogue);
    List<Integer> columns = new ArrayList<>();
    List<ColumnUnit.Ratio> ratios = new ArrayList<>();
    for (Parameter parameter : subject.parameters()) {
      int found = find(table, subject, parameter);
      InputColumn input = table.head().inputs().get(found);
      columns.add(found);
      ratios.add(
          ColumnUnit.ratio(input.unit(), parameter.unit())
              .orElseThrow(() -> units(table, subject, shown(input), shown(parameter))));
    }
    String wanted = subject.result().name() + " [" + subject.result().unit() + "]";
    String given = column.name() + " [" + column.unit() + "]";
    boolean ownName = column.formula().isEmpty();
    if (ownName && !column.name().equals(subject.result().name())) {
      throw units(table, subject, given, wanted);
    }
    ColumnUnit.Ratio result =
        ColumnUnit.ratio(subject.result().unit(), column.unit())
            .orElseThrow(() -> units(table, subject, given, wanted));
    return new Binding(column, position, subject, columns, ratios, result);
  }

  private static Subject subject(Table table, String id, Catalogue catalogue) {
    if (table.head().procedure().isPresent()) {
      return Procedures.find(id)
          .map(procedure -> Subject.of(procedure, catalogue))
          .orElseThrow(
              () ->
                  TableException.of(
                      table.name(), "no procedure " + id + "; there are " + Procedures.ids()));
    }
    return catalogue
        .find(id)
        .map(Subject::of)
        .orElseThrow(
            () -> TableException.of(table.name(), "formula " + id + " is not in the catalogue"));
  }

  private static int find(Table table, Subject subject, Parameter parameter) {
    List<InputColumn> inputs = table.head().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      if (inputs.get(i).name().equals(parameter.name())) {
        return i;
      }
    }
    throw TableException.of(
        table.name(),
        subject.id()
            + " takes "
            + shown(parameter)
            + ", the table has "
            + String.join(", ", inputs.stream().map(Binding::shown).toList()));
  }

  private static TableException units(Table table, Subject subject, String given, String wanted) {
    return TableException.of(
        table.name(), "column " + given + " does not fit " + wanted + " of " + subject.id());
  }

  private static String shown(InputColumn column) {
    return column.name() + " [" + column.unit() + "]";
  }

  private static String shown(Parameter parameter) {
    return parameter.name() + " [" + parameter.unit() + "]";
  }

  private static String shown(List<Parameter> parameters) {
    return String.join(", ", parameters.stream().map(Binding::shown).toList());
  }

  /** The inputs of a row as decimals in the units of the formula. */
  List<List<BigDecimal>> inputs(List<List<BigDecimal>> cells) {
    List<List<BigDecimal>> inputs = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      ColumnUnit.Ratio ratio = ratios.get(i);
      inputs.add(cells.get(columns.get(i)).stream().map(ratio::times).toList());
    }
    return inputs;
  }

  /** Half the step of a parameter's column in the unit of the formula; empty if it is exact. */
  Optional<BigDecimal> halfStep(int parameter, TableHead head) {
    return head.inputs()
        .get(columns.get(parameter))
        .step()
        .map(step -> ratios.get(parameter).times(step).divide(BigDecimal.valueOf(2)));
  }
}
