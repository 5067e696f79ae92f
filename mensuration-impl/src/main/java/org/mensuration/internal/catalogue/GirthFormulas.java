package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.rounded;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.formula.RoundingMode;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.GirthAndBarkWorks;
import org.mensuration.internal.source.StemWorks;
import org.mensuration.kernel.GirthVolume;
import org.mensuration.source.Citation;

/** Girth rules in feet and inches, and what a Hoppus foot is. Immutable and thread-safe. */
public final class GirthFormulas {
  private static final String GIRTH = "girth of the middle";

  /** Hoppus. */
  public static final BoundFormula HOPPUS =
      imperial("log/hoppus", "Hoppus, quarter girth")
          .gives(
              "hoppus_volume",
              "V",
              "hoppus_ft3",
              over(times(squared(over(sym("G"), num(4))), sym("L")), num(144)))
          .definedBy(GirthAndBarkWorks.GRIFFITHS, "round timber, first rule")
          .definedBy(GirthAndBarkWorks.HOPPUS_ENTRY, "whole entry")
          .explainedBy(GirthAndBarkWorks.KARKI2026, "abstract: true volume over quarter girth")
          .explainedBy(GirthAndBarkWorks.SHISHAM2004, "abstract: ratios of three rules")
          .note("a Hoppus foot is 4/π cubic feet, so the figure is 21.5 % below the true volume")
          .note("loads: 50 ft³ of squared and 40 ft³ of rough timber (19th century)")
          .kernel2(GirthVolume::hoppus);

  /** Quarter girth with 113. */
  public static final BoundFormula QUARTER_GIRTH_113 =
      imperial("log/quarter-girth-113", "Quarter girth with the divisor 113")
          .gives(
              "volume",
              "V",
              "ft3",
              over(times(squared(over(sym("G"), num(4))), sym("L")), num(113)))
          .cites(Citation.fromMemory("the divisor 113 in place of 144 gives the true volume"))
          .kernel2(GirthVolume::quarterGirth113);

  /** Fifth girth. */
  public static final BoundFormula FIFTH_GIRTH =
      imperial("log/fifth-girth", "Fifth girth, twice its square")
          .gives(
              "volume",
              "V",
              "ft3",
              over(times(num(2), sym("L"), squared(over(sym("G"), num(5)))), num(144)))
          .definedBy(GirthAndBarkWorks.MENSURATION_P364, "p. 364, examples 2, 4, 7 and 8")
          .note("0.531 % above the cylinder; printed in feet, inches and parts of twelfths")
          .kernel2(GirthVolume::fifthGirth);

  /** Cylinder by constant. */
  public static final BoundFormula CYLINDER_BY_CONSTANT =
      imperial("log/girth-cylinder-constant", "Cylinder of a girth by a printed constant")
          .gives("volume", "V", "ft3", times(num("0.000552622"), squared(sym("G")), sym("L")))
          .definedBy(GirthAndBarkWorks.SCOTS_TABLE44, "p. 559, derivation of the first example")
          .note("the constant stands for 1/(4 π 144) = 0.00055262133")
          .kernel2(GirthVolume::cylinderByConstant);

  /** Cylinder by divisor. */
  public static final BoundFormula CYLINDER_BY_DIVISOR =
      imperial("log/girth-cylinder-divisor", "Cylinder of a girth by a printed divisor")
          .gives("volume", "V", "ft3", over(times(squared(sym("G")), sym("L")), num("1809.5")))
          .definedBy(StemWorks.MEN201_V, "slide 32, route 1")
          .note("the divisor stands for 4 π 144 = 1809.557")
          .kernel2(GirthVolume::cylinderByDivisor);

  /** Cylinder by table. */
  public static final BoundFormula CYLINDER_BY_TABLE =
      imperial("log/girth-cylinder-table", "Cylinder of a girth by the content of one foot")
          .gives(
              "volume",
              "V",
              "ft3",
              where(
                  "u",
                  rounded(
                      times(num("0.000552622"), squared(sym("G"))),
                      RoundingMode.HALF_DOWN,
                      "0.001"),
                  times(sym("u"), sym("L"))))
          .definedBy(GirthAndBarkWorks.SCOTS_TABLE44, "p. 559, Table XLIV and last paragraph")
          .note("the third decimal grows only if the fourth is above 5")
          .kernel2(GirthVolume::cylinderByTable);

  /** Cubic feet of Hoppus feet. */
  public static final BoundFormula CUBIC_FEET =
      Definition.of("unit/hoppus-foot", "Cubic feet in Hoppus feet", Nature.GEOMETRIC)
          .input("hoppus_volume", "n", "hoppus_ft3", Domain.atLeast(0), "Hoppus feet")
          .gives("volume", "V", "ft3", over(times(num(4), sym("n")), pi()))
          .definedBy(GirthAndBarkWorks.HOPPUS_ENTRY, "equivalents list")
          .tabulatedBy(GirthAndBarkWorks.HOPPUS_UNITS2015, "entry hoppus foot")
          .kernel1(GirthVolume::cubicFeet);

  /** Hoppus feet of cubic feet. */
  public static final BoundFormula HOPPUS_FEET =
      Definition.of("unit/hoppus-feet", "Hoppus feet in a volume", Nature.GEOMETRIC)
          .input("volume", "V", "ft3", Domain.atLeast(0), "solid volume")
          .gives("hoppus_volume", "n", "hoppus_ft3", over(times(pi(), sym("V")), num(4)))
          .definedBy(GirthAndBarkWorks.HOPPUS_FOOT, "definition")
          .kernel1(GirthVolume::hoppusFeet);

  /** Two thirds. */
  public static final BoundFormula TWO_THIRDS =
      squaredTimber("log/two-thirds", "Two-thirds rule for squared timber")
          .gives(
              "volume",
              "V",
              "ft3",
              over(times(squared(over(times(num(2), sym("d")), num(3))), sym("L")), num(144)))
          .definedBy(GirthAndBarkWorks.BULLETIN36, "contents of logs without slabs")
          .kernel2(GirthVolume::twoThirds);

  /** Inscribed square. */
  public static final BoundFormula INSCRIBED_SQUARE =
      squaredTimber("log/inscribed-square", "Inscribed square of squared timber")
          .gives(
              "volume",
              "V",
              "ft3",
              over(
                  times(squared(over(sym("d"), new Equation.Root(num(2), 2))), sym("L")), num(144)))
          .definedBy(GirthAndBarkWorks.BULLETIN36, "contents of logs without slabs")
          .kernel2(GirthVolume::inscribedSquare);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          HOPPUS,
          QUARTER_GIRTH_113,
          FIFTH_GIRTH,
          CYLINDER_BY_CONSTANT,
          CYLINDER_BY_DIVISOR,
          CYLINDER_BY_TABLE,
          CUBIC_FEET,
          HOPPUS_FEET,
          TWO_THIRDS,
          INSCRIBED_SQUARE);

  private GirthFormulas() {}

  private static Definition imperial(String id, String title) {
    return Definition.of(id, title, Nature.CONVENTION)
        .input("middle_girth", "G", "in", Domain.atLeast(0), GIRTH)
        .input("length", "L", "ft", Domain.atLeast(0), "length of the log");
  }

  private static Definition squaredTimber(String id, String title) {
    return Definition.of(id, title, Nature.CONVENTION)
        .input("small_diameter", "d", "in", Domain.atLeast(0), "diameter of the small end")
        .input("length", "L", "ft", Domain.atLeast(0), "length of the log");
  }
}
