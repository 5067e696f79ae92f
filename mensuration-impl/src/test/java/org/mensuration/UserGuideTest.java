package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.Explanation;
import org.mensuration.log.Log;
import org.mensuration.optics.OpticalScale;

/** The examples of the README, which quotes what stands between the marks. */
@Tag("locale")
class UserGuideTest {
  @Test
  void firstVolume() {
    // begin first-volume
    OpticalScale scale = OpticalScales.calibratedOnStem(centimetres(42), 6); // 6 divisions cover it
    Quantity<Length> upper = scale.diameter(4.5); // 31.5 cm
    Quantity<Volume> section = LogRules.smalian().volume(Log.of(centimetres(46), upper, metres(5)));
    double cubicFeet = in(section, CUBIC_FOOT);
    Explanation steps = LogRules.smalian().formula().explain(46, 31.5, 5); // with its source
    // end first-volume
    assertThat(in(upper, CENTIMETRE)).isEqualTo(31.5);
    // By hand: π (46² + 31.5²) 5 / 80000 m³, over 0.3048³.
    double cubicMetres = Math.PI * (2116 + 992.25) * 5 / 80000;
    assertThat(in(section, CUBIC_METRE)).isCloseTo(cubicMetres, within(1e-15));
    assertThat(cubicFeet).isCloseTo(cubicMetres / (0.3048 * 0.3048 * 0.3048), within(1e-12));
    assertThat(steps.toString()).contains("46", "31.5", "Smalian").doesNotContain("31,5");
  }
}
