package org.mensuration.validation.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;

/**
 * A procedure that calls formulas one after another. Immutable and thread-safe.
 *
 * @param id identifier
 * @param parameters inputs in their order
 * @param result what comes out
 * @param evidenceFor formulas that its printed figures check
 * @param function the calls
 */
record Chain(
    String id,
    List<Parameter> parameters,
    Result result,
    List<String> evidenceFor,
    ToDoubleBiFunction<Catalogue, double[][]> function)
    implements Procedure {

  Chain {
    parameters = List.copyOf(parameters);
    evidenceFor = List.copyOf(evidenceFor);
  }

  /** A chain that takes nothing yet. */
  static Builder of(String id) {
    return new Builder(id);
  }

  @Override
  public double value(Catalogue catalogue, double[][] inputs) {
    return function.applyAsDouble(catalogue, inputs);
  }

  /** Collects the inputs. Not thread-safe; made for one chain and dropped. */
  static final class Builder {
    private final String id;
    private final List<Parameter> parameters = new ArrayList<>();
    private final List<String> checked = new ArrayList<>();

    private Builder(String id) {
      this.id = id;
    }

    Builder number(String name, String unit, String meaning) {
      parameters.add(parameter(name, unit, meaning, false));
      return this;
    }

    Builder list(String name, String unit, String meaning) {
      parameters.add(parameter(name, unit, meaning, true));
      return this;
    }

    Builder all(List<Parameter> further) {
      parameters.addAll(further);
      return this;
    }

    /** Formulas that a printed figure of the chain checks: what else it takes is plain. */
    Builder checks(String... formulas) {
      checked.addAll(List.of(formulas));
      return this;
    }

    Chain gives(String name, String unit, ToDoubleBiFunction<Catalogue, double[][]> function) {
      return new Chain(id, parameters, new Result(name, name, unit), checked, function);
    }

    private static Parameter parameter(String name, String unit, String meaning, boolean list) {
      return new Parameter(name, name, unit, meaning, Domain.any(), Optional.empty(), list);
    }
  }
}
