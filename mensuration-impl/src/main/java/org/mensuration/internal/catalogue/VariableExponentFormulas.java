package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.sqrt;
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
import org.mensuration.internal.source.StemWorks;
import org.mensuration.internal.stem.TaperIntegral;
import org.mensuration.kernel.VariableExponentTaper;
import org.mensuration.source.Citation;

/** A taper curve whose exponent changes along the stem. Immutable and thread-safe. */
public final class VariableExponentFormulas {
  /** Wider than any published one; beyond, the curve leaves the numbers a stem can have. */
  private static final Domain COEFFICIENT = Domain.closed(-10, 10);

  /** Diameter. */
  public static final BoundFormula DIAMETER =
      coefficients(
              tree("stem/taper-variable-exponent", "Diameter from a variable-exponent taper curve")
                  .input("at_height", "h", "m", TaperFormulas.NOT_NEGATIVE, "height wanted")
                  .relation("at_height", AT_MOST, 1, "height", "h ≤ H"))
          .gives("diameter", "d", "cm", printed())
          .definedBy(StemWorks.QACUTA, "Tables 2 and 4, model after Kozak 1988")
          .explainedBy(StemWorks.PNWTAPER, "Table 2, model forms")
          .note(TaperFormulas.ONE_SPECIES)
          .note("an exponent that is not above zero at the tip leaves no tip, and is refused there")
          .kernelOfArrays(VariableExponentTaper::diameter);

  /** Volume. */
  public static final BoundFormula VOLUME =
      coefficients(
              tree(
                      "stem/taper-variable-exponent-volume",
                      "Volume of a variable-exponent taper curve")
                  .input("from_height", "h_1", "m", TaperFormulas.NOT_NEGATIVE, "lower height")
                  .input("to_height", "h_2", "m", TaperFormulas.NOT_NEGATIVE, "upper height")
                  .relation("from_height", AT_MOST, 1, "to_height", "h_1 ≤ h_2")
                  .relation("to_height", AT_MOST, 1, "height", "h_2 ≤ H"))
          .gives(
              "volume",
              "V",
              "m3",
              new Equation.Solved(
                  "π/40000 ∫ d² dh from h_1 to h_2, d by stem/taper-variable-exponent"))
          .cites(Citation.derived("integral of the area of stem/taper-variable-exponent"))
          .note("no closed form; integrated by Gauss and Legendre's rule to a relative 1e-12")
          .kernelOfArrays(TaperIntegral::variableExponent);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(DIAMETER, VOLUME);

  private VariableExponentFormulas() {}

  private static Definition tree(String id, String title) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input(
            "breast_height_diameter",
            "D",
            "cm",
            Domain.closed(0.1, 1000),
            "diameter at breast height")
        .input("height", "H", "m", TaperFormulas.POSITIVE, "height of the tip");
  }

  private static Definition coefficients(Definition definition) {
    return definition
        .input(
            "inflection", "p", "1", Domain.closed(0.05, 0.95), "relative height of the inflection")
        .input("a0", "a_0", "1", Domain.closed(0.001, 1000), "factor of the diameter at p")
        .input("a1", "a_1", "1", Domain.closed(0, 3), "exponent of D")
        .input("a2", "a_2", "1", Domain.closed(0.9, 1.1), "base raised to D")
        .input("b1", "b_1", "1", COEFFICIENT, "coefficient of z²")
        .input("b2", "b_2", "1", COEFFICIENT, "coefficient of ln(z + 0.001)")
        .input("b3", "b_3", "1", COEFFICIENT, "coefficient of √z")
        .input("b4", "b_4", "1", COEFFICIENT, "coefficient of the exponential of z")
        .input("b5", "b_5", "1", COEFFICIENT, "coefficient of D/H");
  }

  private static Equation printed() {
    Equation base = over(minus(num(1), sqrt(sym("z"))), minus(num(1), sqrt(sym("p"))));
    Equation exponent =
        plus(
            times(sym("b_1"), squared(sym("z"))),
            times(sym("b_2"), fn(Equation.FunctionName.LN, plus(sym("z"), num("0.001")))),
            times(sym("b_3"), sqrt(sym("z"))),
            times(sym("b_4"), fn(Equation.FunctionName.EXP, sym("z"))),
            times(sym("b_5"), over(sym("D"), sym("H"))));
    return where(
        "z",
        over(sym("h"), sym("H")),
        where(
            "X",
            base,
            times(
                sym("a_0"),
                pow(sym("D"), sym("a_1")),
                pow(sym("a_2"), sym("D")),
                pow(sym("X"), exponent))));
  }
}
