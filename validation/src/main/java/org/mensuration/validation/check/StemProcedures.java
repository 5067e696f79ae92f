package org.mensuration.validation.check;

import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.Stems;
import org.mensuration.Tapers;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.stem.SectionRule;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;

/** Procedures on single stems. Stateless and thread-safe. */
final class StemProcedures {
  static final Result VOLUME = new Result("volume", "V", "m3");

  /** Every one. */
  static final List<Procedure> ALL = all();

  private StemProcedures() {}

  private static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    for (SectionRule rule : SectionRule.values()) {
      all.add(new SectionAreas(rule));
    }
    all.add(
        new Chain(
            "smalian-deviation",
            List.of(
                positive("large_diameter", "cm"),
                positive("middle_diameter", "cm"),
                positive("small_diameter", "cm"),
                positive("length", "m")),
            new Result("deviation", "e", "%"),
            StemProcedures::deviation));
    all.add(
        new Chain(
            "stem-smalian-to-top",
            List.of(
                list("heights", "m"),
                list("diameters", "cm"),
                positive("tip", "m"),
                positive("top_diameter", "cm")),
            VOLUME,
            StemProcedures::toTop));
    all.add(
        new Chain("volume-total", List.of(list("volumes", "m3")), VOLUME, StemProcedures::total));
    all.add(spline("spline-volume-of-dbh", false));
    all.add(spline("spline-volume-of-dbh-height", true));
    all.add(
        new Chain(
            "height-on-cubic-taper",
            List.of(
                positive("breast_height_diameter", "cm"),
                positive("height", "m"),
                positive("diameter", "cm"),
                any("b0"),
                any("b1"),
                any("b2"),
                any("b3")),
            new Result("at_height", "h", "m"),
            StemProcedures::heightOnCubic));
    for (String curve : List.of("power", "quadratic", "cubic")) {
      for (SectionRule rule : SectionRule.values()) {
        all.add(new TaperSections(curve, rule));
      }
    }
    return List.copyOf(all);
  }

  static Parameter one(String name, String unit, Domain domain) {
    return new Parameter(name, name, unit, name, domain, Optional.empty(), false);
  }

  static Parameter positive(String name, String unit) {
    return one(name, unit, Domain.atLeast(0));
  }

  static Parameter any(String name) {
    return one(name, "1", Domain.any());
  }

  static Parameter list(String name, String unit) {
    return new Parameter(name, name, unit, name, Domain.atLeast(0), Optional.empty(), true);
  }

  /** A procedure that is one function of catalogue and inputs. */
  private record Chain(
      String id,
      List<Parameter> parameters,
      Result result,
      ToDoubleBiFunction<Catalogue, double[][]> chain)
      implements Procedure {
    @Override
    public double value(Catalogue catalogue, double[][] inputs) {
      return chain.applyAsDouble(catalogue, inputs);
    }
  }

  private static double deviation(Catalogue catalogue, double[][] x) {
    double smalian = catalogue.formula("log/smalian").apply(x[0][0], x[2][0], x[3][0]);
    double newton = catalogue.formula("log/newton").apply(x[0][0], x[1][0], x[2][0], x[3][0]);
    return 100 * (smalian / newton - 1);
  }

  private static double toTop(Catalogue catalogue, double[][] x) {
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < x[0].length; i++) {
      readings.add(StemReading.of(metres(x[0][i]), centimetres(x[1][i])));
    }
    StemProfile stem = Stems.profile(readings, metres(x[2][0]));
    Quantity<Length> top = stem.heightsOf(centimetres(x[3][0])).get(0);
    return in(stem.sectionalVolume(SectionRule.SMALIAN), CUBIC_METRE)
        - in(stem.volume(top, stem.top()), CUBIC_METRE);
  }

  private static double total(Catalogue catalogue, double[][] x) {
    return DoubleStream.of(x[0]).sum();
  }

  private static Procedure spline(String id, boolean withHeight) {
    List<Parameter> parameters = new ArrayList<>();
    parameters.add(positive("dbh", "cm"));
    if (withHeight) {
      parameters.add(positive("height", "m"));
    }
    parameters.add(one("b0", "m3", Domain.any()));
    for (String name : List.of("b1", "b2", "low_knot", "middle_knot", "high_knot")) {
      parameters.add(any(name));
    }
    int first = withHeight ? 2 : 1;
    return new Chain(
        id,
        parameters,
        VOLUME,
        (catalogue, x) -> {
          double area = catalogue.formula("tree/basal-area").apply(x[0][0]);
          double[] inputs = new double[7];
          inputs[0] = withHeight ? area * x[1][0] : area;
          for (int i = 1; i < inputs.length; i++) {
            inputs[i] = x[first + i - 1][0];
          }
          return catalogue.formula("stem/spline-volume").apply(inputs);
        });
  }

  private static double heightOnCubic(Catalogue catalogue, double[][] x) {
    return in(
        Tapers.cubic(centimetres(x[0][0]), metres(x[1][0]), x[3][0], x[4][0], x[5][0], x[6][0])
            .heightsOf(centimetres(x[2][0]))
            .get(0),
        METRE);
  }
}
