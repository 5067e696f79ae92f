package org.mensuration.validation.check;

import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.mensuration.HeightCurves;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightSample;

/** Height curves of the trees of a cruise. Stateless and thread-safe. */
final class HeightProcedures {
  private static final int SPECIES = 1;
  private static final int DIAMETER = 2;
  private static final int HEIGHT = 3;
  private static final int BREAST_HEIGHT = 4;
  private static final int WANTED_SPECIES = 5;
  private static final int FORM = 6;
  private static final int AT_DIAMETER = 7;

  /** The forms by their numbers in tables, from 1. */
  private static final List<HeightCurveForm> FORMS =
      List.of(
          HeightCurveForm.NASLUND,
          HeightCurveForm.PETTERSON,
          HeightCurveForm.CURTIS,
          HeightCurveForm.POWER);

  static final List<Procedure> ALL =
      List.of(
          procedure("cruise-height-curve-trees", "trees", "1", (curve, x) -> curve.trees()),
          procedure(
              "cruise-height-curve-first", "first", "1", (curve, x) -> curve.coefficients().get(0)),
          procedure(
              "cruise-height-curve-second",
              "second",
              "1",
              (curve, x) -> curve.coefficients().get(1)),
          procedure(
              "cruise-height-curve-error",
              "residual_error",
              "m",
              (curve, x) -> in(curve.residualError(), METRE)),
          procedure(
              "cruise-height-curve-height",
              "height",
              "m",
              (curve, x) -> in(curve.height(centimetres(x[AT_DIAMETER][0])).value(), METRE)));

  private HeightProcedures() {}

  private static Procedure procedure(
      String id, String name, String unit, ToDoubleBiFunction<HeightCurve, double[][]> value) {
    return Chain.of(id)
        .list("point", "1", "numbers of the points; not used")
        .list("species", "1", "species of the trees, by number; 0 for no tree")
        .list("diameter", "cm", "diameters of the trees; 0 for no tree")
        .list("height", "m", "heights of the trees; 0 if not measured")
        .number("breast_height", "m", "breast height")
        .number("wanted_species", "1", "the species")
        .number("form", "1", "form of the curve, from 1")
        .number("at_diameter", "cm", "diameter at which the curve is read")
        .gives(name, unit, (catalogue, x) -> value.applyAsDouble(curve(x), x));
  }

  private static HeightCurve curve(double[][] x) {
    List<HeightSample> trees = new ArrayList<>();
    for (int i = 0; i < x[SPECIES].length; i++) {
      if (x[SPECIES][i] == x[WANTED_SPECIES][0] && x[HEIGHT][i] > 0) {
        trees.add(HeightSample.of("", centimetres(x[DIAMETER][i]), metres(x[HEIGHT][i])));
      }
    }
    HeightCurveForm form = FORMS.get((int) x[FORM][0] - 1);
    return HeightCurves.fit(form, metres(x[BREAST_HEIGHT][0]), "", trees);
  }
}
