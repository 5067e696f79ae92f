package org.mensuration.validation.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;

/** The procedures that a table can name. Stateless and thread-safe. */
final class Procedures {
  private static final List<Procedure> ALL = all();

  private Procedures() {}

  private static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    all.add(new BasalAreaOfTrees());
    all.add(new BasalAreaFromCounts());
    all.addAll(ScalingProcedures.ALL);
    all.addAll(StemProcedures.ALL);
    all.addAll(UnitProcedures.ALL);
    all.addAll(ConventionProcedures.ALL);
    all.addAll(MapProcedures.ALL);
    all.addAll(CountProcedures.ALL);
    all.addAll(SurveyProcedures.ALL);
    all.addAll(SurveyCase.ALL);
    all.addAll(CruiseProcedures.ALL);
    all.addAll(HeightProcedures.ALL);
    all.addAll(GridProcedures.ALL);
    all.addAll(UncertaintyProcedures.ALL);
    all.addAll(DrawnProcedures.ALL);
    all.addAll(FactorProcedures.ALL);
    all.addAll(Coefficient.all());
    return List.copyOf(all);
  }

  static Optional<Procedure> find(String id) {
    return ALL.stream().filter(procedure -> procedure.id().equals(id)).findFirst();
  }

  static List<String> ids() {
    return ALL.stream().map(Procedure::id).toList();
  }

  private static Parameter list(String name, String unit, String meaning) {
    return new Parameter(name, name, unit, meaning, Domain.atLeast(0), Optional.empty(), true);
  }

  /** The sum of the basal areas of single trees. */
  private static final class BasalAreaOfTrees implements Procedure {
    @Override
    public String id() {
      return "basal-area-of-trees";
    }

    @Override
    public List<Parameter> parameters() {
      return List.of(list("diameter", "cm", "diameters of the trees"));
    }

    @Override
    public Result result() {
      return new Result("area", "G", "m2");
    }

    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return Arrays.stream(inputs[0]).map(catalogue.formula("tree/basal-area")::apply).sum();
    }
  }

  /** The mean over points of the basal area that the count at each point stands for. */
  private static final class BasalAreaFromCounts implements Procedure {
    @Override
    public String id() {
      return "basal-area-from-counts";
    }

    @Override
    public List<Parameter> parameters() {
      return List.of(
          new Parameter(
              "factor", "k", "m2/ha", "gauge factor", Domain.above(0), Optional.empty(), false),
          list("count", "1", "trees counted at each point"));
    }

    @Override
    public Result result() {
      return new Result("basal_area", "G", "m2/ha");
    }

    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      double factor = inputs[0][0];
      return Arrays.stream(inputs[1])
          .map(count -> catalogue.formula("point/basal-area").apply(factor, count))
          .average()
          .orElse(Double.NaN);
    }
  }
}
