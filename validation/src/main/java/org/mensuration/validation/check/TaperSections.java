package org.mensuration.validation.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Result;
import org.mensuration.stem.SectionRule;

/**
 * Part of a taper curve cut into equal sections, each worked by a rule. Immutable and thread-safe.
 */
final class TaperSections implements Procedure {
  private final String curve;
  private final SectionRule rule;
  private final int head;
  private final int coefficients;

  TaperSections(String curve, SectionRule rule) {
    this.curve = curve;
    this.rule = rule;
    this.head = curve.equals("power") ? 3 : 2;
    this.coefficients = curve.equals("power") ? 1 : curve.equals("quadratic") ? 3 : 4;
  }

  @Override
  public String id() {
    return "taper-" + curve + "-sections-" + rule.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public List<Parameter> parameters() {
    List<Parameter> parameters = new ArrayList<>();
    if (head == 3) {
      parameters.add(StemProcedures.positive("reference_diameter", "cm"));
      parameters.add(StemProcedures.positive("reference_height", "m"));
    } else {
      parameters.add(StemProcedures.positive("breast_height_diameter", "cm"));
    }
    parameters.add(StemProcedures.positive("height", "m"));
    parameters.add(StemProcedures.positive("from_height", "m"));
    parameters.add(StemProcedures.positive("to_height", "m"));
    if (coefficients == 1) {
      parameters.add(StemProcedures.any("exponent"));
    } else {
      for (int i = 0; i < coefficients; i++) {
        parameters.add(StemProcedures.any("b" + i));
      }
    }
    parameters.add(StemProcedures.one("sections", "1", Domain.wholeFrom(1)));
    return parameters;
  }

  @Override
  public Result result() {
    return new Result("volume", "V", "m3");
  }

  @Override
  public double value(Catalogue catalogue, double[][] x) {
    double from = x[head][0];
    int sections = (int) x[head + 2 + coefficients][0];
    double length = (x[head + 1][0] - from) / sections;
    double sum = 0;
    for (int i = 0; i < sections; i++) {
      double low = diameter(catalogue, x, from + i * length);
      double middle = diameter(catalogue, x, from + (i + 0.5) * length);
      double high = diameter(catalogue, x, from + (i + 1) * length);
      double large = Math.max(low, high);
      double small = Math.min(low, high);
      sum +=
          switch (rule) {
            case HUBER -> catalogue.formula("log/huber").apply(middle, length);
            case SMALIAN -> catalogue.formula("log/smalian").apply(large, small, length);
            case NEWTON -> catalogue.formula("log/newton").apply(large, middle, small, length);
          };
    }
    return sum;
  }

  private double diameter(Catalogue catalogue, double[][] x, double height) {
    double[] inputs = new double[head + 1 + coefficients];
    for (int i = 0; i < head; i++) {
      inputs[i] = x[i][0];
    }
    inputs[head] = height;
    for (int i = 0; i < coefficients; i++) {
      inputs[head + 1 + i] = x[head + 2 + i][0];
    }
    return catalogue.formula("stem/taper-" + curve).apply(inputs);
  }
}
