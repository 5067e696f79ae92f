package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_LEAST;
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
import org.mensuration.internal.formula.Kernel;
import org.mensuration.internal.source.SolidWorks;
import org.mensuration.kernel.RuleBias;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/**
 * What each solid rule gives too much on the frustum of a solid of revolution. Areas are counted in
 * that of the large end, distances from the tip in that of the large end. Immutable and
 * thread-safe.
 */
public final class BiasFormulas {
  static final Domain EXPONENT = Domain.closed(0.1, 4);
  static final String EXPONENT_MEANING =
      "power of the distance from the tip that the sectional area is in proportion to";

  private static final String ABSTRACT = "abstract, bounds of the mean absolute error";

  /** Huber. */
  public static final BoundFormula HUBER =
      bias("huber", "Huber", at(1, 1, 2))
          .explainedBy(SolidWorks.CRUZ2013, ABSTRACT)
          .kernel2(RuleBias::huber);

  /** Smalian. */
  public static final BoundFormula SMALIAN =
      bias("smalian", "Smalian", over(plus(num(1), small()), num(2)))
          .explainedBy(SolidWorks.CRUZ2013, ABSTRACT)
          .note("minus twice that of Huber for a cone and a neiloid")
          .kernel2(RuleBias::smalian);

  /** Newton. */
  public static final BoundFormula NEWTON =
      rule(
          "newton",
          "Newton",
          over(plus(num(1), times(num(4), at(1, 1, 2)), small()), num(6)),
          RuleBias::newton);

  /** Frustum of a cone. */
  public static final BoundFormula CONE_FRUSTUM =
      rule(
          "cone-frustum",
          "the frustum of a cone",
          over(plus(num(1), sym("q"), small()), num(3)),
          RuleBias::coneFrustum);

  /** Cylinder of the mean diameter. */
  public static final BoundFormula MEAN_DIAMETER =
      rule(
          "mean-diameter",
          "the mean of the end diameters",
          squared(over(plus(num(1), sym("q")), num(2))),
          RuleBias::meanDiameter);

  /** Frustum of a neiloid. */
  public static final BoundFormula NEILOID_FRUSTUM =
      rule(
          "neiloid-frustum",
          "the frustum of a neiloid",
          over(
              plus(num(1), LogFormulas.root(small()), LogFormulas.root(squared(small())), small()),
              num(4)),
          RuleBias::neiloidFrustum);

  /** Butt-log rule. */
  public static final BoundFormula BRUCE_BUTT =
      rule(
          "bruce-butt",
          "Bruce's butt-log rule",
          plus(num("0.25"), times(num("0.75"), small())),
          RuleBias::bruceButt);

  /** Hossfeld. */
  public static final BoundFormula HOSSFELD =
      rule(
          "hossfeld",
          "Hossfeld",
          over(plus(times(num(3), at(2, 1, 3)), small()), num(4)),
          RuleBias::hossfeld);

  /** Simony. */
  public static final BoundFormula SIMONY =
      rule(
          "simony",
          "Simony",
          over(
              plus(
                  times(num(2), at(3, 1, 4)),
                  new Equation.Negative(at(1, 1, 2)),
                  times(num(2), at(1, 3, 4))),
              num(3)),
          RuleBias::simony);

  /** Three-eighths rule. */
  public static final BoundFormula THREE_EIGHTHS =
      rule(
          "three-eighths",
          "the three-eighths rule",
          over(
              plus(num(1), times(num(3), at(2, 1, 3)), times(num(3), at(1, 2, 3)), small()),
              num(8)),
          RuleBias::threeEighths);

  /** Centroid rule. */
  public static final BoundFormula CENTROID =
      rule("centroid", "the centroid rule", centroid(), RuleBias::centroid);

  /** Cylinder of the small end. */
  public static final BoundFormula SMALL_END_CYLINDER =
      rule(
          "small-end-cylinder",
          "the cylinder of the small end",
          small(),
          RuleBias::smallEndCylinder);

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
          THREE_EIGHTHS,
          CENTROID,
          SMALL_END_CYLINDER);

  private BiasFormulas() {}

  private static BoundFormula rule(String name, String words, Equation mean, Kernel.Of2 kernel) {
    return bias(name, words, mean).kernel2(kernel);
  }

  private static Definition bias(String name, String words, Equation mean) {
    return Definition.of("bias/" + name, "Bias of " + words + " on a frustum", Nature.GEOMETRIC)
        .input("exponent", "k", "1", EXPONENT, EXPONENT_MEANING)
        .input(
            "diameter_ratio",
            "q",
            "1",
            Domain.closed(0, 1),
            "diameter of the small end over that of the large end; 0 with the tip")
        .gives("bias", "B", "%", onFrustum(mean))
        .cites(
            Citation.derived(
                "integral of an area in proportion to a power of the distance from the tip"))
        .cites(Citation.published(Role.EXPLAINS, SolidWorks.MASSENET2006, "section 2.1 models"))
        .note("k = 1 paraboloid, 2 cone, 3 neiloid");
  }

  /**
   * The rule's mean area over the true one, less one, in per cent. With the small end at the
   * distance u from the tip and the large end at 1, the true volume is the whole solid less the top
   * that was cut off, each its base times its length over k + 1.
   */
  private static Equation onFrustum(Equation mean) {
    Equation integral =
        over(
            minus(num(1), times(small(), sym("u"))),
            times(plus(sym("k"), num(1)), minus(num(1), sym("u"))));
    Equation whole =
        new Equation.Cases(
            List.of(
                new Equation.Branch(new Equation.Condition(sym("q"), AT_LEAST, num(1)), num(1))),
            integral);
    return where(
        "u",
        pow(sym("q"), over(num(2), sym("k"))),
        where("v", whole, times(num(100), minus(over(mean, sym("v")), num(1)))));
  }

  private static Equation small() {
    return squared(sym("q"));
  }

  /** Area where the distances of large and small end from the tip have these weights. */
  private static Equation at(int large, int small, int sum) {
    return pow(over(plus(num(large), times(num(small), sym("u"))), num(sum)), sym("k"));
  }

  /** The quadratic through three areas, of unit length; e is counted from the small end. */
  private static Equation centroid() {
    Equation printed =
        over(
            minus(sqrt(plus(num(1), pow(sym("q"), num(4)))), times(sqrt(num(2)), small())),
            times(sqrt(num(2)), minus(num(1), small())));
    Equation place =
        new Equation.Cases(
            List.of(
                new Equation.Branch(
                    new Equation.Condition(sym("q"), AT_LEAST, num(1)), num("0.5"))),
            printed);
    Equation area = pow(plus(sym("e"), times(minus(num(1), sym("e")), sym("u"))), sym("k"));
    Equation curve =
        over(
            minus(minus(num(1), small()), over(minus(sym("g_c"), small()), sym("e"))),
            minus(num(1), sym("e")));
    Equation slope = minus(minus(num(1), small()), sym("c"));
    Equation mean = plus(small(), over(sym("b"), num(2)), over(sym("c"), num(3)));
    return where("e", place, where("g_c", area, where("c", curve, where("b", slope, mean))));
  }
}
