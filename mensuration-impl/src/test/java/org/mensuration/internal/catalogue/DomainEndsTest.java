package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.mensuration.Catalogues;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;

/** Every end of every domain: the last value in, the first value out, and never a NaN. */
class DomainEndsTest {
  @TestFactory
  Stream<DynamicTest> everyFormula() {
    return Catalogues.standard().formulas().stream()
        .map(formula -> DynamicTest.dynamicTest(formula.id(), () -> check(formula)));
  }

  private static void check(Formula formula) {
    List<double[][]> points = new PointsOfDomain(formula).draw(20);
    for (double[][] point : points) {
      assertThat(formula.applyTo(point)).isFinite();
      for (int i = 0; i < point.length; i++) {
        Parameter parameter = formula.parameters().get(i);
        for (double inside : inside(parameter.domain())) {
          doesNotRefuse(formula, with(point, i, inside), parameter);
        }
        for (double outside : outside(parameter.domain())) {
          refuses(formula, with(point, i, outside), parameter, outside);
        }
      }
    }
    relations(formula, points);
  }

  /** The last value in at each finite end. */
  private static double[] inside(Domain domain) {
    double lowest = domain.lowerIncluded() ? domain.lower() : Math.nextUp(domain.lower());
    double highest = domain.upperIncluded() ? domain.upper() : Math.nextDown(domain.upper());
    return DoubleStream.of(lowest, highest)
        .filter(
            end -> Math.abs(end) < Double.MAX_VALUE && (!domain.whole() || end == Math.rint(end)))
        .toArray();
  }

  /** A relation or an overflow may refuse the point, the domain of the input may not. */
  private static void doesNotRefuse(Formula formula, double[][] point, Parameter parameter) {
    try {
      assertThat(formula.applyTo(point)).as(formula.id()).isFinite();
    } catch (OutOfDomainException refusal) {
      assertThat(refusal.allowed())
          .as(formula.id() + " " + parameter.symbol() + ": " + refusal.getMessage())
          .isNotEqualTo(parameter.domain().toString());
    }
  }

  private static double[] outside(Domain domain) {
    double below = domain.lowerIncluded() ? Math.nextDown(domain.lower()) : domain.lower();
    double above = domain.upperIncluded() ? Math.nextUp(domain.upper()) : domain.upper();
    return new double[] {
      below, above, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
    };
  }

  private static double[][] with(double[][] point, int input, double value) {
    double[][] changed = new double[point.length][];
    for (int i = 0; i < point.length; i++) {
      changed[i] = point[i].clone();
    }
    changed[input][changed[input].length - 1] = value;
    return changed;
  }

  private static void refuses(
      Formula formula, double[][] point, Parameter parameter, double value) {
    assertThatThrownBy(() -> formula.applyTo(point))
        .as(formula.id() + " " + parameter.symbol() + " = " + value)
        .isInstanceOfSatisfying(
            OutOfDomainException.class,
            refusal -> {
              assertThat(refusal.formulaId()).isEqualTo(formula.id());
              assertThat(refusal.symbol()).isEqualTo(parameter.symbol());
              assertThat(Double.compare(refusal.value(), value)).isZero();
              assertThat(refusal.unit()).isEqualTo(parameter.unit());
              assertThat(refusal.allowed()).isEqualTo(parameter.domain().toString());
              assertThat(refusal.getMessage())
                  .contains(formula.id(), parameter.symbol() + " = ", "allowed");
            });
  }

  /** Moves the first input of each relation just across its edge. */
  private static void relations(Formula formula, List<double[][]> points) {
    for (Relation relation : formula.relations()) {
      boolean refused = false;
      for (double[][] point : points) {
        int moved = position(formula, relation.terms().get(0).input());
        double rest = relation.bound();
        for (Relation.Term term : relation.terms().subList(1, relation.terms().size())) {
          rest -= term.factor() * point[position(formula, term.input())][0];
        }
        double edge = rest / relation.terms().get(0).factor();
        double step = Math.max(Math.ulp(edge) * 4, 1e-300);
        for (double value : new double[] {edge - step, edge + step}) {
          double[][] across = with(point, moved, value);
          if (formula.parameters().get(moved).domain().contains(value)
              && !relation.comparison().holds(value - edge, 0)
              && relation.terms().get(0).factor() > 0) {
            assertThatThrownBy(() -> formula.applyTo(across))
                .as(formula.id() + " " + relation)
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("allowed");
            refused = true;
          }
        }
      }
      assertThat(refused).as(formula.id() + ": " + relation + " was tried").isTrue();
    }
  }

  private static int position(Formula formula, String name) {
    for (int i = 0; i < formula.parameters().size(); i++) {
      if (formula.parameters().get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalStateException(name);
  }
}
