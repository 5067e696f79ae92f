package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveException;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightCurveSet;
import org.mensuration.height.HeightSample;
import org.mensuration.height.TreeHeight;

class HeightCurvesTest {
  private static final Quantity<Length> BREAST_HEIGHT = metres(1.3);

  /** Invented trees. */
  private static final double[] DIAMETERS = {8.5, 12, 15.5, 19, 22.5, 26, 31, 36.5, 44, 52};

  private static final double[] HEIGHTS = {7.5, 11, 12.5, 16, 17, 19.5, 21, 24, 25.5, 26};

  /**
   * A least sum of squares is flat: half of the 16 digits of a double cannot tell two places apart,
   * so a coefficient is sure to eight digits, and what follows from it to seven.
   */
  private static final Percentage HALF_THE_DIGITS = Percentage.withPercentage(1e-5);

  private static List<HeightSample> trees() {
    List<HeightSample> trees = new ArrayList<>();
    for (int i = 0; i < DIAMETERS.length; i++) {
      trees.add(HeightSample.of("beech", centimetres(DIAMETERS[i]), metres(HEIGHTS[i])));
    }
    return trees;
  }

  private static double metresOf(TreeHeight height) {
    return in(height.value(), METRE);
  }

  /** The figures were worked out with 50 digits by damped Gauss-Newton steps. */
  @ParameterizedTest
  @CsvSource({
    "NASLUND, 2.010337685385655, 0.1591944185613370, 0.6187297673463713, 0.008030886507535999,"
        + " -0.000242698094410143, 0.000008828187723148816",
    "PETTERSON, 0.2994865584503679, 2.128748404615944, 0.6072190722469231,"
        + " 0.000009949058183511653, -0.0002614294841380190, 0.008343446310491481",
    "CURTIS, 3.518783975568017, -15.84592628230306, 0.7712414382474513, 0.0009828195290571256,"
        + " -0.02335803911471904, 0.6873603546653020",
    "POWER, 1.992188869887035, 0.6574715349001775, 1.328603731666953, 0.1385749330214498,"
        + " -0.01967478172696884, 0.002839171972406191"
  })
  void theFitIsTheLeastSumOfSquares(
      HeightCurveForm form,
      double b0,
      double b1,
      double residual,
      double variance0,
      double covariance,
      double variance1) {
    HeightCurve curve = HeightCurves.fit(form, BREAST_HEIGHT, "beech", trees());
    assertThat(curve.coefficients().get(0)).isCloseTo(b0, HALF_THE_DIGITS);
    assertThat(curve.coefficients().get(1)).isCloseTo(b1, HALF_THE_DIGITS);
    assertThat(in(curve.residualError(), METRE)).isCloseTo(residual, HALF_THE_DIGITS);
    assertThat(curve.covariance().get(0).get(0)).isCloseTo(variance0, HALF_THE_DIGITS);
    assertThat(curve.covariance().get(0).get(1)).isCloseTo(covariance, HALF_THE_DIGITS);
    assertThat(curve.covariance().get(1).get(0)).isCloseTo(covariance, HALF_THE_DIGITS);
    assertThat(curve.covariance().get(1).get(1)).isCloseTo(variance1, HALF_THE_DIGITS);
    assertThat(curve.trees()).isEqualTo(10);
    assertThat(curve.species()).isEqualTo("beech");
    assertThat(in(curve.breastHeight(), METRE)).isEqualTo(1.3);
    assertThat(curve.formula().id()).endsWith(form.name().toLowerCase(java.util.Locale.ROOT));
    assertThat(in(curve.smallestDiameter(), CENTIMETRE)).isEqualTo(8.5);
    assertThat(in(curve.largestDiameter(), CENTIMETRE)).isEqualTo(52);
  }

  @ParameterizedTest
  @EnumSource(HeightCurveForm.class)
  void noNeighbourHasASmallerSum(HeightCurveForm form) {
    HeightCurve curve = HeightCurves.fit(form, BREAST_HEIGHT, "beech", trees());
    double b0 = curve.coefficients().get(0);
    double b1 = curve.coefficients().get(1);
    double least = squares(form, b0, b1);
    assertThat(Math.sqrt(least / 8)).isCloseTo(in(curve.residualError(), METRE), within(1e-12));
    for (double step : new double[] {-1e-4, 1e-4}) {
      assertThat(squares(form, b0 * (1 + step), b1)).isGreaterThan(least);
      assertThat(squares(form, b0, b1 * (1 + step))).isGreaterThan(least);
    }
  }

