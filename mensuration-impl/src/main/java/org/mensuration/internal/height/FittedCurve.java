package org.mensuration.internal.height;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveException;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightSample;
import org.mensuration.height.TreeHeight;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** A fitted height curve. Immutable and thread-safe. */
public final class FittedCurve implements HeightCurve {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final int FEWEST = 3;
  private static final int FIRST_COEFFICIENT = 2;

  private final String species;
  private final BoundFormula formula;
  private final double breastHeight;
  private final double b0;
  private final double b1;
  private final double[][] covariance;
  private final double residual;
  private final int trees;
  private final double smallest;
  private final double largest;

  private FittedCurve(
      String species,
      BoundFormula formula,
      double breastHeight,
      CurveFit.Solution solution,
      double[] diameters) {
    this.species = species;
    this.formula = formula;
    this.breastHeight = breastHeight;
    this.trees = diameters.length;
    this.b0 = solution.coefficient(0);
    this.b1 = solution.coefficient(1);
    double variance = solution.squares() / (trees - 2);
    this.residual = Math.sqrt(variance);
    this.covariance = new double[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        covariance[i][j] = variance * solution.inverse(i, j);
      }
    }
    this.smallest = diameters[0];
    this.largest = diameters[trees - 1];
  }

  /** A tree in numbers. */
  private record Point(double diameter, double height) {}

  /**
   * Fits a curve.
   *
   * @param form the form
   * @param breastHeight the height at which diameters are measured
   * @param species the species
   * @param samples trees, of which those of the species with a measured height are used
   * @return the curve
   * @throws HeightCurveException if there are too few heights, or no curve of this form fits them
   */
  public static FittedCurve of(
      HeightCurveForm form,
      Quantity<Length> breastHeight,
      String species,
      Iterable<HeightSample> samples) {
    CurveModel model = CurveModel.of(form);
    double metres = METRES.read(breastHeight);
    List<Point> points = new ArrayList<>();
    for (HeightSample tree : samples) {
      if (tree.species().equals(species) && tree.height().isPresent()) {
        points.add(
            point(CENTIMETRES.read(tree.diameter()), METRES.read(tree.height().get()), metres));
      }
    }
    // One order, so that the curve does not depend on that of the trees.
    points.sort(Comparator.comparingDouble(Point::diameter).thenComparingDouble(Point::height));
    requireEnough(model.formula().id(), points);
    double[] diameters = points.stream().mapToDouble(Point::diameter).toArray();
    double[] heights = points.stream().mapToDouble(Point::height).toArray();
    CurveFit fit = new CurveFit(model, diameters, heights, metres);
    return new FittedCurve(species, model.formula(), metres, fit.solve(), diameters);
  }

  private static Point point(double diameter, double height, double breastHeight) {
    if (!(diameter > 0 && diameter < Double.POSITIVE_INFINITY)) {
      throw new HeightCurveException(
          "height curve: diameter " + diameter + " cm, allowed above zero");
    }
    if (!(height > breastHeight && height < Double.POSITIVE_INFINITY)) {
      throw new HeightCurveException(
          "height curve: height "
              + height
              + " m of a tree with a diameter at breast height of "
              + diameter
              + " cm, allowed above breast height, "
              + breastHeight
              + " m");
    }
    return new Point(diameter, height);
  }

  private static void requireEnough(String id, List<Point> points) {
    if (points.size() < FEWEST) {
      throw new HeightCurveException(
          id + ": " + points.size() + " measured heights, wanted at least " + FEWEST);
    }
    if (points.get(0).diameter() == points.get(points.size() - 1).diameter()) {
      throw new HeightCurveException(
          id + ": all measured heights belong to one diameter, wanted at least two");
    }
  }

  @Override
  public Formula formula() {
    return formula;
  }

  @Override
  public String species() {
    return species;
  }

  @Override
  public Quantity<Length> breastHeight() {
    return Measures.metres(breastHeight);
  }

  @Override
  public List<Double> coefficients() {
    return List.of(b0, b1);
  }

  @Override
  public List<List<Double>> covariance() {
    return List.of(
        List.of(covariance[0][0], covariance[0][1]), List.of(covariance[1][0], covariance[1][1]));
  }

  @Override
  public int trees() {
    return trees;
  }

  @Override
  public Quantity<Length> residualError() {
    return Measures.metres(residual);
  }

  @Override
  public Quantity<Length> smallestDiameter() {
    return Measures.centimetres(smallest);
  }

  @Override
  public Quantity<Length> largestDiameter() {
    return Measures.centimetres(largest);
  }

  @Override
  public boolean covers(Quantity<Length> diameter) {
    double centimetres = CENTIMETRES.read(diameter);
    return centimetres >= smallest && centimetres <= largest;
  }

  @Override
  public TreeHeight height(Quantity<Length> diameter) {
    return TreeHeight.predicted(
        Measures.metres(formula.value(CENTIMETRES.read(diameter), breastHeight, b0, b1)));
  }

  @Override
  public Quantity<Length> standardError(Quantity<Length> diameter) {
    Gradient gradient =
        formula.gradient(
            new double[] {CENTIMETRES.read(diameter)},
            new double[] {breastHeight},
            new double[] {b0},
            new double[] {b1});
    double first = gradient.partial(FIRST_COEFFICIENT);
    double second = gradient.partial(FIRST_COEFFICIENT + 1);
    return Measures.metres(
        Math.sqrt(
            first * first * covariance[0][0]
                + 2 * first * second * covariance[0][1]
                + second * second * covariance[1][1]));
  }
}
