package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.uncertainty.CoverageInterval;
import org.mensuration.uncertainty.DrawException;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;
import org.mensuration.uncertainty.InputDistribution.ArcSine;
import org.mensuration.uncertainty.InputDistribution.Exact;
import org.mensuration.uncertainty.InputDistribution.Normal;
import org.mensuration.uncertainty.InputDistribution.Rectangular;
import org.mensuration.uncertainty.InputDistribution.StudentT;
import org.mensuration.uncertainty.InputDistribution.Triangular;

/** What drawing refuses, and what it says then. */
class DrawnRefusalsTest {
  private static final List<InputDistribution> EVEN = List.of(new Rectangular(0, 1));

  @Test
  void aDrawOutsideTheDomainOfAFormulaSaysWhichAndWhy() {
    Formula huber = Catalogues.standard().formula("log/huber");
    DrawException refused =
        catchThrowableOfType(
            DrawException.class,
            () ->
                DrawnUncertainty.through(
                    huber, List.of(new Normal(1, 1), new Exact(5)), 1000, 1, 95));
    double diameter = refused.inputs()[0];
    assertThat(diameter).isNegative();
    assertThat(refused.inputs()).hasSize(2).endsWith(5.0);
    assertThat(refused.draw()).isBetween(1, 1000);
    assertThat(refused)
        .hasCauseInstanceOf(OutOfDomainException.class)
        .hasMessageStartingWith(
            "draw %d, inputs [%s, 5.0]: log/huber: d_m = -",
            refused.draw(), Double.toString(diameter))
        .hasMessageContaining(" cm, allowed ");
    refused.inputs()[0] = 3;
    assertThat(refused.inputs()[0]).isEqualTo(diameter);
  }

