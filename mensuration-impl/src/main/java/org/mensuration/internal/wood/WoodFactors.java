package org.mensuration.internal.wood;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.FactorAddition;
import org.mensuration.wood.WoodMeasure;

/** Finds published factors. Immutable and thread-safe. */
public final class WoodFactors {
  /** Every factor, source by source. */
  public static final List<ConversionFactor> ALL = join();

  /** What sources add to their factors for other wood. */
  public static final List<FactorAddition> ADDITIONS = EuropeanFactors.additions();

  private WoodFactors() {}

  private static List<ConversionFactor> join() {
    List<ConversionFactor> all = new ArrayList<>(EuropeanFactors.all());
    all.addAll(TradeFactors.all());
    return List.copyOf(all);
  }

  /**
   * The measures that factors lead from or to.
   *
   * @return each once
   */
  public static List<WoodMeasure> measures() {
    Map<String, WoodMeasure> measures = new LinkedHashMap<>();
    for (ConversionFactor factor : ALL) {
      measures.put(factor.from().code(), factor.from());
      measures.put(factor.to().code(), factor.to());
    }
    return List.copyOf(measures.values());
  }

  /**
   * A measure.
   *
   * @param code its code
   * @return the measure
   * @throws IllegalArgumentException if there is none
   */
  public static WoodMeasure measure(String code) {
    return measures().stream()
        .filter(measure -> measure.code().equals(code))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no measure "
                        + code
                        + "; there are "
                        + measures().stream()
                            .map(WoodMeasure::code)
                            .collect(Collectors.joining(", "))));
  }

  /**
   * The factors from one measure to another.
   *
   * @param from the measure converted
   * @param to the measure that comes out
   * @return those published for that direction; empty if there are none
   */
  public static List<ConversionFactor> between(WoodMeasure from, WoodMeasure to) {
    return ALL.stream()
        .filter(factor -> factor.from().equals(from) && factor.to().equals(to))
        .collect(Collectors.toList());
  }

  /**
   * The only factor from one measure to another.
   *
   * @param from the measure converted
   * @param to the measure that comes out
   * @return the factor
   * @throws IllegalArgumentException if there is none or more than one
   */
  public static ConversionFactor only(WoodMeasure from, WoodMeasure to) {
    List<ConversionFactor> found = between(from, to);
    if (found.isEmpty()) {
      throw new IllegalArgumentException(
          "no factor is published from "
              + from
              + " to "
              + to
              + (between(to, from).isEmpty()
                  ? ""
                  : "; there is one the other way, which is not turned round"));
    }
    if (found.size() > 1) {
      throw new IllegalArgumentException(
          found.size()
              + " factors are published from "
              + from
              + " to "
              + to
              + "; choose by the wood: "
              + found.stream().map(ConversionFactor::condition).collect(Collectors.joining(" | ")));
    }
    return found.get(0);
  }
}
