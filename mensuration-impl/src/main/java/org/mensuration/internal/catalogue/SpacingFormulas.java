package org.mensuration.internal.catalogue;

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
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.kernel.Spacing;
import org.mensuration.source.Citation;

/** Stands from the distance between neighbours, and areas of plots. Immutable and thread-safe. */
public final class SpacingFormulas {
  private static final Domain POSITIVE = Domain.above(0);

  /** One stem on each circle. */
  public static final BoundFormula SPACING_CIRCULAR =
      Definition.of(
              "stand/spacing-circular",
              "Stems per hectare with one stem on each circle of the spacing",
              Nature.CONVENTION)
          .input("spacing", "s", "m", POSITIVE, "distance between neighbours")
          .gives(
              "stems", "N", "1/ha", over(num(10000), times(over(pi(), num(4)), squared(sym("s")))))
          .definedBy(EdgeWorks.AG_S52, "table, calculated on circular spacings")
          .note("circles leave gaps: more stems than a square pattern of the same spacing")
          .kernel1(Spacing::stemsOnCircles);

  /** Spacing factor. */
  public static final BoundFormula SPACING_FACTOR =
      Definition.of(
              "stand/basal-area-from-spacing-factor",
              "Basal area per hectare from spacing over diameter, square pattern",
              Nature.GEOMETRIC)
          .input(
              "spacing_over_diameter",
              "F",
              "1",
              Domain.atLeast(1),
              "mean spacing over mean diameter, both in one unit")
          .gives("basal_area", "G", "m2/ha", over(times(num(2500), pi()), squared(sym("F"))))
          .definedBy(EdgeWorks.AG_S73, "slide 19")
          .note("the source also calls F relative spacing; that name has another meaning here")
          .kernel1(Spacing::basalAreaFromFactor);

  /** Area of a plot. */
  public static final BoundFormula PLOT_AREA =
      Definition.of("plot/area", "Area of a circular plot", Nature.GEOMETRIC)
          .input("radius", "R", "m", POSITIVE, "horizontal radius of the plot")
          .gives("area", "A", "m2", times(pi(), squared(sym("R"))))
          .cites(Citation.commonPractice("area of a circle"))
          .explainedBy(CountingWorks.AG_S58, "plot radius equation, solved for the area")
          .kernel1(Spacing::circle);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(SPACING_CIRCULAR, SPACING_FACTOR, PLOT_AREA);

  private SpacingFormulas() {}
}
