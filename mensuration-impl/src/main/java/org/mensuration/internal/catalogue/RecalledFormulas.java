package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.EXP;
import static org.mensuration.formula.Equation.FunctionName.LN;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.kernel.RecalledScale;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/**
 * Rules of countries whose standards were not read at all and that are recalled. Immutable and
 * thread-safe.
 */
public final class RecalledFormulas {
  private static final Domain SIZE = Domain.atLeast(0);

  /** Cubic scale of the national forests of the United States. */
  public static final BoundFormula NATIONAL_CUBIC =
      Definition.of("log/national-cubic", "National forest cubic scale", Nature.CONVENTION)
          .input("large_diameter", "D", "in", SIZE, "diameter class of the large end")
          .input("small_diameter", "d", "in", SIZE, "diameter class of the small end")
          .input("length", "L", "ft", SIZE, "length of the segment")
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d ≤ D")
          .gives(
              "volume",
              "V",
              "ft3",
              times(num("0.002727"), plus(squared(sym("d")), squared(sym("D"))), sym("L")))
          .cites(
              Citation.fromMemory(
                  "National Forest Cubic Scaling Handbook: Smalian by segments, 0.002727"))
          .note("0.002727 is half of pi/576; a segment has at most 20 ft")
          .note("butt swell is corrected for in the northwest by a formula that was not read")
          .kernel3(RecalledScale::nationalCubic);

  /** Three-dimensional rule of New Zealand. */
  public static final BoundFormula THREE_DIMENSIONAL =
      Definition.of(
              "log/three-dimensional", "New Zealand three-dimensional rule", Nature.CONVENTION)
          .input("large_diameter", "D", "cm", Domain.above(0), "diameter of the large end")
          .input("small_diameter", "d", "cm", Domain.above(0), "diameter of the small end")
          .input("length", "L", "m", Domain.above(0), "length of the log")
          .relation("small_diameter", LESS, 1, "large_diameter", "d < D")
          .gives("volume", "V", "m3", plus(over(fn(EXP, taperWood()), num(1000)), cylinder()))
          .cites(Citation.fromMemory(Role.DEFINES, ConventionWorks.ELLIS1982, "formula"))
          .note("for logs of conifers under bark; the wood beyond the small-end cylinder is fitted")
          .note("recalled and unverified: no cell of the bulletin was read")
          .kernel3(RecalledScale::threeDimensional);

  /** Top diameter and a taper of 1 in 120. */
  public static final BoundFormula BRITISH_TOP =
      Definition.of("log/british-top", "British top-diameter rule", Nature.CONVENTION)
          .input("top_diameter", "d", "cm", SIZE, "class of the top diameter")
          .input("length", "L", "m", SIZE, "class of the length")
          .gives(
              "volume",
              "V",
              "m3",
              over(
                  times(
                      over(pi(), num(4)),
                      squared(plus(sym("d"), over(times(num(100), sym("L")), num(240)))),
                      sym("L")),
                  num(10000)))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES,
                  ConventionWorks.HAMILTON1975,
                  "top-diameter tables assume a taper of 1 in 120"))
          .note("the middle is half the length times 1/120 thicker than the top")
          .note("no cell of the printed tables was read")
          .kernel2(RecalledScale::britishTop);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(NATIONAL_CUBIC, THREE_DIMENSIONAL, BRITISH_TOP);

  private RecalledFormulas() {}

  private static Equation taperWood() {
    Equation taper = over(minus(sym("D"), sym("d")), sym("L"));
    return plus(
        times(num("1.944157"), fn(LN, sym("L"))),
        times(num("0.029931"), sym("d")),
        minus(times(num("0.884711"), fn(LN, taper)), num("0.038675")));
  }

  private static Equation cylinder() {
    return times(num("0.00007854"), squared(sym("d")), sym("L"));
  }
}
