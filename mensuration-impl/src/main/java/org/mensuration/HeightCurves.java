package org.mensuration;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.CountPoint;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveException;
import org.mensuration.height.HeightCurveForm;
import org.mensuration.height.HeightCurveSet;
import org.mensuration.height.HeightSample;
import org.mensuration.height.TreeHeight;
import org.mensuration.internal.height.FittedCurve;
import org.mensuration.internal.height.GivenCurve;
import org.mensuration.internal.height.PointHeights;

/**
 * Tree heights from diameters. Stateless and thread-safe.
 *
 * <p>A curve holds for the species and the stand whose heights it was fitted to. It is fitted by
 * least squares of the heights themselves, all trees with one weight, and passes through breast
 * height at a diameter of zero.
 */
public final class HeightCurves {
  private HeightCurves() {}

  /**
   * Fits a curve to the measured heights of one species.
   *
   * @param form the form of the curve
   * @param breastHeight height at which the diameters were measured
   * @param species the species
   * @param trees trees, of which those of the species with a measured height are used
   * @return the curve
   * @throws HeightCurveException if there are fewer than three heights, they belong to one
   *     diameter, a height is not above breast height, or no curve of this form fits; the message
   *     says which
   */
  public static HeightCurve fit(
      HeightCurveForm form,
      Quantity<Length> breastHeight,
      String species,
      Iterable<HeightSample> trees) {
    return FittedCurve.of(form, breastHeight, species, trees);
  }

  /**
   * Fits a curve to every species.
   *
   * @param form the form of the curves
   * @param breastHeight height at which the diameters were measured
   * @param trees trees with and without measured heights
   * @return the curves, and the reason for each species that has none
   */
  public static HeightCurveSet fitBySpecies(
      HeightCurveForm form, Quantity<Length> breastHeight, List<HeightSample> trees) {
    Set<String> species = new LinkedHashSet<>();
    for (HeightSample tree : trees) {
      species.add(tree.species());
    }
    Map<String, HeightCurve> curves = new LinkedHashMap<>();
    Map<String, String> refusals = new LinkedHashMap<>();
    for (String one : species) {
      try {
        curves.put(one, fit(form, breastHeight, one, trees));
      } catch (HeightCurveException e) {
        refusals.put(one, String.valueOf(e.getMessage()));
      }
    }
    return new HeightCurveSet(curves, refusals);
  }

  /**
   * The height that a curve with given coefficients gives.
   *
   * @param form the form of the curve
   * @param breastHeight height at which the diameter was measured
   * @param b0 first coefficient, for diameters in cm and heights in m
   * @param b1 second coefficient
   * @param diameter diameter at breast height
   * @return the height, marked as predicted
   * @throws org.mensuration.formula.OutOfDomainException if a value is outside its domain
   */
  public static TreeHeight height(
      HeightCurveForm form,
      Quantity<Length> breastHeight,
      double b0,
      double b1,
      Quantity<Length> diameter) {
    return GivenCurve.height(form, breastHeight, b0, b1, diameter);
  }

  /**
   * The trees of sample points from which curves are fitted: the living ones with a diameter. A
   * height that was read from a curve counts as missing.
   *
   * @param points the points
   * @return one sample a tree, with its height where that was measured
   */
  public static List<HeightSample> samples(Iterable<CountPoint> points) {
    return PointHeights.samples(points);
  }

  /**
   * The points with missing heights read from the curve of each species and marked as predicted.
   * Trees without diameter, and species without a curve, stay without height: figures that need it
   * name the first such tree.
   *
   * @param points the points
   * @param curves the curves
   * @return new points
   */
  public static List<CountPoint> fill(Iterable<CountPoint> points, HeightCurveSet curves) {
    return PointHeights.fill(points, curves);
  }
}
