package org.mensuration.internal.diameter;

/**
 * A closed curve that is fitted to points of a section. Every parameter is a length, so a fit on
 * scaled points scales back by one factor. Implementations are stateless and thread-safe.
 */
interface SectionCurve {

  /** Name of the curve for messages. */
  String name();

  /** Number of parameters. */
  int parameters();

  /** Points in a subset from which strays are looked for. */
  int subset();

  /**
   * Parameters from algebra, to start from.
   *
   * @param x abscissas
   * @param y ordinates
   * @return the parameters; NaN among them if the points do not determine the curve
   */
  double[] start(double[] x, double[] y);

  /**
   * Distance of a point from the curve, outside positive.
   *
   * @param parameters the parameters
   * @param x abscissa
   * @param y ordinate
   * @param gradient receives the derivatives by the parameters
   * @return the distance
   */
  double distance(double[] parameters, double x, double y, double[] gradient);
}
