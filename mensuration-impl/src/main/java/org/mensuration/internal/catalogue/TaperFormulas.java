package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
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
import org.mensuration.kernel.Taper;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Diameters of taper curves. Immutable and thread-safe. */
public final class TaperFormulas {
  static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  static final Domain POSITIVE = Domain.above(0);

  /** From nearly a cylinder to more than any stem tapers. */
  static final Domain EXPONENT = Domain.closed(0.1, 5);

  static final Domain COEFFICIENT = Domain.any();
  static final String ONE_SPECIES = "coefficients belong to a species, a region and a bark basis";

  /** Power curve. */
  public static final BoundFormula POWER =
      power("stem/taper-power", "Diameter from a power taper curve")
          .input("at_height", "h", "m", NOT_NEGATIVE, "height wanted")
          .input("exponent", "p", "1", EXPONENT, "exponent of the diameter")
          .relation("reference_height", LESS, 1, "height", "h_r < H")
          .relation("at_height", AT_MOST, 1, "height", "h ≤ H")
          .gives(
              "diameter",
              "d",
              "cm",
              times(
                  sym("D"),
                  pow(over(minus(sym("H"), sym("h")), minus(sym("H"), sym("h_r"))), sym("p"))))
          .cites(Citation.fromMemory("simple bole model: power of the distance from the tip"))
          .note("1/2 is a paraboloid, 1 a cone, 3/2 a neiloid")
          .kernelOfArrays(Taper::power);

  /** Height on a power curve. */
  public static final BoundFormula POWER_HEIGHT =
      power("stem/taper-power-height", "Height of a diameter on a power taper curve")
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter wanted")
          .input("exponent", "p", "1", EXPONENT, "exponent of the diameter")
          .relation("reference_height", LESS, 1, "height", "h_r < H")
          .gives(
              "at_height",
              "h",
              "m",
              minus(
                  sym("H"),
                  times(
                      minus(sym("H"), sym("h_r")),
                      pow(over(sym("d"), sym("D")), over(num(1), sym("p"))))))
          .cites(Citation.derived("stem/taper-power solved for the height"))
          .note("below zero where the curve reaches the diameter below the ground only")
          .kernelOfArrays(Taper::powerHeight);

