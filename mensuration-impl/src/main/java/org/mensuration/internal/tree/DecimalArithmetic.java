package org.mensuration.internal.tree;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.math3.dfp.Dfp;
import org.apache.commons.math3.dfp.DfpField;

/** Decimal arithmetic of many digits. Not thread-safe, as its field is not. */
final class DecimalArithmetic implements Arithmetic<Dfp> {
  /** The field guarantees a few digits less than it is asked for, and functions lose some more. */
  private static final int SPARE = 30;

  private final DfpField field;
  private final MathContext input;

  DecimalArithmetic(int digits) {
    this.field = new DfpField(digits + SPARE);
    this.input = new MathContext(digits + SPARE);
  }

  Dfp exactly(double value) {
    return constant(new BigDecimal(value));
  }

  @Override
  public Dfp constant(BigDecimal value) {
    return field.newDfp(value.round(input).toString());
  }

  @Override
  public Dfp pi() {
    return field.getPi();
  }

  @Override
  public int compare(Dfp left, Dfp right) {
    return left.lessThan(right) ? -1 : left.greaterThan(right) ? 1 : 0;
  }

  @Override
  public BigDecimal floor(Dfp value) {
    return decimal(value).setScale(0, RoundingMode.FLOOR);
  }

  @Override
  public BigDecimal decimal(Dfp value) {
    return new BigDecimal(value.toString());
  }

  @Override
  public Dfp asin(Dfp sine) {
    // The library's form divides by the cosine, which is zero at the ends.
    if (sine.abs().equals(field.getOne())) {
      Dfp quarter = field.getPi().divide(field.getTwo());
      return sine.lessThan(field.getZero()) ? quarter.negate() : quarter;
    }
    return sine.asin();
  }

  @Override
  public Dfp acos(Dfp cosine) {
    return field.getPi().divide(field.getTwo()).subtract(asin(cosine));
  }
}
