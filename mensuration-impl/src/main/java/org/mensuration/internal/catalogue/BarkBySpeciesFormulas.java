package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.num;
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
import org.mensuration.internal.source.GirthAndBarkWorks;
import org.mensuration.kernel.BarkThickness;

/** Bark thickness by species. Immutable and thread-safe. */
public final class BarkBySpeciesFormulas {
  /** Norway spruce and fir, Czech standard. */
  public static final BoundFormula CSN_SPRUCE =
      csn(
          "bark/csn-spruce",
          "Double bark of spruce and fir, CSN 48 0009",
          "0.57723",
          "0.006897",
          "1.3123");

  /** Pine with thick bark and larch, Czech standard. */
  public static final BoundFormula CSN_PINE =
      csn(
          "bark/csn-pine",
          "Double bark of pine butt logs and larch, CSN 48 0009",
          "1.7015",
          "0.008762",
          "1.4568");

  /** Beech and others, Czech standard. */
  public static final BoundFormula CSN_BEECH =
      csn(
          "bark/csn-beech",
          "Double bark of beech and others, CSN 48 0009",
          "-0.040877",
          "0.16634",
          "0.56076");

  /** Spruce, German parabola. */
  public static final BoundFormula FVA_SPRUCE =
      fva("bark/fva-spruce", "Double bark of spruce, parabola", "0.85149", "0.60934", "-0.00228");

  /** Fir, German parabola. */
  public static final BoundFormula FVA_FIR =
      fva("bark/fva-fir", "Double bark of fir, parabola", "1.76896", "0.59175", "0");

  /** Scots pine, German parabola. */
  public static final BoundFormula FVA_PINE =
      fva("bark/fva-pine", "Double bark of Scots pine, parabola", "1.59099", "0.50146", "0");

  /** Spruce and fir, customary. */
  public static final BoundFormula CUSTOMARY_SPRUCE =
      customary("bark/customary-spruce", "Customary bark deduction, spruce and fir", 32, 1, 2);

  /** Pine, larch, Douglas fir, customary. */
  public static final BoundFormula CUSTOMARY_PINE =
      customary(
          "bark/customary-pine", "Customary bark deduction, pine, larch, Douglas fir", 32, 2, 3);

  /** Oak, customary. */
  public static final BoundFormula CUSTOMARY_OAK =
      customary("bark/customary-oak", "Customary bark deduction, oak", 29, 2, 3);

  /** Beech, customary. */
  public static final BoundFormula CUSTOMARY_BEECH =
      customary("bark/customary-beech", "Customary bark deduction, beech", 49, 1, 2);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          CSN_SPRUCE,
          CSN_PINE,
          CSN_BEECH,
          FVA_SPRUCE,
          FVA_FIR,
          FVA_PINE,
          CUSTOMARY_SPRUCE,
          CUSTOMARY_PINE,
          CUSTOMARY_OAK,
          CUSTOMARY_BEECH);

  private BarkBySpeciesFormulas() {}

  private static Definition diameter(String id, String title, Domain domain) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input("outside_diameter", "d", "cm", domain, "diameter of the middle over bark");
  }

  private static BoundFormula csn(String id, String title, String p0, String p1, String p2) {
    double constant = Double.parseDouble(p0);
    double factor = Double.parseDouble(p1);
    double exponent = Double.parseDouble(p2);
    return diameter(id, title, Domain.closed(5, 200))
        .gives("double_bark", "k", "cm", plus(num(p0), times(num(p1), pow(sym("d"), num(p2)))))
        .definedBy(GirthAndBarkWorks.CSN480009_COPY_A, "formula and coefficient table")
        .definedBy(GirthAndBarkWorks.CSN480009_COPY_B, "coefficient table")
        .note("the coefficients on which two copies agree; one prints the exponent as a plain 2")
        .note("below 5 cm and above 200 cm the formula is refused; the standard was not read")
        .kernel1(d -> BarkThickness.power(d, constant, factor, exponent));
  }

  private static BoundFormula fva(String id, String title, String a, String b, String c) {
    double constant = Double.parseDouble(a);
    double linear = Double.parseDouble(b);
    double square = Double.parseDouble(c);
    Equation line = times(num(b), sym("d"));
    return diameter(id, title, Domain.closed(5, 130))
        .gives(
            "double_bark",
            "B",
            "mm",
            square == 0 ? plus(num(a), line) : plus(num(a), line, times(num(c), squared(sym("d")))))
        .definedBy(GirthAndBarkWorks.RINDENABZUG, "function and coefficient table")
        .note("below 5 cm and above 130 cm the formula is refused; its range was not read")
        .kernel1(d -> BarkThickness.parabola(d, constant, linear, square));
  }

  private static BoundFormula customary(String id, String title, int limit, int upto, int above) {
    return diameter(id, title, Domain.above(0))
        .gives(
            "deduction",
            "k",
            "cm",
            new Equation.Cases(
                List.of(
                    new Equation.Branch(
                        new Equation.Condition(sym("d"), AT_MOST, num(limit)), num(upto))),
                num(above)))
        .definedBy(GirthAndBarkWorks.AUFMASS_PAGE, "list of usual deductions")
        .note("a custom in whole centimetres, for diameters in whole centimetres")
        .kernel1(d -> BarkThickness.customary(d, limit, upto, above));
  }
}
