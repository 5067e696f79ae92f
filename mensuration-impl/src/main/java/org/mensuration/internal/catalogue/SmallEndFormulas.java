package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.FLOOR;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
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
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.kernel.ScaledVolume;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Metric rules of the small end or of both ends. Immutable and thread-safe. */
public final class SmallEndFormulas {
  private static final Domain DIAMETER = Domain.atLeast(0);
  private static final double BRANCH_M = 6;
  private static final String AUTHORITY = "the text of the standard itself was not read";

  /** Brereton. */
  public static final BoundFormula BRERETON =
      Definition.of("log/brereton", "Brereton", Nature.CONVENTION)
          .input("large_diameter", "D", "cm", DIAMETER, "mean diameter of the large end")
          .input("small_diameter", "d", "cm", DIAMETER, "mean diameter of the small end")
          .input("length", "L", "m", DIAMETER, "length of the log")
          .relation("small_diameter", AT_MOST, 1, "large_diameter", "d ≤ D")
          .gives(
              "volume",
              "V",
              "m3",
              where(
                  "m",
                  over(plus(sym("D"), sym("d")), num(2)),
                  over(times(num("0.7854"), squared(sym("m")), sym("L")), num(10000))))
          .definedBy(ConventionWorks.BRERETON_BLOG2023, "Brereton paragraph")
          .note("the mean-diameter formula: always below the cone and Smalian")
          .kernel3(ScaledVolume::brereton);

  /** Brereton from one mean. */
  public static final BoundFormula BRERETON_MEAN =
      Definition.of(
              "log/brereton-mean", "Brereton from the mean of the readings", Nature.CONVENTION)
          .input("mean_diameter", "D", "cm", DIAMETER, "mean of the crossed readings of both ends")
          .input("length", "L", "m", DIAMETER, "length of the log")
          .gives(
              "volume",
              "V",
              "m3",
              over(times(num("0.7854"), squared(sym("D")), sym("L")), num(10000)))
          .definedBy(ConventionWorks.BRERETON_BLOG2023, "Brereton paragraph")
          .definedBy(ConventionWorks.JP_CUSTOMS_RULE, "section on hardwood, rule of 3 June 1961")
          .kernel2(ScaledVolume::breretonMean);

  /** JAS below 6 m. */
  public static final BoundFormula JAS_SHORT =
      smallEnd("log/jas-short", "Small-end square, logs under 6 m", Domain.open(0, BRANCH_M))
          .gives("volume", "V", "m3", square(sym("d")))
          .definedBy(ConventionWorks.JP_VOLUME_NOTE, "computation of 30 cm by 4 m")
          .explainedBy(ConventionWorks.JAS_QUOTATION, "quotation on the diameter")
          .tabulatedBy(ConventionWorks.KR_SMALL_END, "first example")
          .note("holds no π/4: 30 cm by 4 m scale 0.36 against a solid 0.283")
          .note("D is the smallest diameter through the centre, without bark; " + AUTHORITY)
          .kernel2(ScaledVolume::jasShort);

  /** JAS from 6 m. */
  public static final BoundFormula JAS_LONG =
      smallEnd("log/jas-long", "Small-end square, logs from 6 m", Domain.atLeast(BRANCH_M))
          .gives("volume", "V", "m3", tapered(num(1)))
          .definedBy(ConventionWorks.KR_SMALL_END, "second example")
          .note("at 6 m the rule jumps: 24 cm scale 8.5 % more than by the rule for short logs")
          .note("the Japanese text of this branch was read for the variant of 1968 only")
          .kernel2(ScaledVolume::jasLong);

  /** JAS, both branches. */
  public static final BoundFormula JAS =
      smallEnd("log/jas", "Small-end square", Domain.above(0))
          .gives("volume", "V", "m3", cases(sym("L"), "6", square(sym("d")), tapered(num(1))))
          .definedBy(ConventionWorks.KR_SMALL_END, "both examples")
          .explainedBy(ConventionWorks.JAS_QUOTATION, "quotation on the diameter")
          .note(AUTHORITY)
          .kernel2(ScaledVolume::jas);

  /** The unified rule of 1968. */
  public static final BoundFormula UNIFIED_1968 =
      smallEnd(
              "log/unified-1968",
              "Unified rule of 1968 for US wood, logs from 6 m",
              Domain.atLeast(BRANCH_M))
          .gives(
              "volume",
              "V",
              "m3",
              where(
                  "c",
                  cases(sym("d"), "30", num("0.6"), cases(sym("d"), "60", num("0.8"), num("1.0"))),
                  tapered(sym("c"))))
          .definedBy(ConventionWorks.JP_DOMESTIC_RULES, "section 1")
          .note("printed for even classes: up to 28 cm, 30 to 58 cm, from 60 cm")
          .kernel2(ScaledVolume::unified1968);

