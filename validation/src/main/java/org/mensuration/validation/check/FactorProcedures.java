package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.mensuration.WoodConversions;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.FactorAddition;

/**
 * Published factors between measures of wood, by the number of a factor among those of its
 * direction. The cells are facts of the library. Stateless and thread-safe.
 */
final class FactorProcedures {
  private static final List<String> SWEDISH =
      List.of("se:m3sk", "se:m3fpb", "se:m3fub", "se:m3to", "se:m3t");
  private static final List<String> AUSTRIAN =
      List.of("at:fm-round", "at:rm-split", "at:rm-short", "at:srm-short", "at:srm-chips");
  private static final Result FACTOR = new Result("factor", "f", "1");

  static final List<Procedure> ALL = all();

  private FactorProcedures() {}

  private static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    all.add(matrix("factor-matrix/se", SWEDISH));
    all.add(matrix("factor-matrix/at", AUSTRIAN));
    Set<String> directions = new LinkedHashSet<>();
    for (ConversionFactor factor : WoodConversions.factors()) {
      String from = factor.from().code();
      String to = factor.to().code();
      if (directions.add(direction(from, to))) {
        all.add(
            numbered(
                "factor/" + direction(from, to),
                number -> WoodConversions.factors(from, to).get(number).factor()));
      }
    }
    for (FactorAddition addition : WoodConversions.additions()) {
      String direction = direction(addition.from().code(), addition.to().code());
      if (directions.add("addition/" + direction)) {
        all.add(
            numbered(
                "factor-addition/" + direction,
                number -> WoodConversions.additions().get(number).added()));
      }
    }
    return List.copyOf(all);
  }

  private static String direction(String from, String to) {
    return from + "/" + to;
  }

  private static Procedure matrix(String id, List<String> measures) {
    return new Printed(
        id,
        List.of(input("from"), input("to")),
        x -> WoodConversions.factor(measures.get(place(x, 0)), measures.get(place(x, 1))).factor());
  }

  private static Procedure numbered(String id, Function<Integer, BigDecimal> facts) {
    return new Printed(id, List.of(input("number")), x -> facts.apply(place(x, 0)));
  }

  private static Parameter input(String name) {
    return StemProcedures.one(name, "1", Domain.atLeast(1));
  }

  private static int place(double[][] x, int input) {
    return (int) x[input][0] - 1;
  }

  /**
   * A figure that the library states.
   *
   * @param id the name in a table's head
   * @param parameters what tells one figure from another
   * @param fact the figure
   */
  private record Printed(
      String id, List<Parameter> parameters, Function<double[][], BigDecimal> fact)
      implements Procedure {
    @Override
    public Result result() {
      return FACTOR;
    }

    @Override
    public boolean tabulated() {
      return true;
    }

    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return fact.apply(inputs).doubleValue();
    }
  }
}
