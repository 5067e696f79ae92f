package org.mensuration.stem;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A taper curve fitted to readings by least squares. Immutable and thread-safe.
 *
 * @param curve the curve with its coefficients
 * @param fitted names of the coefficients that were fitted
 * @param estimates their values
 * @param covariance covariances of the estimates, row by row
 * @param residualStandardError square root of the residual sum of squares over the degrees of
 *     freedom, in the variable that was fitted
 * @param degreesOfFreedom readings less fitted coefficients
 * @param variable what was fitted, such as the squared relative diameter
 */
public record TaperFit(
    TaperCurve curve,
    List<String> fitted,
    List<Double> estimates,
    List<List<Double>> covariance,
    double residualStandardError,
    int degreesOfFreedom,
    String variable) {

  /**
   * Copies the lists.
   *
   * @param curve the curve with its coefficients
   * @param fitted names of the coefficients that were fitted
   * @param estimates their values
   * @param covariance covariances of the estimates, row by row
   * @param residualStandardError root mean square residual
   * @param degreesOfFreedom readings less fitted coefficients
   * @param variable what was fitted
   */
  public TaperFit {
    Objects.requireNonNull(curve, "curve");
    Objects.requireNonNull(variable, "variable");
    fitted = List.copyOf(fitted);
    estimates = List.copyOf(estimates);
    List<List<Double>> rows = new ArrayList<>();
    for (List<Double> row : covariance) {
      rows.add(List.copyOf(row));
    }
    covariance = List.copyOf(rows);
  }

  /**
   * The standard error of a fitted coefficient.
   *
   * @param name its name
   * @return the square root of its variance
   * @throws IllegalArgumentException if it was not fitted
   */
  public double standardError(String name) {
    int i = fitted.indexOf(name);
    if (i < 0) {
      throw new IllegalArgumentException(
          "coefficient " + name + " was not fitted; fitted were " + fitted);
    }
    return Math.sqrt(covariance.get(i).get(i));
  }
}
