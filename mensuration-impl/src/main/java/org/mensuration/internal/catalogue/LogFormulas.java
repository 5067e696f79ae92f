package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equation.num;
import static org.mensuration.formula.Equation.over;
import static org.mensuration.formula.Equation.pi;
import static org.mensuration.formula.Equation.plus;
import static org.mensuration.formula.Equation.squared;
import static org.mensuration.formula.Equation.sym;
import static org.mensuration.formula.Equation.times;
import static org.mensuration.formula.Equation.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.LogVolume;

/** Solid volume of logs. Immutable and thread-safe. */
public final class LogFormulas {
  private static final Domain DIAMETER = Domain.atLeast(0);
  private static final Domain LENGTH = Domain.atLeast(0);

  /** Huber. */
  public static final BoundFormula HUBER =
      Definition.of("log/huber", "Huber volume", Nature.GEOMETRIC)
          .input("middle_diameter", "d_m", "cm", DIAMETER, "diameter half way between the ends")
          .input("length", "L", "m", LENGTH, "length of the log")
          .gives("volume", "V", "m3", area("g_m", "d_m", times(sym("g_m"), sym("L"))))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1")
          .note("exact for a cylinder and a paraboloid; low for a cone and a neiloid")
          .kernel2(LogVolume::huber);

  /** Smalian. */
  public static final BoundFormula SMALIAN =
      Definition.of("log/smalian", "Smalian volume", Nature.GEOMETRIC)
          .input("large_diameter", "d_l", "cm", DIAMETER, "diameter of the large end")
          .input("small_diameter", "d_s", "cm", DIAMETER, "diameter of the small end")
          .input("length", "L", "m", LENGTH, "length of the log")
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_l",
                  "d_l",
                  area("g_s", "d_s", times(over(plus(sym("g_l"), sym("g_s")), num(2)), sym("L")))))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1")
          .note("exact for a cylinder and a paraboloid; high for a cone, a neiloid and butt swell")
          .kernel3(LogVolume::smalian);

  /** Newton. */
  public static final BoundFormula NEWTON =
      Definition.of("log/newton", "Newton volume", Nature.GEOMETRIC)
          .input("large_diameter", "d_l", "cm", DIAMETER, "diameter of the large end")
          .input("middle_diameter", "d_m", "cm", DIAMETER, "diameter half way between the ends")
          .input("small_diameter", "d_s", "cm", DIAMETER, "diameter of the small end")
          .input("length", "L", "m", LENGTH, "length of the log")
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_l",
                  "d_l",
                  area(
                      "g_m",
                      "d_m",
                      area(
                          "g_s",
                          "d_s",
                          times(
                              over(plus(sym("g_l"), times(num(4), sym("g_m")), sym("g_s")), num(6)),
                              sym("L"))))))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1")
          .note("exact for a cylinder, a paraboloid, a cone and a neiloid")
          .kernel4(LogVolume::newton);

  /** Frustum of a cone. */
  public static final BoundFormula CONE_FRUSTUM =
      Definition.of("log/cone-frustum", "Frustum of a cone", Nature.GEOMETRIC)
          .input("large_diameter", "D", "cm", DIAMETER, "diameter of the large end")
          .input("small_diameter", "d", "cm", DIAMETER, "diameter of the small end")
          .input("length", "L", "m", LENGTH, "length of the log")
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d ≤ D")
          .gives(
              "volume",
              "V",
              "m3",
              times(
                  over(pi(), num(12)),
                  over(
                      plus(squared(sym("D")), times(sym("D"), sym("d")), squared(sym("d"))),
                      num(10000)),
                  sym("L")))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1, two-end conic")
          .note("10 000 square centimetres make a square metre")
          .kernel3(LogVolume::coneFrustum);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(HUBER, SMALIAN, NEWTON, CONE_FRUSTUM);

  private LogFormulas() {}

  /** Names a sectional area in m² of a diameter in cm. */
  private static Equation area(String symbol, String diameter, Equation in) {
    return where(symbol, over(times(pi(), squared(sym(diameter))), num(40000)), in);
  }
}
