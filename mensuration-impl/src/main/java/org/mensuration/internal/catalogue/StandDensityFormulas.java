package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.kernel.StandFigures;

/** Density and spacing indices; listed with the stand. Immutable and thread-safe. */
public final class StandDensityFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);

  /** Reineke. */
  public static final BoundFormula DENSITY_INDEX =
      Definition.of("stand/density-index", "Reineke stand density index", Nature.EMPIRICAL)
          .input("stems", "N", "1/ha", NOT_NEGATIVE, "stems of the stand")
          .input("quadratic_mean_diameter", "D_q", "cm", POSITIVE, "quadratic mean diameter")
          .gives("index", "SDI", "1/ha", times(sym("N"), power("D_q")))
          .definedBy(CountingWorks.AG_S59, "derivation of the log form, there at 10 in per acre")
          .note("stems per hectare at a quadratic mean of 25.4 cm; both are part of the value")
          .kernel2(StandFigures::densityIndex);

  /** Reineke by summation. */
  public static final BoundFormula DENSITY_INDEX_SUMMATION =
      Definition.of(
              "stand/density-index-summation",
              "Reineke density index by summation",
              Nature.EMPIRICAL)
          .list("expansion", "n", "1/ha", NOT_NEGATIVE, "stems that each tree stands for")
          .list("diameter", "d", "cm", POSITIVE, "diameters of the trees")
          .gives("index", "SDI", "1/ha", sumOver(times(sym("n"), power("d")), "n", "d"))
          .definedBy(CountingWorks.AG_S62, "abstract, summation over trees")
          .note("equals the form by quadratic mean only when all diameters are equal")
          .kernelOfArrays(x -> StandFigures.densityIndexBySummation(x[0], x[1]));

  /** Curtis. */
  public static final BoundFormula RELATIVE_DENSITY =
      Definition.of("stand/relative-density", "Curtis relative density", Nature.EMPIRICAL)
          .input("basal_area", "G", "m2/ha", NOT_NEGATIVE, "basal area of the stand")
          .input("quadratic_mean_diameter", "D_q", "cm", POSITIVE, "quadratic mean diameter")
          .gives("relative_density", "RD", "1", over(sym("G"), sqrt(sym("D_q"))))
          .definedBy(CountingWorks.AG_S23, "abstract and p. 92")
          .note("metric form; the form in ft²/ac and inches is about 6.94 times as large")
          .kernel2(StandFigures::relativeDensity);

  /** Hart-Becking, square. */
  public static final BoundFormula SPACING_INDEX_SQUARE =
      spacing("stand/spacing-index-square", "Hart-Becking spacing index, square spacing")
          .gives(
              "index", "S", "%", over(times(num(100), sqrt(over(num(10000), sym("N")))), sym("H")))
          .definedBy(CountingWorks.AG_S46, "p. 31, spacing index")
          .note("with the mean height in place of the dominant height it is another index")
          .kernel2(StandFigures::spacingIndexSquare);

  /** Hart-Becking, triangular. */
  public static final BoundFormula SPACING_INDEX_TRIANGULAR =
      spacing("stand/spacing-index-triangular", "Hart-Becking spacing index triangular spacing")
          .gives(
              "index",
              "S",
              "%",
              over(
                  times(num(100), sqrt(over(num(20000), times(sym("N"), sqrt(num(3)))))), sym("H")))
          .definedBy(CountingWorks.AG_S46, "p. 31, spacing index")
          .note("7.46 % above the square form for the same stems; name the pattern")
          .kernel2(StandFigures::spacingIndexTriangular);

  /** Relative spacing. */
  public static final BoundFormula RELATIVE_SPACING =
      spacing("stand/relative-spacing", "Relative spacing")
          .gives("spacing", "RS", "1", over(sqrt(over(num(10000), sym("N"))), sym("H")))
          .definedBy(CountingWorks.AG_S56, "abstract")
          .note("spacing over dominant height; some texts mean spacing over diameter by the name")
          .note("a hundredth of stand/spacing-index-square, which is in per cent")
          .kernel2(StandFigures::relativeSpacing);

  private StandDensityFormulas() {}

  private static Definition spacing(String id, String title) {
    return Definition.of(id, title, Nature.GEOMETRIC)
        .input("stems", "N", "1/ha", POSITIVE, "stems of the stand")
        .input("dominant_height", "H", "m", POSITIVE, "dominant height");
  }

  private static Equation power(String diameter) {
    return pow(over(sym(diameter), num("25.4")), num("1.605"));
  }
}
