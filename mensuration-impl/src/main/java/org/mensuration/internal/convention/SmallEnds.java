package org.mensuration.internal.convention;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.PrintedTable;
import org.mensuration.internal.catalogue.SmallEndFormulas;
import org.mensuration.internal.table.RuleTable;
import org.mensuration.log.LogReadings;

/** Rules that read the small end in a way of their own. Stateless and thread-safe. */
final class SmallEnds {
  private SmallEnds() {}

  /**
   * The class of the smallest diameter, widened where the largest exceeds it. One reading is taken
   * as the smallest. Immutable and thread-safe.
   *
   * @param reading rounding of each reading
   */
  record Widened(ClassSteps reading) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double[] extremes = extremes(facts, readings);
      double smallest = log.reading("smallest diameter", "d", reading, extremes[0], "cm");
      double largest = log.reading("largest diameter", "D", reading, extremes[1], "cm");
      double widened = SmallEndFormulas.CROSSED_CLASS.value(largest, smallest);
      return facts.formula().value(widened, length);
    }

    @Override
    public List<String> roundings() {
      return List.of(
          "each diameter " + reading.words("cm"),
          "smallest diameter 2 cm more for every full 6 cm (from 40 cm on 8 cm) to the largest");
    }
  }

  /** The smallest and the largest diameter enter the formula. Immutable and thread-safe. */
  record SmallestAndLargest() implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double[] extremes = extremes(facts, readings);
      return facts.formula().value(extremes[1], extremes[0], length);
    }

    @Override
    public List<String> roundings() {
      return List.of();
    }
  }

  private static double[] extremes(RuleFacts facts, LogReadings readings) {
    double[] values = ReadingPlace.SMALL.centimetres(facts, readings);
    double smallest = values[0];
    double largest = values[0];
    for (double value : values) {
      smallest = Math.min(smallest, value);
      largest = Math.max(largest, value);
    }
    return new double[] {smallest, largest};
  }

  /**
   * A result with a finer step for the thinnest classes. Immutable and thread-safe.
   *
   * @param limit diameter in cm from which the coarser step holds
   * @param finer rounding of the result below the limit
   * @param coarser rounding of the result from the limit on
   */
  record FinerBelow(double limit, ClassSteps finer, ClassSteps coarser) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double diameter =
          Diameters.at(ReadingPlace.SMALL, ClassSteps.NONE).diameter(facts, readings, log);
      double amount = facts.formula().value(diameter, length);
      return log.amount("result", diameter < limit ? finer : coarser, amount, "m3");
    }

    @Override
    public List<String> roundings() {
      return List.of(
          "result " + finer.words("m3") + " below " + (int) limit + " cm",
          "result " + coarser.words("m3") + " from " + (int) limit + " cm");
    }
  }

  /**
   * A rule for what a table does not hold; what it holds is refused. Immutable and thread-safe.
   *
   * @param diameters diameters of the table in cm
   * @param lengths lengths of the table in m
   * @param rule the rule
   */
  record OutsideTable(Domain diameters, Domain lengths, Sizing rule) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double diameter =
          Diameters.at(ReadingPlace.SMALL, ClassSteps.NONE).diameter(facts, readings, log);
      if (diameters.contains(diameter) && lengths.contains(length)) {
        throw facts.outOfDomain(
            "L",
            length,
            "m",
            "outside the table, which holds " + diameters + " cm by " + lengths + " m");
      }
      return rule.amount(facts, readings, length, log);
    }

    @Override
    public List<String> roundings() {
      return rule.roundings();
    }
  }

  /**
   * Between the cells of a printed table. Immutable and thread-safe.
   *
   * @param table the table
   */
  record Interpolated(RuleTable table) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double diameter =
          Diameters.at(ReadingPlace.SMALL, ClassSteps.NONE).diameter(facts, readings, log);
      double amount = table.interpolated(diameter, length);
      if (!(amount > 0)) {
        // A printed cell is above zero, so this one is not printed and has its gap.
        PrintedTable.Gap gap =
            table
                .gap(diameter, length)
                .orElseThrow(() -> new IllegalStateException(table.name() + " is not above zero"));
        boolean first = gap.key() == 0;
        throw facts.outOfDomain(
            first ? "d" : "L",
            first ? diameter : length,
            first ? "cm" : "m",
            "printed neighbours on every side, " + gap.printed());
      }
      return amount;
    }

    @Override
    public List<String> roundings() {
      return List.of("linear between the printed cells");
    }
  }
}
