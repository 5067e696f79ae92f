package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.SIN;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.OpticalRatio;
import org.mensuration.kernel.SightingPlan;
import org.mensuration.source.Citation;

/** Widths and distances of sights, and where to stand. Immutable and thread-safe. */
public final class SightingPlanFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ELEVATION = Domain.open(-90, 90);

  /** Width at a distance. */
  public static final BoundFormula WIDTH =
      Definition.of(
              "optics/width-at-distance",
              "Width that divisions cover at a distance",
              Nature.GEOMETRIC)
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("divisions", "n", "1", NOT_NEGATIVE, "number of divisions")
          .input("distance", "d", "m", POSITIVE, "horizontal distance")
          .gives("width", "w", "m", times(sym("d"), sym("n"), sym("u")))
          .definedBy(OpticsWorks.MRAD, "width = distance × reading / 1000 for thousandths")
          .note("true thousandths are 1/1000; a 6400th of the circle is 1.8 % narrower")
          .kernel3(OpticalRatio::width);

  /** Width of an angle at a distance. */
  public static final BoundFormula WIDTH_OF_ANGLE =
      Definition.of(
              "optics/width-of-angle", "Width that an angle covers at a distance", Nature.GEOMETRIC)
          .input("angle", "t", "deg", Domain.fromBelow(0, 90), "angle")
          .input("distance", "d", "m", POSITIVE, "distance")
          .gives("width", "w", "m", times(sym("d"), tanDegrees(sym("t"))))
          .definedBy(OpticsWorks.MRAD, "paragraph comparing the units")
          .note("one edge square to the distance; for small angles")
          .kernel2(OpticalRatio::widthOfAngle);

  /** Distance from thousandths. */
  public static final BoundFormula FROM_THOUSANDTHS =
      Definition.of(
              "optics/distance-from-thousandths",
              "Distance of a known width from a reading in thousandths",
              Nature.GEOMETRIC)
          .input("width", "w", "m", POSITIVE, "width of the target")
          .input("reading", "m", "1", POSITIVE, "reading in thousandths of the distance")
          .gives("distance", "d", "m", over(times(num(1000), sym("w")), sym("m")))
          .definedBy(OpticsWorks.TM1240, "p. 20")
          .explainedBy(OpticsWorks.MRAD, "conversion list and uses")
          .kernel2(OpticalRatio::distanceFromThousandths);

  /** Distance from a bar. */
  public static final BoundFormula FROM_BAR =
      Definition.of(
              "optics/distance-from-target",
              "Horizontal distance from a bar of known width across the sight",
              Nature.GEOMETRIC)
          .input("bar", "w", "m", POSITIVE, "width of the bar")
          .input("angle", "t", "deg", Domain.open(0, 180), "horizontal angle that it fills")
          .gives(
              "distance",
              "d",
              "m",
              over(over(sym("w"), num(2)), tanDegrees(over(sym("t"), num(2)))))
          .definedBy(OpticsWorks.SUBT, "exercise 4, solution")
          .note("a bar that lies level across the sight gives a horizontal distance at once")
          .note("degrees; an angle in radians taken for degrees is a mistake seen in print")
          .kernel2(OpticalRatio::distanceFromBar);

  /** Distance from a rod. */
  public static final BoundFormula FROM_ROD =
      Definition.of(
              "optics/distance-from-rod",
              "Horizontal distance from the intercept on an upright rod",
              Nature.GEOMETRIC)
          .input("multiplier", "K", "1", POSITIVE, "constant of the instrument, often 100")
          .input("intercept", "i", "m", POSITIVE, "length of rod between the hairs")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .gives("distance", "d", "m", times(sym("K"), sym("i"), squared(cosDegrees(sym("e")))))
          .definedBy(OpticsWorks.STADIA_T, "p. 48 (screen 50)")
          .note("two cosines, where a width across the sight takes one")
          .kernel3(OpticalRatio::distanceFromRod);

  /** Length of the line of sight. */
  public static final BoundFormula ALONG_SIGHT =
      Definition.of("optics/line-of-sight", "Length of the line of sight", Nature.GEOMETRIC)
          .input("distance", "R", "m", POSITIVE, "horizontal distance")
          .input("elevation", "e", "deg", ELEVATION, "elevation of the sight")
          .gives("slope_distance", "S", "m", over(sym("R"), cosDegrees(sym("e"))))
          .cites(Citation.derived("right triangle"))
          .explainedBy(Works.AWF_DIST, "horizontal distance = slope distance × cos")
          .kernel2(OpticalRatio::alongSight);

  /** Where a diameter fills divisions. */
  public static final BoundFormula WORKING_DISTANCE =
      Definition.of(
              "optics/working-distance",
              "Distance at which a diameter covers a number of divisions",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("divisions", "n", "1", POSITIVE, "divisions to be filled")
          .gives(
              "axis_distance",
              "R",
              "m",
              over(
                  sym("D"),
                  times(num(2), fn(SIN, fn(ATAN, over(times(sym("n"), sym("u")), num(2)))))))
          .cites(Citation.derived("inverse of optics/sighted-ratio"))
          .kernel3(SightingPlan::workingDistance);

  /** Where a diameter is read best. */
  public static final BoundFormula BEST_DISTANCE =
      Definition.of(
              "optics/best-distance",
              "Distance at which a diameter is read with the least error",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter to be read")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("reading_error", "s_n", "1", POSITIVE, "standard error of a reading in divisions")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .gives(
              "distance",
              "R",
              "m",
              sqrt(over(times(sym("D"), sym("s_R")), times(sym("u"), sym("s_n")))))
          .cites(
              Citation.derived(
                  "least or limit of s² = (u s_n R)² + (D s_R/R)², second order in D/R"))
          .kernel4(SightingPlan::bestDistance);

  /** Least error of a diameter. */
  public static final BoundFormula LEAST_ERROR =
      Definition.of(
              "optics/least-error",
              "Least standard error of a diameter over all distances",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter to be read")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("reading_error", "s_n", "1", POSITIVE, "standard error of a reading in divisions")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .gives("error", "s", "m", sqrt(times(num(2), sym("u"), sym("s_n"), sym("D"), sym("s_R"))))
          .cites(
              Citation.derived(
                  "least or limit of s² = (u s_n R)² + (D s_R/R)², second order in D/R"))
          .kernel4(SightingPlan::leastError);

  /** Longest distance within a limit. */
  public static final BoundFormula LONGEST_DISTANCE =
      Definition.of(
              "optics/longest-distance",
              "Longest distance that keeps the error of a diameter within a limit",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter to be read")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("reading_error", "s_n", "1", POSITIVE, "standard error of a reading in divisions")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .input("limit", "L", "m", POSITIVE, "standard error that is allowed")
          .gives(
              "distance",
              "R",
              "m",
              where(
                  "q",
                  sqrt(
                      minus(
                          squared(squared(sym("L"))),
                          times(
                              num(4), squared(times(sym("u"), sym("s_n"), sym("D"), sym("s_R")))))),
                  sqrt(
                      over(
                          plus(squared(sym("L")), sym("q")),
                          times(num(2), squared(times(sym("u"), sym("s_n"))))))))
          .cites(
              Citation.derived(
                  "least or limit of s² = (u s_n R)² + (D s_R/R)², second order in D/R"))
          .note("no distance keeps a limit below optics/least-error")
          .kernelOfArrays(
              x -> SightingPlan.longestDistance(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Shortest distance within a limit. */
  public static final BoundFormula SHORTEST_DISTANCE =
      Definition.of(
              "optics/shortest-distance",
              "Shortest distance that keeps the error of a diameter within a limit",
              Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter to be read")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input("reading_error", "s_n", "1", POSITIVE, "standard error of a reading in divisions")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .input("limit", "L", "m", POSITIVE, "standard error that is allowed")
          .gives(
              "distance",
              "R",
              "m",
              where(
                  "q",
                  sqrt(
                      minus(
                          squared(squared(sym("L"))),
                          times(
                              num(4), squared(times(sym("u"), sym("s_n"), sym("D"), sym("s_R")))))),
                  sqrt(
                      over(
                          times(num(2), squared(times(sym("D"), sym("s_R")))),
                          plus(squared(sym("L")), sym("q"))))))
          .cites(
              Citation.derived(
                  "least or limit of s² = (u s_n R)² + (D s_R/R)², second order in D/R"))
          .note("no distance keeps a limit below optics/least-error")
          .kernelOfArrays(
              x -> SightingPlan.shortestDistance(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Error of a diameter. */
  public static final BoundFormula STANDARD_ERROR =
      Definition.of(
              "optics/diameter-standard-error",
              "Standard error of a diameter read on a scale",
              Nature.STATISTICAL)
          .input("divisions", "n", "1", NOT_NEGATIVE, "divisions read")
          .input("ratio", "u", "1", POSITIVE, "ratio of a division")
          .input(
              "reading_error", "s_n", "1", NOT_NEGATIVE, "standard error of a reading in divisions")
          .input("axis_distance", "R", "m", POSITIVE, "distance to the axis")
          .input("distance_error", "s_R", "m", NOT_NEGATIVE, "standard error of the distance")
          .gives(
              "error",
              "s",
              "m",
              where(
                  "b",
                  times(sym("n"), sym("u")),
                  where(
                      "c",
                      sqrt(plus(num(1), over(squared(sym("b")), num(4)))),
                      sqrt(
                          plus(
                              squared(
                                  over(
                                      times(sym("u"), sym("s_n"), sym("R")),
                                      times(sym("c"), sym("c"), sym("c")))),
                              squared(over(times(sym("b"), sym("s_R")), sym("c"))))))))
          .cites(Citation.derived("first-order propagation through optics/diameter-axis-distance"))
          .note("a half-width a of the reading is a standard error of a/√3")
          .note("all diameters of a stem share the distance, so its part does not average out")
          .kernelOfArrays(
              x -> SightingPlan.standardError(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          WIDTH,
          WIDTH_OF_ANGLE,
          FROM_THOUSANDTHS,
          FROM_BAR,
          FROM_ROD,
          ALONG_SIGHT,
          WORKING_DISTANCE,
          BEST_DISTANCE,
          LEAST_ERROR,
          LONGEST_DISTANCE,
          SHORTEST_DISTANCE,
          STANDARD_ERROR);

  private SightingPlanFormulas() {}
}
