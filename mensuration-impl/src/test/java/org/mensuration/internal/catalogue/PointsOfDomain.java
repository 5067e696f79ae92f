package org.mensuration.internal.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.internal.table.RuleTable;

/** Seeded points of a formula's domain, its ends and the edges of its relations included. */
final class PointsOfDomain {
  private static final double FAR = 500;
  private static final int MOST_TRIES = 400_000;

  private final Formula formula;
  private final Random random;
  private final List<List<BigDecimal>> marks = new ArrayList<>();

  PointsOfDomain(Formula formula) {
    this.formula = formula;
    this.random = new Random(formula.id().hashCode());
    for (Parameter parameter : formula.parameters()) {
      marks.add(marks(formula.equation(), parameter.symbol()));
    }
  }

  /** The printed keys of an input that a table is entered with; a point between them is no cell. */
  private static List<BigDecimal> marks(Equation node, String symbol) {
    if (node instanceof Equation.LookUp lookUp && lookUp.table() instanceof RuleTable table) {
      int key = lookUp.keys().indexOf(new Equation.Symbol(symbol));
      return key < 0 ? List.of() : table.axes().get(key).printed();
    }
    List<BigDecimal> found = new ArrayList<>();
    CatalogueFactsTest.children(node).forEach(child -> found.addAll(marks(child, symbol)));
    return found;
  }

  List<double[][]> draw(int wanted) {
    List<double[][]> points = new ArrayList<>();
    for (int tries = 0; points.size() < wanted; tries++) {
      if (tries > MOST_TRIES) {
        throw new IllegalStateException(formula.id() + ": only " + points.size() + " points found");
      }
      double[][] point = point();
      if (!formula.relations().isEmpty() && random.nextInt(8) == 0) {
        ontoEdge(point);
      }
      if (accepted(point)) {
        points.add(point);
      }
    }
    return points;
  }

  private boolean accepted(double[][] point) {
    try {
      formula.applyTo(point);
      return true;
    } catch (OutOfDomainException outside) {
      return false;
    }
  }

  private double[][] point() {
    int readings = 1 + random.nextInt(9);
    double[][] point = new double[formula.parameters().size()][];
    for (int i = 0; i < point.length; i++) {
      Parameter parameter = formula.parameters().get(i);
      point[i] = new double[parameter.list() ? readings : 1];
      for (int j = 0; j < point[i].length; j++) {
        point[i][j] =
            marks.get(i).isEmpty()
                ? value(parameter.domain())
                : marks.get(i).get(random.nextInt(marks.get(i).size())).doubleValue();
      }
    }
    return point;
  }

  private double value(Domain domain) {
    double lower = Math.max(domain.lower(), -FAR);
    double upper = Math.min(domain.upper(), Math.max(FAR, lower + FAR));
    int way = random.nextInt(12);
    double value;
    if (way == 0) {
      value = domain.lowerIncluded() ? domain.lower() : Math.nextUp(lower);
    } else if (way == 1 && Double.isFinite(domain.upper())) {
      value = domain.upperIncluded() ? domain.upper() : Math.nextDown(upper);
    } else if (way <= 4) {
      // As a crew would write it: two decimals.
      value = Math.rint((lower + (upper - lower) * random.nextDouble()) * 100) / 100;
    } else if (way <= 7) {
      // Small values matter as much as large ones.
      value = lower + (upper - lower) * Math.exp(-12 * random.nextDouble());
    } else {
      value = lower + (upper - lower) * random.nextDouble();
    }
    return domain.whole() ? Math.rint(value) : value;
  }

  /** Moves one input so that a relation is just met, or just not. */
  private void ontoEdge(double[][] point) {
    Relation relation = formula.relations().get(random.nextInt(formula.relations().size()));
    Relation.Term moved = relation.terms().get(0);
    double rest = relation.bound();
    int target = -1;
    for (int i = 0; i < point.length; i++) {
      String name = formula.parameters().get(i).name();
      if (name.equals(moved.input())) {
        target = i;
      }
      for (Relation.Term term : relation.terms()) {
        if (!term.equals(moved) && term.input().equals(name)) {
          rest -= term.factor() * point[i][0];
        }
      }
    }
    double edge = rest / moved.factor();
    int side = random.nextInt(3);
    point[target][0] = side == 0 ? edge : side == 1 ? Math.nextUp(edge) : Math.nextDown(edge);
  }
}
