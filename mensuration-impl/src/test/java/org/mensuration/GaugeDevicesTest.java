package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.SQUARE_FOOT_PER_ACRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareFeetPerAcre;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.gauge.TieRule;
import org.mensuration.optics.RatioScale;

class GaugeDevicesTest {
  private static final AngleGauge FOUR = AngleGauges.ofFactor(squareMetresPerHectare(4));

  /** At one width in thirty-three of distance the four geometries give four factors. */
  @Test
  void fourGeometriesOfATargetAreKeptApart() {
    assertThat(acre(AngleGauges.calibratedOnFlatTarget(feet(1), List.of(feet(33)))))
        .isCloseTo(9.9977, within(0.00005));
    assertThat(acre(AngleGauges.calibratedOnRoundTargetAxis(feet(1), List.of(feet(33)))))
        .isCloseTo(10.0000, within(0.00005));
    assertThat(acre(AngleGauges.calibratedOnRoundTargetFace(feet(1), List.of(feet(33)))))
        .isCloseTo(9.7037, within(0.00005));
    assertThat(acre(AngleGauges.calibratedOnFlatTargetEdge(feet(1), List.of(feet(33)))))
        .isCloseTo(9.9931, within(0.00005));
  }

  @Test
  void readingsAreAveragedByDistance() {
    AngleGauge mean =
        AngleGauges.calibratedOnFlatTarget(
            metres(0.5), List.of(metres(12), metres(12.5), metres(13.6)));
    AngleGauge one = AngleGauges.calibratedOnFlatTarget(metres(0.5), List.of(metres(12.7)));
    assertThat(metric(mean)).isCloseTo(metric(one), within(1e-14));
    assertThatThrownBy(() -> AngleGauges.calibratedOnFlatTarget(metres(1), List.of()))
        .hasMessageContaining("needs a reading");
    assertThatThrownBy(
            () -> AngleGauges.calibratedOnFlatTarget(metres(1), List.of(metres(30), metres(-10))))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void theRuleForSmallAnglesIsThatOfTheDevice() {
    assertThat(smallAngle(AngleGauges.ofFlatBlade(centimetres(1), centimetres(50)))).isEqualTo(1);
    AngleGauge rod = AngleGauges.ofRoundRod(centimetres(2), centimetres(50));
    assertThat(smallAngle(rod)).isEqualTo(4).isEqualTo(metric(rod));
    assertThat(smallAngle(AngleGauges.ofPrism(4))).isEqualTo(4);
    assertThat(smallAngle(AngleGauges.ofJoinedPrisms(2, 4))).isEqualTo(9);
    assertThat(smallAngle(AngleGauges.ofAngle(degrees(180 / Math.PI / 25))))
        .isCloseTo(4, within(1e-14));
    assertThat(smallAngle(AngleGauges.ofDivisions(OpticalScales.ofRatio(0.02), 2)))
        .isCloseTo(4, within(1e-14));
    assertThat(smallAngle(FOUR)).isCloseTo(4 / (1 - 4e-4), within(1e-14));
    AngleGauge face = AngleGauges.calibratedOnRoundTargetFace(metres(1), List.of(metres(24.5)));
    assertThat(smallAngle(face)).isEqualTo(metric(face)).isCloseTo(4, within(1e-14));
    assertThat(smallAngle(AngleGauges.calibratedOnFlatTargetEdge(metres(1), List.of(metres(25)))))
        .isCloseTo(4, within(1e-14));
  }

  @Test
  void divisionsAllowForSlopeIfTheirScaleDoes() {
    RatioScale plain = OpticalScales.ofRatio(0.02);
    assertThat(AngleGauges.ofDivisions(plain, 2).compensated()).isFalse();
    assertThat(AngleGauges.ofDivisions(OpticalScales.compensating(plain), 2).compensated())
        .isTrue();
    assertThat(AngleGauges.ofPrism(4).compensated()).isTrue();
  }

  @Property
  void theRuleForSmallAnglesIsHighOrExact(@ForAll @DoubleRange(min = 0.1, max = 60) double size) {
    for (AngleGauge gauge :
        List.of(
            AngleGauges.ofFlatBlade(centimetres(size), centimetres(75)),
            AngleGauges.ofPrism(size),
            AngleGauges.ofJoinedPrisms(size, 1),
            AngleGauges.ofAngle(degrees(size)),
            AngleGauges.ofDivisions(OpticalScales.ofRatio(0.02), size),
            AngleGauges.ofFactor(squareMetresPerHectare(size)))) {
      assertThat(smallAngle(gauge)).isGreaterThan(metric(gauge));
    }
    assertThat(metric(AngleGauges.ofDivisions(OpticalScales.ofRatio(0.02), size)))
        .isCloseTo(
            metric(AngleGauges.ofFlatBlade(metres(0.02 * size), metres(1))), within(1e-9 * size));
  }

  @Property
  void bladesAndFactorsAreInverse(
      @ForAll @DoubleRange(min = 0.05, max = 200) double factor,
      @ForAll @DoubleRange(min = 10, max = 100) double eye) {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(factor));
    var width = gauge.bladeWidth(centimetres(eye));
    assertThat(metric(AngleGauges.ofFlatBlade(width, centimetres(eye))))
        .isCloseTo(factor, within(1e-12 * factor));
    assertThat(in(gauge.bladeDistance(width), CENTIMETRE)).isCloseTo(eye, within(1e-11 * eye));
  }

