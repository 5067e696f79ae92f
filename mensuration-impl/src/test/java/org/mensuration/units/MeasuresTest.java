package org.mensuration.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class MeasuresTest {
  @Test
  void everyFactorIsTheLegalOne() {
    assertThat(in(feet(1250), ForestUnits.METRE)).isEqualTo(381);
    assertThat(in(inches(1), ForestUnits.MILLIMETRE)).isEqualTo(25.4);
    assertThat(in(Measures.acres(1), ForestUnits.SQUARE_FOOT)).isEqualTo(43560);
    assertThat(in(Measures.acres(1), ForestUnits.SQUARE_METRE)).isEqualTo(4046.8564224);
    assertThat(in(Measures.hectares(1), ForestUnits.SQUARE_METRE)).isEqualTo(10000);
    assertThat(in(Measures.squareMetres(1), ForestUnits.SQUARE_CENTIMETRE)).isEqualTo(10000);
    assertThat(in(Measures.cubicFeet(1), ForestUnits.CUBIC_METRE)).isEqualTo(0.028316846592);
    assertThat(in(Measures.cubicFeet(1), ForestUnits.LUMBER_BOARD_FOOT)).isEqualTo(12);
    assertThat(in(Measures.degrees(180), ForestUnits.RADIAN)).isEqualTo(Math.PI);
    assertThat(in(Measures.squareMetresPerHectare(1), ForestUnits.SQUARE_FOOT_PER_ACRE))
        .isEqualTo(4.356);
    assertThat(in(Measures.of(1000, ForestUnits.PER_HECTARE), ForestUnits.PER_ACRE))
        .isEqualTo(404.68564224);
    // 1 m³/ha is 1/10000 m of depth; 1 ft³/ac is 0.3048/43560 m of depth.
    assertThat(
            in(
                Measures.of(1, ForestUnits.CUBIC_METRE_PER_HECTARE),
                ForestUnits.CUBIC_FOOT_PER_ACRE))
        .isEqualTo(54450000.0 / 3810000.0);
  }

  @Test
  void aValueInItsOwnUnitPassesUntouched() {
    assertThat(in(centimetres(0.1), ForestUnits.CENTIMETRE)).isEqualTo(0.1);
    assertThat(UnitReader.in(ForestUnits.INCH).read(inches(13.7))).isEqualTo(13.7);
  }

  @Test
  void wholeFeetAndInchesComeBackFromMetres() {
    UnitReader<Length> feet = UnitReader.in(ForestUnits.FOOT);
    for (int whole = 1; whole <= 200; whole++) {
      double metres = in(feet(whole), ForestUnits.METRE);
      assertThat(metres)
          .isEqualTo(new BigDecimal("0.3048").multiply(new BigDecimal(whole)).doubleValue());
      assertThat(feet.read(metres(metres))).isBetween(whole * (1 - 1e-15), whole * (1 + 1e-15));
    }
  }

  @Test
  void unitsMadeElsewhereAreUnderstood() {
    Unit<Length> centi = MetricPrefix.CENTI(Units.METRE);
    assertThat(in(Quantities.getQuantity(42, centi), ForestUnits.METRE)).isEqualTo(0.42);
    Unit<Length> kilo = MetricPrefix.KILO(Units.METRE);
    assertThat(in(Quantities.getQuantity(2, kilo), ForestUnits.METRE)).isEqualTo(2000);
    assertThat(UnitReader.in(ForestUnits.CENTIMETRE).read(Quantities.getQuantity(2, kilo)))
        .isEqualTo(200000);
    assertThat(UnitReader.in(ForestUnits.METRE).read(Quantities.getQuantity(42, centi)))
        .isEqualTo(0.42);
    assertThat(in(Quantities.getQuantity(Integer.valueOf(3), Units.METRE), ForestUnits.METRE))
        .isEqualTo(3);
  }

  @Test
  void theSumDoesNotDependOnTheOrder() {
    List<Quantity<Length>> parts =
        new java.util.ArrayList<>(List.of(metres(1e16), centimetres(100), metres(-1e16), feet(1)));
    double sum = in(Measures.sum(parts, ForestUnits.METRE), ForestUnits.METRE);
    Collections.reverse(parts);
    assertThat(in(Measures.sum(parts, ForestUnits.METRE), ForestUnits.METRE)).isEqualTo(sum);
    assertThat(sum).isEqualTo(1.3048);
    assertThat(in(Measures.sum(List.<Quantity<Length>>of(), ForestUnits.METRE), ForestUnits.METRE))
        .isZero();
  }

  @Test
  void everySymbolThatIsPrintedIsRead() {
    for (KnownUnit<?> known : UnitTable.ALL) {
      roundTrip(known);
    }
  }

  private static <Q extends Quantity<Q>> void roundTrip(KnownUnit<Q> known) {
    String text = Measures.text(Measures.of(12.375, known.unit()), known.unit(), 3);
    assertThat(text).isEqualTo("12.375 " + known.symbol());
    assertThat(in(Measures.parse(text, known.unit()), known.unit())).isEqualTo(12.375);
  }

  @Test
  void textHasTheStatedDecimals() {
    assertThat(Measures.text(centimetres(31.5), ForestUnits.METRE, 2)).isEqualTo("0.32 m");
    assertThat(Measures.text(centimetres(2.5), ForestUnits.CENTIMETRE, 0)).isEqualTo("2 cm");
    assertThat(in(Measures.parse(" 12 ft", ForestUnits.METRE), ForestUnits.METRE))
        .isEqualTo(3.6576);
  }

  @Test
  void wrongTextSaysWhatWasWanted() {
    assertThatThrownBy(() -> Measures.parse("12", ForestUnits.METRE))
        .hasMessage("\"12\" is no quantity; wanted a number, a blank and a unit such as 12.5 m");
    assertThatThrownBy(() -> Measures.parse("12 ha", ForestUnits.METRE))
        .hasMessageContaining("\"ha\" is no such unit");
    assertThatThrownBy(() -> Measures.parse("1,5 m", ForestUnits.METRE))
        .hasMessageContaining("\"1,5\" is no number");
  }

  @Test
  void nanIsNoQuantity() {
    assertThatThrownBy(() -> metres(Double.NaN)).hasMessageContaining("no quantity");
    assertThatThrownBy(() -> feet(Double.NEGATIVE_INFINITY)).hasMessageContaining("no quantity");
    assertThatThrownBy(() -> in(metres(Double.MAX_VALUE), ForestUnits.MILLIMETRE))
        .isInstanceOf(ArithmeticException.class);
  }

  @Test
  void aReaderWantsOneOfOurUnits() {
    assertThatThrownBy(() -> UnitReader.in(MetricPrefix.KILO(Units.METRE)))
        .hasMessageContaining("not one of ForestUnits");
  }
}
