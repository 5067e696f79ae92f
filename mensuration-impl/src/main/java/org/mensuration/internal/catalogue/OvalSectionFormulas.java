package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.diameter.EllipseGirth;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.kernel.StemDiameter;
import org.mensuration.source.Citation;

/**
 * Oval sections, and how far each way of measuring misses their area. Immutable and thread-safe.
 */
public final class OvalSectionFormulas {
  private static final Domain AXIS = Domain.above(0);
  private static final Domain RATIO = Domain.closed(0.1, 1);
  private static final Domain DIRECTION = Domain.closed(0, 90);
  private static final String SHORT_OVER_LONG = "short over long axis of the ellipse";

  /** Area of an ellipse. */
  public static final BoundFormula AREA =
      Definition.of(
              "diameter/ellipse-area", "Area of an oval section as an ellipse", Nature.GEOMETRIC)
          .input("long_axis", "a", "cm", AXIS, "long axis")
          .input("short_axis", "b", "cm", AXIS, "short axis")
          .relation("short_axis", AT_MOST, 1, "long_axis", "b ≤ a")
          .gives("area", "A", "m2", over(times(pi(), sym("a"), sym("b")), num(40_000)))
          .cites(Citation.derived("area of an ellipse; cm to m²"))
          .kernel2(StemDiameter::ellipseArea);

  /** Caliper on an ellipse. */
  public static final BoundFormula CALIPER =
      Definition.of(
              "diameter/ellipse-caliper",
              "Caliper reading of an elliptic section in a direction",
              Nature.GEOMETRIC)
          .input("long_axis", "a", "cm", AXIS, "long axis")
          .input("short_axis", "b", "cm", AXIS, "short axis")
          .input("direction", "t", "deg", DIRECTION, "angle between the reading and the long axis")
          .relation("short_axis", AT_MOST, 1, "long_axis", "b ≤ a")
          .gives(
              "diameter",
              "D",
              "cm",
              sqrt(
                  plus(
                      squared(times(sym("a"), cosDegrees(sym("t")))),
                      squared(times(sym("b"), sinDegrees(sym("t")))))))
          .cites(Citation.derived("distance between parallel tangents of an ellipse"))
          .note("a single optical view is one caliper reading")
          .kernel3(StemDiameter::ellipseCaliper);

  /** Relative error of the area from the arithmetic mean of the axes. */
  public static final BoundFormula MEAN_EXCESS =
      Definition.of(
              "diameter/ellipse-mean-excess",
              "Relative error of the area from the arithmetic mean of the axes on an ellipse",
              Nature.GEOMETRIC)
          .input("axis_ratio", "q", "1", RATIO, SHORT_OVER_LONG)
          .gives(
              "error",
              "E",
              "1",
              minus(over(squared(plus(num(1), sym("q"))), times(num(4), sym("q"))), num(1)))
          .cites(Citation.derived("(a + b)²/(4 a b) - 1"))
          .explainedBy(OpticsWorks.BW98_D, "object-based errors 1-4")
          .note("the geometric mean of the axes has no error")
          .kernel1(StemDiameter::arithmeticMeanExcess);

  /** Relative error of the area from the quadratic mean of the axes. */
  public static final BoundFormula QUADRATIC_EXCESS =
      Definition.of(
              "diameter/ellipse-quadratic-excess",
              "Relative error of the area from the quadratic mean of the axes on an ellipse",
              Nature.GEOMETRIC)
          .input("axis_ratio", "q", "1", RATIO, SHORT_OVER_LONG)
          .gives(
              "error",
              "E",
              "1",
              minus(over(plus(num(1), squared(sym("q"))), times(num(2), sym("q"))), num(1)))
          .cites(Citation.derived("(a² + b²)/(2 a b) - 1"))
          .note("twice the error of the arithmetic mean")
          .kernel1(StemDiameter::quadraticMeanExcess);

  /** Relative error of the area from one diameter. */
  public static final BoundFormula CALIPER_EXCESS =
      Definition.of(
              "diameter/ellipse-caliper-excess",
              "Relative error of the area from one diameter on an ellipse",
              Nature.GEOMETRIC)
          .input("axis_ratio", "q", "1", RATIO, SHORT_OVER_LONG)
          .input("direction", "t", "deg", DIRECTION, "angle between the reading and the long axis")
          .gives(
              "error",
              "E",
              "1",
              minus(
                  over(
                      plus(
                          squared(cosDegrees(sym("t"))),
                          times(squared(sym("q")), squared(sinDegrees(sym("t"))))),
                      sym("q")),
                  num(1)))
          .cites(Citation.derived("(a² cos² t + b² sin² t)/(a b) - 1"))
          .note("from 1/q - 1 along the long axis to q - 1 along the short one")
          .kernel2(StemDiameter::oneDiameterExcess);

  /** Spread of one view. */
  public static final BoundFormula ONE_VIEW =
      Definition.of(
              "diameter/ellipse-view-deviation",
              "Relative standard deviation of one view of an ellipse from a chance direction",
              Nature.GEOMETRIC)
          .input("axis_ratio", "q", "1", RATIO, SHORT_OVER_LONG)
          .gives("deviation", "s", "1", over(minus(num(1), sym("q")), times(num(2), sqrt(num(2)))))
          .cites(
              Citation.derived(
                  "first order in 1 - q: the reading goes with the cosine of twice the direction"))
          .note("1.8 % of the diameter at an axis ratio of 0.95")
          .kernel1(StemDiameter::oneViewDeviation);

  /** Error of the tape. */
  public static final BoundFormula GIRTH_EXCESS =
      Definition.of(
              "diameter/ellipse-girth-excess",
              "Relative error of the area from the girth of an ellipse",
              Nature.GEOMETRIC)
          .input("axis_ratio", "q", "1", RATIO, SHORT_OVER_LONG)
          .gives(
              "error",
              "E",
              "1",
              new Equation.Solved(
                  "P²/(π² a b) - 1 with the perimeter P of the ellipse, an elliptic integral"))
          .cites(Citation.derived("girth squared over 4π beside the area of the ellipse"))
          .explainedBy(OpticsWorks.MATERN56, "contents and introduction")
          .note(
              "largest of all ways of measuring; the isoperimetric inequality keeps it from falling"
                  + " below zero")
          .kernel1(EllipseGirth::excess);

  /** Girth of an ellipse. */
  public static final BoundFormula GIRTH =
      Definition.of("diameter/ellipse-girth", "Girth of an elliptic section", Nature.GEOMETRIC)
          .input("long_axis", "a", "cm", AXIS, "long axis")
          .input("short_axis", "b", "cm", AXIS, "short axis")
          .relation("short_axis", AT_MOST, 1, "long_axis", "b ≤ a")
          .gives(
              "girth",
              "P",
              "cm",
              new Equation.Solved(
                  "2 a E(√(1 - b²/a²)), the complete elliptic integral of the second kind"))
          .cites(Citation.derived("length of an ellipse"))
          .note("over π it is the mean of the caliper readings in all directions")
          .kernel2(EllipseGirth::girth);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          AREA,
          CALIPER,
          MEAN_EXCESS,
          QUADRATIC_EXCESS,
          CALIPER_EXCESS,
          ONE_VIEW,
          GIRTH_EXCESS,
          GIRTH);

  private OvalSectionFormulas() {}
}