  @Test
  void aBladeIsNarrowedOnASlope() {
    double level = in(FOUR.bladeWidth(centimetres(50)), CENTIMETRE);
    assertThat(in(FOUR.bladeWidthAlongSight(centimetres(50), degrees(-60)), CENTIMETRE))
        .isCloseTo(level / 2, within(1e-15));
    assertThatThrownBy(() -> FOUR.bladeWidthAlongSight(centimetres(50), degrees(90)))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void anEyeInsideTheRodIsRefused() {
    assertThatThrownBy(() -> AngleGauges.ofRoundRod(centimetres(30), centimetres(14)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("W ≤ 2 D");
    assertThatThrownBy(() -> AngleGauges.ofRoundRod(centimetres(30), centimetres(15)))
        .isInstanceOf(OutOfDomainException.class);
    // A bad reading is refused though the mean of the readings would pass.
    assertThatThrownBy(
            () ->
                AngleGauges.calibratedOnRoundTargetAxis(
                    metres(0.3), List.of(metres(10), metres(0.1))))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void radiusFactorsToCentreAndFace() {
    AngleGauge ten = AngleGauges.ofFactor(squareFeetPerAcre(10));
    assertThat(ten.radiusFactorToCentreFeetPerInch()).isEqualTo(2.75);
    assertThat(ten.radiusFactorToFaceFeetPerInch()).isCloseTo(2.75 - 1 / 24.0, within(1e-15));
    assertThat(FOUR.radiusFactorToCentreMetresPerCentimetre()).isEqualTo(0.25);
    assertThat(FOUR.radiusFactorToFaceMetresPerCentimetre()).isCloseTo(0.245, within(1e-15));
    assertThat(in(FOUR.limitingDistanceToFace(centimetres(30)), METRE))
        .isCloseTo(7.35, within(1e-14));
    assertThat(in(FOUR.inclusionArea(centimetres(30)), SQUARE_METRE))
        .isCloseTo(Math.PI * 56.25, within(1e-12));
  }

  /** A centre factor measured to the face: the factor in force is 37.68 in place of 40. */
  @Test
  void theCheckDecidesTheFactor() {
    AngleGauge forty = AngleGauges.ofFactor(squareFeetPerAcre(40));
    double used = forty.radiusFactorToCentreFeetPerInch() + 1 / 24.0;
    assertThat(acre(AngleGauges.checkedWithFeetPerInch(used))).isCloseTo(37.68, within(0.005));
    assertThat(metric(AngleGauges.checkedWithMetresPerCentimetre(0.25))).isEqualTo(4);
    assertThatThrownBy(() -> AngleGauges.checkedWithMetresPerCentimetre(0.005))
        .isInstanceOf(OutOfDomainException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "3,4,1,10",
    "3,4,4,20",
    "3,4,9,30",
    "5,12,1,26",
    "5,12,4,52",
    "5,12,9,78",
    "8,15,1,34",
    "8,15,4,68",
    "8,15,9,102"
  })
  void tiesAreDecidedByTheRule(double x, double y, double factor, double diameter) {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(factor));
    double distance = Math.hypot(x, y);
    LimitPosition tie = gauge.judge(centimetres(diameter), metres(distance));
    assertThat(tie).isEqualTo(LimitPosition.AT_LIMIT);
    assertThat(gauge.counts(centimetres(diameter), metres(distance))).isTrue();
    assertThat(TieRule.IN.weight(tie, 0)).isEqualTo(1);
    assertThat(TieRule.OUT.weight(tie, 0)).isZero();
    assertThat(TieRule.HALF.weight(tie, 0)).isEqualTo(0.5);
    assertThat(TieRule.EVERY_SECOND.weight(tie, 0)).isEqualTo(1);
    assertThat(TieRule.EVERY_SECOND.weight(tie, 1)).isZero();
    assertThat(TieRule.EVERY_SECOND.weight(tie, 2)).isEqualTo(1);
    LimitPosition nearer = gauge.judge(centimetres(diameter), metres(distance - 1e-6));
    LimitPosition farther = gauge.judge(centimetres(diameter), metres(distance + 1e-6));
    for (TieRule rule : TieRule.values()) {
      assertThat(rule.weight(nearer, 1)).isEqualTo(1);
      assertThat(rule.weight(farther, 0)).isZero();
      assertThatThrownBy(() -> rule.weight(nearer, -1)).hasMessageContaining("so far: -1");
    }
  }

  @Test
  void slopeDistancesAreJudgedToo() {
    double along = 7.5 / Math.cos(Math.toRadians(30));
    assertThat(FOUR.judge(centimetres(30), metres(along), degrees(30)))
        .isEqualTo(LimitPosition.AT_LIMIT);
    assertThat(FOUR.judge(centimetres(30), metres(along), degrees(31))).isEqualTo(LimitPosition.IN);
    assertThat(FOUR.judge(centimetres(30), metres(along), degrees(29)))
        .isEqualTo(LimitPosition.OUT);
  }

  @Test
  void theSectionAtBreastHeightOfALeaningTreeDecides() {
    // At 30° the section moves by half of 1.3 m along the stem.
    assertThat(leaning(7, 0)).isEqualTo(LimitPosition.OUT); // 7.65 m
    assertThat(leaning(8, 180)).isEqualTo(LimitPosition.IN); // 7.35 m
    assertThat(leaning(7.5 + 0.65, 180)).isEqualTo(LimitPosition.AT_LIMIT);
    assertThat(leaning(Math.sqrt(7.5 * 7.5 - 0.65 * 0.65), -90)).isEqualTo(LimitPosition.AT_LIMIT);
    assertThatThrownBy(() -> leaning(7, 181)).isInstanceOf(OutOfDomainException.class);
  }

  private static LimitPosition leaning(double foot, double direction) {
    return FOUR.judgeLeaning(
        centimetres(30), metres(foot), metres(1.3), degrees(30), degrees(direction));
  }

  /** The mean weight of all directions on an even slope is the factor of the whole sweep. */
  @Property(tries = 50)
  void sightsAndSweepsAgree(@ForAll @DoubleRange(min = 0, max = 70) double slope) {
    double tangent = Math.tan(Math.toRadians(slope));
    int steps = 3600;
    double share = 0; // of the inclusion circle that an uncompensated gauge keeps
    double weighted = 0;
    for (int i = 0; i < steps; i++) {
      double along = Math.atan(tangent * Math.cos(2 * Math.PI * (i + 0.5) / steps));
      double cosine = Math.cos(along);
      share += cosine * cosine / steps;
      double weight =
          in(
                  FOUR.uncompensated().factorAlongSight(degrees(Math.toDegrees(along))),
                  SQUARE_METRE_PER_HECTARE)
              / 4;
      weighted += cosine * cosine * weight / steps;
    }
    assertThat(weighted).isCloseTo(1, within(1e-12));
    assertThat(1 / share)
        .isCloseTo(AngleGauges.sweepOnSlope(degrees(slope)).factor(), within(1e-9));
  }

  @Test
  void aGaugeThatAllowsForSlopeHasOneFactor() {
    assertThat(FOUR.compensated()).isTrue();
    assertThat(FOUR.uncompensated().compensated()).isFalse();
    assertThat(FOUR.factorAlongSight(degrees(60))).isEqualTo(FOUR.factor());
    assertThat(in(FOUR.uncompensated().factorAlongSight(degrees(60)), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(16, within(1e-13));
  }

  private static double metric(AngleGauge gauge) {
    return in(gauge.factor(), SQUARE_METRE_PER_HECTARE);
  }

  private static double smallAngle(AngleGauge gauge) {
    return in(gauge.factorBySmallAngle(), SQUARE_METRE_PER_HECTARE);
  }

  private static double acre(AngleGauge gauge) {
    return in(gauge.factor(), SQUARE_FOOT_PER_ACRE);
  }
}
