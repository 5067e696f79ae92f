package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.CountingWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.source.Citation;

/** How far a gauge reaches for a tree; listed with the gauges. Immutable and thread-safe. */
public final class GaugeDistanceFormulas {
  /**
   * A basal-area factor. It stands here, as the gauges list these formulas: the other way round
   * either class could be asked for the other before that is there.
   */
  static final Domain FACTOR = Domain.open(0, 10000);

  private static final Domain DIAMETER = Domain.above(0);

  /** Limit to the centre. */
  public static final BoundFormula LIMITING_DISTANCE_CENTRE =
      gauge("gauge/limiting-distance-centre", "Limiting distance to the stem centre")
          .gives("distance", "R", "m", centre())
          .cites(Citation.derived("k = 2500 (d/R)² solved for R, a length in m for d in cm"))
          .explainedBy(
              CountingWorks.AG_S28, "principle section, revision of 9 January 2013, k = 2500/c²")
          .explainedBy(Works.AG_S02, "section Plot Radius Factor, 27.5 ft for 10 in at 10 ft²/ac")
          .note("horizontal distance at breast height to the centre of the stem")
          .kernel2(LimitingDistance::toCentre);

  /** Limit to the near face. */
  public static final BoundFormula LIMITING_DISTANCE_FACE =
      gauge("gauge/limiting-distance-face", "Limiting distance to the near face")
          .gives(
              "distance",
              "R_f",
              "m",
              where("R", centre(), minus(sym("R"), over(sym("d"), num(200)))))
          .definedBy(CountingWorks.AG_S08, "distance less the radius of the stem")
          .note("horizontal distance at breast height to the near face of the stem")
          .kernel2(LimitingDistance::toFace);

  /** Limit along the slope. */
  public static final BoundFormula LIMITING_SLOPE_DISTANCE =
      gauge("gauge/limiting-slope-distance", "Limiting distance along the slope")
          .input("slope", "a", "deg", Domain.open(-90, 90), "slope of the line from point to stem")
          .gives("distance", "R_s", "m", where("R", centre(), over(sym("R"), cosDegrees(sym("a")))))
          .cites(Citation.derived("the horizontal distance is the slope distance times cos(a)"))
          .explainedBy(CountingWorks.AG_S29, "text, R across and R/cos along the slope")
          .note("to the centre of the stem; a level sight has slope 0, a downward one is negative")
          .kernel3(LimitingDistance::alongSlope);

  /** Tree factor. */
  public static final BoundFormula TREE_FACTOR =
      gauge("gauge/tree-factor", "Trees per unit area of one counted tree")
          .gives(
              "tree_factor",
              "TF",
              "1/ha",
              where(
                  "g", over(times(pi(), squared(sym("d"))), num(40000)), over(sym("k"), sym("g"))))
          .definedBy(Works.AG_S01, "table, plots (trees) per acre, there for 10 ft²/ac")
          .kernel2(LimitingDistance::treeFactor);

  /** Inclusion area. */
  public static final BoundFormula INCLUSION_AREA =
      gauge("gauge/inclusion-area", "Area around a tree from which it is counted")
          .gives("area", "a", "m2", where("R", centre(), times(pi(), squared(sym("R")))))
          .cites(Citation.derived("the circle whose radius is the limiting distance"))
          .kernel2(LimitingDistance::inclusionArea);

  private GaugeDistanceFormulas() {}

  private static Definition gauge(String id, String title) {
    return Definition.of(id, title, Nature.GEOMETRIC)
        .input("factor", "k", "m2/ha", FACTOR, "basal-area factor")
        .input("diameter", "d", "cm", DIAMETER, "diameter at breast height");
  }

  private static Equation centre() {
    return over(sym("d"), times(num(2), sqrt(sym("k"))));
  }
}
