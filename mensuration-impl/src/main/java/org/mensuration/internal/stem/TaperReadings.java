package org.mensuration.internal.stem;

import java.util.List;
import javax.measure.quantity.Length;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.mensuration.kernel.VariableExponentTaper;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperFit;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Readings of a stem as relative heights and diameters, and the fits to them. Immutable. */
public final class TaperReadings {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final String SQUARED = "squared relative diameter (d/D)²";

  private final double[] z;
  private final double[] relative;
  private final double dbhCm;
  private final double heightM;

  /**
   * Reads them.
   *
   * @param readings the readings
   * @param dbhCm diameter that others are related to
   * @param heightM height of the tip
   * @throws IllegalArgumentException if a reading lies outside the stem or is no diameter
   */
  public TaperReadings(List<StemReading> readings, double dbhCm, double heightM) {
    if (!(dbhCm > 0 && dbhCm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("reference diameter: " + dbhCm + " cm, allowed (0, ∞) cm");
    }
    if (!(heightM > 0 && heightM < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("height of the tip: " + heightM + " m, allowed (0, ∞) m");
    }
    this.dbhCm = dbhCm;
    this.heightM = heightM;
    this.z = new double[readings.size()];
    this.relative = new double[readings.size()];
    for (int i = 0; i < z.length; i++) {
      double height = METRES.read(readings.get(i).height());
      double diameter = CENTIMETRES.read(readings.get(i).diameter());
      if (!(height >= 0 && height <= heightM)) {
        throw new IllegalArgumentException(
            "reading at " + height + " m, allowed [0, " + heightM + "] m, from ground to tip");
      }
      if (!(diameter >= 0 && diameter < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "diameter at " + height + " m: " + diameter + " cm, allowed [0, ∞) cm");
      }
      z[i] = height / heightM;
      relative[i] = diameter / dbhCm;
    }
  }

  private double[] squares() {
    double[] squares = new double[z.length];
    for (int i = 0; i < z.length; i++) {
      squares[i] = relative[i] * relative[i];
    }
    return squares;
  }

  /**
   * A quadratic through the tip: b1 and b2 fitted, b0 = -(b1 + b2).
   *
   * @return the fit
   */
  public TaperFit quadratic() {
    double[][] x = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      x[i] = new double[] {z[i] - 1, z[i] * z[i] - 1};
    }
    return TaperFits.linear(
        "quadratic taper curve (stem/taper-quadratic)",
        SQUARED,
        List.of("b1", "b2"),
        squares(),
        x,
        b -> TaperFamily.quadratic(dbhCm, heightM, -(b[0] + b[1]), b[0], b[1]));
  }

  /**
   * A cubic through the tip: b1, b2 and b3 fitted, b0 = -(b1 + b2 + b3).
   *
   * @return the fit
   */
  public TaperFit cubic() {
    double[][] x = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      x[i] = new double[] {z[i] - 1, z[i] * z[i] - 1, z[i] * z[i] * z[i] - 1};
    }
    return TaperFits.linear(
        "cubic taper curve (stem/taper-cubic)",
        "relative diameter d/D",
        List.of("b1", "b2", "b3"),
        relative.clone(),
        x,
        b -> TaperFamily.cubic(dbhCm, heightM, -(b[0] + (b[1] + b[2])), b[0], b[1], b[2]));
  }

