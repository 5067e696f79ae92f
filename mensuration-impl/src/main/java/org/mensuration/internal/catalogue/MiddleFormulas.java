package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
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
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.internal.source.GirthAndBarkWorks;
import org.mensuration.kernel.GirthVolume;
import org.mensuration.kernel.ScaledVolume;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Metric rules of the middle girth or the middle diameter. Immutable and thread-safe. */
public final class MiddleFormulas {
  /** Mid diameter after the rounding of a convention. */
  public static final BoundFormula CONVENTIONAL_MID =
      Definition.of("log/conventional-mid", "Mid-diameter scaling by classes", Nature.CONVENTION)
          .input("middle_diameter", "d", "cm", Domain.atLeast(0), "class of the middle diameter")
          .input("length", "L", "m", Domain.atLeast(0), "class of the length")
          .gives(
              "volume",
              "V",
              "m3",
              over(times(over(pi(), num(4)), squared(sym("d")), sym("L")), num(10000)))
          .definedBy(ConventionWorks.DERTINGEN, "diameter and length paragraphs")
          .definedBy(ConventionWorks.TUTTLINGEN, "diameter and length paragraphs")
          .explainedBy(ConventionWorks.RUNDHOLZ_PAGE, "diameter rule")
          .explainedBy(GirthAndBarkWorks.CUBAGE_ABATTUS, "rounding of girth, length and volume")
          .note("takes readings that the rounding of the country has turned into classes")
          .kernel2(ScaledVolume::conventionalMid);

  /** Quarter girth without deduction. */
  public static final BoundFormula QUARTER_METRIC =
      girth("log/quarter-girth-metric", "Quarter girth without deduction")
          .gives("volume", "V", "m3", times(squared(over(sym("C"), num(4))), sym("L")))
          .definedBy(GirthAndBarkWorks.CUBAGE_ENTRY, "section on the volume of wood")
          .explainedBy(GirthAndBarkWorks.IS5246, "volume formula")
          .note("a cubic metre of the rule is 4/π = 1.2732 solid cubic metres")
          .kernel2(GirthVolume::quarterMetric);

  /** Fifth deducted. */
  public static final BoundFormula FIFTH_DEDUCTED =
      girth("log/fifth-deducted", "Quarter girth, a fifth deducted")
          .gives("volume", "V", "m3", times(squared(over(sym("C"), num(5))), sym("L")))
          .definedBy(GirthAndBarkWorks.CUBAGE_ENTRY, "worked example")
          .explainedBy(GirthAndBarkWorks.CUBAGE2011, "opening section")
          .note("a fifth of the girth is a quarter of what is left when a fifth is deducted")
          .kernel2(GirthVolume::fifthDeducted);

  /** Sixth deducted. */
  public static final BoundFormula SIXTH_DEDUCTED =
      girth("log/sixth-deducted", "Quarter girth, a sixth deducted")
          .gives(
              "volume", "V", "m3", times(squared(over(times(num(5), sym("C")), num(24))), sym("L")))
          .cites(Citation.fromMemory("a quarter of the girth less a sixth of it, squared"))
          .note("the text of the rule was not read")
          .kernel2(GirthVolume::sixthDeducted);

  /** Cylinder of a girth. */
  public static final BoundFormula CYLINDER =
      girth("log/girth-cylinder", "Cylinder of a girth")
          .gives("volume", "V", "m3", over(times(squared(sym("C")), sym("L")), times(num(4), pi())))
          .cites(Citation.derived("area of a circle of girth C is C²/(4 π)"))
          .cites(
              Citation.published(
                  Role.EXPLAINS, GirthAndBarkWorks.CUBAGE_ABATTUS, "measuring by girth"))
          .kernel2(GirthVolume::cylinder);

  /** Girth of a circle. */
  public static final BoundFormula GIRTH =
      Definition.of("diameter/girth-of-circle", "Girth of a circle", Nature.GEOMETRIC)
          .input("diameter", "d", "cm", Domain.atLeast(0), "diameter")
          .gives("girth", "C", "cm", times(pi(), sym("d")))
          .cites(Citation.derived("circumference of a circle"))
          .kernel1(GirthVolume::girth);

