package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
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
import org.mensuration.kernel.StemSampling;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Sampling along one stem and among stems. Immutable and thread-safe. */
public final class StemSamplingFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** Height of a random number. */
  public static final BoundFormula IMPORTANCE_HEIGHT =
      Definition.of(
              "stem/importance-height",
              "Height drawn in proportion to a paraboloid",
              Nature.STATISTICAL)
          .input("height", "H", "m", NOT_NEGATIVE, "height of the tree")
          .input("u", "u", "1", Domain.fromBelow(0, 1), "random number, evenly spread")
          .gives(
              "sampled_height",
              "h",
              "m",
              times(sym("H"), minus(num(1), sqrt(minus(num(1), sym("u"))))))
          .cites(Citation.derived("the part u of the paraboloid's volume lies below h"))
          .explainedBy(StemWorks.AWF_IS, "principle and integral")
          .note("antithetic heights come from u and 1 - u")
          .kernel2(StemSampling::importanceHeight);

  /** Importance sampling. */
  public static final BoundFormula IMPORTANCE =
      Definition.of(
              "stem/importance",
              "Importance estimate of a full stem from one random height",
              Nature.STATISTICAL)
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter at the height drawn")
          .input("height", "H", "m", POSITIVE, "height of the tree")
          .input("sampled_height", "h", "m", NOT_NEGATIVE, "height drawn")
          .relation("sampled_height", LESS, 1, "height", "h < H")
          .gives(
              "volume",
              "V",
              "m3",
              area(
                  over(
                      times(over(sym("H"), num(2)), sym("g")),
                      minus(num(1), over(sym("h"), sym("H"))))))
          .cites(Citation.derived("proxy volume × area ÷ proxy area, with a paraboloid as proxy"))
          .explainedBy(StemWorks.AWF_IS, "principle and integral")
          .note("without bias for a stem of any form when h is drawn by stem/importance-height")
          .kernel3(StemSampling::importance);

  /** Importance sampling with any proxy. */
  public static final BoundFormula IMPORTANCE_PROXY =
      Definition.of(
              "stem/importance-proxy",
              "Importance estimate from one random height and any proxy",
              Nature.STATISTICAL)
          .input("proxy_volume", "V_p", "m3", NOT_NEGATIVE, "volume of the proxy, part wanted")
          .input("diameter", "d", "cm", NOT_NEGATIVE, "diameter at the height drawn")
          .input("proxy_diameter", "d_p", "cm", POSITIVE, "diameter of the proxy there")
          .gives(
              "volume", "V", "m3", over(times(sym("V_p"), squared(sym("d"))), squared(sym("d_p"))))
          .definedBy(StemWorks.AWF_IS, "principle and integral")
          .note("without bias if the proxy is positive wherever the stem is")
          .kernel3(StemSampling::importanceProxy);

  /** Height of the centroid. */
  public static final BoundFormula CENTROID_HEIGHT =
      Definition.of(
              "stem/centroid-height",
              "Height below which half of a paraboloid lies",
              Nature.GEOMETRIC)
          .input("height", "H", "m", NOT_NEGATIVE, "height of the tree")
          .gives(
              "centroid_height",
              "h",
              "m",
              times(sym("H"), minus(num(1), over(num(1), sqrt(num(2))))))
          .cites(Citation.derived("stem/importance-height with u = 1/2"))
          .note("0.2929 of the height")
          .kernel1(StemSampling::centroidHeight);

  /** Centroid estimate. */
  public static final BoundFormula CENTROID =
      Definition.of(
              "stem/centroid",
              "Centroid estimate of a full stem from one diameter",
              Nature.GEOMETRIC)
          .input("centroid_diameter", "d", "cm", NOT_NEGATIVE, "diameter at stem/centroid-height")
          .input("height", "H", "m", NOT_NEGATIVE, "height of the tree")
          .gives("volume", "V", "m3", area(over(times(sym("g"), sym("H")), sqrt(num(2)))))
          .cites(Citation.derived("stem/importance with u = 1/2"))
          .explainedBy(StemWorks.WW98, "abstract: biased in general")
          .note("exact for a paraboloid and a neiloid, 6 % high for a cone")
          .kernel2(StemSampling::centroid);

  /** 3P total. */
  public static final BoundFormula THREE_P =
      Definition.of(
              "stem/three-p-total",
              "Total from trees drawn with probability proportional to a prediction",
              Nature.STATISTICAL)
          .input("sum_of_predictions", "X", "1", NOT_NEGATIVE, "predictions of all trees together")
          .input("mean_ratio", "r", "1", NOT_NEGATIVE, "mean of measured over predicted, drawn")
          .gives("total", "T", "1", times(sym("X"), sym("r")))
          .cites(Citation.fromMemory(Role.DEFINES, StemWorks.HBK, "3P, adjusted estimate"))
          .note("adjusted for the number of trees that happened to be drawn")
          .kernel2(StemSampling::threePTotal);

  /** 3P total, unadjusted. */
  public static final BoundFormula THREE_P_UNADJUSTED =
      Definition.of(
              "stem/three-p-unadjusted",
              "3P total not adjusted for the number of trees drawn",
              Nature.STATISTICAL)
          .list("ratio", "r", "1", NOT_NEGATIVE, "measured over predicted of each tree drawn")
          .input("ceiling", "K", "1", POSITIVE, "largest random number")
          .gives("total", "T", "1", times(sym("K"), sumOver(sym("r"), "r")))
          .cites(Citation.fromMemory(Role.DEFINES, StemWorks.HBK, "3P, unadjusted estimate"))
          .note("a tree is drawn when its prediction is not below a random number from 1 to K")
          .note("the ceiling must exceed the largest prediction")
          .kernelOfArrays(StemSampling::threePUnadjusted);

  /** Size of a 3P sample. */
  public static final BoundFormula THREE_P_SAMPLE =
      Definition.of("stem/three-p-sample", "Trees to expect in a 3P sample", Nature.STATISTICAL)
          .input("sum_of_predictions", "X", "1", NOT_NEGATIVE, "predictions of all trees together")
          .input("ceiling", "K", "1", POSITIVE, "largest random number")
          .gives("sample", "n", "1", over(sym("X"), sym("K")))
          .definedBy(StemWorks.POINT3P, "planning example")
          .kernel2(StemSampling::threePSample);

  /** Ceiling of a 3P sample. */
  public static final BoundFormula THREE_P_CEILING =
      Definition.of(
              "stem/three-p-ceiling",
              "Largest random number for a 3P sample of a wanted size",
              Nature.STATISTICAL)
          .input("sum_of_predictions", "X", "1", NOT_NEGATIVE, "predictions of all trees together")
          .input("sample", "n", "1", POSITIVE, "trees wanted in the sample")
          .gives("ceiling", "K", "1", over(sym("X"), sym("n")))
          .definedBy(StemWorks.POINT3P, "planning example")
          .kernel2(StemSampling::threePSample);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          IMPORTANCE_HEIGHT,
          IMPORTANCE,
          IMPORTANCE_PROXY,
          CENTROID_HEIGHT,
          CENTROID,
          THREE_P,
          THREE_P_UNADJUSTED,
          THREE_P_SAMPLE,
          THREE_P_CEILING);

  private StemSamplingFormulas() {}

  private static Equation area(Equation in) {
    return where("g", over(times(pi(), squared(sym("d"))), num(40000)), in);
  }
}
