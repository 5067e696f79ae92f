package org.mensuration.internal.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Equation.Branch;
import org.mensuration.formula.Equation.Cases;
import org.mensuration.formula.Equation.Condition;
import org.mensuration.formula.Equation.Function;
import org.mensuration.formula.Equation.FunctionName;
import org.mensuration.formula.Equation.IndexSum;
import org.mensuration.formula.Equation.LookUp;
import org.mensuration.formula.Equation.ReadingCount;
import org.mensuration.formula.Equation.Root;
import org.mensuration.formula.Equation.Rounded;
import org.mensuration.formula.Equation.Solved;
import org.mensuration.formula.Equations;
import org.mensuration.formula.Gradient;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.PrintedTable;
import org.mensuration.formula.RoundingMode;

/** Each kind of node in both arithmetics, against values known from elsewhere. */
class TreeTest {
  private static final List<Parameter> XY = List.of(input("x"), input("y"));

  @ParameterizedTest
  @CsvSource({
    "SIN, 0.5, 0.47942553860420300027328793521557138808180336794060, 0.8775825618903727",
    "COS, 0.5, 0.87758256189037271611628158260382965199164519710974, -0.479425538604203",
    "TAN, 0.5, 0.54630248984379051325517946578028538329755172017979, 1.2984464104095248",
    "ASIN, 0.5, 0.52359877559829887307710723054658381403286156656252, 1.1547005383792515",
    "ACOS, 0.5, 1.0471975511965977461542144610931676280657231331250, -1.1547005383792515",
    "ATAN, 0.5, 0.46364760900080611621425623146121440202853705428612, 0.8",
    "EXP, 0.5, 1.6487212707001281468486507878141635716537761007101, 1.6487212707001282",
    "LN, 2, 0.69314718055994530941723212145817656807550013436026, 0.5",
    "DEGREES, 180, 3.1415926535897932384626433832795028841971693993751, 0.017453292519943295",
    "IN_DEGREES, 1, 57.295779513082320876798154814105170332405472466564, 57.29577951308232"
  })
  void functionsHaveTheirValueAndSlope(FunctionName name, double x, String value, double slope) {
    Equation equation = new Function(name, List.of(sym("x")));
    assertThat(exact(equation, x, 0)).isCloseTo(new BigDecimal(value), within(ofLastDigits(48)));
    Gradient gradient = gradient(equation, x, 0);
    assertThat(gradient.value()).isCloseTo(Double.parseDouble(value), within(1e-14));
    assertThat(gradient.partial(0)).isCloseTo(slope, within(1e-13));
    assertThat(gradient.stepwise()).isFalse();
  }

  @Test
  void rootsAndPowers() {
    assertThat(exact(new Root(sym("x"), 2), 2.25, 0)).isEqualByComparingTo("1.5");
    assertThat(exact(new Root(sym("x"), 3), 27, 0)).isEqualByComparingTo("3");
    assertThat(exact(new Root(sym("x"), 5), 32, 0)).isEqualByComparingTo("2");
    assertThat(exact(pow(sym("x"), num(-2)), 4, 0)).isEqualByComparingTo("0.0625");
    assertThat(exact(pow(sym("x"), num("1.5")), 4, 0))
        .isCloseTo(new BigDecimal(8), within(ofLastDigits(47)));
    assertThat(gradient(pow(sym("x"), num("1.5")), 4, 0).partial(0)).isEqualTo(3, within(1e-14));
  }

  @Test
  void arithmeticKeepsEveryDigitOfPrintedNumbers() {
    assertThat(exact(times(num("0.905"), sym("x")), 3, 0)).isEqualByComparingTo("2.715");
    assertThat(exact(Equations.minus(sym("x"), sym("y")), 1, 0.25)).isEqualByComparingTo("0.75");
    assertThat(exact(over(num(1), num(12345)), 0, 0))
        .isCloseTo(
            new BigDecimal("0.0000810044552450384771162413932766302147"), within(ofLastDigits(40)));
    assertThat(exact(pi(), 0, 0).toPlainString())
        .startsWith("3.141592653589793238462643383279502884197169399375");
  }

  @Test
  void aStepIsFlaggedAndHasNoSlope() {
    for (Equation stepped :
        List.of(
            new Function(FunctionName.FLOOR, List.of(sym("x"))),
            new Rounded(sym("x"), RoundingMode.DOWN, BigDecimal.ONE))) {
      assertThat(exact(stepped, 2.75, 0)).isEqualByComparingTo("2");
      assertThat(exact(stepped, -2.75, 0)).isEqualByComparingTo("-3");
      assertThat(gradient(stepped, 2.75, 0).stepwise()).isTrue();
      assertThat(gradient(stepped, 2.75, 0).partial(0)).isZero();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "UP, 11, 15",
    "HALF_UP, 12.5, 15",
    "HALF_DOWN, 12.5, 10",
    "HALF_EVEN, 12.5, 10",
    "HALF_EVEN, 17.5, 20",
    "HALF_UP, 12.25, 10",
    "DOWN, 14.75, 10"
  })
  void roundingToAStepHasItsMode(RoundingMode mode, double x, String expected) {
    Equation rounded = new Rounded(sym("x"), mode, new BigDecimal(5));
    assertThat(exact(rounded, x, 0)).isEqualByComparingTo(expected);
  }

