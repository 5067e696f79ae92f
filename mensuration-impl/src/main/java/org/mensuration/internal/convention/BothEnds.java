package org.mensuration.internal.convention;

import static org.mensuration.internal.convention.ClassSteps.NONE;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.log.LogReadings;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Rules that read both ends. Stateless and thread-safe. */
final class BothEnds {
  private BothEnds() {}

  /** Both end diameters enter the formula, not rounded. Immutable and thread-safe. */
  record Each() implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double large = Diameters.at(ReadingPlace.LARGE, NONE).diameter(facts, readings, log);
      double small = Diameters.at(ReadingPlace.SMALL, NONE).diameter(facts, readings, log);
      return facts.formula().value(large, small, length);
    }

    @Override
    public List<String> roundings() {
      return List.of();
    }
  }

  /**
   * Both end diameters enter the formula in whole inches. Immutable and thread-safe.
   *
   * @param diameter rounding of a single reading; two of an end are taken together
   */
  record Inches(ClassSteps diameter) implements Sizing {
    private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);

    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double large = inches(ReadingPlace.LARGE, facts, readings, log);
      double small = inches(ReadingPlace.SMALL, facts, readings, log);
      return facts.formula().value(large, small, length);
    }

    private double inches(ReadingPlace place, RuleFacts facts, LogReadings readings, StepLog log) {
      double[] read = place.read(INCHES, facts, readings);
      String what = place.words() + " diameter";
      if (read.length == 1) {
        return log.reading(what, place.symbol(), diameter, read[0], "in");
      }
      if (read.length > 2) {
        throw facts.needs("one or two diameters of the " + place.words());
      }
      double taken = SizeClasses.ofTwoReadings(read[0], read[1], 1);
      double mean = MiddleFormulas.MEAN_OF_READINGS.applyTo(read);
      return log.taken("mean " + what, place.symbol(), mean, taken, "in");
    }

    @Override
    public List<String> roundings() {
      return List.of(
          "each diameter " + diameter.words("in"),
          "of two readings of an end the halves one up and one down, their mean down to 1 in");
    }
  }

  /**
   * The radii of both ends enter the formula. Immutable and thread-safe.
   *
   * @param radius rounding of each radius
   */
  record Radii(ClassSteps radius) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double large = radius(ReadingPlace.LARGE, facts, readings, log);
      double small = radius(ReadingPlace.SMALL, facts, readings, log);
      return facts.formula().value(large, small, length);
    }

    private double radius(ReadingPlace place, RuleFacts facts, LogReadings readings, StepLog log) {
      double diameter = Diameters.at(place, NONE).diameter(facts, readings, log);
      String what = place.words() + " radius";
      return log.reading(what, place.symbol(), radius, diameter / 2, "cm");
    }

    @Override
    public List<String> roundings() {
      return List.of("each radius " + radius.words("cm"));
    }
  }

  /**
   * The mean of two crossed readings of each end enters the formula. Immutable and thread-safe.
   *
   * @param reading rounding of each reading
   * @param mean rounding of their mean
   */
  record MeanOfFour(ClassSteps reading, ClassSteps mean) implements Sizing {
    @Override
    public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
      double[] four = new double[4];
      int filled = 0;
      for (ReadingPlace place : List.of(ReadingPlace.LARGE, ReadingPlace.SMALL)) {
        double[] two = place.centimetres(facts, readings);
        if (two.length != 2) {
          throw facts.needs(
              "two crossed readings of the " + place.words() + "; " + two.length + " given");
        }
        for (double value : two) {
          String what = place.words() + " diameter";
          four[filled++] = log.reading(what, place.symbol(), reading, value, "cm");
        }
      }
      double average = MiddleFormulas.MEAN_OF_READINGS.applyTo(four);
      double diameter = log.reading("mean diameter", "D", mean, average, "cm");
      return facts.formula().value(diameter, length);
    }

    @Override
    public List<String> roundings() {
      List<String> words = new ArrayList<>();
      words.add("each diameter " + reading.words("cm"));
      words.add("mean diameter " + mean.words("cm"));
      return words;
    }
  }
}
