package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.tanDegrees;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.OpticsWorks;
import org.mensuration.kernel.StemDiameter;
import org.mensuration.source.Citation;

/** Diameters from girth, calipers, forks and sticks. Immutable and thread-safe. */
public final class DiameterFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final String FIRST = "one diameter";
  private static final String SECOND = "the diameter at right angles to it";

  /** Girth tape. */
  public static final BoundFormula FROM_GIRTH =
      Definition.of("diameter/from-girth", "Diameter from girth", Nature.GEOMETRIC)
          .input("girth", "g", "cm", NOT_NEGATIVE, "girth by a tape")
          .gives("diameter", "D", "cm", over(sym("g"), pi()))
          .definedBy(OpticsWorks.SOUZA_D, "example 2")
          .explainedBy(
              OpticsWorks.MATERN56,
              "contents and introduction; the tape gives the mean of all calipers of a convex section")
          .note("overstates the area of every section that is not a circle")
          .kernel1(StemDiameter::fromGirth);

  /** Area from girth. */
  public static final BoundFormula AREA_FROM_GIRTH =
      Definition.of("diameter/area-from-girth", "Sectional area from girth", Nature.GEOMETRIC)
          .input("girth", "g", "cm", NOT_NEGATIVE, "girth by a tape")
          .gives("area", "A", "m2", over(squared(over(sym("g"), num(100))), times(num(4), pi())))
          .definedBy(OpticsWorks.SOUZA_D, "example 2")
          .note("never below the true area of a convex section")
          .kernel1(StemDiameter::areaFromGirth);

  /** Arithmetic mean. */
  public static final BoundFormula MEAN_OF_TWO =
      Definition.of(
              "diameter/mean-of-two",
              "Arithmetic mean of two diameters at right angles",
              Nature.CONVENTION)
          .input("first", "a", "cm", NOT_NEGATIVE, FIRST)
          .input("second", "b", "cm", NOT_NEGATIVE, SECOND)
          .gives("diameter", "D", "cm", over(plus(sym("a"), sym("b")), num(2)))
          .cites(Citation.commonPractice("two caliper readings at right angles are averaged"))
          .kernel2(StemDiameter::arithmeticMean);

  /** Quadratic mean. */
  public static final BoundFormula QUADRATIC_MEAN =
      Definition.of(
              "diameter/quadratic-mean-of-two",
              "Quadratic mean of two diameters at right angles",
              Nature.CONVENTION)
          .input("first", "a", "cm", NOT_NEGATIVE, FIRST)
          .input("second", "b", "cm", NOT_NEGATIVE, SECOND)
          .gives(
              "diameter", "D", "cm", sqrt(over(plus(squared(sym("a")), squared(sym("b"))), num(2))))
          .cites(Citation.commonPractice("the areas of the two circles are averaged"))
          .kernel2(StemDiameter::quadraticMean);

  /** Quadratic mean of any number. */
  public static final BoundFormula QUADRATIC_MEAN_OF_READINGS =
      Definition.of("diameter/quadratic-mean", "Quadratic mean of diameters", Nature.GEOMETRIC)
          .list("diameter", "d", "cm", NOT_NEGATIVE, "diameters of stems, or of one section")
          .gives(
              "mean",
              "D",
              "cm",
              sqrt(over(sumOver(squared(sym("d")), "d"), new Equation.ReadingCount("d"))))
          .definedBy(OpticsWorks.SOUZA_D, "example 2")
          .note("the diameter of the mean area")
          .kernelOfArrays(x -> StemDiameter.quadraticMean(x[0]));

  /** Geometric mean. */
  public static final BoundFormula GEOMETRIC_MEAN =
      Definition.of(
              "diameter/geometric-mean",
              "Geometric mean of two diameters at right angles",
              Nature.GEOMETRIC)
          .input("first", "a", "cm", NOT_NEGATIVE, FIRST)
          .input("second", "b", "cm", NOT_NEGATIVE, SECOND)
          .gives("diameter", "D", "cm", sqrt(times(sym("a"), sym("b"))))
          .cites(Citation.derived("the circle of the area of the ellipse with these axes"))
          .note("exact for an ellipse measured along its axes")
          .kernel2(StemDiameter::geometricMean);

  /** V-fork. */
  public static final BoundFormula FORK_CONTACT =
      Definition.of("diameter/v-fork", "Diameter from a V-fork pushed to contact", Nature.GEOMETRIC)
          .input(
              "vertex_to_contact",
              "m",
              "cm",
              NOT_NEGATIVE,
              "distance along a jaw from the vertex to the stem")
          .input("half_opening", "k", "deg", Domain.open(0, 90), "half the opening of the fork")
          .gives("diameter", "D", "cm", times(num(2), sym("m"), tanDegrees(sym("k"))))
          .cites(Citation.derived("a jaw is a tangent, square on the radius"))
          .kernel2(StemDiameter::forkContact);

  /** V-fork, read along the middle. */
  public static final BoundFormula FORK_AXIS =
      Definition.of(
              "diameter/v-fork-axis",
              "Diameter from a V-fork and the distance of its vertex to the axis",
              Nature.GEOMETRIC)
          .input(
              "vertex_to_axis",
              "c",
              "cm",
              NOT_NEGATIVE,
              "distance from the vertex to the stem axis")
          .input("half_opening", "k", "deg", Domain.open(0, 90), "half the opening of the fork")
          .gives("diameter", "D", "cm", times(num(2), sym("c"), sinDegrees(sym("k"))))
          .cites(Citation.derived("a jaw is a tangent, square on the radius"))
          .kernel2(StemDiameter::forkAxis);

  /** Sector fork. */
  public static final BoundFormula SECTOR_FORK =
      Definition.of("diameter/sector-fork", "Diameter from a sector fork", Nature.GEOMETRIC)
          .input(
              "pivot_offset",
              "a",
              "cm",
              POSITIVE,
              "distance of the crossbar from the pivot of the sight")
          .input(
              "angle",
              "q",
              "deg",
              Domain.fromBelow(0, 90),
              "angle of the tangent sight from the arm")
          .gives(
              "diameter",
              "D",
              "cm",
              over(
                  times(num(2), sym("a"), tanDegrees(over(sym("q"), num(2)))),
                  minus(num(1), tanDegrees(over(sym("q"), num(2))))))
          .cites(
              Citation.derived("arm and sight are tangents from the pivot: r = (a + r) tan(q/2)"))
          .note("one arm and the crossbar touch the stem, square to each other")
          .kernel2(StemDiameter::sectorFork);

  /** Graduated stick. */
  public static final BoundFormula STICK_READING =
      Definition.of(
              "diameter/graduated-stick",
              "Diameter from a graduated straight stick",
              Nature.GEOMETRIC)
          .input("mark", "m", "cm", NOT_NEGATIVE, "length read on the stick")
          .input("reach", "L", "cm", POSITIVE, "distance from the eye to the stick")
          .gives(
              "diameter",
              "D",
              "cm",
              plus(
                  over(squared(sym("m")), times(num(2), sym("L"))),
                  times(
                      sym("m"),
                      sqrt(plus(num(1), squared(over(sym("m"), times(num(2), sym("L")))))))))
          .cites(Citation.derived("m = D/√(1 + D/L) solved for D"))
          .explainedBy(OpticsWorks.SOUZA_D, "stick graduation, example 1")
          .note("the stick touches the near face and lies square to the sight")
          .kernel2(StemDiameter::stickReading);

  /** Mark on a graduated stick. */
  public static final BoundFormula STICK_MARK =
      Definition.of(
              "diameter/stick-mark",
              "Place of a diameter's mark on a straight stick",
              Nature.GEOMETRIC)
          .input("diameter", "D", "cm", NOT_NEGATIVE, "diameter")
          .input("reach", "L", "cm", POSITIVE, "distance from the eye to the stick")
          .gives("mark", "m", "cm", over(sym("D"), sqrt(plus(num(1), over(sym("D"), sym("L"))))))
          .definedBy(OpticsWorks.SOUZA_D, "stick graduation, example 1")
          .note("the stick touches the near face and lies square to the sight")
          .kernel2(StemDiameter::stickMark);

  /** Parallel sights. */
  public static final BoundFormula PARALLEL_SIGHTS =
      Definition.of(
              "diameter/parallel-sights",
              "Diameter between two nearly parallel sights",
              Nature.GEOMETRIC)
          .input("separation", "s", "cm", NOT_NEGATIVE, "distance between the sights, the reading")
          .input("axis_distance", "R", "m", POSITIVE, "distance to the stem axis")
          .input(
              "divergence",
              "q",
              "deg",
              Domain.closed(-5, 5),
              "angle by which the sights part, coming together negative")
          .gives(
              "diameter",
              "D",
              "cm",
              plus(sym("s"), times(num(100), sym("R"), tanDegrees(sym("q")))))
          .cites(Citation.derived("truly parallel sights read the diameter at any distance"))
          .note("one minute of arc at 20 m is 5.8 mm")
          .note("a result below zero says that the sights cross before the stem")
          .kernel3(StemDiameter::parallelSights);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          FROM_GIRTH,
          AREA_FROM_GIRTH,
          MEAN_OF_TWO,
          QUADRATIC_MEAN,
          QUADRATIC_MEAN_OF_READINGS,
          GEOMETRIC_MEAN,
          FORK_CONTACT,
          FORK_AXIS,
          SECTOR_FORK,
          STICK_READING,
          STICK_MARK,
          PARALLEL_SIGHTS);

  private DiameterFormulas() {}
}