  @Test
  void aDrawThatGivesNoNumberSaysWhich() {
    List<double[]> kept = new ArrayList<>();
    DrawException refused =
        catchThrowableOfType(
            DrawException.class,
            () ->
                DrawnUncertainty.through(
                    x -> {
                      kept.add(x);
                      double root = Math.sqrt(x[0]);
                      x[0] = 77; // the message shows what was drawn all the same
                      return root;
                    },
                    EVEN,
                    1000,
                    1,
                    95));
    assertThat(refused.draw()).isEqualTo(kept.size());
    assertThat(refused.inputs()[0]).isNegative();
    assertThat(refused)
        .hasMessage(
            "draw %d, inputs %s: the function gives NaN, wanted a finite number",
            refused.draw(), Arrays.toString(refused.inputs()));
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> 1 / 0.0, EVEN, 10, 1, 50))
        .isInstanceOf(DrawException.class)
        .hasMessageStartingWith("draw 1, inputs [")
        .hasMessageEndingWith("]: the function gives Infinity, wanted a finite number");
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> Math.floorDiv(1, 0), EVEN, 10, 1, 50))
        .isInstanceOf(DrawException.class)
        .hasMessageEndingWith(": / by zero");
  }

  @Test
  void otherFaultsOfAFunctionPassThrough() {
    IllegalStateException fault = new IllegalStateException("not ready");
    assertThatThrownBy(
            () ->
                DrawnUncertainty.through(
                    x -> {
                      throw fault;
                    },
                    EVEN,
                    10,
                    1,
                    50))
        .isSameAs(fault);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.95, 49.9, 100, -5, Double.NaN, Double.POSITIVE_INFINITY})
  void confidenceIsInPerCent(double percent) {
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> x[0], EVEN, 1000, 1, percent))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("drawing: confidence %s %%, allowed [50, 100) %%, such as 95", percent);
    assertThatThrownBy(() -> new CoverageInterval(1, 2, percent))
        .hasMessage("confidence %s %%, allowed [50, 100) %%, such as 95", percent);
  }

  @ParameterizedTest
  @CsvSource({"2, 80", "10, 95", "10, 99", "999, 99.99"})
  void tooFewDrawsForTheInterval(int draws, double percent) {
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> x[0], EVEN, draws, 1, percent))
        .hasMessage("drawing: %d draws leave none outside %s %%, wanted more", draws, percent);
  }

  @Test
  void fewerThanTwoDrawsAndNoInputs() {
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> x[0], EVEN, 1, 1, 95))
        .hasMessage("drawing: 1 draws, wanted at least 2");
    assertThatThrownBy(() -> DrawnUncertainty.through(x -> 3, List.of(), 100, 1, 95))
        .hasMessage("drawing: no inputs, wanted at least one");
  }

  @Test
  void inputsThatDoNotFitTheFormula() {
    Formula huber = Catalogues.standard().formula("log/huber");
    assertThatThrownBy(() -> DrawnUncertainty.through(huber, EVEN, 100, 1, 95))
        .hasMessage("log/huber: 1 distributions given, 2 needed: middle_diameter, length");
    Formula listed = Catalogues.standard().formula("error/combined");
    assertThatThrownBy(
            () -> DrawnUncertainty.through(listed, List.of(new Exact(1), new Exact(1)), 100, 1, 95))
        .hasMessage("error/combined: slope is a list; draw through a function that calls applyTo");
  }

  @Test
  void aDeviationBeyondTheLargestNumber() {
    List<double[]> seen = new ArrayList<>();
    assertThatThrownBy(
            () ->
                DrawnUncertainty.through(
                    x -> {
                      seen.add(x);
                      return seen.size() == 1 ? -Double.MAX_VALUE : Double.MAX_VALUE;
                    },
                    EVEN,
                    2,
                    1,
                    50))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("a mean or deviation is beyond the largest number");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void widthsThatAreNone(double width) {
    String wanted = width + ", wanted a finite number above 0";
    assertThatThrownBy(() -> new Normal(1, width))
        .hasMessage("normal input: standard uncertainty " + wanted);
    assertThatThrownBy(() -> new Rectangular(1, width))
        .hasMessage("rectangular input: half-width " + wanted);
    assertThatThrownBy(() -> new Triangular(1, width))
        .hasMessage("triangular input: half-width " + wanted);
    assertThatThrownBy(() -> new ArcSine(1, width))
        .hasMessage("arc-sine input: half-width " + wanted);
    assertThatThrownBy(() -> new StudentT(1, width, 5))
        .hasMessage("input by Student's t: scale " + wanted);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
  void middlesThatAreNone(double middle) {
    String wanted = middle + ", wanted a finite number";
    assertThatThrownBy(() -> new Exact(middle)).hasMessage("exact input: value " + wanted);
    assertThatThrownBy(() -> new Normal(middle, 1)).hasMessage("normal input: mean " + wanted);
    assertThatThrownBy(() -> new Rectangular(middle, 1))
        .hasMessage("rectangular input: middle " + wanted);
    assertThatThrownBy(() -> new Triangular(middle, 1))
        .hasMessage("triangular input: middle " + wanted);
    assertThatThrownBy(() -> new ArcSine(middle, 1)).hasMessage("arc-sine input: middle " + wanted);
    assertThatThrownBy(() -> new StudentT(middle, 1, 5))
        .hasMessage("input by Student's t: mean " + wanted);
  }

  @Test
  void intervalsThatNumbersCannotTell() {
    assertThatThrownBy(() -> new Triangular(1e20, 1))
        .hasMessageContaining("half-width 1.0 about 1.0E20, wanted an interval");
    assertThatThrownBy(() -> new Rectangular(0, Double.MAX_VALUE))
        .hasMessageContaining("wanted an interval that numbers can tell and span");
    assertThatThrownBy(() -> new StudentT(0, 1, 2))
        .hasMessage("input by Student's t: 2.0 degrees of freedom, wanted a finite number above 2");
    assertThatThrownBy(() -> new StudentT(0, 1, Double.NaN)).hasMessageContaining("NaN degrees");
  }

  @Test
  void resultsMadeByHandMustBeSome() {
    CoverageInterval interval = new CoverageInterval(1, 2, 95);
    assertThatThrownBy(() -> new CoverageInterval(2, 1, 95)).hasMessageContaining("2.0 to 1.0");
    assertThatThrownBy(() -> new CoverageInterval(Double.NaN, 1, 95)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new CoverageInterval(0, Double.POSITIVE_INFINITY, 95))
        .hasMessageContaining("wanted finite ends in order");
    assertThatThrownBy(() -> new CoverageInterval(Double.NEGATIVE_INFINITY, 0, 95))
        .hasMessageContaining("wanted finite ends in order");
    assertThatThrownBy(() -> new DrawnResult(Double.NaN, 1, interval, interval, 10, 0))
        .hasMessageContaining("mean NaN");
    assertThatThrownBy(() -> new DrawnResult(1, -1, interval, interval, 10, 0))
        .hasMessageContaining("standard uncertainty -1.0");
    assertThatThrownBy(() -> new DrawnResult(1, Double.NaN, interval, interval, 10, 0))
        .hasMessageContaining("standard uncertainty NaN");
    assertThatThrownBy(() -> new DrawnResult(1, 1, interval, interval, 1, 0))
        .hasMessageContaining("of 1 draws");
  }
}
