package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.GaugeFactor;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.kernel.PlotAndLine;
import org.mensuration.source.Citation;

/** Rules for the field that take a figure already found. Immutable and thread-safe. */
public final class FieldRuleFormulas {
  private static final Domain SIZE = Domain.above(0);

  /** Limiting distance by a radius factor. */
  public static final BoundFormula DISTANCE_FROM_RADIUS_FACTOR =
      Definition.of(
              "gauge/distance-from-radius-factor",
              "Limiting distance from a plot radius factor",
              Nature.GEOMETRIC)
          .input("radius_factor", "F", "ft/in", SIZE, "plot radius factor")
          .input("diameter", "d", "in", SIZE, "diameter at breast height")
          .gives("distance", "R", "ft", times(sym("F"), sym("d")))
          .definedBy(Works.AG_S02, "section Plot Radius Factor, 27.5 ft for 10 in at 10 ft²/ac")
          .note(
              "to the centre or to the face of the stem, as the factor is; they must not be mixed")
          .kernel2(LimitingDistance::byRadiusFactor);

  /** Blade for a sight on a slope. */
  public static final BoundFormula BLADE_WIDTH_ALONG_SIGHT =
      Definition.of(
              "gauge/blade-width-along-sight",
              "Width of a blade for a sight along a slope",
              Nature.GEOMETRIC)
          .input("width", "w", "cm", SIZE, "width of the blade for a level sight")
          .input("slope", "a", "deg", Domain.open(-90, 90), "slope of the sight")
          .gives("width", "w_a", "cm", times(sym("w"), cosDegrees(sym("a"))))
          .cites(Citation.fromMemory("a blade is narrowed by the cosine of the slope of the sight"))
          .note("narrows the angle so that distances along the slope are judged as level ones")
          .kernel2(GaugeFactor::bladeWidthAlongSight);

  /** Expansion of plots that count as one. */
  public static final BoundFormula CLUSTER_EXPANSION_FACTOR =
      Definition.of(
              "plot/cluster-expansion-factor",
              "Trees per hectare of one tree on a cluster of circular plots",
              Nature.GEOMETRIC)
          .input("radius", "r", "m", SIZE, "radius of each plot")
          .input("plots", "n", "1", Domain.wholeFrom(1), "plots of the cluster")
          .gives(
              "expansion",
              "e",
              "1/ha",
              over(num(10000), times(sym("n"), times(pi(), squared(sym("r"))))))
          .cites(Citation.derived("one tree over the area of all plots of the cluster"))
          .note("the cluster is one sampling unit: its plots are no repetitions")
          .kernel2(PlotAndLine::clusterExpansion);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(DISTANCE_FROM_RADIUS_FACTOR, BLADE_WIDTH_ALONG_SIGHT, CLUSTER_EXPANSION_FACTOR);

  private FieldRuleFormulas() {}
}
