package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.EdgeWorks;
import org.mensuration.kernel.HeightCurve;
import org.mensuration.source.Citation;

/** Height over diameter. Immutable and thread-safe. */
public final class HeightCurveFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain FALLING = new Domain(Double.NEGATIVE_INFINITY, false, 0, true, false);

  /** Näslund. */
  public static final BoundFormula NASLUND =
      curve("height-curve/naslund", "Näslund height curve", Domain.atLeast(0))
          .input("b0", "b0", "1", POSITIVE, "first coefficient, for d in cm and H in m")
          .input("b1", "b1", "1", POSITIVE, "second coefficient")
          .gives(
              "height",
              "H",
              "m",
              plus(sym("bh"), squared(over(sym("d"), plus(sym("b0"), times(sym("b1"), sym("d")))))))
          .cites(Citation.fromMemory("H = bh + (d/(b0 + b1 d))², ascribed to Näslund"))
          .note("through breast height at d = 0, toward bh + 1/b1² for thick trees")
          .kernel4(HeightCurve::naslund);

  /** Petterson. */
  public static final BoundFormula PETTERSON =
      curve("height-curve/petterson", "Petterson height curve", POSITIVE)
          .input("b0", "b0", "1", POSITIVE, "first coefficient, for d in cm and H in m")
          .input("b1", "b1", "1", POSITIVE, "second coefficient")
          .gives(
              "height",
              "H",
              "m",
              plus(sym("bh"), pow(plus(sym("b0"), over(sym("b1"), sym("d"))), num(-3))))
          .cites(Citation.fromMemory("H = bh + (b0 + b1/d)⁻³, ascribed to Petterson"))
          .note("through breast height for d toward 0, toward bh + b0⁻³ for thick trees")
          .kernel4(HeightCurve::petterson);

  /** Curtis. */
  public static final BoundFormula CURTIS =
      curve("height-curve/curtis", "Curtis height curve", POSITIVE)
          .input("b0", "b0", "1", Domain.any(), "logarithm of the height above bh of thick trees")
          .input("b1", "b1", "1", FALLING, "second coefficient in cm, not above zero")
          .gives("height", "H", "m", plus(sym("bh"), exponential(sym("d"))))
          .definedBy(EdgeWorks.AG_S75, "table of equations, form 1.3 + a exp(b/d) with a = exp(b0)")
          .note("printed with a breast height of 1.3 m; the name Curtis is from memory")
          .note("through breast height for d toward 0, toward bh + exp(b0) for thick trees")
          .kernel4(HeightCurve::curtis);

  /** Power. */
  public static final BoundFormula POWER =
      curve("height-curve/power", "Height as a power of the diameter", Domain.atLeast(0))
          .input("b0", "b0", "1", POSITIVE, "factor, for d in cm and H in m")
          .input("b1", "b1", "1", POSITIVE, "exponent")
          .gives("height", "H", "m", plus(sym("bh"), times(sym("b0"), pow(sym("d"), sym("b1")))))
          .definedBy(EdgeWorks.AG_S75, "table of equations, form 1.3 + a d^b")
          .note("printed with a breast height of 1.3 m")
          .note("through breast height at d = 0; has no limit for thick trees")
          .kernel4(HeightCurve::power);

  /** Shifted reciprocal. */
  public static final BoundFormula SHIFTED_RECIPROCAL =
      curve(
              "height-curve/shifted-reciprocal",
              "Height from the reciprocal of the diameter plus one",
              Domain.atLeast(0))
          .input("b0", "b0", "1", Domain.any(), "logarithm of the height above bh of thick trees")
          .input("b1", "b1", "1", FALLING, "second coefficient in cm, not above zero")
          .gives("height", "H", "m", plus(sym("bh"), exponential(plus(sym("d"), num(1)))))
          .cites(
              Citation.derived(
                  "from a printed value of 1.3 + exp(a + b) at d = 0 and a limit of 1.3 + exp(a)"))
          .explainedBy(EdgeWorks.AG_S75, "table of equations and their values at d = 0")
          .note("does not pass through breast height: at d = 0 it gives bh + exp(b0 + b1)")
          .kernel4(HeightCurve::shiftedReciprocal);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(NASLUND, PETTERSON, CURTIS, POWER, SHIFTED_RECIPROCAL);

  private HeightCurveFormulas() {}

  private static Definition curve(String id, String title, Domain diameter) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input("breast_height_diameter", "d", "cm", diameter, "diameter at breast height")
        .input("breast_height", "bh", "m", Domain.atLeast(0), "height at which d was measured")
        .note("coefficients are fitted to measured heights of one species in one stand");
  }

  private static Equation exponential(Equation diameter) {
    return fn(Equation.FunctionName.EXP, plus(sym("b0"), over(sym("b1"), diameter)));
  }
}
