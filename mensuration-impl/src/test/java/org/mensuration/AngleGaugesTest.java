package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.DEGREE;
import static org.mensuration.units.ForestUnits.FOOT;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_ACRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_FOOT_PER_ACRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareFeetPerAcre;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.lang.reflect.Proxy;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import tech.units.indriya.unit.Units;

class AngleGaugesTest {
  private static final Catalogue CATALOGUE = Catalogues.standard();
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));

  @Test
  void factorFourReachesTwentyFiveDiameters() {
    assertThat(in(FOUR.limitingDistanceToCentre(centimetres(30)), METRE)).isEqualTo(7.5);
    assertThat(FOUR.counts(centimetres(30), metres(7.5))).isTrue();
    assertThat(FOUR.counts(centimetres(30), metres(7.501))).isFalse();
  }

  @Test
  void publishedLimitingDistanceInFeet() {
    AngleGauge ten = AngleGauges.ofFactor(squareFeetPerAcre(10));
    double limit = in(ten.limitingDistanceToCentre(inches(10)), FOOT);
    assertThat(limit).isCloseTo(27.5, within(0.05));
    assertThat(in(ten.factor(), SQUARE_FOOT_PER_ACRE)).isEqualTo(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"4,114.59", "10,18.33"})
  void publishedTreeFactorsAtTenSquareFeet(String row) {
    String[] cells = row.split(",", -1);
    AngleGauge ten = AngleGauges.ofFactor(squareFeetPerAcre(10));
    double factor = in(ten.treeFactor(inches(Double.parseDouble(cells[0]))), PER_ACRE);
    assertThat(factor).isCloseTo(Double.parseDouble(cells[1]), within(0.005));
  }

  @Test
  void publishedRadiusFactors() {
    assertThat(apply("gauge/plot-radius-factor-centre", 10)).isCloseTo(2.75, within(0.005));
    assertThat(apply("gauge/plot-radius-factor-centre", 1)).isCloseTo(8.696, within(0.0005));
    assertThat(apply("gauge/factor-from-flat-blade-approximate", 1, 50)).isEqualTo(1);
  }

  @Test
  void slopeDistanceReachesFartherUpAndDownAlike() {
    double up = in(FOUR.limitingDistanceAlongSlope(centimetres(30), degrees(20)), METRE);
    double down = in(FOUR.limitingDistanceAlongSlope(centimetres(30), degrees(-20)), METRE);
    assertThat(up).isEqualTo(down).isCloseTo(7.5 / Math.cos(Math.toRadians(20)), within(1e-12));
    assertThat(FOUR.counts(centimetres(30), metres(up), degrees(20))).isTrue();
    assertThat(FOUR.counts(centimetres(30), metres(up), degrees(19.9))).isFalse();
  }

  @Test
  void typedCallsAgreeWithTheirFormulas() {
    assertThat(in(FOUR.treeFactor(centimetres(31)), PER_HECTARE))
        .isEqualTo(apply("gauge/tree-factor", 4, 31));
    assertThat(in(FOUR.limitingDistanceToCentre(centimetres(31)), METRE))
        .isEqualTo(apply("gauge/limiting-distance-centre", 4, 31));
    assertThat(in(FOUR.limitingDistanceAlongSlope(centimetres(31), degrees(12)), METRE))
        .isEqualTo(apply("gauge/limiting-slope-distance", 4, 31, 12));
    assertThat(in(FOUR.angle(), DEGREE)).isEqualTo(apply("gauge/angle-from-factor", 4));
    AngleGauge blade = AngleGauges.ofFlatBlade(centimetres(2), centimetres(50));
    assertThat(in(blade.factor(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(apply("gauge/factor-from-flat-blade", 2, 50));
    AngleGauge angle = AngleGauges.ofAngle(degrees(2));
    assertThat(in(angle.factor(), SQUARE_METRE_PER_HECTARE))
        .isEqualTo(apply("gauge/factor-from-angle", 2));
  }

  @Test
  void theFactorsEndsAreRefused() {
    AngleGauges.ofFactor(squareMetresPerHectare(Math.nextDown(10000.0)));
    OutOfDomainException high =
        catchThrowableOfType(
            OutOfDomainException.class, () -> AngleGauges.ofFactor(squareMetresPerHectare(10000)));
    assertThat(high.symbol()).isEqualTo("k");
    assertThat(high.value()).isEqualTo(10000);
    assertThat(high.unit()).isEqualTo("m2/ha");
    assertThat(high.allowed()).isEqualTo("(0, 10000)");
    assertThatThrownBy(() -> AngleGauges.ofFactor(squareMetresPerHectare(0)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> AngleGauges.ofAngle(degrees(180)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1})
  void noNumberOfAForeignQuantityIsRefused(double value) {
    Quantity<Length> bad = foreign(value);
    Quantity<Length> good = centimetres(30);
    assertThatThrownBy(() -> FOUR.counts(good, bad))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("distance")
        .hasMessageContaining("[0, ∞) m");
    assertThatThrownBy(() -> FOUR.counts(good, bad, degrees(3)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> FOUR.counts(bad, good)).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> FOUR.treeFactor(bad)).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> FOUR.limitingDistanceToCentre(bad))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> AngleGauges.ofFlatBlade(bad, good))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void theEdgeOfTheSlopeIsRefused() {
    assertThat(FOUR.counts(centimetres(30), metres(1e9), degrees(Math.nextDown(90.0)))).isTrue();
    assertThatThrownBy(() -> FOUR.counts(centimetres(30), metres(7), degrees(90)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("(-90, 90)");
  }

  @Property
  void feetAndMetresDecideAlike(
      @ForAll @DoubleRange(min = 1, max = 100) double factor,
      @ForAll @DoubleRange(min = 1, max = 200) double diameter) {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(factor));
    double limit = in(gauge.limitingDistanceToCentre(centimetres(diameter)), METRE);
    assertThat(gauge.counts(inches(diameter / 2.54), feet(limit / 0.3048))).isTrue();
    assertThat(gauge.counts(inches(diameter / 2.54), feet(limit * 1.00001 / 0.3048))).isFalse();
    double inFeet = in(gauge.limitingDistanceToCentre(inches(diameter / 2.54)), METRE);
    assertThat(inFeet).isCloseTo(limit, within(limit * 1e-14));
  }

  @Property
  void treeFactorTimesBasalAreaIsTheFactor(
      @ForAll @DoubleRange(min = 0.1, max = 100) double factor,
      @ForAll @DoubleRange(min = 1, max = 200) double diameter) {
    double product =
        apply("gauge/tree-factor", factor, diameter) * apply("tree/basal-area", diameter);
    assertThat(product).isCloseTo(factor, within(factor * 1e-14));
    double circle = apply("gauge/inclusion-area", factor, diameter);
    assertThat(apply("gauge/tree-factor", factor, diameter) * circle)
        .isCloseTo(10000, within(1e-10));
  }

  @Property
  void faceIsNearerByTheRadiusOfTheStem(@ForAll @DoubleRange(min = 0.1, max = 43000) double k) {
    double between =
        apply("gauge/plot-radius-factor-centre", k) - apply("gauge/plot-radius-factor-face", k);
    assertThat(between).isCloseTo(1 / 24.0, within(1e-14));
    assertThat(apply("gauge/working-factor", apply("gauge/plot-radius-factor-centre", k)))
        .isCloseTo(k, within(k * 1e-14));
  }

  @Property
  void inversesRestoreTheFactor(@ForAll @DoubleRange(min = 0.01, max = 9000) double factor) {
    double angle = apply("gauge/angle-from-factor", factor);
    assertThat(apply("gauge/factor-from-angle", angle)).isCloseTo(factor, within(factor * 1e-13));
    double distance = apply("gauge/blade-distance", 1, factor);
    assertThat(apply("gauge/factor-from-flat-blade", 1, distance))
        .isCloseTo(factor, within(factor * 1e-13));
    assertThat(apply("gauge/factor-from-flat-blade-approximate", 1, distance))
        .isGreaterThan(factor);
  }

  @Property
  void thickerTreesCountFartherAway(
      @ForAll @DoubleRange(min = 1, max = 200) double diameter,
      @ForAll @DoubleRange(min = 1.01, max = 3) double times) {
    double near = in(FOUR.limitingDistanceToCentre(centimetres(diameter)), CENTIMETRE);
    double far = in(FOUR.limitingDistanceToCentre(centimetres(diameter * times)), CENTIMETRE);
    assertThat(far).isGreaterThan(near);
  }

  /** A quantity of somebody else's making, which may hold anything. */
  @SuppressWarnings("unchecked") // the proxy implements the raw interface
  private static Quantity<Length> foreign(double value) {
    return (Quantity<Length>)
        Proxy.newProxyInstance(
            Quantity.class.getClassLoader(),
            new Class<?>[] {Quantity.class},
            (proxy, method, arguments) ->
                method.getName().equals("getValue") ? value : MetricPrefix.DECI(Units.METRE));
  }

  private static double apply(String id, double... inputs) {
    return CATALOGUE.formula(id).apply(inputs);
  }
}
