package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_LEAST;
import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.pow;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;
import static org.mensuration.internal.catalogue.LogFormulas.area;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.SolidWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.kernel.CentroidSection;
import org.mensuration.kernel.LogVolume;
import org.mensuration.kernel.Prismoid;
import org.mensuration.kernel.RevolutionSolid;
import org.mensuration.kernel.Sectional;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/**
 * Sections of several readings, sums of sections, and the general solid of revolution. Immutable
 * and thread-safe.
 */
public final class SectionFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final String LENGTH = "length of the log";
  private static final String SECTIONS =
      "section 2.2: logs over 15 m in at least two sections, over 20 m always";
  private static final String LARGE = "diameter of the large end";
  private static final String SMALL = "diameter of the small end";

  /** Three-eighths rule. */
  public static final BoundFormula THREE_EIGHTHS =
      Definition.of("log/three-eighths", "Three-eighths rule", Nature.GEOMETRIC)
          .input("large_diameter", "d_0", "cm", NOT_NEGATIVE, LARGE)
          .input(
              "first_third_diameter",
              "d_1",
              "cm",
              NOT_NEGATIVE,
              "diameter a third of the length from the large end")
          .input(
              "second_third_diameter",
              "d_2",
              "cm",
              NOT_NEGATIVE,
              "diameter two thirds of the length from the large end")
          .input("small_diameter", "d_3", "cm", NOT_NEGATIVE, SMALL)
          .input("length", "L", "m", NOT_NEGATIVE, LENGTH)
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_3 ≤ d_0")
          .gives("volume", "V", "m3", threeEighths())
          .cites(
              Citation.fromMemory(
                  "ends once and thirds three times, an eighth of it, times length"))
          .note("exact for a paraboloid, a cone and a neiloid")
          .kernelOfArrays(x -> LogVolume.threeEighths(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Place of the centroid reading. */
  public static final BoundFormula CENTROID_POSITION =
      Definition.of(
              "log/centroid-position",
              "Half-volume point of a paraboloid frustum",
              Nature.GEOMETRIC)
          .input("large_diameter", "d_l", "cm", Domain.above(0), LARGE)
          .input("small_diameter", "d_s", "cm", NOT_NEGATIVE, SMALL)
          .input("length", "L", "m", Domain.above(0), LENGTH)
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l")
          .gives("position", "e", "m", position())
          .cites(Citation.fromMemory(Role.DEFINES, SolidWorks.WIANT1992, "formula"))
          .note("counted from the small end; half the length for equal ends, L/√2 for a tip")
          .kernel3(CentroidSection::position);

  /** Centroid rule. */
  public static final BoundFormula CENTROID =
      Definition.of("log/centroid", "Centroid rule", Nature.GEOMETRIC)
          .input("large_diameter", "d_l", "cm", Domain.above(0), LARGE)
          .input(
              "centroid_diameter",
              "d_c",
              "cm",
              NOT_NEGATIVE,
              "diameter at the half-volume point of the paraboloid frustum")
          .input("small_diameter", "d_s", "cm", NOT_NEGATIVE, SMALL)
          .input("length", "L", "m", Domain.above(0), LENGTH)
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l")
          .relation("centroid_diameter", AT_LEAST, 0.4, "large_diameter", "d_c ≥ 0.4 d_l")
          .gives("volume", "V", "m3", centroid())
          .cites(Citation.fromMemory(Role.DEFINES, SolidWorks.WIANT1992, "formula"))
          .note("exact for a paraboloid and a cone; log/centroid-position says where to measure")
          .note(
              "below 0.3 of the large end the fitted area would give a negative volume; the limit of 0.4 is a choice of this library")
          .kernel4(CentroidSection::volume);

  /** Frustum of a solid of revolution. */
  public static final BoundFormula SOLID_FRUSTUM =
      Definition.of("log/solid-frustum", "Frustum of a solid of revolution", Nature.GEOMETRIC)
          .input("large_diameter", "d_l", "cm", Domain.above(0), LARGE)
          .input("small_diameter", "d_s", "cm", NOT_NEGATIVE, SMALL)
          .input("length", "L", "m", NOT_NEGATIVE, LENGTH)
          .input("exponent", "k", "1", BiasFormulas.EXPONENT, BiasFormulas.EXPONENT_MEANING)
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d_s ≤ d_l")
          .gives("volume", "V", "m3", solidFrustum())
          .definedBy(SolidWorks.MASSENET2006, "section 2.1 models")
          .note("k = 1 paraboloid, 2 cone, 3 neiloid; 1.5 between paraboloid and cone")
          .kernel4(RevolutionSolid::frustum);

  /** Prismoid. */
  public static final BoundFormula PRISMOID =
      prismoid("log/prismoid", "Squared timber by the prismoid")
          .gives(
              "volume",
              "V",
              "ft3",
              over(
                  times(
                      over(
                          plus(
                              times(sym("a"), sym("b")),
                              times(num(4), middleSection()),
                              times(sym("c"), sym("d"))),
                          num(6)),
                      sym("L")),
                  num(144)))
          .definedBy(SolidWorks.MENSURATION_TREATISE, "problem II, note under example 5")
          .kernelOfArrays(x -> Prismoid.volume(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Mean section. */
  public static final BoundFormula MEAN_SECTION =
      prismoid("log/prismoid-mean-section", "Squared timber by the mean section")
          .gives("volume", "V", "ft3", over(times(middleSection(), sym("L")), num(144)))
          .definedBy(SolidWorks.MENSURATION_TREATISE, "problem II, example 5")
          .note("low by a twelfth of the product of the differences of width and depth")
          .kernelOfArrays(x -> Prismoid.meanSection(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Sections by Huber. */
  public static final BoundFormula SECTIONAL_HUBER =
      Definition.of("log/sectional-huber", "Sectional volume by Huber", Nature.GEOMETRIC)
          .list("middle_diameter", "d_m", "cm", NOT_NEGATIVE, "diameter of each section's middle")
          .list("length", "L", "m", NOT_NEGATIVE, "length of each section")
          .gives(
              "volume",
              "V",
              "m3",
              sumOver(area("g_m", "d_m", times(sym("g_m"), sym("L"))), "d_m", "L"))
          .definedBy(SolidWorks.BRACK_WOOD1998_LOGS, "page S_SECT, standard sectional method")
          .explainedBy(SolidWorks.RWG2_CODE, SECTIONS)
          .note("the tip of a stem is added as a cone or a paraboloid")
          .kernelOfArrays(x -> Sectional.huber(x[0], x[1]));

  /** Sections by Smalian. */
  public static final BoundFormula SECTIONAL_SMALIAN =
      ends("log/sectional-smalian", "Sectional volume by Smalian")
          .list("small_diameter", "d_s", "cm", NOT_NEGATIVE, "small end of each section")
          .list("length", "L", "m", NOT_NEGATIVE, "length of each section")
          .gives(
              "volume",
              "V",
              "m3",
              sumOver(
                  area(
                      "g_l",
                      "d_l",
                      area(
                          "g_s",
                          "d_s",
                          times(over(plus(sym("g_l"), sym("g_s")), num(2)), sym("L")))),
                  "d_l",
                  "d_s",
                  "L"))
          .definedBy(SolidWorks.BRACK_WOOD1998_LOGS, "page S_SECT, standard sectional method")
          .explainedBy(
              SolidWorks.GOULDING1979, "abstract: over 8 % of error with 5 m sections of a pine")
          .explainedBy(SolidWorks.RWG2_CODE, SECTIONS)
          .note("the tip of a stem is added as a cone or a paraboloid")
          .kernelOfArrays(x -> Sectional.smalian(x[0], x[1], x[2]));

  /** Sections by Newton. */
  public static final BoundFormula SECTIONAL_NEWTON =
      ends("log/sectional-newton", "Sectional volume by Newton")
          .list("middle_diameter", "d_m", "cm", NOT_NEGATIVE, "middle of each section")
          .list("small_diameter", "d_s", "cm", NOT_NEGATIVE, "small end of each section")
          .list("length", "L", "m", NOT_NEGATIVE, "length of each section")
          .gives(
              "volume",
              "V",
              "m3",
              sumOver(
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
                                  over(
                                      plus(sym("g_l"), times(num(4), sym("g_m")), sym("g_s")),
                                      num(6)),
                                  sym("L"))))),
                  "d_l",
                  "d_m",
                  "d_s",
                  "L"))
          .cites(Citation.commonPractice("sum of sections, each by Newton's rule"))
          .definedBy(Works.BRIGGS_CH2, "Table 2-1, for each section")
          .explainedBy(SolidWorks.RWG2_CODE, SECTIONS)
          .note("the tip of a stem is added as a cone or a paraboloid")
          .kernelOfArrays(x -> Sectional.newton(x[0], x[1], x[2], x[3]));

  /** Sections by their middle areas. */
  public static final BoundFormula SECTIONAL_AREAS =
      Definition.of("log/sectional-areas", "Sectional volume from middle areas", Nature.GEOMETRIC)
          .list("middle_area", "g_m", "m2", NOT_NEGATIVE, "area of each section's middle")
          .list("length", "L", "m", NOT_NEGATIVE, "length of each section")
          .gives("volume", "V", "m3", sumOver(times(sym("g_m"), sym("L")), "g_m", "L"))
          .definedBy(SolidWorks.PLAINMATH_LOG, "solution, sum of five 2 m intervals")
          .kernelOfArrays(x -> Sectional.areas(x[0], x[1]));

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          THREE_EIGHTHS,
          CENTROID_POSITION,
          CENTROID,
          SOLID_FRUSTUM,
          PRISMOID,
          MEAN_SECTION,
          SECTIONAL_HUBER,
          SECTIONAL_SMALIAN,
          SECTIONAL_NEWTON,
          SECTIONAL_AREAS);

  private SectionFormulas() {}

  private static Definition ends(String id, String title) {
    return Definition.of(id, title, Nature.GEOMETRIC)
        .list("large_diameter", "d_l", "cm", NOT_NEGATIVE, "large end of each section");
  }

  private static Definition prismoid(String id, String title) {
    return Definition.of(id, title, Nature.GEOMETRIC)
        .input("large_width", "a", "in", NOT_NEGATIVE, "width of the large end")
        .input("large_depth", "b", "in", NOT_NEGATIVE, "depth of the large end")
        .input("small_width", "c", "in", NOT_NEGATIVE, "width of the small end")
        .input("small_depth", "d", "in", NOT_NEGATIVE, "depth of the small end")
        .input("length", "L", "ft", NOT_NEGATIVE, "length of the timber");
  }

  private static Equation middleSection() {
    return times(over(plus(sym("a"), sym("c")), num(2)), over(plus(sym("b"), sym("d")), num(2)));
  }

  private static Equation threeEighths() {
    return area(
        "g_0",
        "d_0",
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
                                sym("g_0"),
                                times(num(3), sym("g_1")),
                                times(num(3), sym("g_2")),
                                sym("g_3"))),
                        num(8))))));
  }

  /** The printed form has no value for equal ends and for a tip; there its limits stand. */
  private static Equation position() {
    Equation ratio = over(sym("d_l"), sym("d_s"));
    Equation printed =
        over(
            times(sym("L"), minus(sqrt(plus(pow(ratio, num(4)), num(1))), sqrt(num(2)))),
            times(sqrt(num(2)), minus(squared(ratio), num(1))));
    return new Equation.Cases(
        List.of(
            new Equation.Branch(
                new Equation.Condition(sym("d_s"), AT_LEAST, sym("d_l")), over(sym("L"), num(2))),
            new Equation.Branch(
                new Equation.Condition(sym("d_s"), AT_MOST, num(0)), over(sym("L"), sqrt(num(2))))),
        printed);
  }

  private static Equation centroid() {
    Equation volume =
        plus(
            times(sym("g_s"), sym("L")),
            over(times(sym("b"), squared(sym("L"))), num(2)),
            over(times(sym("c"), pow(sym("L"), num(3))), num(3)));
    Equation slope =
        over(minus(minus(sym("g_l"), sym("g_s")), times(sym("c"), squared(sym("L")))), sym("L"));
    Equation curve =
        over(
            minus(
                minus(sym("g_l"), sym("g_s")),
                times(over(sym("L"), sym("e")), minus(sym("g_c"), sym("g_s")))),
            minus(squared(sym("L")), times(sym("L"), sym("e"))));
    Equation fitted = where("e", position(), where("c", curve, where("b", slope, volume)));
    return area("g_l", "d_l", area("g_c", "d_c", area("g_s", "d_s", fitted)));
  }

  /** The whole solid less the top cut off; u is the distance of the small end over the large. */
  private static Equation solidFrustum() {
    Equation power =
        over(
            minus(sym("g_l"), times(sym("g_s"), sym("u"))),
            times(plus(sym("k"), num(1)), minus(num(1), sym("u"))));
    Equation mean =
        new Equation.Cases(
            List.of(
                new Equation.Branch(
                    new Equation.Condition(sym("d_s"), AT_LEAST, sym("d_l")), sym("g_l"))),
            power);
    return area(
        "g_l",
        "d_l",
        area(
            "g_s",
            "d_s",
            where(
                "u",
                pow(over(sym("d_s"), sym("d_l")), over(num(2), sym("k"))),
                times(mean, sym("L")))));
  }
}
