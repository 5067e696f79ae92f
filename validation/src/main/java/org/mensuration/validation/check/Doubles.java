package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.util.List;

/** Decimals as the nearest doubles. */
final class Doubles {
  private Doubles() {}

  static double[][] of(List<List<BigDecimal>> inputs) {
    double[][] values = new double[inputs.size()][];
    for (int i = 0; i < values.length; i++) {
      values[i] = inputs.get(i).stream().mapToDouble(BigDecimal::doubleValue).toArray();
    }
    return values;
  }
}
