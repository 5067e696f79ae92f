package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sqrt;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sumOver;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.UncertaintyWorks;
import org.mensuration.kernel.MeasurementError;
import org.mensuration.source.Citation;

/**
 * Standard uncertainties of measurements and what they make together. Immutable and thread-safe.
 */
public final class MeasurementErrorFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final String SAME_UNIT = "any unit, the same for input and result";

  /** Rectangular. */
  public static final BoundFormula RECTANGULAR =
      halfWidth(
              "error/rectangular",
              "Standard uncertainty of a value anywhere within a half-width alike",
              3)
          .definedBy(UncertaintyWorks.GUM_H1, "budget list")
          .note("of a reading to the nearest part of a division: half of that part")
          .kernel1(MeasurementError::rectangular);

  /** Triangular. */
  public static final BoundFormula TRIANGULAR =
      halfWidth(
              "error/triangular",
              "Standard uncertainty of a value likeliest in the middle of a half-width",
              6)
          .cites(Citation.fromMemory("guide to the expression of uncertainty in measurement"))
          .kernel1(MeasurementError::triangular);

  /** Arc-sine. */
  public static final BoundFormula ARC_SINE =
      halfWidth(
              "error/arc-sine",
              "Standard uncertainty of a value that swings between the ends of a half-width",
              2)
          .cites(Citation.fromMemory("guide to the expression of uncertainty in measurement"))
          .kernel1(MeasurementError::arcSine);

  /** Independent inputs together. */
  public static final BoundFormula COMBINED =
      Definition.of(
              "error/combined",
              "Combined standard uncertainty of independent inputs",
              Nature.STATISTICAL)
          .list("slope", "c", "1", Domain.any(), "derivative of the result by each input")
          .list("error", "u", "1", NOT_NEGATIVE, "standard uncertainty of each input")
          .gives(
              "combined", "u_c", "1", sqrt(sumOver(squared(times(sym("c"), sym("u"))), "c", "u")))
          .definedBy(UncertaintyWorks.GUM_H1, "displayed result and budget list")
          .note("inputs that share a cause, as the distance of all diameters of a stem, do not fit")
          .kernelOfArrays(x -> MeasurementError.combined(x[0], x[1]));

  /** Two inputs that go together. */
  public static final BoundFormula CORRELATED =
      Definition.of(
              "error/correlated",
              "Combined standard uncertainty of two inputs that go together",
              Nature.STATISTICAL)
          .input("first", "x", "1", Domain.any(), "slope times uncertainty of one input")
          .input("second", "y", "1", Domain.any(), "slope times uncertainty of the other")
          .input("correlation", "r", "1", Domain.closed(-1, 1), "correlation of the inputs")
          .gives(
              "combined",
              "u_c",
              "1",
              sqrt(
                  plus(
                      squared(sym("x")),
                      squared(sym("y")),
                      times(num(2), sym("x"), sym("y"), sym("r")))))
          .cites(
              Citation.fromMemory(
                  "law of propagation with a correlation, for two inputs; JCGM 100 has it for any"))
          .note("slopes keep their signs")
          .note("as two diameters read from one distance: r is 1, and the parts add up")
          .kernel3(MeasurementError::correlated);

  /** Spread of a reference removed. */
  public static final BoundFormula WITHOUT_REFERENCE =
      Definition.of(
              "error/without-reference",
              "Standard deviation of an instrument, that of the reference removed",
              Nature.STATISTICAL)
          .input("paired", "s_p", "1", NOT_NEGATIVE, "standard deviation of the differences")
          .input("reference", "s_r", "1", NOT_NEGATIVE, "standard deviation of the reference")
          .relation("reference", AT_MOST, 1, "paired", "s_r ≤ s_p")
          .gives("deviation", "s", "1", sqrt(minus(squared(sym("s_p")), squared(sym("s_r")))))
          .definedBy(UncertaintyWorks.STEN23, "Table 2")
          .note(SAME_UNIT)
          .kernel2(MeasurementError::withoutReference);

  /** Error of a volume. */
  public static final BoundFormula OF_VOLUME =
      Definition.of(
              "error/volume-from-form-factor",
              "Relative standard uncertainty of a volume from form factor, diameter and height",
              Nature.STATISTICAL)
          .input("form_error", "u_f", "%", NOT_NEGATIVE, "of the form factor")
          .input("diameter_error", "u_d", "%", NOT_NEGATIVE, "of the diameter")
          .input("height_error", "u_H", "%", NOT_NEGATIVE, "of the height")
          .gives(
              "error",
              "u_V",
              "%",
              sqrt(
                  plus(
                      squared(sym("u_f")),
                      times(num(4), squared(sym("u_d"))),
                      squared(sym("u_H")))))
          .cites(Citation.derived("first-order propagation through stem/volume-from-form-factor"))
          .kernel3(MeasurementError::ofVolume);

  /** Error of a product. */
  public static final BoundFormula OF_PRODUCT =
      Definition.of(
              "error/product",
              "Standard uncertainty of a product, second order included",
              Nature.STATISTICAL)
          .input("first", "x", "1", Domain.any(), "one factor")
          .input("first_error", "u_x", "1", NOT_NEGATIVE, "its standard uncertainty")
          .input("second", "y", "1", Domain.any(), "the other factor")
          .input("second_error", "u_y", "1", NOT_NEGATIVE, "its standard uncertainty")
          .gives(
              "error",
              "u",
              "1",
              sqrt(
                  plus(
                      squared(times(sym("x"), sym("u_y"))),
                      squared(times(sym("y"), sym("u_x"))),
                      squared(times(sym("u_x"), sym("u_y"))))))
          .cites(Citation.derived("exact for independent factors"))
          .note("the last term is all there is when both factors are zero")
          .kernel4(MeasurementError::ofProduct);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          RECTANGULAR,
          TRIANGULAR,
          ARC_SINE,
          COMBINED,
          CORRELATED,
          WITHOUT_REFERENCE,
          OF_VOLUME,
          OF_PRODUCT);

  private MeasurementErrorFormulas() {}

  private static Definition halfWidth(String id, String title, long root) {
    return Definition.of(id, title, Nature.STATISTICAL)
        .input("half_width", "a", "1", NOT_NEGATIVE, "half-width of the interval")
        .gives("error", "u", "1", over(sym("a"), sqrt(num(root))))
        .note(SAME_UNIT);
  }
}
