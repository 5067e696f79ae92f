package org.mensuration.internal.tree;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.math3.analysis.differentiation.SparseGradient;

/** Doubles that carry their first derivatives. Stateless and thread-safe. */
final class GradientArithmetic implements Arithmetic<SparseGradient> {
  @Override
  public SparseGradient constant(BigDecimal value) {
    return SparseGradient.createConstant(value.doubleValue());
  }

  @Override
  public SparseGradient pi() {
    return SparseGradient.createConstant(Math.PI);
  }

  @Override
  public int compare(SparseGradient left, SparseGradient right) {
    return Double.compare(left.getValue(), right.getValue());
  }

  @Override
  public BigDecimal floor(SparseGradient value) {
    return decimal(value).setScale(0, RoundingMode.FLOOR);
  }

  @Override
  public BigDecimal decimal(SparseGradient value) {
    return new BigDecimal(value.getValue());
  }

  @Override
  public SparseGradient asin(SparseGradient sine) {
    return sine.asin();
  }

  @Override
  public SparseGradient acos(SparseGradient cosine) {
    return cosine.acos();
  }
}
