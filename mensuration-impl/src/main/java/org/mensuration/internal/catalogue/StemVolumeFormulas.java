package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
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
import org.mensuration.kernel.StemSolid;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Volume of a whole stem from few measurements. Immutable and thread-safe. */
public final class StemVolumeFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** Volume from a form factor. */
  public static final BoundFormula FROM_FORM_FACTOR =
      Definition.of("stem/volume-from-form-factor", "Volume from a form factor", Nature.GEOMETRIC)
          .input("form_factor", "f", "1", NOT_NEGATIVE, "form factor on that diameter")
          .input("breast_height_diameter", "d", "cm", NOT_NEGATIVE, "diameter at breast height")
          .input("height", "H", "m", NOT_NEGATIVE, "height of the tree")
          .gives("volume", "V", "m3", area("g", "d", times(sym("f"), sym("g"), sym("H"))))
          .definedBy(StemWorks.MEN201_V, "notes, worked example 3")
          .note("the equation of tree/volume-from-form-factor, zero allowed")
          .kernel3(StemSolid::fromFormFactor);

  /** Solid of a power. */
  public static final BoundFormula POWER =
      Definition.of(
              "stem/power-solid", "Solid of a power of the distance from the tip", Nature.GEOMETRIC)
          .input("base_diameter", "d_0", "cm", NOT_NEGATIVE, "diameter of the base")
          .input("height", "H", "m", NOT_NEGATIVE, "height")
          .input("exponent", "m", "1", NOT_NEGATIVE, "area grows with this power from the tip")
          .gives(
              "volume",
              "V",
              "m3",
              area("g_0", "d_0", over(times(sym("g_0"), sym("H")), plus(sym("m"), num(1)))))
          .definedBy(StemWorks.CODE99_215, "section 2.1.5, profile curve")
          .note("0 cylinder, 1 paraboloid, 2 cone, 3 neiloid")
          .kernel3(StemSolid::power);

  /** Pressler from the base. */
  public static final BoundFormula PRESSLER =
      Definition.of(
              "stem/pressler",
              "Pressler: volume from the height at which the diameter is half",
              Nature.GEOMETRIC)
          .input("lower_diameter", "d", "cm", NOT_NEGATIVE, "diameter of the lower section")
          .input(
              "length_to_half_diameter", "L", "m", NOT_NEGATIVE, "length from there to half of it")
          .gives("volume", "V", "m3", area("g", "d", times(ratio(2, 3), sym("g"), sym("L"))))
          .definedBy(StemWorks.HOLZWALD, "pp. 36-38 of the manuscript, with m = 0")
          .note("exact for a paraboloid and a cone, 1.3 % low for a neiloid")
          .note("gives the volume above the lower section")
          .kernel2(StemSolid::pressler);

  /** Pressler from breast height. */
  public static final BoundFormula PRESSLER_BREAST_HEIGHT =
      Definition.of(
              "stem/pressler-breast-height",
              "Pressler from breast height, length counted from there",
              Nature.CONVENTION)
          .input("breast_height_diameter", "d", "cm", NOT_NEGATIVE, "diameter at breast height")
          .input(
              "length_from_breast_height",
              "L",
              "m",
              NOT_NEGATIVE,
              "length from breast height to half that diameter")
          .input("breast_height", "b", "m", NOT_NEGATIVE, "breast height")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g",
                  "d",
                  times(
                      ratio(2, 3),
                      sym("g"),
                      plus(sym("L"), over(times(num(3), sym("b")), num(2))))))
          .cites(Citation.fromMemory("Pressler's formula with the length from breast height"))
          .explainedBy(StemWorks.HOLZWALD, "pp. 36-38 of the manuscript, length from the cut")
          .note("the butt is taken as a cylinder as wide as breast height")
          .kernel3(StemSolid::presslerBreastHeight);

  /** Pressler from the felling cut. */
  public static final BoundFormula PRESSLER_FROM_CUT =
      Definition.of(
              "stem/pressler-from-cut",
              "Pressler from a measuring point, length counted from the felling cut",
              Nature.CONVENTION)
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter at the measuring point")
          .input("guide_height", "H_g", "m", NOT_NEGATIVE, "half that diameter, above the cut")
          .input("point_height", "m", "m", NOT_NEGATIVE, "measuring point above the cut")
          .relation("point_height", AT_MOST, 1, "guide_height", "m ≤ H_g")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g", "d", times(ratio(2, 3), sym("g"), plus(sym("H_g"), over(sym("m"), num(2))))))
          .definedBy(StemWorks.HOLZWALD, "pp. 36-38 of the manuscript")
          .kernel3(StemSolid::presslerFromCut);

  /** Pressler with a swollen butt. */
  public static final BoundFormula PRESSLER_SWOLLEN =
      Definition.of(
              "stem/pressler-swollen",
              "Pressler from the felling cut, with what swells at the butt",
              Nature.CONVENTION)
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter at the measuring point")
          .input("guide_height", "H_g", "m", NOT_NEGATIVE, "half that diameter, above the cut")
          .input("point_height", "m", "m", NOT_NEGATIVE, "measuring point above the cut")
          .input(
              "tenths",
              "k",
              "1",
              NOT_NEGATIVE,
              "how often d/10 goes into D - d, D taken half way up to the point")
          .relation("point_height", AT_MOST, 1, "guide_height", "m ≤ H_g")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g",
                  "d",
                  times(
                      ratio(2, 3),
                      sym("g"),
                      plus(
                          sym("H_g"),
                          over(sym("m"), num(2)),
                          times(sym("k"), over(sym("m"), num(3)))))))
          .definedBy(StemWorks.HOLZWALD, "pp. 36-38 of the manuscript")
          .note("the example there breaks off before its result")
          .kernel4(StemSolid::presslerSwollen);

  /** Volume from the tip. */
  public static final BoundFormula FROM_TIP =
      Definition.of(
              "stem/volume-from-tip",
              "Volume from the tip and the form factors with and without it",
              Nature.GEOMETRIC)
          .input("tip_volume", "V_t", "m3", NOT_NEGATIVE, "volume of the tip")
          .input("whole_form_factor", "f", "1", POSITIVE, "form factor of the whole stem")
          .input("stem_form_factor", "f_s", "1", NOT_NEGATIVE, "form factor without the tip")
          .relation("stem_form_factor", LESS, 1, "whole_form_factor", "f_s < f")
          .gives(
              "volume", "V", "m3", over(times(sym("f"), sym("V_t")), minus(sym("f"), sym("f_s"))))
          .definedBy(StemWorks.OVI7, "exercise 7.2, as two equations")
          .kernel3(StemSolid::fromTip);

  /** Hossfeld. */
  public static final BoundFormula HOSSFELD =
      Definition.of("stem/hossfeld", "Hossfeld for a stem with its tip", Nature.GEOMETRIC)
          .input("third_diameter", "d_3", "cm", NOT_NEGATIVE, "diameter a third of the way up")
          .input("height", "H", "m", NOT_NEGATIVE, "length of the stem")
          .gives("volume", "V", "m3", area("g_3", "d_3", times(ratio(3, 4), sym("g_3"), sym("H"))))
          .cites(Citation.fromMemory("three quarters of the area at a third of the length"))
          .note("log/hossfeld takes a section with a top diameter")
          .note("exact for a paraboloid and a cone, 11 % low for a neiloid")
          .kernel2(StemSolid::hossfeld);

  /** Hohenadl. */
  public static final BoundFormula HOHENADL =
      Definition.of("stem/hohenadl", "Hohenadl: five sections", Nature.GEOMETRIC)
          .input("d01", "d_01", "cm", NOT_NEGATIVE, "diameter at 0.1 of the height, from below")
          .input("d03", "d_03", "cm", NOT_NEGATIVE, "diameter at 0.3 of the height")
          .input("d05", "d_05", "cm", NOT_NEGATIVE, "diameter at half the height")
          .input("d07", "d_07", "cm", NOT_NEGATIVE, "diameter at 0.7 of the height")
          .input("d09", "d_09", "cm", NOT_NEGATIVE, "diameter at 0.9 of the height")
          .input("height", "H", "m", NOT_NEGATIVE, "height of the tree")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_01",
                  "d_01",
                  area(
                      "g_03",
                      "d_03",
                      area(
                          "g_05",
                          "d_05",
                          area(
                              "g_07",
                              "d_07",
                              area(
                                  "g_09",
                                  "d_09",
                                  times(
                                      num("0.2"),
                                      sym("H"),
                                      plus(
                                          sym("g_01"),
                                          sym("g_03"),
                                          sym("g_05"),
                                          sym("g_07"),
                                          sym("g_09")))))))))
          .cites(Citation.fromMemory("Hohenadl's sections of a fifth of the height"))
          .note("the indices count tenths from the ground; some texts count from the tip")
          .note("Huber's formula on five sections, so exact for a cylinder and a paraboloid")
          .kernelOfArrays(StemSolid::hohenadl);

  /** Two diameters. */
  public static final BoundFormula TWO_POINT_POWER =
      Definition.of(
              "stem/two-point-power",
              "Volume above a lower point from two diameters and the height",
              Nature.GEOMETRIC)
          .input("lower_diameter", "d_1", "cm", POSITIVE, "lower diameter")
          .input("lower_height", "h_1", "m", NOT_NEGATIVE, "its height")
          .input("upper_diameter", "d_2", "cm", POSITIVE, "upper diameter")
          .input("upper_height", "h_2", "m", POSITIVE, "its height")
          .input("height", "H", "m", POSITIVE, "height of the tip")
          .relation("upper_diameter", AT_MOST, 1, "lower_diameter", "d_2 ≤ d_1")
          .relation("lower_height", LESS, 1, "upper_height", "h_1 < h_2")
          .relation("upper_height", LESS, 1, "height", "h_2 < H")
          .gives("volume", "V", "m3", twoPoints())
          .cites(Citation.derived("d² = a xᵐ through both points, x from the tip, integrated"))
          .note("volume above the lower point; below it the curve is not used")
          .kernelOfArrays(StemSolid::twoPointPower);

  /** Height accumulation by cones. */
  public static final BoundFormula ACCUMULATION =
      accumulation(
              "stem/height-accumulation", "Volume from accumulated heights, frusta of cones", true)
          .gives(
              "volume",
              "V",
              "ft3",
              times(
                  over(pi(), num(576)),
                  squared(sym("T")),
                  sym("U"),
                  plus(times(num(2), sym("S_2")), over(sym("S_L"), num(3)))))
          .cites(Citation.derived("sum of frusta of cones over equal steps of diameter"))
          .explainedBy(StemWorks.GROS54, "opening pages, principle")
          .kernel4(StemSolid::heightAccumulation);

  /** Height accumulation by Smalian. */
  public static final BoundFormula ACCUMULATION_SMALIAN =
      accumulation(
              "stem/height-accumulation-smalian",
              "Volume from accumulated heights, Smalian's sections",
              true)
          .gives(
              "volume",
              "V",
              "ft3",
              times(
                  over(pi(), num(576)),
                  squared(sym("T")),
                  sym("U"),
                  plus(times(num(2), sym("S_2")), over(sym("S_L"), num(2)))))
          .cites(Citation.derived("sum of Smalian's sections over equal steps of diameter"))
          .explainedBy(StemWorks.GROS54, "opening pages, principle")
          .kernel4(StemSolid::heightAccumulationSmalian);

  /** Surface by height accumulation. */
  public static final BoundFormula ACCUMULATION_SURFACE =
      accumulation("stem/height-accumulation-surface", "Surface from accumulated heights", false)
          .gives(
              "surface",
              "A",
              "ft2",
              times(
                  over(pi(), num(12)),
                  sym("T"),
                  sym("U"),
                  plus(sym("S_H"), over(sym("S_L"), num(2)))))
          .cites(Citation.derived("mean girth of each step times its length"))
          .cites(Citation.fromMemory(Role.EXPLAINS, StemWorks.HBK, "2.09 and 1.05 as coefficients"))
          .note("girth times length along the axis, not along the slanting side")
          .kernel4(StemSolid::heightAccumulationSurface);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FROM_FORM_FACTOR,
          POWER,
          PRESSLER,
          PRESSLER_BREAST_HEIGHT,
          PRESSLER_FROM_CUT,
          PRESSLER_SWOLLEN,
          FROM_TIP,
          HOSSFELD,
          HOHENADL,
          TWO_POINT_POWER,
          ACCUMULATION,
          ACCUMULATION_SMALIAN,
          ACCUMULATION_SURFACE);

  private StemVolumeFormulas() {}

  private static Definition accumulation(String id, String title, boolean second) {
    Definition definition =
        Definition.of(id, title, Nature.GEOMETRIC)
            .input("length_sum", "S_L", "1", NOT_NEGATIVE, "sum of L_j, in unit heights");
    return (second
            ? definition.input("second_sum", "S_2", "1", NOT_NEGATIVE, "sum of j (j - 1) L_j / 2")
            : definition.input("first_sum", "S_H", "1", NOT_NEGATIVE, "sum of (j - 1) L_j"))
        .input("taper_step", "T", "in", NOT_NEGATIVE, "step of diameter")
        .input("unit_height", "U", "ft", NOT_NEGATIVE, "unit of height")
        .note("L_j is the length between the diameters j T and (j - 1) T, j counted from the tip");
  }

  private static Equation twoPoints() {
    Equation exponent =
        over(
            fn(Equation.FunctionName.LN, over(squared(sym("d_1")), squared(sym("d_2")))),
            fn(Equation.FunctionName.LN, over(sym("x_1"), sym("x_2"))));
    return where(
        "x_1",
        minus(sym("H"), sym("h_1")),
        where(
            "x_2",
            minus(sym("H"), sym("h_2")),
            where(
                "m",
                exponent,
                area("g_1", "d_1", over(times(sym("g_1"), sym("x_1")), plus(sym("m"), num(1)))))));
  }

  /** Names a sectional area in m² of a diameter in cm. */
  private static Equation area(String symbol, String diameter, Equation in) {
    return where(symbol, over(times(pi(), squared(sym(diameter))), num(40000)), in);
  }
}
