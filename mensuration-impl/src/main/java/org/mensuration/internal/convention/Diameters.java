package org.mensuration.internal.convention;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.log.LogReadings;

/**
 * One diameter, the mean of the readings of a place. Immutable and thread-safe.
 *
 * @param place where it is read
 * @param reading rounding of each reading
 * @param mean rounding of their mean
 * @param pair who must be read twice
 */
record Diameters(ReadingPlace place, ClassSteps reading, ClassSteps mean, Pair pair)
    implements Sizing {
  static final String UNIT = "cm";

  /**
   * From which diameter on two crossed readings are needed.
   *
   * @param limit the limit in cm
   * @param included whether the limit itself needs two
   */
  record Pair(double limit, boolean included) {
    static final Pair NEVER = new Pair(Double.POSITIVE_INFINITY, false);

    boolean needed(double diameter) {
      return included ? diameter >= limit : diameter > limit;
    }

    String words() {
      return (included ? "from " : "above ") + (int) limit + " " + UNIT;
    }
  }

  static Diameters at(ReadingPlace place, ClassSteps reading) {
    return new Diameters(place, reading, ClassSteps.NONE, Pair.NEVER);
  }

  @Override
  public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
    return facts.formula().value(diameter(facts, readings, log), length);
  }

  double diameter(RuleFacts facts, LogReadings readings, StepLog log) {
    double[] values = place.centimetres(facts, readings);
    if (values.length == 1 && pair.needed(values[0])) {
      throw facts.needs(
          "two crossed readings of the "
              + place.words()
              + " "
              + pair.words()
              + "; one of "
              + values[0]
              + " "
              + UNIT
              + " given");
    }
    for (int i = 0; i < values.length; i++) {
      values[i] = log.reading(what(), place.symbol(), reading, values[i], UNIT);
    }
    if (values.length == 1) {
      return values[0];
    }
    double average = MiddleFormulas.MEAN_OF_READINGS.applyTo(values);
    return log.reading("mean " + what(), place.symbol(), mean, average, UNIT);
  }

  private String what() {
    return place.words() + " diameter";
  }

  @Override
  public List<String> roundings() {
    List<String> words = new ArrayList<>();
    if (!reading.isNone()) {
      words.add("each " + what() + " " + reading.words(UNIT));
    }
    if (!mean.isNone()) {
      words.add("mean " + what() + " " + mean.words(UNIT));
    }
    return words;
  }
}
