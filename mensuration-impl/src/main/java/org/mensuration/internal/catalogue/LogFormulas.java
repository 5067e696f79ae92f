package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.BulkKernel;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.SolidWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.LogVolume;
import org.mensuration.kernel.WeightedAreas;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

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
          .explainedBy(SolidWorks.GOST_R_52117, "section 5.1: middle diameter without bark")
          .note("exact for a cylinder and a paraboloid; low for a cone and a neiloid")
          .inBulk(weighted(WeightedAreas.HUBER))
          .kernel2(LogVolume::huber);

  /** Smalian. */
  public static final BoundFormula SMALIAN =
      ends("log/smalian", "Smalian volume", Nature.GEOMETRIC)
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
          .inBulk(weighted(WeightedAreas.SMALIAN))
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
          .inBulk(weighted(WeightedAreas.NEWTON))
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
          .explainedBy(SolidWorks.GOST_R_52117, "section 5.2: truncated cone")
          .note("10 000 square centimetres make a square metre")
          .kernel3(LogVolume::coneFrustum);

  /** Cylinder of the mean diameter. */
  public static final BoundFormula MEAN_DIAMETER =
      ends("log/mean-diameter", "Cylinder of the mean of the end diameters", Nature.CONVENTION)
          .gives(
              "volume",
              "V",
              "m3",
              where(
                  "d",
                  over(plus(sym("d_l"), sym("d_s")), num(2)),
                  area("g", "d", times(sym("g"), sym("L")))))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1, sub-neiloid")
          .note("low for every tapering log")
          .kernel3(LogVolume::meanDiameter);

  /** Frustum of a neiloid. */
  public static final BoundFormula NEILOID_FRUSTUM =
      ends("log/neiloid-frustum", "Frustum of a neiloid", Nature.GEOMETRIC)
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_l",
                  "d_l",
                  area(
                      "g_s",
                      "d_s",
                      times(
                          over(sym("L"), num(4)),
                          plus(
                              sym("g_l"),
                              root(times(squared(sym("g_l")), sym("g_s"))),
                              root(times(sym("g_l"), squared(sym("g_s")))),
                              sym("g_s"))))))
          .cites(Citation.derived("integral of an area that grows with the cube of the distance"))
          .kernel3(LogVolume::neiloidFrustum);

  /** Butt-log rule. */
  public static final BoundFormula BRUCE_BUTT =
      ends("log/bruce-butt", "Bruce butt-log rule", Nature.EMPIRICAL)
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_l",
                  "d_l",
                  area(
                      "g_s",
                      "d_s",
                      times(
                          plus(times(num("0.25"), sym("g_l")), times(num("0.75"), sym("g_s"))),
                          sym("L")))))
          .cites(Citation.fromMemory(Role.DEFINES, Works.BRUCE1982, "formula"))
          .note("for butt logs only; as a general rule it is far too low")
          .inBulk(weighted(WeightedAreas.BRUCE_BUTT))
          .kernel3(LogVolume::bruceButt);

  /** Hossfeld. */
  public static final BoundFormula HOSSFELD =
      Definition.of("log/hossfeld", "Hossfeld section", Nature.GEOMETRIC)
          .input("third_diameter", "d_3", "cm", DIAMETER, "diameter a third from the large end")
          .input("top_diameter", "d_t", "cm", DIAMETER, "diameter of the top")
          .input("length", "L", "m", LENGTH, "length of the log")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_3",
                  "d_3",
                  area(
                      "g_t",
                      "d_t",
                      times(over(plus(times(num(3), sym("g_3")), sym("g_t")), num(4)), sym("L")))))
          .cites(Citation.fromMemory("three times the area at one third and once the top area"))
          .note("exact for a paraboloid and a cone")
          .inBulk(weighted(WeightedAreas.HOSSFELD))
          .kernel3(LogVolume::hossfeld);

  /** Simony. */
  public static final BoundFormula SIMONY =
      Definition.of("log/simony", "Simony section", Nature.GEOMETRIC)
          .input("quarter_diameter", "d_1", "cm", DIAMETER, "diameter at a quarter of the length")
          .input("middle_diameter", "d_2", "cm", DIAMETER, "diameter at the middle")
          .input("three_quarter_diameter", "d_3", "cm", DIAMETER, "diameter at three quarters")
          .input("length", "L", "m", LENGTH, "length of the log")
          .relation("middle_diameter", AT_MOST, 1.4, "quarter_diameter", "d_2 ≤ 1.4 d_1")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  "g_1",
                  "d_1",
                  area(
                      "g_2",
                      "d_2",
                      area(
                          "g_3",
                          "d_3",
                          over(
                              times(
                                  sym("L"),
                                  plus(
                                      times(num(2), sym("g_1")),
                                      new Equation.Negative(sym("g_2")),
                                      times(num(2), sym("g_3")))),
                              num(3))))))
          .cites(Citation.fromMemory("twice the outer quarter areas less the middle area"))
          .note("exact for a paraboloid, a cone and a neiloid")
          .note(
              "the limit on the middle keeps the volume from falling below zero and leaves room for a whorl; it is a choice of this library")
          .inBulk(weighted(WeightedAreas.SIMONY))
          .kernel4(LogVolume::simony);

  /** Cylinder of the small end. */
  public static final BoundFormula SMALL_END_CYLINDER =
      Definition.of("log/small-end-cylinder", "Cylinder of the small end", Nature.CONVENTION)
          .input("small_diameter", "d_s", "cm", DIAMETER, "diameter of the small end")
          .input("length", "L", "m", LENGTH, "length of the log")
          .gives("volume", "V", "m3", area("g_s", "d_s", times(sym("g_s"), sym("L"))))
          .cites(Citation.commonPractice("the largest cylinder that a straight log holds"))
          .inBulk(weighted(WeightedAreas.HUBER))
          .kernel2(LogVolume::smallEndCylinder);

  /** Sorenson. */
  public static final BoundFormula SORENSON =
      Definition.of("log/sorenson", "Sorenson small-end rule", Nature.EMPIRICAL)
          .input("small_diameter", "d_s", "in", DIAMETER, "diameter of the small end")
          .input("length", "L", "ft", LENGTH, "length of the log")
          .gives(
              "volume",
              "V",
              "ft3",
              times(
                  over(pi(), num(576)),
                  squared(plus(sym("d_s"), times(num("0.05"), sym("L")))),
                  sym("L")))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1")
          .note("assumes a taper of one inch in ten feet; the 0.05 is inches per foot")
          .kernel2(LogVolume::sorenson);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          HUBER,
          SMALIAN,
          NEWTON,
          CONE_FRUSTUM,
          MEAN_DIAMETER,
          NEILOID_FRUSTUM,
          BRUCE_BUTT,
          HOSSFELD,
          SIMONY,
          SMALL_END_CYLINDER,
          SORENSON);

  private LogFormulas() {}

  /** Starts a formula of both ends and the length. */
  private static Definition ends(String id, String title, Nature nature) {
    return Definition.of(id, title, nature)
        .input("large_diameter", "d_l", "cm", DIAMETER, "diameter of the large end")
        .input("small_diameter", "d_s", "cm", DIAMETER, "diameter of the small end")
        .input("length", "L", "m", LENGTH, "length of the log")
        .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l");
  }

  /** The diameters in the order of the places, then the length, which has no weight as a place. */
  static BulkKernel weighted(WeightedAreas rule) {
    return (columns, results) -> rule.volumes(columns, columns[columns.length - 1], results);
  }

  static Equation root(Equation cube) {
    return new Equation.Root(cube, 3);
  }

  /** Names a sectional area in m² of a diameter in cm. */
  static Equation area(String symbol, String diameter, Equation in) {
    return where(symbol, over(times(pi(), squared(sym(diameter))), num(40000)), in);
  }
}