  private static double squares(HeightCurveForm form, double b0, double b1) {
    double sum = 0;
    for (int i = 0; i < DIAMETERS.length; i++) {
      double height =
          metresOf(HeightCurves.height(form, BREAST_HEIGHT, b0, b1, centimetres(DIAMETERS[i])));
      sum += (HEIGHTS[i] - height) * (HEIGHTS[i] - height);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({"NASLUND, 2.5, 0.19", "PETTERSON, 0.31, 1.7", "CURTIS, 3.4, -12", "POWER, 2.5, 0.6"})
  void treesOnACurveGiveItBack(HeightCurveForm form, double b0, double b1) {
    Quantity<Length> breastHeight = metres(1.37);
    List<HeightSample> trees = new ArrayList<>();
    for (double d : DIAMETERS) {
      TreeHeight height = HeightCurves.height(form, breastHeight, b0, b1, centimetres(d));
      trees.add(HeightSample.of("", centimetres(d), height.value()));
    }
    HeightCurve curve = HeightCurves.fit(form, breastHeight, "", trees);
    assertThat(curve.coefficients().get(0)).isCloseTo(b0, HALF_THE_DIGITS);
    assertThat(curve.coefficients().get(1)).isCloseTo(b1, HALF_THE_DIGITS);
    assertThat(in(curve.residualError(), METRE)).isLessThan(1e-7);
    assertThat(in(breastHeight, METRE)).isEqualTo(in(curve.breastHeight(), METRE));
  }

  @Test
  void theOrderOfTheTreesDoesNotMatter() {
    HeightCurve curve = HeightCurves.fit(HeightCurveForm.NASLUND, BREAST_HEIGHT, "beech", trees());
    List<HeightSample> shuffled = trees();
    Collections.shuffle(shuffled, new Random(3));
    HeightCurve other = HeightCurves.fit(HeightCurveForm.NASLUND, BREAST_HEIGHT, "beech", shuffled);
    assertThat(other.coefficients()).isEqualTo(curve.coefficients());
    assertThat(other.covariance()).isEqualTo(curve.covariance());
  }

  @Test
  void theErrorOfTheCurveFollowsFromItsCovariance() {
    HeightCurve curve = HeightCurves.fit(HeightCurveForm.POWER, BREAST_HEIGHT, "beech", trees());
    double d = 30;
    double b0 = curve.coefficients().get(0);
    double b1 = curve.coefficients().get(1);
    double first = Math.pow(d, b1);
    double second = b0 * Math.pow(d, b1) * Math.log(d);
    double variance =
        first * first * curve.covariance().get(0).get(0)
            + 2 * first * second * curve.covariance().get(0).get(1)
            + second * second * curve.covariance().get(1).get(1);
    assertThat(in(curve.standardError(centimetres(d)), METRE))
        .isCloseTo(Math.sqrt(variance), within(1e-9));
  }

  @Test
  void missingHeightsAreFilledAndMarked() {
    List<HeightSample> trees = trees();
    trees.add(HeightSample.withoutHeight("beech", inches(10)));
    trees.add(HeightSample.withoutHeight("oak", centimetres(30)));
    trees.add(HeightSample.of("oak", centimetres(30), metres(20)));
    HeightCurveSet set = HeightCurves.fitBySpecies(HeightCurveForm.NASLUND, BREAST_HEIGHT, trees);
    assertThat(set.curves()).containsOnlyKeys("beech");
    assertThat(set.refusals())
        .containsEntry("oak", "height-curve/naslund: 1 measured heights, wanted at least 3");
    List<TreeHeight> heights = set.heightsOf(trees.subList(0, 11));
    assertThat(heights.subList(0, 10)).noneMatch(TreeHeight::predicted);
    assertThat(heights.get(0)).isEqualTo(TreeHeight.measured(metres(7.5)));
    assertThat(heights.get(10).predicted()).isTrue();
    assertThat(metresOf(heights.get(10)))
        .isCloseTo(1.3 + Math.pow(25.4 / (2.010337685 + 0.1591944186 * 25.4), 2), within(1e-6));
    assertThat(set.heightOf(trees.get(12))).isEqualTo(TreeHeight.measured(metres(20)));
    assertThatThrownBy(() -> set.heightOf(trees.get(11)))
        .isInstanceOf(HeightCurveException.class)
        .hasMessage(
            "a height is missing and species \"oak\" has no height curve: height-curve/naslund: 1"
                + " measured heights, wanted at least 3");
    assertThatThrownBy(() -> set.heightOf(HeightSample.withoutHeight("ash", metres(0.3))))
        .hasMessageEndingWith("none of its heights was measured");
  }

  @Test
  void aCurveSaysWhatItCovers() {
    HeightCurve curve = HeightCurves.fit(HeightCurveForm.CURTIS, BREAST_HEIGHT, "beech", trees());
    assertThat(curve.covers(centimetres(8.5))).isTrue();
    assertThat(curve.covers(centimetres(52))).isTrue();
    assertThat(curve.covers(centimetres(8.4))).isFalse();
    assertThat(curve.covers(centimetres(52.1))).isFalse();
    assertThat(metresOf(curve.height(centimetres(90)))).isBetween(26.0, 35.0);
    assertThatThrownBy(() -> curve.height(centimetres(0))).isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> curve.height(NanLength.metres()))
        .isInstanceOf(OutOfDomainException.class);
  }

  private static HeightSample tree(double centimetres, double metres) {
    return HeightSample.of("", centimetres(centimetres), metres(metres));
  }

  private static void refused(HeightCurveForm form, String why, HeightSample... trees) {
    assertThatThrownBy(() -> HeightCurves.fit(form, BREAST_HEIGHT, "", List.of(trees)))
        .isInstanceOf(HeightCurveException.class)
        .hasMessage(why);
  }

  @Test
  void whatCannotBeFittedIsRefused() {
    HeightCurveForm form = HeightCurveForm.NASLUND;
    refused(
        form,
        "height-curve/naslund: 2 measured heights, wanted at least 3",
        tree(10, 10),
        tree(20, 20));
    refused(
        form,
        "height-curve/naslund: all measured heights belong to one diameter, wanted at least two",
        tree(10, 10),
        tree(10, 11),
        tree(10, 12));
    refused(
        form,
        "height curve: height 1.3 m of a tree with a diameter at breast height of 10.0 cm, allowed"
            + " above breast height, 1.3 m",
        tree(10, 1.3),
        tree(11, 11),
        tree(12, 12));
    refused(
        form,
        "height curve: diameter 0.0 cm, allowed above zero",
        tree(0, 10),
        tree(11, 11),
        tree(12, 12));
    HeightSample bad = HeightSample.of("", centimetres(10), NanLength.metres());
    assertThatThrownBy(() -> HeightCurves.fit(form, BREAST_HEIGHT, "", List.of(bad)))
        .hasMessageContaining("height NaN m");
  }

  @ParameterizedTest
  @EnumSource(HeightCurveForm.class)
  void heightsThatFallWithTheDiameterAreNoCurve(HeightCurveForm form) {
    assertThatThrownBy(
            () ->
                HeightCurves.fit(
                    form,
                    BREAST_HEIGHT,
                    "",
                    List.of(tree(10, 30), tree(20, 20), tree(30, 12), tree(40, 8))))
        .isInstanceOf(HeightCurveException.class)
        .hasMessageStartingWith("height-curve/");
  }

  @Test
  void recordsCompareByWhatTheyMeasure() {
    assertThat(TreeHeight.measured(metres(2)))
        .isEqualTo(TreeHeight.measured(centimetres(200)))
        .hasSameHashCodeAs(TreeHeight.measured(centimetres(200)))
        .isNotEqualTo(TreeHeight.predicted(metres(2)))
        .isNotEqualTo(TreeHeight.measured(metres(3)));
    assertThat(HeightSample.of("a", metres(0.2), metres(2)))
        .isEqualTo(HeightSample.of("a", centimetres(20), metres(2)))
        .hasSameHashCodeAs(HeightSample.of("a", centimetres(20), metres(2)))
        .isNotEqualTo(HeightSample.withoutHeight("a", metres(0.2)))
        .isNotEqualTo(HeightSample.of("b", metres(0.2), metres(2)))
        .isNotEqualTo(HeightSample.of("a", metres(0.3), metres(2)));
  }

  @Test
  void pointsAreFilledFromTheCurveOfEachSpecies() {
    CountedTree bare = CountedTree.of(centimetres(25)).ofSpecies("beech");
    CountPoint measured =
        CountPoint.of(
            "1",
            bare.withHeight(metres(20)),
            CountedTree.of(centimetres(35)).ofSpecies("beech").withHeight(metres(24)),
            CountedTree.of(centimetres(45)).ofSpecies("beech").withHeight(metres(27)),
            CountedTree.of(centimetres(50)).ofSpecies("beech").withHeight(metres(9)).dead(),
            CountedTree.of(centimetres(30)).ofSpecies("beech").withPredictedHeight(metres(99)));
    CountPoint missing =
        CountPoint.of(
                "2",
                CountedTree.of(centimetres(30)).ofSpecies("beech"),
                CountedTree.of(centimetres(30)).ofSpecies("rowan"),
                CountedTree.unmeasured())
            .correctedBy(SweepCorrection.HALF_SWEEP);
    List<CountPoint> points = List.of(measured, missing);
    HeightCurveSet curves =
        HeightCurves.fitBySpecies(
            HeightCurveForm.NASLUND, metres(1.3), HeightCurves.samples(points));
    HeightCurve beech = curves.curve("beech");
    assertThat(beech.trees()).isEqualTo(3); // neither the dead one nor a predicted height
    List<CountPoint> filled = HeightCurves.fill(points, curves);
    assertThat(filled.get(0)).isEqualTo(measured);
    assertThat(filled.get(1).sweep()).isEqualTo(SweepCorrection.HALF_SWEEP);
    assertThat(filled.get(1).trees().get(0))
        .isEqualTo(
            missing.trees().get(0).withPredictedHeight(beech.height(centimetres(30)).value()));
    assertThat(filled.get(1).trees().subList(1, 3)).isEqualTo(missing.trees().subList(1, 3));
    assertThatThrownBy(() -> curves.curve("rowan"))
        .isInstanceOf(HeightCurveException.class)
        .hasMessageStartingWith("species \"rowan\" has no height curve: height-curve/naslund: 0");
    assertThatThrownBy(() -> curves.curve("fir"))
        .hasMessage("species \"fir\" has no height curve: none of its heights was measured");
  }
}
