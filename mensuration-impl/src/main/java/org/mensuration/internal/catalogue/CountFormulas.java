package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.CountedTrees;
import org.mensuration.source.Citation;

/** The tree and the sample point. Immutable and thread-safe. */
public final class CountFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain DIAMETER = Domain.above(0);

  /** Basal area of a tree. */
  public static final BoundFormula TREE_BASAL_AREA =
      Definition.of("tree/basal-area", "Basal area of a tree", Nature.GEOMETRIC)
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter at breast height")
          .gives("area", "g", "m2", basalArea())
          .definedBy(Works.AG_S49, "text, constant 0.000 078 539 8 of d²")
          .note("the section is taken as a circle")
          .kernel1(CountedTrees::basalArea);

  /** Volume over basal area. */
  public static final BoundFormula TREE_RATIO =
      Definition.of(
              "tree/volume-basal-area-ratio", "Volume-basal-area ratio of a tree", Nature.GEOMETRIC)
          .input("volume", "v", "m3", NOT_NEGATIVE, "volume of the stem")
          .input("diameter", "d", "cm", DIAMETER, "diameter at breast height")
          .gives("ratio", "VBAR", "m3/m2", where("g", basalArea(), over(sym("v"), sym("g"))))
          .definedBy(Works.AG_S35, "introduction, volume over basal area of a measured tree")
          .kernel2(CountedTrees::volumeBasalAreaRatio);

  /** Basal area at a point. */
  public static final BoundFormula POINT_BASAL_AREA =
      Definition.of("point/basal-area", "Basal area per hectare at a point", Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .input("count", "z", "1", NOT_NEGATIVE, "trees counted at the point")
          .gives("basal_area", "G", "m2/ha", times(sym("k"), sym("z")))
          .definedBy(CountingWorks.AG_S33, "first example of the chapter")
          .tabulatedBy(CountingWorks.AG_S72, "slide 18, worked example 3")
          .note("half counts and edge weights are part of the count; an empty point counts as zero")
          .kernel2(CountedTrees::basalAreaPerHectare);

  /** Stems at a point. */
  public static final BoundFormula POINT_STEMS =
      Definition.of("point/stems", "Stems per hectare at a point", Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .list("diameter", "d", "cm", DIAMETER, "diameters of the counted trees")
          .gives("stems", "N", "1/ha", sumOver(over(sym("k"), basalArea()), "d"))
          .cites(Citation.derived("sum of the tree factors k/g of the counted trees"))
          .explainedBy(Works.AG_S01, "table, plots (trees) per acre of one tree")
          .kernelOfArrays(x -> CountedTrees.stemsPerHectare(x[0][0], x[1]));

  /** Volume at a point. */
  public static final BoundFormula POINT_VOLUME =
      Definition.of("point/volume", "Volume per hectare at a point", Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .list(
              "volume_basal_area_ratio",
              "VBAR",
              "m3/m2",
              NOT_NEGATIVE,
              "volume over basal area of the counted trees")
          .gives("volume", "V", "m3/ha", times(sym("k"), sumOver(sym("VBAR"), "VBAR")))
          .definedBy(Works.AG_S35, "introduction, volume of a count with measured ratios")
          .kernelOfArrays(x -> CountedTrees.volumePerHectare(x[0][0], x[1]));

  /** Volume from critical heights. */
  public static final BoundFormula CRITICAL_HEIGHT_VOLUME =
      Definition.of(
              "point/critical-height-volume",
              "Volume per hectare from critical heights",
              Nature.GEOMETRIC)
          .input("factor", "k", "m2/ha", GaugeFormulas.FACTOR, "basal-area factor")
          .list(
              "critical_height",
              "h_c",
              "m",
              NOT_NEGATIVE,
              "heights at which the stems just fill the gauge")
          .gives("volume", "V", "m3/ha", times(sym("k"), sumOver(sym("h_c"), "h_c")))
          .definedBy(CountingWorks.AG_S43, "abstract")
          .explainedBy(CountingWorks.AG_S42, "abstract, near trees are hard to read")
          .kernelOfArrays(x -> CountedTrees.volumePerHectare(x[0][0], x[1]));

  /** The topics. */
  public static final List<BoundFormula> ALL =
      List.of(
          TREE_BASAL_AREA,
          TREE_RATIO,
          POINT_BASAL_AREA,
          POINT_STEMS,
          POINT_VOLUME,
          CRITICAL_HEIGHT_VOLUME);

  private CountFormulas() {}

  private static Equation basalArea() {
    return over(times(pi(), squared(sym("d"))), num(40000));
  }
}
