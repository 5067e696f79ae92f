package org.mensuration.internal.convention;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mensuration.log.LogReadings;

/**
 * A log longer than its table is two logs, nearly equal: the longer part lies at the butt, and its
 * top is where the log is parted, read as the middle. Immutable and thread-safe.
 *
 * @param longest length in m up to which the log is one
 * @param parting rounding of half the length
 * @param part rule of a part, by its small end
 */
record InTwoParts(double longest, ClassSteps parting, Sizing part) implements Sizing {
  @Override
  public double amount(RuleFacts facts, LogReadings readings, double length, StepLog log) {
    if (!(length > longest)) {
      return part.amount(facts, readings, length, log);
    }
    if (readings.middle().isEmpty()) {
      throw facts.needs(
          "the diameter where a log over "
              + longest
              + " m is parted, given as its middle; the log of "
              + length
              + " m is then the sum of two nearly equal parts");
    }
    double top = thinnest(ReadingPlace.SMALL, facts, readings);
    double cut = thinnest(ReadingPlace.MIDDLE, facts, readings);
    if (!(cut >= top)) {
      throw facts.outOfDomain(
          ReadingPlace.MIDDLE.symbol(), cut, Diameters.UNIT, "at least the small end, " + top);
    }
    double upper = log.reading("upper part", "L", parting, length / 2, "m");
    LogReadings lower =
        new LogReadings(
            List.of(),
            List.of(),
            readings.middle(),
            Optional.empty(),
            readings.length(),
            readings.bark());
    return part.amount(facts, readings, upper, log)
        + part.amount(facts, lower, length - upper, log);
  }

  private static double thinnest(ReadingPlace place, RuleFacts facts, LogReadings readings) {
    return Arrays.stream(place.centimetres(facts, readings)).min().orElse(Double.NaN);
  }

  @Override
  public List<String> roundings() {
    List<String> words = new ArrayList<>(part.roundings());
    words.add("over " + longest + " m two parts, the upper " + parting.words("m"));
    return words;
  }
}
