package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.CountedTrees;
import org.mensuration.kernel.StandFigures;
import org.mensuration.source.Citation;

/** Figures of a stand. Immutable and thread-safe. */
public final class StandFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** Volume. */
  public static final BoundFormula VOLUME =
      Definition.of(
              "stand/volume",
              "Volume per hectare from basal area and volume-basal-area ratio",
              Nature.GEOMETRIC)
          .input("basal_area", "G", "m2/ha", NOT_NEGATIVE, "basal area of the stand")
          .input("ratio", "VBAR", "m3/m2", NOT_NEGATIVE, "mean volume over basal area")
          .gives("volume", "V", "m3/ha", times(sym("G"), sym("VBAR")))
          .definedBy(Works.AG_S35, "introduction, count times mean ratio")
          .kernel2(StandFigures::volume);

  /** Quadratic mean diameter. */
  public static final BoundFormula QUADRATIC_MEAN_DIAMETER =
      Definition.of("stand/quadratic-mean-diameter", "Quadratic mean diameter", Nature.GEOMETRIC)
          .input("basal_area", "G", "m2/ha", POSITIVE, "basal area of the stand")
          .input("stems", "N", "1/ha", POSITIVE, "stems of the stand")
          .gives(
              "diameter",
              "D_q",
              "cm",
              sqrt(over(times(num(40000), sym("G")), times(pi(), sym("N")))))
          .definedBy(Works.AG_S21, "whole note, there in inches and square feet")
          .explainedBy(Works.AG_S49, "text, metric constant")
          .note("without trees there is no mean diameter: zero is refused")
          .kernel2(StandFigures::quadraticMeanDiameter);

  /** Quadratic mean of counted trees. */
  public static final BoundFormula QUADRATIC_MEAN_FROM_SWEEP =
      Definition.of(
              "stand/quadratic-mean-from-sweep",
              "Quadratic mean diameter of counted trees",
              Nature.GEOMETRIC)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the counted trees")
          .gives(
              "diameter",
              "D_q",
              "cm",
              sqrt(
                  over(
                      new Equation.ReadingCount("d"),
                      sumOver(over(num(1), squared(sym("d"))), "d"))))
          .definedBy(CountingWorks.AG_S22, "p. 137")
          .note("all trees counted with one factor and full weight")
          .kernelOfArrays(x -> CountedTrees.quadraticMeanDiameter(x[0]));

  /** Arithmetic mean of counted trees. */
  public static final BoundFormula ARITHMETIC_MEAN_FROM_SWEEP =
      Definition.of(
              "stand/arithmetic-mean-from-sweep",
              "Arithmetic mean diameter of counted trees",
              Nature.GEOMETRIC)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the counted trees")
          .gives(
              "diameter",
              "d_m",
              "cm",
              over(
                  sumOver(over(num(1), sym("d")), "d"),
                  sumOver(over(num(1), squared(sym("d"))), "d")))
          .cites(
              Citation.derived(
                  "each counted tree stands for a number of stems that goes with 1/d²"))
          .note("all trees counted with one factor and full weight")
          .kernelOfArrays(x -> CountedTrees.arithmeticMeanDiameter(x[0]));

  /** Square spacing. */
  public static final BoundFormula SPACING_SQUARE =
      Definition.of("stand/spacing-square", "Stems per hectare at square spacing", Nature.GEOMETRIC)
          .input("spacing", "s", "m", POSITIVE, "distance between neighbours")
          .gives("stems", "N", "1/ha", over(num(10000), squared(sym("s"))))
          .cites(Citation.derived("one stem on a square of side s"))
          .kernel1(StandFigures::stemsAtSquareSpacing);

  /** Triangular spacing. */
  public static final BoundFormula SPACING_TRIANGULAR =
      Definition.of(
              "stand/spacing-triangular",
              "Stems per hectare at triangular spacing",
              Nature.GEOMETRIC)
          .input("spacing", "s", "m", POSITIVE, "distance between neighbours")
          .gives(
              "stems",
              "N",
              "1/ha",
              over(times(num(2), num(10000)), times(sqrt(num(3)), squared(sym("s")))))
          .cites(Citation.derived("one stem on two equilateral triangles of side s"))
          .kernel1(StandFigures::stemsAtTriangularSpacing);

  /** Lorey. */
  public static final BoundFormula LOREY_HEIGHT =
      Definition.of("stand/lorey-height", "Mean height weighted by basal area", Nature.STATISTICAL)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the trees")
          .list("height", "h", "m", NOT_NEGATIVE, "heights of the same trees")
          .gives(
              "height",
              "h_L",
              "m",
              over(sumOver(times(basalArea(), sym("h")), "d", "h"), sumOver(basalArea(), "d")))
          .definedBy(CountingWorks.AG_S71, "slide 36")
          .note("in one sweep with one factor it is the plain mean height of the counted trees")
          .kernelOfArrays(x -> StandFigures.loreyHeight(x[0], x[1]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          VOLUME,
          QUADRATIC_MEAN_DIAMETER,
          QUADRATIC_MEAN_FROM_SWEEP,
          ARITHMETIC_MEAN_FROM_SWEEP,
          SPACING_SQUARE,
          SPACING_TRIANGULAR,
          LOREY_HEIGHT,
          StandDensityFormulas.DENSITY_INDEX,
          StandDensityFormulas.DENSITY_INDEX_SUMMATION,
          StandDensityFormulas.RELATIVE_DENSITY,
          StandDensityFormulas.SPACING_INDEX_SQUARE,
          StandDensityFormulas.SPACING_INDEX_TRIANGULAR,
          StandDensityFormulas.RELATIVE_SPACING);

  private StandFormulas() {}

  private static Equation basalArea() {
    return over(times(pi(), squared(sym("d"))), num(40000));
  }
}
