package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.kernel.EdgeWeights;
import org.mensuration.source.Citation;

/** Weights of trees counted near an edge. Immutable and thread-safe. */
public final class EdgeFormulas {
  private static final String COUNTED =
      "area of points from which each tree is counted, as often as it counts there";

  /** Walkthrough. */
  public static final BoundFormula WALKTHROUGH_WEIGHT =
      Definition.of(
              "edge/walkthrough-weight",
              "Weight of a counted tree by walking through it",
              Nature.CONVENTION)
          .input(
              "inside",
              "i",
              "1",
              new Domain(0, true, 1, true, true),
              "1 if the spot as far behind the tree as the point is before it lies inside, else 0")
          .gives(
              "weight",
              "w",
              "1",
              new Equation.Cases(
                  List.of(
                      new Equation.Branch(
                          new Equation.Condition(sym("i"), Comparison.LESS, num(1)), num(2))),
                  num(1)))
          .definedBy(EdgeWorks.AG_S38, "abstract and first page")
          .explainedBy(EdgeWorks.AG_S39, "text")
          .note("walk on from the tree on the line from the point, as far as the point is from it")
          .note(
              "edges may be curved; a tree near two edges at once may keep a part of the error, as"
                  + " in the corner of a tract")
          .kernel1(EdgeWeights::walkthrough);

  /** Part sweep. */
  public static final BoundFormula SWEEP_WEIGHT =
      Definition.of(
              "edge/sweep-weight",
              "Weight of a part sweep on an edge or in a corner",
              Nature.CONVENTION)
          .input(
              "share_of_circle",
              "s",
              "1",
              Domain.aboveUpTo(0, 1),
              "part of the full turn that was swept: 1/2 on a straight edge, 1/4 in a right angle")
          .gives("weight", "w", "1", over(num(1), sym("s")))
          .cites(
              Citation.fromMemory("half sweeps on an edge count twice, quarter sweeps four times"))
          .note("the point must be moved onto the edge by a fixed rule, or the result is biased")
          .kernel1(EdgeWeights::sweep);

  /** Extended grid. */
  public static final BoundFormula EXTENDED_GRID_MEAN =
      Definition.of(
              "edge/extended-grid-mean",
              "Mean over the points inside of counts inside and outside",
              Nature.STATISTICAL)
          .list("value", "y", "1", Domain.atLeast(0), "value of each point, inside and outside")
          .list("inside", "i", "1", new Domain(0, true, 1, true, true), "1 inside, 0 outside")
          .gives("mean", "m", "1", over(sumOver(sym("y"), "y"), sumOver(sym("i"), "i")))
          .definedBy(EdgeWorks.AG_S40, "text")
          .note("from a point outside only trees of the tract are counted")
          .note("points outside must reach as far as the largest limiting distance")
          .kernelOfArrays(x -> EdgeWeights.extendedGridMean(x[0], x[1]));

  /** Error of the extended grid. */
  public static final BoundFormula EXTENDED_GRID_STANDARD_ERROR =
      Definition.of(
              "edge/extended-grid-standard-error",
              "Standard error of the mean over the points inside of counts inside and outside",
              Nature.STATISTICAL)
          .list("value", "y", "1", Domain.atLeast(0), "value of each point, inside and outside")
          .list("inside", "i", "1", new Domain(0, true, 1, true, true), "1 inside, 0 outside")
          .gives(
              "standard_error",
              "s_m",
              "1",
              where(
                  "n",
                  new Equation.ReadingCount("y"),
                  where(
                      "m",
                      over(sumOver(sym("y"), "y"), sumOver(sym("i"), "i")),
                      over(
                          sqrt(
                              times(
                                  sym("n"),
                                  over(
                                      sumOver(
                                          squared(minus(sym("y"), times(sym("m"), sym("i")))),
                                          "y",
                                          "i"),
                                      minus(sym("n"), num(1))))),
                          sumOver(sym("i"), "i")))))
          .cites(
              Citation.derived(
                  "a ratio of means over all points, whose denominator is 1 inside and 0 outside"))
          .note("points inside and outside drawn as one sample of the tract with its margin")
          .kernelOfArrays(x -> EdgeWeights.extendedGridError(x[0], x[1]));

  /** Expected basal area. */
  public static final BoundFormula EXPECTED_BASAL_AREA =
      Definition.of(
              "edge/expected-basal-area",
              "Basal area per hectare on the average of all points of a tract",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .list("counted_area", "a", "m2", Domain.atLeast(0), COUNTED)
          .input("tract_area", "A", "m2", Domain.atLeast(1), "area of the tract")
          .gives(
              "basal_area", "G", "m2/ha", times(sym("k"), over(sumOver(sym("a"), "a"), sym("A"))))
          .cites(Citation.derived("a tree is counted at the share a/A of all points"))
          .kernelOfArrays(x -> EdgeWeights.expectedBasalArea(x[0][0], x[1], x[2][0]));

  /** Expected stems. */
  public static final BoundFormula EXPECTED_STEMS =
      Definition.of(
              "edge/expected-stems",
              "Stems per hectare on the average of all points of a tract",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .list("diameter", "d", "cm", Domain.above(0), "diameters of the trees")
          .list("counted_area", "a", "m2", Domain.atLeast(0), COUNTED)
          .input("tract_area", "A", "m2", Domain.atLeast(1), "area of the tract")
          .gives(
              "stems",
              "N",
              "1/ha",
              sumOver(
                  times(
                      over(sym("k"), over(times(pi(), squared(sym("d"))), num(40000))),
                      over(sym("a"), sym("A"))),
                  "d",
                  "a"))
          .cites(Citation.derived("a tree is counted at the share a/A of all points"))
          .kernelOfArrays(x -> EdgeWeights.expectedStems(x[0][0], x[1], x[2], x[3][0]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          WALKTHROUGH_WEIGHT,
          SWEEP_WEIGHT,
          EXTENDED_GRID_MEAN,
          EXTENDED_GRID_STANDARD_ERROR,
          EXPECTED_BASAL_AREA,
          EXPECTED_STEMS);

  private EdgeFormulas() {}
}
