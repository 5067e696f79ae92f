package org.mensuration.internal.height;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.TreeHeight;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Curves whose coefficients are given. Stateless and thread-safe. */
public final class GivenCurve {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private GivenCurve() {}

  /**
   * The height of a tree.
   *
   * @param form the form of the curve
   * @param breastHeight height at which the diameter was measured
   * @param b0 first coefficient
   * @param b1 second coefficient
   * @param diameter diameter at breast height
   * @return the height
   */
  public static TreeHeight height(
      HeightCurveForm form,
      Quantity<Length> breastHeight,
      double b0,
      double b1,
      Quantity<Length> diameter) {
    return TreeHeight.predicted(
        Measures.metres(
            CurveModel.of(form)
                .formula()
                .value(CENTIMETRES.read(diameter), METRES.read(breastHeight), b0, b1)));
  }
}
