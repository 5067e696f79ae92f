package org.mensuration.validation.check;

import static org.mensuration.units.ForestUnits.INCH;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.mensuration.LogRules;
import org.mensuration.Scaling;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.kernel.BoardFeet;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.Taper;

/** Chains of scaling, each through the front door. Stateless and thread-safe. */
final class ScalingProcedures {
  static final List<Procedure> ALL =
      List.of(
          new Chain(
              "decimal-c-tens",
              List.of(input("amount", "bf")),
              new Result("tens", "n", "1"),
              x -> BoardFeet.nearest(x[0], 10) / 10),
          new Chain(
              "georgia-segments",
              List.of(input("length", "ft")),
              new Result("segments", "n", "1"),
              x -> georgia(x[0]).segments().size()),
          new Chain(
              "idaho-diameter-class",
              List.of(input("diameter", "in")),
              new Result("class", "D", "in"),
              x -> idaho(x[0])),
          new Chain(
              "two-readings-class",
              List.of(input("first", "in"), input("second", "in")),
              new Result("class", "D", "in"),
              x -> in(Scaling.ofTwoReadings(inches(x[0]), inches(x[1]), inches(1)), INCH)),
          new Chain(
              "deduction-rounding",
              List.of(input("amount", "bf")),
              new Result("deduction", "X", "bf"),
              x -> deduction(x[0])),
          new Chain(
              "half-inch-taper-middle",
              List.of(input("small_diameter", "in"), input("length", "ft")),
              new Result("middle", "d_m", "in"),
              x -> middle(x[0], x[1])));

  private ScalingProcedures() {}

  private static Parameter input(String name, String unit) {
    return new Parameter(name, name, unit, name, Domain.atLeast(0), Optional.empty(), false);
  }

  private static ScaledLog georgia(double lengthFt) {
    return Scaling.scaler(Scaling.georgia(), LogRules.doyle())
        .scale(Log.of(inches(16), inches(12), feet(lengthFt)));
  }

  private static double idaho(double diameterIn) {
    ScaledLog scaled =
        Scaling.scaler(Scaling.idaho(), LogRules.doyle())
            .scale(Log.of(inches(diameterIn), feet(16)));
    return in(scaled.segments().get(0).log().small().orElseThrow(), INCH);
  }

  /** A log of 1,000 board feet by Doyle that loses a stated amount. */
  private static double deduction(double amountBf) {
    LogScale lost = new LogScale("Doyle", amountBf, "bf", BarkBasis.UNKNOWN);
    return Scaling.scaler(Scaling.eastSide(), LogRules.doyle())
        .scale(Log.of(inches(36), feet(16.5)), new Defect.Stated(lost))
        .deductions()
        .get(0)
        .amount()
        .amount();
  }

  private static double middle(double smallIn, double lengthFt) {
    ScalingConvention halves =
        ScalingConvention.of("halves", SizeClass.nearest(inches(1)), SizeClass.full(feet(1)))
            .withLongLogs(
                LongLogs.split(
                    feet(lengthFt / 2), Split.NEAR_EQUAL, Taper.stated(inches(0.5), feet(4))));
    return Scaling.scaler(halves, LogRules.doyle())
        .scale(Log.of(inches(smallIn), feet(lengthFt)))
        .steps()
        .stream()
        .filter(step -> step.what().endsWith("by taper"))
        .mapToDouble(ScalingStep::after)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** A chain of single numbers. */
  private record Chain(
      String id, List<Parameter> parameters, Result result, ToDoubleFunction<double[]> chain)
      implements Procedure {
    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      double[] x = new double[inputs.length];
      for (int i = 0; i < x.length; i++) {
        x[i] = inputs[i][0];
      }
      return chain.applyAsDouble(x);
    }
  }
}
