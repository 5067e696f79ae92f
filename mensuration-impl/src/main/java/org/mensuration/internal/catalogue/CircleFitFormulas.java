package org.mensuration.internal.catalogue;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.diameter.CircleOfPoints;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.formula.Kernel;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.source.Source;

/**
 * Circles fitted to points of a section, one formula a figure. On short arcs the methods differ
 * widely, so each is named. Immutable and thread-safe.
 */
public final class CircleFitFormulas {
  private static final String ALL_ROUND = "data all around the circle";
  private static final String SIX_POINTS =
      "six-point circle example, algebraic solution (second-hand)";

  /** Centre by the linear method. */
  public static final BoundFormula LINEAR_X =
      linear("x", "centre_x", "abscissa of the centre", x -> CircleOfPoints.linear(x)[0]);

  /** Centre by the linear method. */
  public static final BoundFormula LINEAR_Y =
      linear("y", "centre_y", "ordinate of the centre", x -> CircleOfPoints.linear(x)[1]);

  /** Radius by the linear method. */
  public static final BoundFormula LINEAR_RADIUS =
      linear("radius", "radius", "mean distance to the centre", x -> CircleOfPoints.linear(x)[2]);

  /** Centre by the coefficients of unit length. */
  public static final BoundFormula UNIT_NORM_X =
      unitNorm("x", "centre_x", "abscissa of the centre", x -> CircleOfPoints.unitNorm(x)[0]);

  /** Centre by the coefficients of unit length. */
  public static final BoundFormula UNIT_NORM_Y =
      unitNorm("y", "centre_y", "ordinate of the centre", x -> CircleOfPoints.unitNorm(x)[1]);

  /** Radius by the coefficients of unit length. */
  public static final BoundFormula UNIT_NORM_RADIUS =
      unitNorm("radius", "radius", "radius", x -> CircleOfPoints.unitNorm(x)[2]);

  /** Centre by least distances. */
  public static final BoundFormula GEOMETRIC_X =
      geometric(
          "x", "centre_x", "cm", "abscissa of the centre", x -> CircleOfPoints.geometric(x)[0]);

  /** Centre by least distances. */
  public static final BoundFormula GEOMETRIC_Y =
      geometric(
          "y", "centre_y", "cm", "ordinate of the centre", x -> CircleOfPoints.geometric(x)[1]);

  /** Radius by least distances. */
  public static final BoundFormula GEOMETRIC_RADIUS =
      geometric("radius", "radius", "cm", "radius", x -> CircleOfPoints.geometric(x)[2]);

  /** Sum of squares by least distances. */
  public static final BoundFormula GEOMETRIC_SQUARES =
      geometric("squares", "squares", "cm2", "sum of squares", x -> CircleOfPoints.geometric(x)[3]);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          LINEAR_X,
          LINEAR_Y,
          LINEAR_RADIUS,
          UNIT_NORM_X,
          UNIT_NORM_Y,
          UNIT_NORM_RADIUS,
          GEOMETRIC_X,
          GEOMETRIC_Y,
          GEOMETRIC_RADIUS,
          GEOMETRIC_SQUARES);

  private CircleFitFormulas() {}

  private static BoundFormula linear(
      String part, String result, String what, Kernel.OfArrays kernel) {
    return of(
            "linear-" + part,
            "Circle through points, linear least squares: " + what,
            "least Σ (x² + y² - B x - C y - D)² over B, C, D; centre (B/2, C/2)",
            result,
            "cm",
            OpticsWorks.SCICOOK,
            ALL_ROUND)
        .note("the radius given is the mean distance of the points from the centre")
        .note("leans to small circles on short arcs")
        .kernelOfArrays(kernel);
  }

  private static BoundFormula unitNorm(
      String part, String result, String what, Kernel.OfArrays kernel) {
    return of(
            "unit-norm-" + part,
            "Circle through points, coefficients of unit length: " + what,
            "least Σ (A (x² + y²) + B x + C y + D)² with A² + B² + C² + D² = 1",
            result,
            "cm",
            OpticsWorks.GGS94,
            SIX_POINTS)
        .note("depends on where the origin lies and on the unit")
        .kernelOfArrays(kernel);
  }

  private static BoundFormula geometric(
      String part, String result, String unit, String what, Kernel.OfArrays kernel) {
    return of(
            "geometric-" + part,
            "Circle through points, least distances: " + what,
            "least Σ (√((x - a)² + (y - b)²) - r)² over a, b, r",
            result,
            unit,
            OpticsWorks.SCICOOK,
            ALL_ROUND)
        .note("not freed from the bias of noise, strays not left out")
        .kernelOfArrays(kernel);
  }

  private static Definition of(
      String name,
      String title,
      String statement,
      String result,
      String unit,
      Source source,
      String place) {
    return Definition.of("diameter/circle-" + name, title, Nature.STATISTICAL)
        .list("x", "x", "cm", Domain.any(), "abscissas of the points, three or more")
        .list("y", "y", "cm", Domain.any(), "ordinates of the points")
        .gives(result, "c", unit, new Equation.Solved(statement))
        .cites(Citation.published(Role.DEFINES, source, place))
        .note("points on a line have no circle and are refused");
  }
}
