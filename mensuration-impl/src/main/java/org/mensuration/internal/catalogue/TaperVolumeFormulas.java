package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.kernel.Taper;
import org.mensuration.source.Citation;

/** Volumes of taper curves between two heights. Immutable and thread-safe. */
public final class TaperVolumeFormulas {
  private static final String POSITIVE_AREA =
      "the curve must have a positive area between the heights; this is not checked here";

  /** Power curve. */
  public static final BoundFormula POWER =
      TaperFormulas.power("stem/taper-power-volume", "Volume of a power taper curve")
          .input("from_height", "h_1", "m", TaperFormulas.NOT_NEGATIVE, "lower height")
          .input("to_height", "h_2", "m", TaperFormulas.NOT_NEGATIVE, "upper height")
          .input("exponent", "p", "1", TaperFormulas.EXPONENT, "exponent of the diameter")
          .relation("reference_height", LESS, 1, "height", "h_r < H")
          .relation("from_height", AT_MOST, 1, "to_height", "h_1 ≤ h_2")
          .relation("to_height", AT_MOST, 1, "height", "h_2 ≤ H")
          .relation("from_height", LESS, 1, "height", "h_1 < H")
          .gives("volume", "V", "m3", power())
          .cites(Citation.derived("integral of the area of stem/taper-power"))
          .kernelOfArrays(Taper::powerVolume);

  /** Quadratic curve. */
  public static final BoundFormula QUADRATIC =
      between("stem/taper-quadratic-volume", "Volume of a quadratic taper curve")
          .input("b0", "b_0", "1", TaperFormulas.COEFFICIENT, "constant")
          .input("b1", "b_1", "1", TaperFormulas.COEFFICIENT, "coefficient of z")
          .input("b2", "b_2", "1", TaperFormulas.COEFFICIENT, "coefficient of z²")
          .gives("volume", "V", "m3", integral(List.of(sym("b_0"), sym("b_1"), sym("b_2"))))
          .cites(Citation.derived("integral of the area of stem/taper-quadratic"))
          .note(POSITIVE_AREA)
          .kernelOfArrays(Taper::quadraticVolume);

  /** Cubic curve. */
  public static final BoundFormula CUBIC =
      between("stem/taper-cubic-volume", "Volume of a cubic taper curve")
          .input("b0", "b_0", "1", TaperFormulas.COEFFICIENT, "constant")
          .input("b1", "b_1", "1", TaperFormulas.COEFFICIENT, "coefficient of z")
          .input("b2", "b_2", "1", TaperFormulas.COEFFICIENT, "coefficient of z²")
          .input("b3", "b_3", "1", TaperFormulas.COEFFICIENT, "coefficient of z³")
          .gives("volume", "V", "m3", integral(squareOfCubic()))
          .cites(Citation.derived("integral of the area of stem/taper-cubic"))
          .note(POSITIVE_AREA)
          .kernelOfArrays(Taper::cubicVolume);

  /** Segmented curve. */
  public static final BoundFormula SEGMENTED =
      between("stem/taper-segmented-volume", "Volume of a segmented taper curve")
          .input("b1", "b_1", "1", TaperFormulas.COEFFICIENT, "coefficient of z - 1")
          .input("b2", "b_2", "1", TaperFormulas.COEFFICIENT, "coefficient of z² - 1")
          .input("b3", "b_3", "1", TaperFormulas.COEFFICIENT, "coefficient of the upper joint")
          .input("b4", "b_4", "1", TaperFormulas.COEFFICIENT, "coefficient of the lower joint")
          .input("a1", "a_1", "1", Domain.open(0, 1), "upper joint, relative height")
          .input("a2", "a_2", "1", Domain.open(0, 1), "lower joint, relative height")
          .relation("a2", LESS, 1, "a1", "a_2 < a_1")
          .gives("volume", "V", "m3", segmented())
          .cites(Citation.derived("integral of the area of stem/taper-segmented"))
          .note(POSITIVE_AREA)
          .kernelOfArrays(Taper::segmentedVolume);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(POWER, QUADRATIC, CUBIC, SEGMENTED);

  private TaperVolumeFormulas() {}

  private static Definition between(String id, String title) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input(
            "breast_height_diameter",
            "D",
            "cm",
            TaperFormulas.POSITIVE,
            "diameter at breast height")
        .input("height", "H", "m", TaperFormulas.POSITIVE, "height of the tip")
        .input("from_height", "h_1", "m", TaperFormulas.NOT_NEGATIVE, "lower height")
        .input("to_height", "h_2", "m", TaperFormulas.NOT_NEGATIVE, "upper height")
        .relation("from_height", AT_MOST, 1, "to_height", "h_1 ≤ h_2")
        .relation("to_height", AT_MOST, 1, "height", "h_2 ≤ H");
  }

  private static Equation power() {
    return where(
        "q",
        plus(times(num(2), sym("p")), num(1)),
        times(
            over(pi(), num(40000)),
            squared(sym("D")),
            over(minus(sym("H"), sym("h_r")), sym("q")),
            minus(raised("h_1"), raised("h_2"))));
  }

  private static Equation raised(String height) {
    return pow(over(minus(sym("H"), sym(height)), minus(sym("H"), sym("h_r"))), sym("q"));
  }

  /** Coefficients of z⁰ to z⁶ of the squared cubic. */
  private static List<Equation> squareOfCubic() {
    return List.of(
        squared(sym("b_0")),
        times(num(2), sym("b_0"), sym("b_1")),
        plus(squared(sym("b_1")), times(num(2), sym("b_0"), sym("b_2"))),
        plus(times(num(2), sym("b_0"), sym("b_3")), times(num(2), sym("b_1"), sym("b_2"))),
        plus(squared(sym("b_2")), times(num(2), sym("b_1"), sym("b_3"))),
        times(num(2), sym("b_2"), sym("b_3")),
        squared(sym("b_3")));
  }

  /** π D² H / 40000 times the antiderivative at z_2 less that at z_1. */
  private static Equation integral(List<Equation> coefficients) {
    return ends(minus(antiderivative(coefficients, "z_2"), antiderivative(coefficients, "z_1")));
  }

  private static Equation ends(Equation difference) {
    return where(
        "z_1",
        over(sym("h_1"), sym("H")),
        where(
            "z_2",
            over(sym("h_2"), sym("H")),
            times(over(pi(), num(40000)), squared(sym("D")), sym("H"), difference)));
  }

  private static Equation antiderivative(List<Equation> coefficients, String z) {
    List<Equation> terms = new ArrayList<>();
    for (int i = 0; i < coefficients.size(); i++) {
      terms.add(over(times(coefficients.get(i), pow(sym(z), num(i + 1))), num(i + 1)));
    }
    return new Equation.Sum(terms);
  }

  private static Equation segmented() {
    return ends(minus(segmentedAt("z_2"), segmentedAt("z_1")));
  }

  private static Equation segmentedAt(String z) {
    return plus(
        times(sym("b_1"), minus(over(squared(sym(z)), num(2)), sym(z))),
        times(sym("b_2"), minus(over(pow(sym(z), num(3)), num(3)), sym(z))),
        new Equation.Negative(over(times(sym("b_3"), cube(z, "a_1")), num(3))),
        new Equation.Negative(over(times(sym("b_4"), cube(z, "a_2")), num(3))));
  }

  /** Cubed distance below a joint; nothing above it. */
  private static Equation cube(String z, String at) {
    return new Equation.Cases(
        List.of(
            new Equation.Branch(
                new Equation.Condition(sym(z), AT_MOST, sym(at)),
                pow(minus(sym(at), sym(z)), num(3)))),
        num(0));
  }
}
