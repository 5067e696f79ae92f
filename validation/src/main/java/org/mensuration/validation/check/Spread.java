package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Domain;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.validation.table.TableHead;

/**
 * Least and largest value over the half-steps of rounded inputs, in the unit of the column.
 * Immutable and thread-safe.
 *
 * @param least the least value
 * @param most the largest value
 */
record Spread(BigDecimal least, BigDecimal most) {
  /** Beyond this many points of the grid, inputs are moved one at a time and the moves added. */
  private static final int LARGEST_GRID = 20_000;

  BigDecimal width() {
    return most.subtract(least);
  }

  /** The spread about the computed value of a row. */
  static Spread of(
      Binding binding, TableHead head, List<List<BigDecimal>> inputs, BigDecimal computed) {
    List<Moved> moved = new ArrayList<>();
    long grid = 1;
    for (int i = 0; i < inputs.size(); i++) {
      Optional<BigDecimal> half = binding.halfStep(i, head);
      if (half.isEmpty()) {
        continue;
      }
      Parameter parameter = binding.subject().parameters().get(i);
      for (int j = 0; j < inputs.get(i).size(); j++) {
        List<Double> places = places(parameter.domain(), inputs.get(i).get(j), half.get());
        moved.add(new Moved(i, j, places));
        grid = Math.min(LARGEST_GRID + 1L, grid * places.size());
      }
    }
    if (moved.isEmpty()) {
      // Exact inputs give the computed value again, which a drawing takes long for.
      return new Spread(computed, computed);
    }
    Walk walk = new Walk(binding, Doubles.of(inputs), computed);
    if (grid <= LARGEST_GRID) {
      walk.grid(moved, 0);
      return new Spread(walk.least, walk.most);
    }
    BigDecimal below = BigDecimal.ZERO;
    BigDecimal above = BigDecimal.ZERO;
    for (Moved one : moved) {
      Walk single = new Walk(binding, Doubles.of(inputs), computed);
      single.grid(List.of(one), 0);
      below = below.add(computed.subtract(single.least));
      above = above.add(single.most.subtract(computed));
    }
    return new Spread(computed.subtract(below), computed.add(above));
  }

  /** One reading and the places it is moved to. */
  private record Moved(int input, int reading, List<Double> places) {}

  /**
   * Both ends, just inside both ends, and the middle: the pairs at the ends stand on either side of
   * a step of the formula that lies there.
   */
  private static List<Double> places(Domain domain, BigDecimal value, BigDecimal half) {
    double low = value.subtract(half).doubleValue();
    double high = value.add(half).doubleValue();
    double[] wanted = {low, Math.nextUp(low), value.doubleValue(), Math.nextDown(high), high};
    return Arrays.stream(wanted)
        .map(place -> inside(domain, place))
        .filter(domain::contains)
        .distinct()
        .boxed()
        .toList();
  }

  private static double inside(Domain domain, double place) {
    double kept = domain.whole() ? Math.rint(place) : place;
    if (kept <= domain.lower()) {
      return domain.lowerIncluded() ? domain.lower() : Math.nextUp(domain.lower());
    }
    if (kept >= domain.upper()) {
      return domain.upperIncluded() ? domain.upper() : Math.nextDown(domain.upper());
    }
    return kept;
  }

  /** Walks the grid and keeps the extremes. Not thread-safe; made for one row and dropped. */
  private static final class Walk {
    private final Binding binding;
    private final double[][] inputs;
    private BigDecimal least;
    private BigDecimal most;

    Walk(Binding binding, double[][] inputs, BigDecimal computed) {
      this.binding = binding;
      this.inputs = inputs;
      this.least = computed;
      this.most = computed;
    }

    void grid(List<Moved> moved, int from) {
      if (from == moved.size()) {
        visit();
        return;
      }
      Moved one = moved.get(from);
      double kept = inputs[one.input()][one.reading()];
      for (double place : one.places()) {
        inputs[one.input()][one.reading()] = place;
        grid(moved, from + 1);
      }
      inputs[one.input()][one.reading()] = kept;
    }

    private void visit() {
      double value;
      try {
        value = binding.subject().value().applyAsDouble(inputs);
      } catch (OutOfDomainException e) {
        // A corner outside a relation between inputs cannot have been the true input.
        return;
      }
      if (Math.abs(value) <= Double.MAX_VALUE) {
        BigDecimal shown = binding.result().times(new BigDecimal(value));
        least = least.min(shown);
        most = most.max(shown);
      }
    }
  }
}
