package org.mensuration.internal.height;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.height.HeightCurveForm;

class CurveModelTest {
  private static final double BREAST_HEIGHT = 1.3;

  /** On changed axes a curve is the straight line that starts its fit: slope b1, intercept b0. */
  @ParameterizedTest
  @CsvSource({"NASLUND, 2.1, 0.15", "PETTERSON, 0.28, 2.3", "CURTIS, 3.7, -18", "POWER, 2.5, 0.6"})
  void changedAxesMakeALine(HeightCurveForm form, double b0, double b1) {
    CurveModel model = CurveModel.of(form);
    double[] diameters = {12, 30, 55};
    double[] x = new double[3];
    double[] y = new double[3];
    for (int i = 0; i < 3; i++) {
      double height = model.formula().value(diameters[i], BREAST_HEIGHT, b0, b1);
      x[i] = model.abscissa().applyAsDouble(diameters[i]);
      y[i] = model.ordinate().applyAsDouble(diameters[i], height - BREAST_HEIGHT);
    }
    double slope = (y[2] - y[0]) / (x[2] - x[0]);
    assertThat(slope).isCloseTo(b1, within(1e-12 * Math.abs(b1)));
    assertThat((y[1] - y[0]) / (x[1] - x[0])).isCloseTo(slope, within(1e-11 * Math.abs(slope)));
    assertThat(model.intercept().applyAsDouble(y[0] - slope * x[0]))
        .isCloseTo(b0, within(1e-11 * b0));
  }
}