  /** Mean of crossed readings. */
  public static final BoundFormula MEAN_OF_READINGS =
      Definition.of("diameter/mean-of-readings", "Mean of crossed diameters", Nature.CONVENTION)
          .list("diameter", "d", "cm", Domain.atLeast(0), "two readings of one end, or of both")
          .gives("mean", "m", "cm", over(sumOver(sym("d"), "d"), new Equation.ReadingCount("d")))
          .definedBy(ConventionWorks.MANCILLA2003, "section 1, examples 1 and 2")
          .note("Guatemala: the thin end of logs up to 5 m, both ends of longer ones")
          .kernelOfArrays(x -> ScaledVolume.mean(x[0]));

  /** Side of the square. */
  public static final BoundFormula QUARTER_SIDE =
      Definition.of("log/quarter-girth-side", "Side of the quarter-girth square", Nature.CONVENTION)
          .input("diameter", "d", "cm", Domain.atLeast(0), "diameter of the middle")
          .gives("side", "a", "cm", over(times(pi(), sym("d")), num(4)))
          .definedBy(GirthAndBarkWorks.DANGUY, "p. 112 of the scan")
          .kernel1(GirthVolume::quarterSide);

  /** Length allowance. */
  public static final BoundFormula LENGTH_ALLOWANCE =
      Definition.of("log/length-allowance", "Length allowance of logs", Nature.CONVENTION)
          .input("length", "L", "m", Domain.atLeast(0), "nominal length")
          .gives("allowance", "a", "m", allowance())
          .definedBy(ConventionWorks.DERTINGEN, "length paragraph: a hundredth")
          .definedBy(ConventionWorks.RVR_QUESTIONS, "length allowance: at least 10 cm")
          .kernel1(ScaledVolume::lengthAllowance);

  /** Length with its allowance. */
  public static final BoundFormula LENGTH_WITH_ALLOWANCE =
      Definition.of("log/length-with-allowance", "Length to be cut", Nature.CONVENTION)
          .input("length", "L", "m", Domain.atLeast(0), "nominal length")
          .gives("total", "T", "m", plus(sym("L"), allowance()))
          .definedBy(ConventionWorks.TUTTLINGEN, "length paragraph")
          .kernel1(ScaledVolume::lengthWithAllowance);

  /** Cylinder less double bark. */
  public static final BoundFormula LESS_DOUBLE_BARK =
      Definition.of("log/csn480009", "Mid diameter less double bark", Nature.CONVENTION)
          .input("middle_diameter", "d", "cm", Domain.atLeast(0), "middle diameter over bark")
          .input("double_bark", "k", "cm", Domain.atLeast(0), "double bark thickness")
          .input("length", "L", "m", Domain.atLeast(0), "length of the log")
          .relation("double_bark", AT_MOST, 1, "middle_diameter", "k ≤ d")
          .gives(
              "volume",
              "V",
              "m3",
              over(
                  times(over(pi(), num(4)), squared(minus(sym("d"), sym("k"))), sym("L")),
                  num(10000)))
          .definedBy(GirthAndBarkWorks.CSN480009_COPY_A, "formula and coefficient table")
          .definedBy(GirthAndBarkWorks.CSN480009_COPY_B, "points 1-6")
          .note("k stands for the double thickness, which the source writes 2k")
          .kernel3(ScaledVolume::lessDoubleBark);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          CONVENTIONAL_MID,
          QUARTER_METRIC,
          FIFTH_DEDUCTED,
          SIXTH_DEDUCTED,
          CYLINDER,
          GIRTH,
          MEAN_OF_READINGS,
          QUARTER_SIDE,
          LENGTH_ALLOWANCE,
          LENGTH_WITH_ALLOWANCE,
          LESS_DOUBLE_BARK);

  private MiddleFormulas() {}

  private static Definition girth(String id, String title) {
    return Definition.of(id, title, Nature.CONVENTION)
        .input("middle_girth", "C", "m", Domain.atLeast(0), "girth of the middle")
        .input("length", "L", "m", Domain.atLeast(0), "length of the log");
  }

  private static Equation allowance() {
    return new Equation.Function(
        Equation.FunctionName.MAX, List.of(times(num("0.01"), sym("L")), num("0.10")));
  }
}
