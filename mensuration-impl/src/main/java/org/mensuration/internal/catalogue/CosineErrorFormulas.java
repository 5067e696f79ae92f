package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.kernel.CosineErrors;
import org.mensuration.source.Citation;

/** What a cosine costs that is forgotten or taken twice. Immutable and thread-safe. */
public final class CosineErrorFormulas {
  private static final Domain ANGLE = Domain.open(-90, 90);

  /** No cosine on a scale that does not compensate. */
  public static final BoundFormula OMITTED =
      Definition.of(
              "optics/cosine-omitted",
              "Relative error of a diameter sighted upward without the cosine",
              Nature.GEOMETRIC)
          .input("elevation", "e", "deg", ANGLE, "elevation of the sight")
          .gives("error", "E", "1", minus(cosDegrees(sym("e")), num(1)))
          .cites(
              Citation.derived(
                  "the ratio times the horizontal distance, where it is times the straight one"))
          .note("13.4 % low at 30 degrees; a level calibration is assumed")
          .kernel1(CosineErrors::omitted);

  /** A cosine too many on a scale that compensates. */
  public static final BoundFormula TWICE =
      Definition.of(
              "optics/cosine-twice",
              "Relative error of dividing by the cosine on a scale that compensates",
              Nature.GEOMETRIC)
          .input("elevation", "e", "deg", ANGLE, "elevation of the sight")
          .gives("error", "E", "1", minus(over(num(1), cosDegrees(sym("e"))), num(1)))
          .cites(Citation.derived("the division has been narrowed by the cosine already"))
          .note("15.5 % high at 30 degrees")
          .kernel1(CosineErrors::twice);

  /** A slope distance taken as horizontal. */
  public static final BoundFormula SLOPE_AS_HORIZONTAL =
      Definition.of(
              "height/slope-as-horizontal",
              "Excess of a height when a distance along the slope is taken as horizontal",
              Nature.GEOMETRIC)
          .input("slope", "a", "deg", ANGLE, "slope of the distance")
          .gives(
              "error", "E", "%", times(num(100), minus(over(num(1), cosDegrees(sym("a"))), num(1))))
          .definedBy(OpticsWorks.MEN201_IV, "slide 34")
          .kernel1(CosineErrors::slopeAsHorizontal);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(OMITTED, TWICE, SLOPE_AS_HORIZONTAL);

  private CosineErrorFormulas() {}
}
