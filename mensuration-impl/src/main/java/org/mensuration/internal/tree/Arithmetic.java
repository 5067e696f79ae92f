package org.mensuration.internal.tree;

import java.math.BigDecimal;
import org.apache.commons.math3.RealFieldElement;

/** Brings constants into a field and compares in it. */
interface Arithmetic<T extends RealFieldElement<T>> {
  T constant(BigDecimal value);

  T pi();

  /** Sign of left minus right. */
  int compare(T left, T right);

  /** Largest whole number not above. */
  BigDecimal floor(T value);

  /** The value as a decimal, for rounding and tables. */
  BigDecimal decimal(T value);

  T asin(T sine);

  T acos(T cosine);
}