  /**
   * A segmented curve with given joints.
   *
   * @param upper upper joint, relative height
   * @param lower lower joint, relative height
   * @return the fit
   */
  public TaperFit segmented(double upper, double lower) {
    requireJoints(upper, lower);
    double[][] x = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      double below = Math.max(upper - z[i], 0);
      double butt = Math.max(lower - z[i], 0);
      x[i] = new double[] {z[i] - 1, z[i] * z[i] - 1, below * below, butt * butt};
    }
    return TaperFits.linear(
        "segmented taper curve (stem/taper-segmented)",
        SQUARED,
        List.of("b1", "b2", "b3", "b4"),
        squares(),
        x,
        b -> TaperFamily.segmented(dbhCm, heightM, b[0], b[1], b[2], b[3], upper, lower));
  }

  /**
   * A variable-exponent curve with a given inflection.
   *
   * @param inflection relative height of the inflection
   * @return the fit
   */
  public TaperFit variableExponent(double inflection) {
    String what = "variable-exponent taper curve (stem/taper-variable-exponent)";
    if (!(inflection > 0 && inflection < 1)) {
      throw new IllegalArgumentException(
          what + ": inflection at " + inflection + " of the height, allowed (0, 1)");
    }
    double[] logarithms = new double[z.length];
    double[][] x = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      if (!(relative[i] > 0 && z[i] < 1)) {
        throw new IllegalArgumentException(
            what
                + ": "
                + relative[i] * dbhCm
                + " cm at "
                + z[i] * heightM
                + " m, allowed a diameter above 0 cm below the tip, for its logarithm is fitted");
      }
      logarithms[i] = StrictMath.log(relative[i] * dbhCm);
      double base = VariableExponentTaper.logBase(z[i], 1 - z[i], inflection);
      double[] terms = VariableExponentTaper.terms(z[i]);
      x[i] = new double[] {1, base * terms[0], base * terms[1], base * terms[2], base * terms[3]};
    }
    return TaperFits.linear(
        what,
        "logarithm of the diameter in cm",
        List.of("ln a0", "b1", "b2", "b3", "b4"),
        logarithms,
        x,
        b ->
            TaperFamily.variableExponent(
                dbhCm, heightM, inflection, StrictMath.exp(b[0]), 0, 1, b[1], b[2], b[3], b[4], 0));
  }

  private static void requireJoints(double upper, double lower) {
    if (!(lower > 0 && lower < upper && upper < 1)) {
      throw new IllegalArgumentException(
          "joints of a segmented taper curve: lower "
              + lower
              + ", upper "
              + upper
              + ", allowed 0 < lower < upper < 1");
    }
  }

  /**
   * A segmented curve whose joints are fitted too, from where they are thought to be.
   *
   * @param upper upper joint to start from, relative height
   * @param lower lower joint to start from, relative height
   * @return the fit
   */
  public TaperFit segmentedWithJoints(double upper, double lower) {
    String what = "segmented taper curve (stem/taper-segmented)";
    double[][] rows = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      rows[i] = new double[] {z[i]};
    }
    TaperFits.require(what, 6, rows);
    List<Double> b = segmented(upper, lower).estimates();
    double[] start = {b.get(0), b.get(1), b.get(2), b.get(3), upper, lower};
    return TaperFits.iterated(
        what,
        SQUARED,
        List.of("b1", "b2", "b3", "b4", "a1", "a2"),
        squares(),
        this::segments,
        start,
        found -> TaperFamily.segmented(dbhCm, heightM, found));
  }

  private Pair<RealVector, RealMatrix> segments(RealVector at) {
    RealVector values = new ArrayRealVector(z.length);
    RealMatrix slopes = new Array2DRowRealMatrix(z.length, 6);
    for (int i = 0; i < z.length; i++) {
      double below = Math.max(at.getEntry(4) - z[i], 0);
      double butt = Math.max(at.getEntry(5) - z[i], 0);
      double[] row = {
        z[i] - 1,
        z[i] * z[i] - 1,
        below * below,
        butt * butt,
        2 * at.getEntry(2) * below,
        2 * at.getEntry(3) * butt
      };
      double value = 0;
      for (int j = 0; j < 4; j++) {
        value += at.getEntry(j) * row[j];
      }
      values.setEntry(i, value);
      slopes.setRow(i, row);
    }
    return new Pair<>(values, slopes);
  }

  /**
   * A power curve through a reference diameter and the tip.
   *
   * @param referenceM reference height
   * @return the fit
   */
  public TaperFit power(double referenceM) {
    String what = "power taper curve (stem/taper-power)";
    if (!(referenceM >= 0 && referenceM < heightM)) {
      throw new IllegalArgumentException(
          what + ": reference height " + referenceM + " m, allowed [0, " + heightM + ") m");
    }
    double[][] rows = new double[z.length][];
    for (int i = 0; i < z.length; i++) {
      rows[i] = new double[] {(1 - z[i]) / (1 - referenceM / heightM)};
    }
    TaperFits.require(what, 1, rows);
    MultivariateJacobianFunction model =
        at -> {
          RealVector values = new ArrayRealVector(rows.length);
          RealMatrix slopes = new Array2DRowRealMatrix(rows.length, 1);
          DerivativeStructure exponent = new DerivativeStructure(1, 1, 0, at.getEntry(0));
          for (int i = 0; i < rows.length; i++) {
            DerivativeStructure value = DerivativeStructure.pow(rows[i][0], exponent);
            values.setEntry(i, value.getValue());
            slopes.setEntry(i, 0, value.getPartialDerivative(1));
          }
          return new Pair<>(values, slopes);
        };
    return TaperFits.iterated(
        what,
        "relative diameter d/D",
        List.of("exponent"),
        relative.clone(),
        model,
        new double[] {0.75},
        found -> TaperFamily.power(dbhCm, referenceM, heightM, found[0]));
  }
}
