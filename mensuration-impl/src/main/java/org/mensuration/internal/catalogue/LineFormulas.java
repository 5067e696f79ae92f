package org.mensuration.internal.catalogue;

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
import org.mensuration.kernel.LineSums;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Sums from lines and from angles to the top. Immutable and thread-safe. */
public final class LineFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain ELEVATION = Domain.open(0, 90);

  /** Sum of diameters. */
  public static final BoundFormula DIAMETER_SUM =
      Definition.of(
              "line/diameter-sum",
              "Sum of diameters per hectare from a horizontal line",
              Nature.GEOMETRIC)
          .input("line_length", "L", "m", POSITIVE, "length of the line, seen to both sides")
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor of the gauge")
          .input("count", "n", "1", NOT_NEGATIVE, "trees counted")
          .gives(
              "sum",
              "S_d",
              "cm/ha",
              where(
                  "c",
                  over(num("0.5"), sqrt(sym("k"))),
                  over(times(sym("n"), num(10000)), times(num(2), sym("L"), sym("c")))))
          .cites(Citation.derived("a tree is chosen with a chance that goes with its diameter"))
          .note("c is the radius factor in m/cm")
          .kernel3(LineSums::diameterSum);

  /** Reach of a vertical choice. */
  public static final BoundFormula VERTICAL_DISTANCE =
      Definition.of(
              "line/vertical-distance",
              "Distance up to which a tree is chosen by its top angle",
              Nature.GEOMETRIC)
          .input("angle", "phi", "deg", ELEVATION, "least elevation of the top")
          .input("height", "h", "m", POSITIVE, "height of the top above the eye")
          .gives("distance", "R", "m", over(sym("h"), tanDegrees(sym("phi"))))
          .cites(Citation.derived("the top stands at the angle phi at this distance"))
          .cites(fromMemory())
          .note("level ground; on a slope the angle counts from the line to the base")
          .kernel2(LineSums::verticalDistance);

  /** Sum of squared heights. */
  public static final BoundFormula SQUARED_HEIGHT_SUM =
      Definition.of(
              "line/squared-height-sum",
              "Sum of squared heights per hectare from a point",
              Nature.GEOMETRIC)
          .input("angle", "phi", "deg", ELEVATION, "least elevation of the top")
          .input("count", "n", "1", NOT_NEGATIVE, "trees counted")
          .gives(
              "sum",
              "S_hh",
              "m2/ha",
              over(times(sym("n"), num(10000), squared(tanDegrees(sym("phi")))), pi()))
          .cites(Citation.derived("a tree is chosen from a circle of radius h/tan(phi)"))
          .cites(fromMemory())
          .note("heights count from the eye, on level ground")
          .kernel2(LineSums::squaredHeightSum);

  /** Sum of heights. */
  public static final BoundFormula HEIGHT_SUM =
      Definition.of("line/height-sum", "Sum of heights per hectare from a line", Nature.GEOMETRIC)
          .input("angle", "phi", "deg", ELEVATION, "least elevation of the top")
          .input("line_length", "L", "m", POSITIVE, "length of the line, seen to both sides")
          .input("count", "n", "1", NOT_NEGATIVE, "trees counted")
          .gives(
              "sum",
              "S_h",
              "m/ha",
              over(times(sym("n"), num(10000), tanDegrees(sym("phi"))), times(num(2), sym("L"))))
          .cites(
              Citation.derived("a tree is chosen from a strip of length L and width 2 h/tan(phi)"))
          .note("heights count from the eye, on level ground")
          .kernel3(LineSums::heightSum);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(DIAMETER_SUM, VERTICAL_DISTANCE, SQUARED_HEIGHT_SUM, HEIGHT_SUM);

  private LineFormulas() {}

  private static Citation fromMemory() {
    return Citation.fromMemory(Role.EXPLAINS, CountingWorks.AG_M09, "vertical point sampling");
  }
}
