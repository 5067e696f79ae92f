package org.mensuration.internal.diameter;

/** A circle: centre x, centre y, radius. Stateless and thread-safe. */
final class CircleCurve implements SectionCurve {
  static final CircleCurve INSTANCE = new CircleCurve();
  private static final int PARAMETERS = 3;
  private static final int SUBSET = 10;

  private CircleCurve() {}

  @Override
  public String name() {
    return "circle";
  }

  @Override
  public int parameters() {
    return PARAMETERS;
  }

  @Override
  public int subset() {
    return SUBSET;
  }

  @Override
  public double[] start(double[] x, double[] y) {
    return AlgebraicCircle.linear(x, y);
  }

  @Override
  public double distance(double[] parameters, double x, double y, double[] gradient) {
    double across = x - parameters[0];
    double up = y - parameters[1];
    double away = Math.sqrt(across * across + up * up);
    gradient[0] = -across / away;
    gradient[1] = -up / away;
    gradient[2] = -1;
    return away - parameters[2];
  }
}