  /** Hiragoku. */
  public static final BoundFormula HIRAGOKU =
      Definition.of("log/hiragoku", "Hiragoku", Nature.CONVENTION)
          .input("largest_diameter", "D", "cm", DIAMETER, "largest diameter of the small end")
          .input("smallest_diameter", "d", "cm", DIAMETER, "smallest diameter of the small end")
          .input("length", "L", "m", DIAMETER, "length of the log")
          .relation("smallest_diameter", AT_MOST, 1, "largest_diameter", "d ≤ D")
          .gives("volume", "V", "m3", square(over(plus(sym("d"), sym("D")), num(2))))
          .definedBy(ConventionWorks.JP_DOMESTIC_RULES, "section 2")
          .note("in the text as read the square is lost; it is put back here")
          .kernel3((largest, smallest, length) -> ScaledVolume.hiragoku(smallest, largest, length));

  /** Class of an uneven small end. */
  public static final BoundFormula CROSSED_CLASS =
      Definition.of(
              "diameter/crossed-class", "Diameter class of an uneven small end", Nature.CONVENTION)
          .input("largest_diameter", "D", "cm", DIAMETER, "class of the largest diameter")
          .input("smallest_diameter", "d", "cm", DIAMETER, "class of the smallest diameter")
          .relation("smallest_diameter", AT_MOST, 1, "largest_diameter", "d ≤ D")
          .gives(
              "diameter",
              "c",
              "cm",
              cases(sym("d"), "14", sym("d"), cases(sym("d"), "40", wider("6"), wider("8"))))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES, ConventionWorks.GOST2292_JAS, "crossed-diameter increments"))
          .note("two centimetres for every full 6 cm, from 40 cm on 8 cm; " + AUTHORITY)
          .kernel2((largest, smallest) -> ScaledVolume.crossedClass(smallest, largest));

  /** Radius classes. */
  public static final BoundFormula RADIUS_CLASSES =
      Definition.of("log/radius-classes", "Metric scale by radius classes", Nature.CONVENTION)
          .input("large_radius", "R", "cm", DIAMETER, "radius class of the butt")
          .input("small_radius", "r", "cm", DIAMETER, "radius class of the top")
          .input("length", "L", "m", DIAMETER, "length of the log")
          .relation("small_radius", AT_MOST, 1, "large_radius", "r ≤ R")
          .gives(
              "volume",
              "V",
              "m3",
              over(times(pi(), plus(squared(sym("r")), squared(sym("R"))), sym("L")), num(20000)))
          .cites(
              Citation.fromMemory(
                  Role.DEFINES, ConventionWorks.BC_SCALING2011, "chapter 4, Smalian's formula"))
          .note("the text of the manual was not read; a radius class is a radius in whole cm")
          .kernel3(ScaledVolume::radiusClasses);

  /** Top measure. */
  public static final BoundFormula TOP_MEASURED =
      Definition.of("log/top-measured", "Top-measured cylinder", Nature.CONVENTION)
          .input("top_diameter", "d", "cm", DIAMETER, "diameter 10 cm inside the top, under bark")
          .input("length", "L", "m", DIAMETER, "length of the log")
          .gives(
              "volume",
              "V",
              "m3",
              over(times(over(pi(), num(4)), squared(sym("d")), sym("L")), num(10000)))
          .definedBy(ConventionWorks.M3TO_TERM, "definition of m3to")
          .explainedBy(ConventionWorks.KLASSBOTTEN, "entry: class bottom until 1999")
          .kernel2(ScaledVolume::topMeasured);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          BRERETON,
          BRERETON_MEAN,
          JAS_SHORT,
          JAS_LONG,
          JAS,
          UNIFIED_1968,
          HIRAGOKU,
          CROSSED_CLASS,
          RADIUS_CLASSES,
          TOP_MEASURED);

  private SmallEndFormulas() {}

  static Definition smallEnd(String id, String title, Domain length) {
    return Definition.of(id, title, Nature.CONVENTION)
        .input("small_diameter", "d", "cm", DIAMETER, "smallest diameter of the small end")
        .input("length", "L", "m", length, "length of the log");
  }

  static Equation cases(Equation left, String limit, Equation below, Equation otherwise) {
    return new Equation.Cases(
        List.of(new Equation.Branch(new Equation.Condition(left, LESS, num(limit)), below)),
        otherwise);
  }

  private static Equation wider(String difference) {
    Equation times = fn(FLOOR, over(minus(sym("D"), sym("d")), num(difference)));
    return plus(sym("d"), times(num(2), times));
  }

  private static Equation square(Equation diameter) {
    return over(times(squared(diameter), sym("L")), num(10000));
  }

  /** The square of the diameter grown by half the whole metres beyond four, or a share of it. */
  private static Equation tapered(Equation share) {
    Equation growth = over(minus(fn(FLOOR, sym("L")), num(4)), num(2));
    return square(plus(sym("d"), times(share, growth)));
  }
}
