package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.kernel.Density;

/** Density of a stand relative to a scale. Immutable and thread-safe. */
public final class RelativeDensityFormulas {
  /** Curtis relative density in feet and inches. */
  public static final BoundFormula RELATIVE_DENSITY_IMPERIAL =
      Definition.of(
              "stand/relative-density-imperial",
              "Curtis relative density in feet and inches",
              Nature.EMPIRICAL)
          .input("basal_area", "G", "ft2/ac", Domain.atLeast(0), "basal area of the stand")
          .input("quadratic_mean_diameter", "D_q", "in", Domain.above(0), "quadratic mean diameter")
          .gives("relative_density", "RD", "1", over(sym("G"), sqrt(sym("D_q"))))
          .definedBy(CountingWorks.AG_S23, "abstract and p. 92")
          .note("the unit system is part of the value: 6.942 times the metric figure")
          .kernel2(Density::relativeDensityImperial);

  /** Stand density index in per cent of its maximum. */
  public static final BoundFormula RELATIVE_DENSITY_INDEX =
      Definition.of(
              "stand/relative-density-index",
              "Stand density index in per cent of its maximum",
              Nature.EMPIRICAL)
          .input("index", "S", "1/ha", Domain.atLeast(0), "stand density index")
          .input(
              "maximum",
              "S_x",
              "1/ha",
              Domain.above(0),
              "largest index of the species, at the same reference diameter")
          .gives("relative_density", "P", "%", over(times(num(100), sym("S")), sym("S_x")))
          .definedBy(EdgeWorks.AG_S61, "abstract and introduction")
          .note("the maximum depends on species and author, so name it")
          .kernel2(Density::relativeIndex);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(RELATIVE_DENSITY_IMPERIAL, RELATIVE_DENSITY_INDEX);

  private RelativeDensityFormulas() {}
}
