package org.mensuration.internal.catalogue;

import java.util.Arrays;
import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.StandWorks;
import org.mensuration.internal.statistics.Thickest;
import org.mensuration.kernel.CountedTrees;

/** Dominant height and the diameter of the thickest trees. Immutable and thread-safe. */
public final class DominantFormulas {
  private static final Domain POSITIVE = Domain.above(0);

  /** Dominant height. */
  public static final BoundFormula DOMINANT_HEIGHT =
      Definition.of("stand/dominant-height", "Mean height of the thickest trees", Nature.CONVENTION)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the trees")
          .list("height", "h", "m", POSITIVE, "heights of the same trees")
          .input("number", "n", "1", POSITIVE, "how many of the thickest, a fraction allowed")
          .gives(
              "dominant_height",
              "H",
              "m",
              new Equation.Solved("mean of h over the n trees of the largest d"))
          .definedBy(StandWorks.AG_S47, "item 73, top height of the thickest trees")
          .note("name the definition: hundred per hectare, forty per acre, a percentage, each plot")
          .note("trees alike in diameter at the cut share it evenly; a fraction of a tree is kept")
          .note("some definitions read a height curve at the quadratic mean of these trees instead")
          .kernelOfArrays(x -> Thickest.mean(x[0], x[1], ones(x[0].length), x[2][0]));

  /** Dominant height of counted trees. */
  public static final BoundFormula DOMINANT_HEIGHT_COUNTED =
      Definition.of(
              "stand/dominant-height-counted",
              "Mean height of the thickest trees of which each stands for several",
              Nature.CONVENTION)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the trees")
          .list("height", "h", "m", POSITIVE, "heights of the same trees")
          .list("expansion", "N", "1/ha", POSITIVE, "stems that each tree stands for")
          .input("number", "n", "1/ha", POSITIVE, "how many of the thickest stems")
          .gives(
              "dominant_height",
              "H",
              "m",
              new Equation.Solved("mean of h over the n stems of the largest d, N to a tree"))
          .definedBy(StandWorks.AG_S47, "item 73, top height of the thickest trees")
          .note("trees alike in diameter at the cut share it evenly; a fraction of a tree is kept")
          .kernelOfArrays(x -> Thickest.mean(x[0], x[1], x[2], x[3][0]));

  /** Top diameter. */
  public static final BoundFormula TOP_DIAMETER =
      Definition.of(
              "stand/top-diameter",
              "Quadratic mean diameter of the thickest trees",
              Nature.CONVENTION)
          .list("diameter", "d", "cm", POSITIVE, "diameters of the trees")
          .list("expansion", "N", "1", POSITIVE, "stems that each tree or class stands for")
          .input("number", "n", "1", POSITIVE, "how many of the thickest stems")
          .gives(
              "top_diameter",
              "D",
              "cm",
              new Equation.Solved("root of the mean of d² over the n stems of the largest d"))
          .definedBy(CountingWorks.AG_S71, "slide 32, there the thickest 250 per hectare")
          .note("a class is split where the number ends inside it")
          .kernelOfArrays(
              x -> Math.sqrt(Thickest.mean(x[0], CountedTrees.squares(x[0]), x[1], x[2][0])));

  /** The topic's third part. */
  public static final List<BoundFormula> ALL =
      List.of(DOMINANT_HEIGHT, DOMINANT_HEIGHT_COUNTED, TOP_DIAMETER);

  private DominantFormulas() {}

  private static double[] ones(int length) {
    double[] ones = new double[length];
    Arrays.fill(ones, 1);
    return ones;
  }
}
