package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
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

/** Volume of a standing tree from an equation or a table. Immutable and thread-safe. */
public final class VolumeEquationFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);

  /** Quick rule. */
  public static final BoundFormula QUICK =
      Definition.of("stem/quick-volume", "Quick rule: squared diameter by 1000", Nature.EMPIRICAL)
          .input("breast_height_diameter", "d", "cm", NOT_NEGATIVE, "diameter at breast height")
          .gives("volume", "V", "m3", over(squared(sym("d")), num(1000)))
          .definedBy(StemWorks.BFW, "worked example")
          .note("for a rough figure of a tree of middling height; no other use")
          .kernel1(StemSolid::quick);

  /** Quick rule with height. */
  public static final BoundFormula QUICK_HEIGHT =
      Definition.of("stem/quick-volume-height", "Quick rule corrected by height", Nature.EMPIRICAL)
          .input("breast_height_diameter", "d", "cm", NOT_NEGATIVE, "diameter at breast height")
          .input("height", "h", "m", NOT_NEGATIVE, "height of the tree")
          .input("normal_height", "h_n", "m", NOT_NEGATIVE, "height for which the rule holds")
          .input(
              "correction",
              "c",
              "%",
              NOT_NEGATIVE,
              Domain.closed(3, 5),
              "correction for each metre of height")
          .gives(
              "volume",
              "V",
              "m3",
              times(
                  over(squared(sym("d")), num(1000)),
                  plus(num(1), times(over(sym("c"), num(100)), minus(sym("h"), sym("h_n"))))))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES, StemWorks.KRAMER02, "normal-height table for the quick formula"))
          .note("normal height and correction belong to a species")
          .kernel4(StemSolid::quickWithHeight);

  /** Spline term. */
  public static final BoundFormula SPLINE_TERM =
      Definition.of(
              "stem/spline-term",
              "Term of a restricted cubic spline of three knots",
              Nature.EMPIRICAL)
          .input("x", "x", "1", Domain.any(), "variable of the volume equation")
          .input("low_knot", "t_1", "1", Domain.any(), "lowest knot")
          .input("middle_knot", "t_2", "1", Domain.any(), "middle knot")
          .input("high_knot", "t_3", "1", Domain.any(), "highest knot")
          .relation("low_knot", LESS, 1, "middle_knot", "t_1 < t_2")
          .relation("middle_knot", LESS, 1, "high_knot", "t_2 < t_3")
          .gives("term", "g", "1", term())
          .definedBy(StemWorks.MEN201_H, "sections 9 and 10")
          .note("a bracket below zero counts as zero")
          .kernel4(StemSolid::splineTerm);

  /** Volume equation with a spline term. */
  public static final BoundFormula SPLINE_VOLUME =
      Definition.of(
              "stem/spline-volume",
              "Volume equation with a restricted cubic spline",
              Nature.EMPIRICAL)
          .input("x", "x", "1", NOT_NEGATIVE, "basal area in m², or basal area × height in m³")
          .input("b0", "b_0", "m3", Domain.any(), "constant")
          .input("b1", "b_1", "1", Domain.any(), "coefficient of x")
          .input("b2", "b_2", "1", Domain.any(), "coefficient of the spline term")
          .input("low_knot", "t_1", "1", Domain.any(), "lowest knot")
          .input("middle_knot", "t_2", "1", Domain.any(), "middle knot")
          .input("high_knot", "t_3", "1", Domain.any(), "highest knot")
          .relation("low_knot", LESS, 1, "middle_knot", "t_1 < t_2")
          .relation("middle_knot", LESS, 1, "high_knot", "t_2 < t_3")
          .gives(
              "volume",
              "V",
              "m3",
              where(
                  "g",
                  term(),
                  plus(sym("b_0"), times(sym("b_1"), sym("x")), times(sym("b_2"), sym("g")))))
          .definedBy(StemWorks.MEN201_H, "sections 9 and 10")
          .note("coefficients belong to a species and a country")
          .kernelOfArrays(StemSolid::splineVolume);

  /** Between two entries of a volume table. */
  public static final BoundFormula BETWEEN_ENTRIES =
      Definition.of(
              "stem/volume-between-entries",
              "Volume on the straight line between two heights of a volume table",
              Nature.CONVENTION)
          .input("lower_height", "h_1", "m", NOT_NEGATIVE, "height of the lower entry")
          .input("lower_volume", "V_1", "m3", NOT_NEGATIVE, "its volume")
          .input("upper_height", "h_2", "m", NOT_NEGATIVE, "height of the upper entry")
          .input("upper_volume", "V_2", "m3", NOT_NEGATIVE, "its volume")
          .input("height", "h", "m", NOT_NEGATIVE, "height wanted")
          .relation("lower_height", LESS, 1, "upper_height", "h_1 < h_2")
          .relation("lower_height", AT_MOST, 1, "height", "h_1 ≤ h")
          .relation("height", AT_MOST, 1, "upper_height", "h ≤ h_2")
          .gives(
              "volume",
              "V",
              "m3",
              plus(
                  sym("V_1"),
                  over(
                      times(minus(sym("V_2"), sym("V_1")), minus(sym("h"), sym("h_1"))),
                      minus(sym("h_2"), sym("h_1")))))
          .definedBy(StemWorks.MEN201_V, "slide 43")
          .kernelOfArrays(StemSolid::betweenEntries);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(QUICK, QUICK_HEIGHT, SPLINE_TERM, SPLINE_VOLUME, BETWEEN_ENTRIES);

  private VolumeEquationFormulas() {}

  private static Equation term() {
    Equation span = minus(sym("t_3"), sym("t_2"));
    return plus(
        cube("t_1"),
        new Equation.Negative(over(times(cube("t_2"), minus(sym("t_3"), sym("t_1"))), span)),
        over(times(cube("t_3"), minus(sym("t_2"), sym("t_1"))), span));
  }

  private static Equation cube(String knot) {
    return pow(
        new Equation.Function(
            Equation.FunctionName.MAX, List.of(minus(sym("x"), sym(knot)), num(0))),
        num(3));
  }
}
