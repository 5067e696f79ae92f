package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.kernel.CountedTrees;
import org.mensuration.source.Citation;

/** Volume of a counted tree from its basal area. Immutable and thread-safe. */
public final class TreeVolumeFormulas {
  private static final Domain POSITIVE = Domain.above(0);

  /** Form factor. */
  public static final BoundFormula FROM_FORM_FACTOR =
      Definition.of(
              "tree/volume-from-form-factor",
              "Volume of a tree from basal area, height and form factor",
              Nature.GEOMETRIC)
          .input("diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .input("height", "h", "m", POSITIVE, "height of the tree")
          .input("form_factor", "f", "1", POSITIVE, "volume over that of the cylinder g h")
          .gives("volume", "v", "m3", where("g", basalArea(), times(sym("g"), sym("h"), sym("f"))))
          .cites(Citation.commonPractice("definition of the form factor at breast height"))
          .note("the equation of stem/volume-from-form-factor, for a counted tree: no zero")
          .kernel3(CountedTrees::volumeFromFormFactor);

  /** Ratio. */
  public static final BoundFormula FROM_RATIO =
      Definition.of(
              "tree/volume-from-ratio",
              "Volume of a tree from basal area and volume-basal-area ratio",
              Nature.GEOMETRIC)
          .input("diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .input("ratio", "VBAR", "m3/m2", Domain.atLeast(0), "volume over basal area")
          .gives("volume", "v", "m3", where("g", basalArea(), times(sym("g"), sym("VBAR"))))
          .cites(Citation.derived("VBAR = v/g solved for v"))
          .kernel2(CountedTrees::volumeFromRatio);

  /** The topic's second part. */
  public static final List<BoundFormula> ALL = List.of(FROM_FORM_FACTOR, FROM_RATIO);

  private TreeVolumeFormulas() {}

  private static Equation basalArea() {
    return over(times(pi(), squared(sym("d"))), num(40000));
  }
}
