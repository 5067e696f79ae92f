package org.mensuration.validation.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.stem.SectionRule;

/**
 * A stem by areas printed at even distances. The sectional formulas take diameters; a circle of a
 * printed area has one. Immutable and thread-safe.
 *
 * @param rule rule of each section
 */
record SectionAreas(SectionRule rule) implements Procedure {

  @Override
  public String id() {
    return "areas-" + name();
  }

  private String name() {
    return rule.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public List<String> evidenceFor() {
    return List.of("log/sectional-" + name());
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(
        StemProcedures.list("areas", "m2"), StemProcedures.one("spacing", "m", Domain.above(0)));
  }

  @Override
  public Result result() {
    return StemProcedures.VOLUME;
  }

  @Override
  public double value(Catalogue catalogue, double[][] inputs) {
    Formula formula = catalogue.formula(evidenceFor().get(0));
    double[] diameters =
        Arrays.stream(inputs[0]).map(area -> Math.sqrt(40000 * area / Math.PI)).toArray();
    double spacing = inputs[1][0];
    return switch (rule) {
      case HUBER -> formula.applyTo(diameters, filled(diameters.length, spacing));
      case SMALIAN ->
          formula.applyTo(
              larger(diameters, 1), smaller(diameters, 1), filled(sections(diameters, 1), spacing));
      case NEWTON ->
          formula.applyTo(
              larger(diameters, 2),
              middles(diameters),
              smaller(diameters, 2),
              filled(sections(diameters, 2), 2 * spacing));
    };
  }

  /** A section that spans so many distances and there are this many; a rest is refused. */
  private static int sections(double[] diameters, int span) {
    if (diameters.length < 2 || (diameters.length - 1) % span != 0) {
      throw new IllegalArgumentException(
          diameters.length + " areas do not make whole sections of " + span + " distances");
    }
    return (diameters.length - 1) / span;
  }

  private static double[] filled(int size, double length) {
    double[] lengths = new double[size];
    Arrays.fill(lengths, length);
    return lengths;
  }

  private static double[] larger(double[] diameters, int span) {
    double[] ends = new double[sections(diameters, span)];
    Arrays.setAll(ends, i -> Math.max(diameters[span * i], diameters[span * (i + 1)]));
    return ends;
  }

  private static double[] smaller(double[] diameters, int span) {
    double[] ends = new double[sections(diameters, span)];
    Arrays.setAll(ends, i -> Math.min(diameters[span * i], diameters[span * (i + 1)]));
    return ends;
  }

  private static double[] middles(double[] diameters) {
    double[] middles = new double[sections(diameters, 2)];
    Arrays.setAll(middles, i -> diameters[2 * i + 1]);
    return middles;
  }
}
