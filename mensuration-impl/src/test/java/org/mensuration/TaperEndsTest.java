package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.StemsTest.readings;
import static org.mensuration.StemsTest.refused;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Taper curves exactly where they turn and end; figures by hand. */
class TaperEndsTest {
  /** A finite number of kilometres, beyond the largest double in metres. */
  private static final Quantity<Length> ENDLESS =
      Quantities.getQuantity(1e306, MetricPrefix.KILO(Units.METRE));

  @Test
  void theSummitIsOneHeight() {
    // (d/D)² = 1/2 + z/2 - z² has its summit, 9/16, at a quarter of the height.
    TaperCurve barrel = Tapers.quadratic(centimetres(40), metres(20), 0.5, 0.5, -1);
    assertThat(barrel.heightsOf(centimetres(30))).containsExactly(metres(5));
  }

  @Test
  void aLevelBendIsOneHeight() {
    // d/D = 1/8 - (z - 1/2)³ is level at half the height, but goes on falling.
    TaperCurve bent = Tapers.cubic(centimetres(40), metres(20), 0.25, -0.75, 1.5, -1);
    assertThat(bent.heightsOf(centimetres(5))).containsExactly(metres(10));
  }

  @Test
  void theTipIsOneHeightAlsoWhereTheCurveTurnsThere() {
    // (d/D)² = (1 - z)², a cone: the parabola turns at the tip.
    TaperCurve cone = Tapers.quadratic(centimetres(40), metres(20), 1, -2, 1);
    assertThat(cone.heightsOf(centimetres(0))).containsExactly(metres(20));
    assertThat(cone.heightsOf(centimetres(40))).containsExactly(metres(0));
  }

  @Test
  void noPartAndTheWholeEndAtTheHeightsGiven() {
    TaperCurve cone = Tapers.quadratic(centimetres(40), metres(20), 1, -2, 1);
    // In feet the heights come back as they were given, not by way of metres.
    assertThat(cone.heightOfPart(feet(4.7), feet(33.1), 0).getUnit()).isEqualTo(FOOT);
    assertThat(in(cone.heightOfPart(feet(4.7), feet(33.1), 0), FOOT)).isEqualTo(4.7);
    assertThat(cone.heightOfPart(feet(4.7), feet(33.1), 1).getUnit()).isEqualTo(FOOT);
    assertThat(in(cone.heightOfPart(feet(4.7), feet(33.1), 1), FOOT)).isEqualTo(33.1);
    assertThat(cone.heightOfPart(metres(7), metres(7), 0.5)).isEqualTo(metres(7));
  }

  @Test
  void aLengthTooLargeForANumberIsRefused() {
    TaperCurve cone = Tapers.quadratic(centimetres(40), metres(20), 1, -2, 1);
    refused(() -> cone.heightsOf(ENDLESS), "diameter: Infinity cm, allowed [0, ∞) cm");
    List<StemReading> readings = readings(0, 20, 2, 18, 4, 15, 6, 11);
    refused(
        () -> Tapers.fitQuadratic(readings, ENDLESS, metres(12)),
        "reference diameter: Infinity cm, allowed (0, ∞) cm");
    refused(
        () -> Tapers.fitQuadratic(readings, centimetres(20), ENDLESS),
        "height of the tip: Infinity m, allowed (0, ∞) m");
    refused(
        () ->
            Tapers.fitQuadratic(
                List.of(StemReading.of(metres(5), ENDLESS)), centimetres(20), metres(12)),
        "diameter at 5.0 m: Infinity cm, allowed [0, ∞) cm");
  }

  @Test
  void noLogarithmIsTakenOfNoWoodOrAtTheTip() {
    refused(
        () -> Tapers.fitVariableExponent(readings(1, 20, 10, 0), centimetres(20), metres(20), 0.25),
        "0.0 cm at 10.0 m",
        "allowed a diameter above 0 cm below the tip");
    refused(
        () -> Tapers.fitVariableExponent(readings(1, 20, 20, 5), centimetres(20), metres(20), 0.25),
        "5.0 cm at 20.0 m",
        "allowed a diameter above 0 cm below the tip");
  }
}