  @Test
  void theSmallerAndTheLargerAreStepsOnlyWhereTheyMeet() {
    Equation smaller = new Function(FunctionName.MIN, List.of(sym("x"), sym("y")));
    Equation larger = new Function(FunctionName.MAX, List.of(sym("x"), sym("y")));
    assertThat(exact(smaller, 2, 3)).isEqualByComparingTo("2");
    assertThat(exact(larger, 2, 3)).isEqualByComparingTo("3");
    assertThat(gradient(larger, 2, 3).partial(1)).isEqualTo(1);
    assertThat(gradient(larger, 2, 3).partial(0)).isZero();
    assertThat(gradient(larger, 2, 3).stepwise()).isFalse();
    assertThat(gradient(smaller, 3, 3).stepwise()).isTrue();
  }

  @Test
  void casesTakeTheFirstThatHolds() {
    Equation cases =
        new Cases(
            List.of(
                new Branch(new Condition(sym("x"), Comparison.LESS, num(6)), num(1)),
                new Branch(new Condition(sym("x"), Comparison.AT_MOST, num(8)), num(2))),
            squared(sym("x")));
    assertThat(exact(cases, 5, 0)).isEqualByComparingTo("1");
    assertThat(exact(cases, 6, 0)).isEqualByComparingTo("2");
    assertThat(exact(cases, 8, 0)).isEqualByComparingTo("2");
    assertThat(exact(cases, 9, 0)).isEqualByComparingTo("81");
    assertThat(gradient(cases, 9, 0).partial(0)).isEqualTo(18);
    assertThat(gradient(cases, 9, 0).stepwise()).isFalse();
    assertThat(gradient(cases, 8, 0).stepwise()).isTrue();
  }

  @Test
  void sumsRunOverReadings() {
    Equation ratio = over(sumOver(times(sym("x"), sym("y")), "x", "y"), new ReadingCount("x"));
    double[][] readings = {{1, 2, 3}, {4, 5, 6}};
    assertThat(Tree.exact(ratio, XY, readings, 20).doubleValue()).isEqualTo(32.0 / 3);
    Gradient gradient = Tree.gradient(ratio, XY, readings);
    assertThat(gradient.size()).isEqualTo(6);
    assertThat(gradient.partial(1)).isEqualTo(5.0 / 3, within(1e-15));
    assertThat(gradient.partial(3)).isEqualTo(1.0 / 3, within(1e-15));
  }

  @Test
  void sumsRunOverAnIndexAndHideItsName() {
    Equation squares = new IndexSum("x", num(1), sym("y"), squared(sym("x")));
    assertThat(exact(plus(squares, sym("x")), 100, 4)).isEqualByComparingTo("130");
    assertThat(exact(new IndexSum("i", num(2), num(1), sym("i")), 0, 0)).isEqualByComparingTo("0");
  }

  @Test
  void anIntermediateResultHasItsNameInsideOnly() {
    Equation equation = where("z", squared(sym("x")), plus(sym("z"), sym("z")));
    assertThat(exact(equation, 3, 0)).isEqualByComparingTo("18");
    assertThat(Tree.intermediates(equation, XY, new double[][] {{3}, {0}})).containsEntry("z", 9.0);
    assertThatThrownBy(() -> exact(plus(equation, sym("z")), 3, 0))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("symbol z is not bound");
  }

  @Test
  void aTableGivesItsCellOrRefuses() {
    Equation cell = new LookUp(new OneCell(), List.of(sym("x"), sym("y")));
    assertThat(exact(cell, 14, 16)).isEqualByComparingTo("0.36");
    assertThat(gradient(cell, 14, 16).stepwise()).isTrue();
    assertThatThrownBy(() -> exact(cell, 14, 17))
        .hasMessage("one cell prints no cell for [14.0, 17.0]");
  }

  @Test
  void whatIsSearchedForHasNoValueInTheTree() {
    assertThatThrownBy(() -> exact(new Solved("smallest n"), 0, 0))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("no value in the tree for ");
    assertThatThrownBy(() -> exact(new ReadingCount("w"), 0, 0)).hasMessage("list w is not bound");
  }

  private static Parameter input(String symbol) {
    return new Parameter(
        symbol, symbol, "1", "a number", Domain.above(-1000), Optional.empty(), false);
  }

  private static BigDecimal exact(Equation equation, double x, double y) {
    return Tree.exact(equation, XY, new double[][] {{x}, {y}}, 50);
  }

  private static Gradient gradient(Equation equation, double x, double y) {
    return Tree.gradient(equation, XY, new double[][] {{x}, {y}});
  }

  private static BigDecimal ofLastDigits(int digits) {
    return BigDecimal.ONE.movePointLeft(digits);
  }

  /** A table with a single figure. */
  private record OneCell() implements PrintedTable {
    @Override
    public String name() {
      return "one cell";
    }

    @Override
    public Optional<BigDecimal> cell(double... keys) {
      return keys[0] == 14 && keys[1] == 16
          ? Optional.of(new BigDecimal("0.36"))
          : Optional.empty();
    }
  }
}
