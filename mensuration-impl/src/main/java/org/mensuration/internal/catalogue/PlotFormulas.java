package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
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
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.PlotAndLine;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Fixed plots and line sampling. Immutable and thread-safe. */
public final class PlotFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain ELEVATION = Domain.open(0, 90);

  /** Radius. */
  public static final BoundFormula RADIUS =
      Definition.of("plot/radius", "Radius of a circular plot", Nature.GEOMETRIC)
          .input("area", "A", "m2", POSITIVE, "horizontal area of the plot")
          .gives("radius", "R", "m", sqrt(over(sym("A"), pi())))
          .definedBy(CountingWorks.AG_S58, "plot radius equation")
          .kernel1(PlotAndLine::radius);

  /** Horizontal distance. */
  public static final BoundFormula HORIZONTAL_DISTANCE =
      Definition.of(
              "plot/horizontal-distance",
              "Horizontal distance from a distance along the slope",
              Nature.GEOMETRIC)
          .input("slope_distance", "S", "m", Domain.atLeast(0), "distance along the slope")
          .input("slope", "a", "deg", Domain.open(-90, 90), "slope of the line")
          .gives("distance", "R", "m", times(sym("S"), cosDegrees(sym("a"))))
          .definedBy(Works.AWF_DIST, "horizontal distance = slope distance × cos")
          .note("the equation of height/horizontal-distance, on a plot in place of at a tree")
          .kernel2(PlotAndLine::horizontalDistance);

  /** Radius along the slope. */
  public static final BoundFormula SLOPE_RADIUS =
      Definition.of(
              "plot/slope-radius",
              "Radius to lay out along the slope for a right horizontal area",
              Nature.GEOMETRIC)
          .input("radius", "R", "m", POSITIVE, "horizontal radius of the plot")
          .input("slope", "a", "deg", Domain.fromBelow(0, 90), "slope of the ground")
          .gives("radius", "R_s", "m", over(sym("R"), sqrt(cosDegrees(sym("a")))))
          .definedBy(CountingWorks.AG_S29, "text and example, circle laid out on the slope")
          .note(
              "a circle on the slope; not to be mixed with the ellipse of R across and R/cos(a) along")
          .kernel2(PlotAndLine::slopeRadius);

  /** Expansion factor. */
  public static final BoundFormula EXPANSION_FACTOR =
      Definition.of(
              "plot/expansion-factor", "Trees per hectare of one tree on a plot", Nature.GEOMETRIC)
          .input("area", "A", "m2", POSITIVE, "horizontal area of the plot")
          .gives("expansion", "EF", "1/ha", over(num(10000), sym("A")))
          .definedBy(CountingWorks.AG_S13, "text of table 10-1")
          .kernel1(PlotAndLine::expansionFactor);

  /** Horizontal line. */
  public static final BoundFormula HORIZONTAL_LINE =
      Definition.of(
              "line/horizontal-tree-factor",
              "Trees per hectare of one tree on a horizontal line",
              Nature.GEOMETRIC)
          .input("line_length", "L", "m", POSITIVE, "length of the line, seen to both sides")
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor of the gauge")
          .input("diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .gives(
              "tree_factor",
              "TF",
              "1/ha",
              where(
                  "R",
                  over(sym("d"), times(num(2), sqrt(sym("k")))),
                  over(num(10000), times(num(2), sym("L"), sym("R")))))
          .cites(Citation.derived("a tree is chosen from a strip of length L and width 2 R"))
          .kernel3(PlotAndLine::horizontalLine);

  /** Vertical point. */
  public static final BoundFormula VERTICAL_POINT =
      Definition.of(
              "line/vertical-point-tree-factor",
              "Trees per hectare of one tree by its top angle",
              Nature.GEOMETRIC)
          .input("angle", "phi", "deg", ELEVATION, "least elevation of the top")
          .input("height", "h", "m", POSITIVE, "height of the top above the eye")
          .gives(
              "tree_factor",
              "TF",
              "1/ha",
              over(
                  times(num(10000), squared(tanDegrees(sym("phi")))),
                  times(pi(), squared(sym("h")))))
          .cites(Citation.derived("a tree is chosen from a circle of radius h/tan(phi)"))
          .cites(
              Citation.fromMemory(Role.EXPLAINS, CountingWorks.AG_M09, "vertical point sampling"))
          .note("level ground; the height counts from the eye")
          .kernel2(PlotAndLine::verticalPoint);

  /** Vertical line. */
  public static final BoundFormula VERTICAL_LINE =
      Definition.of(
              "line/vertical-line-tree-factor",
              "Trees per hectare of one tree by its top angle along a line",
              Nature.GEOMETRIC)
          .input("angle", "phi", "deg", ELEVATION, "least elevation of the top")
          .input("height", "h", "m", POSITIVE, "height of the top above the eye")
          .input("line_length", "L", "m", POSITIVE, "length of the line, seen to both sides")
          .gives(
              "tree_factor",
              "TF",
              "1/ha",
              over(times(num(10000), tanDegrees(sym("phi"))), times(num(2), sym("L"), sym("h"))))
          .cites(
              Citation.derived("a tree is chosen from a strip of length L and width 2 h/tan(phi)"))
          .note("level ground; the height counts from the eye")
          .kernel3(PlotAndLine::verticalLine);

  /** The topics. */
  public static final List<BoundFormula> ALL =
      List.of(
          RADIUS,
          HORIZONTAL_DISTANCE,
          SLOPE_RADIUS,
          EXPANSION_FACTOR,
          HORIZONTAL_LINE,
          VERTICAL_POINT,
          VERTICAL_LINE);

  private PlotFormulas() {}
}
