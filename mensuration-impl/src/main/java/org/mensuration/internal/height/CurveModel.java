package org.mensuration.internal.height;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.internal.catalogue.HeightCurveFormulas;
import org.mensuration.internal.formula.BoundFormula;

/**
 * A form of a height curve and the straight line it becomes when both axes are changed; the line
 * gives the start of the fit. Immutable and thread-safe.
 *
 * @param formula the formula of diameter, breast height, b0 and b1
 * @param abscissa from the diameter to the first axis of the line
 * @param ordinate from diameter and height over breast height to the second axis
 * @param intercept from the intercept of the line to b0
 */
record CurveModel(
    BoundFormula formula,
    DoubleUnaryOperator abscissa,
    DoubleBinaryOperator ordinate,
    DoubleUnaryOperator intercept) {

  static CurveModel of(HeightCurveForm form) {
    return switch (form) {
      case NASLUND ->
          new CurveModel(HeightCurveFormulas.NASLUND, d -> d, (d, h) -> d / Math.sqrt(h), a -> a);
      case PETTERSON ->
          new CurveModel(
              HeightCurveFormulas.PETTERSON, d -> 1 / d, (d, h) -> 1 / StrictMath.cbrt(h), a -> a);
      case CURTIS ->
          new CurveModel(
              HeightCurveFormulas.CURTIS, d -> 1 / d, (d, h) -> StrictMath.log(h), a -> a);
      case POWER ->
          new CurveModel(
              HeightCurveFormulas.POWER,
              StrictMath::log,
              (d, h) -> StrictMath.log(h),
              StrictMath::exp);
    };
  }
}