  /** Quadratic curve. */
  public static final BoundFormula QUADRATIC =
      curve("stem/taper-quadratic", "Diameter from a quadratic taper curve")
          .input("b0", "b_0", "1", COEFFICIENT, "constant")
          .input("b1", "b_1", "1", COEFFICIENT, "coefficient of z")
          .input("b2", "b_2", "1", COEFFICIENT, "coefficient of z²")
          .gives(
              "diameter",
              "d",
              "cm",
              relative(
                  times(
                      sym("D"),
                      sqrt(
                          plus(
                              sym("b_0"),
                              times(sym("b_1"), sym("z")),
                              times(sym("b_2"), squared(sym("z"))))))))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES, StemWorks.KOZAK69, "squared relative diameter as a parabola"))
          .note(ONE_SPECIES)
          .note("refused where the curve has no positive area")
          .kernelOfArrays(Taper::quadratic);

  /** Height on a quadratic curve. */
  public static final BoundFormula QUADRATIC_HEIGHT =
      Definition.of(
              "stem/taper-quadratic-height",
              "Height at which a quadratic taper curve falls to a diameter",
              Nature.EMPIRICAL)
          .input("breast_height_diameter", "D", "cm", POSITIVE, "diameter at breast height")
          .input("height", "H", "m", POSITIVE, "height of the tip")
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter wanted")
          .input("b0", "b_0", "1", COEFFICIENT, "constant")
          .input("b1", "b_1", "1", COEFFICIENT, "coefficient of z")
          .input("b2", "b_2", "1", COEFFICIENT, "coefficient of z²")
          .gives("at_height", "h", "m", fallingRoot())
          .cites(Citation.derived("stem/taper-quadratic solved for the height, falling branch"))
          .note("may lie outside the stem, or be none; then it is refused")
          .note(
              "b2 = 0 is refused: the curve is a straight line, see stem/taper-power with p = 1/2")
          .kernelOfArrays(Taper::quadraticHeight);

  /** Cubic curve. */
  public static final BoundFormula CUBIC =
      curve("stem/taper-cubic", "Diameter from a cubic of the relative diameter")
          .input("b0", "b_0", "1", COEFFICIENT, "constant")
          .input("b1", "b_1", "1", COEFFICIENT, "coefficient of z")
          .input("b2", "b_2", "1", COEFFICIENT, "coefficient of z²")
          .input("b3", "b_3", "1", COEFFICIENT, "coefficient of z³")
          .gives(
              "diameter",
              "d",
              "cm",
              relative(
                  times(
                      sym("D"),
                      plus(
                          sym("b_0"),
                          times(sym("b_1"), sym("z")),
                          times(sym("b_2"), squared(sym("z"))),
                          times(sym("b_3"), pow(sym("z"), num(3)))))))
          .cites(Citation.fromMemory("relative diameter as a polynomial of relative height"))
          .note(ONE_SPECIES)
          .kernelOfArrays(Taper::cubic);

  /** Segmented curve. */
  public static final BoundFormula SEGMENTED =
      curve("stem/taper-segmented", "Diameter from a segmented taper curve")
          .input("b1", "b_1", "1", COEFFICIENT, "coefficient of z - 1")
          .input("b2", "b_2", "1", COEFFICIENT, "coefficient of z² - 1")
          .input("b3", "b_3", "1", COEFFICIENT, "coefficient of the upper joint")
          .input("b4", "b_4", "1", COEFFICIENT, "coefficient of the lower joint")
          .input("a1", "a_1", "1", Domain.open(0, 1), "upper joint, relative height")
          .input("a2", "a_2", "1", Domain.open(0, 1), "lower joint, relative height")
          .relation("a2", LESS, 1, "a1", "a_2 < a_1")
          .gives(
              "diameter",
              "d",
              "cm",
              relative(
                  times(
                      sym("D"),
                      sqrt(
                          plus(
                              times(sym("b_1"), minus(sym("z"), num(1))),
                              times(sym("b_2"), minus(squared(sym("z")), num(1))),
                              times(sym("b_3"), joint("a_1")),
                              times(sym("b_4"), joint("a_2")))))))
          .definedBy(StemWorks.QACUTA, "Table 2, where the root sign is missing")
          .cites(Citation.fromMemory(Role.EXPLAINS, StemWorks.MB76, "Max and Burkhart"))
          .note(ONE_SPECIES)
          .note("zero at the tip whatever the coefficients")
          .kernelOfArrays(Taper::segmented);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(POWER, POWER_HEIGHT, QUADRATIC, QUADRATIC_HEIGHT, CUBIC, SEGMENTED);

  private TaperFormulas() {}

  static Definition power(String id, String title) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input("reference_diameter", "D", "cm", POSITIVE, "diameter at the reference height")
        .input("reference_height", "h_r", "m", NOT_NEGATIVE, "such as breast height")
        .input("height", "H", "m", POSITIVE, "height of the tip");
  }

  private static Definition curve(String id, String title) {
    return Definition.of(id, title, Nature.EMPIRICAL)
        .input("breast_height_diameter", "D", "cm", POSITIVE, "diameter at breast height")
        .input("height", "H", "m", POSITIVE, "height of the tip")
        .input("at_height", "h", "m", NOT_NEGATIVE, "height wanted")
        .relation("at_height", AT_MOST, 1, "height", "h ≤ H");
  }

  private static Equation relative(Equation in) {
    return where("z", over(sym("h"), sym("H")), in);
  }

  /** Squared distance below a joint; nothing above it. */
  private static Equation joint(String at) {
    return new Equation.Cases(
        List.of(
            new Equation.Branch(
                new Equation.Condition(sym("z"), AT_MOST, sym(at)),
                squared(minus(sym(at), sym("z"))))),
        num(0));
  }

  private static Equation fallingRoot() {
    Equation constant = minus(sym("b_0"), squared(over(sym("d"), sym("D"))));
    Equation discriminant = minus(squared(sym("b_1")), times(num(4), sym("b_2"), sym("c")));
    return where(
        "c",
        constant,
        times(
            sym("H"),
            over(
                minus(new Equation.Negative(sym("b_1")), sqrt(discriminant)),
                times(num(2), sym("b_2")))));
  }
}
