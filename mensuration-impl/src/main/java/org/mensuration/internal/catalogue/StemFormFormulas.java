package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.ratio;
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
import org.mensuration.kernel.StemForm;
import org.mensuration.source.Citation;

/** Form of stems. Immutable and thread-safe. */
public final class StemFormFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);
  private static final String BREAST_HEIGHT =
      "breast height differs by country; state it beside the figure";

  /** Breast-height form factor. */
  public static final BoundFormula FORM_FACTOR =
      Definition.of("stem/form-factor", "Breast-height form factor", Nature.GEOMETRIC)
          .input("volume", "V", "m3", NOT_NEGATIVE, "volume of the stem")
          .input("breast_height_diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .gives("form_factor", "f", "1", overCylinder("d", sym("H")))
          .definedBy(StemWorks.AWF_SHAPE, "form factor definition")
          .explainedBy(StemWorks.MEN201_V, "notes, worked example 1; slide 14")
          .note("also called false form factor, for it falls with height in solids of one form")
          .note(BREAST_HEIGHT)
          .kernel3(StemForm::factor);

  /** Hohenadl's form factor. */
  public static final BoundFormula HOHENADL =
      Definition.of(
              "stem/form-factor-hohenadl",
              "Form factor on the diameter at one tenth of the height",
              Nature.GEOMETRIC)
          .input("volume", "V", "m3", NOT_NEGATIVE, "volume of the stem")
          .input("d01", "d_01", "cm", POSITIVE, "diameter at one tenth of the height, from below")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .gives("form_factor", "f_01", "1", overCylinder("d_01", sym("H")))
          .cites(Citation.fromMemory("Hohenadl's natural form factor"))
          .note("the index counts tenths from the ground; some texts count from the tip, d_09")
          .note("the same for solids of one form, whatever their height")
          .kernel3(StemForm::factor);

  /** Absolute form factor on the base. */
  public static final BoundFormula ABSOLUTE =
      Definition.of(
              "stem/form-factor-absolute", "Absolute form factor on the base", Nature.GEOMETRIC)
          .input("volume", "V", "m3", NOT_NEGATIVE, "volume of the stem")
          .input("base_diameter", "d_0", "cm", POSITIVE, "diameter of the base")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .gives("form_factor", "f_0", "1", overCylinder("d_0", sym("H")))
          .definedBy(StemWorks.AWF_SHAPE, "form factor definition")
          .note("1/2 for a paraboloid, 1/3 for a cone, 1/4 for a neiloid")
          .note("the other meaning is stem/form-factor-absolute-above: from breast height up")
          .kernel3(StemForm::factor);

  /** Absolute form factor from breast height up. */
  public static final BoundFormula ABSOLUTE_ABOVE =
      Definition.of(
              "stem/form-factor-absolute-above",
              "Absolute form factor of the stem above breast height",
              Nature.GEOMETRIC)
          .input("volume_above", "V", "m3", NOT_NEGATIVE, "volume above breast height")
          .input("breast_height_diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .input("breast_height", "b", "m", NOT_NEGATIVE, "breast height")
          .relation("breast_height", LESS, 1, "height", "b < H")
          .gives("form_factor", "f_a", "1", overCylinder("d", minus(sym("H"), sym("b"))))
          .cites(Citation.fromMemory("volume above breast height over its cylinder"))
          .note("the other meaning is stem/form-factor-absolute: on the base of the whole stem")
          .kernel4(StemForm::factorAbove);

  /** Form factor of a solid. */
  public static final BoundFormula OF_POWER =
      Definition.of(
              "stem/form-factor-of-power",
              "Form factor on the base of a solid of a power",
              Nature.GEOMETRIC)
          .input("exponent", "m", "1", NOT_NEGATIVE, "area grows with this power from the tip")
          .gives("form_factor", "f_0", "1", over(num(1), plus(sym("m"), num(1))))
          .definedBy(StemWorks.CODE99_215, "section 2.1.5, profile curve")
          .note("0 cylinder, 1 paraboloid, 2 cone, 3 neiloid")
          .kernel1(StemForm::factorOfPower);

  /** Form quotient. */
  public static final BoundFormula FORM_QUOTIENT =
      Definition.of("stem/form-quotient", "Form quotient", Nature.GEOMETRIC)
          .input("upper_diameter", "d_u", "cm", NOT_NEGATIVE, "upper diameter")
          .input("breast_height_diameter", "d", "cm", POSITIVE, "diameter at breast height")
          .gives("quotient", "q", "1", over(sym("d_u"), sym("d")))
          .definedBy(StemWorks.MEN201_V, "slide 17; notes, worked example 2")
          .note("normal: upper diameter at half the height")
          .note("absolute: upper diameter half way between breast height and tip")
          .kernel2(StemForm::quotient);

  /** Hohenadl's form quotient. */
  public static final BoundFormula QUOTIENT_HOHENADL =
      Definition.of(
              "stem/form-quotient-hohenadl",
              "Form quotient of the diameters at five and one tenths of the height",
              Nature.GEOMETRIC)
          .input("d05", "d_05", "cm", NOT_NEGATIVE, "diameter at half the height")
          .input("d01", "d_01", "cm", POSITIVE, "diameter at one tenth of the height, from below")
          .gives("quotient", "q_05", "1", over(sym("d_05"), sym("d_01")))
          .cites(Citation.fromMemory("Hohenadl's natural form quotient"))
          .note("the indices count tenths from the ground; some texts count from the tip")
          .kernel2(StemForm::quotient);

  /** Where the absolute form quotient is read. */
  public static final BoundFormula QUOTIENT_HEIGHT =
      Definition.of(
              "stem/absolute-quotient-height",
              "Height half way between breast height and tip",
              Nature.GEOMETRIC)
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .input("breast_height", "b", "m", NOT_NEGATIVE, "breast height")
          .relation("breast_height", LESS, 1, "height", "b < H")
          .gives(
              "quotient_height", "h", "m", plus(sym("b"), over(minus(sym("H"), sym("b")), num(2))))
          .definedBy(StemWorks.MEN201_V, "slide 17")
          .note("not half the height plus breast height")
          .kernel2(StemForm::absoluteQuotientHeight);

  /** Girard form class. */
  public static final BoundFormula GIRARD =
      Definition.of("stem/girard-form-class", "Girard form class", Nature.CONVENTION)
          .input("inside_bark_diameter", "d", "in", NOT_NEGATIVE, "inside bark, at 17.3 feet")
          .input("breast_height_diameter", "D", "in", POSITIVE, "outside bark, at breast height")
          .relation("inside_bark_diameter", AT_MOST, 1, "breast_height_diameter", "d ≤ D")
          .gives("form_class", "F", "%", over(times(num(100), sym("d")), sym("D")))
          .definedBy(StemWorks.GFC, "definition and example")
          .note("17.3 feet are 1 of stump, 16 of log and 0.3 of trim: stem/form-class-height")
          .kernel2(StemForm::girardFormClass);

  /** Height of the form-class diameter. */
  public static final BoundFormula FORM_CLASS_HEIGHT =
      Definition.of(
              "stem/form-class-height", "Height of the diameter of a form class", Nature.CONVENTION)
          .input("stump", "s", "ft", NOT_NEGATIVE, "height of the stump")
          .input("log", "L", "ft", POSITIVE, "length of the first log")
          .input("trim", "t", "ft", NOT_NEGATIVE, "trim of the log")
          .gives("height", "h", "ft", plus(sym("s"), sym("L"), sym("t")))
          .definedBy(StemWorks.GFC, "definition: 1 + 16 + 0.3 feet")
          .kernel3(StemForm::formClassHeight);

  /** Guide point of a solid. */
  public static final BoundFormula GUIDE_POINT =
      Definition.of(
              "stem/guide-point",
              "Part of the height at which a solid has half its base diameter",
              Nature.GEOMETRIC)
          .input("exponent", "m", "1", POSITIVE, "area grows with this power from the tip")
          .gives("part", "z", "1", minus(num(1), pow(ratio(1, 4), over(num(1), sym("m")))))
          .definedBy(StemWorks.HOLZWALD, "p. 37 of the manuscript, for the neiloid")
          .note("3/4 for a paraboloid, 1/2 for a cone")
          .kernel1(StemForm::guidePoint);

  /** Height of a leaning stem. */
  public static final BoundFormula VERTICAL_HEIGHT =
      Definition.of(
              "stem/vertical-height",
              "Vertical height of the tip of a leaning straight stem",
              Nature.GEOMETRIC)
          .input("stem_length", "L", "m", NOT_NEGATIVE, "length along the stem")
          .input("lean", "a", "deg", Domain.fromBelow(0, 90), "lean from the plumb line")
          .gives("height", "H", "m", times(sym("L"), cosDegrees(sym("a"))))
          .cites(Citation.derived("the stem is the long side of a right triangle"))
          .explainedBy(StemWorks.AWF_HEIGHT, "height versus stem length")
          .note("the equation of height/vertical-from-length, where a lean has a sign")
          .kernel2(StemForm::verticalHeight);

  /** Section at breast height from the tip. */
  public static final BoundFormula SECTION_FROM_TIP =
      Definition.of(
              "stem/section-from-tip",
              "Section at breast height from the tip and the form factors with and without it",
              Nature.GEOMETRIC)
          .input("tip_volume", "V_t", "m3", NOT_NEGATIVE, "volume of the tip")
          .input("whole_form_factor", "f", "1", POSITIVE, "form factor of the whole stem")
          .input("stem_form_factor", "f_s", "1", NOT_NEGATIVE, "form factor without the tip")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .relation("stem_form_factor", LESS, 1, "whole_form_factor", "f_s < f")
          .gives("area", "g", "m2", over(sym("V_t"), times(minus(sym("f"), sym("f_s")), sym("H"))))
          .definedBy(StemWorks.OVI7, "exercise 7.2, as two equations")
          .note("both factors on the same breast height and height")
          .kernel4(StemForm::sectionFromTip);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FORM_FACTOR,
          HOHENADL,
          ABSOLUTE,
          ABSOLUTE_ABOVE,
          OF_POWER,
          FORM_QUOTIENT,
          QUOTIENT_HOHENADL,
          QUOTIENT_HEIGHT,
          GIRARD,
          FORM_CLASS_HEIGHT,
          GUIDE_POINT,
          VERTICAL_HEIGHT,
          SECTION_FROM_TIP);

  private StemFormFormulas() {}

  /** The volume over that of the cylinder of a diameter and a length. */
  private static Equation overCylinder(String diameter, Equation length) {
    return where(
        "g",
        over(times(pi(), squared(sym(diameter))), num(40000)),
        over(sym("V"), times(sym("g"), length)));
  }
}
