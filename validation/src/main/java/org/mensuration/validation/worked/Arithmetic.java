package org.mensuration.validation.worked;

import java.util.Arrays;
import org.mensuration.OpticalScales;
import org.mensuration.formula.Catalogue;
import org.mensuration.formula.Formula;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/**
 * The formulas of the catalogue that a worked stand needs, under the names it uses. No arithmetic
 * of forests stands anywhere else in this package. Immutable and thread-safe.
 */
final class Arithmetic {
  private final Formula divisionWidth;
  private final Formula diameter;
  private final Formula diameterElevated;
  private final Formula height;
  private final Formula cylinder;
  private final Formula smalian;
  private final Formula newton;
  private final Formula coneFrustum;
  private final Formula ratio;
  private final Formula limitingDistance;
  private final Formula horizontal;
  private final Formula volume;
  private final Formula standardError;
  private final Formula interval;
  private final Formula combined;
  private final Formula stratifiedMean;
  private final Formula relativeDensityImperial;
  private final Formula criticalHeightVolume;
  private final Formula treeBasalArea;
  private final Formula lineTreeFactor;
  private final Formula topTreeFactor;
  private final Formula expansionFactor;
  private final Formula standardErrorFinite;

  Arithmetic(Catalogue catalogue) {
    divisionWidth = catalogue.formula("optics/division-width");
    diameter = catalogue.formula("optics/diameter-from-divisions");
    diameterElevated = catalogue.formula("optics/diameter-from-divisions-elevated");
    height = catalogue.formula("height/tangent");
    cylinder = catalogue.formula("log/huber");
    smalian = catalogue.formula("log/smalian");
    newton = catalogue.formula("log/newton");
    coneFrustum = catalogue.formula("log/cone-frustum");
    ratio = catalogue.formula("tree/volume-basal-area-ratio");
    limitingDistance = catalogue.formula("gauge/limiting-distance-centre");
    horizontal = catalogue.formula("plot/horizontal-distance");
    volume = catalogue.formula("stand/volume");
    standardError = catalogue.formula("sampling/standard-error");
    interval = catalogue.formula("sampling/mean-interval");
    combined = catalogue.formula("sampling/combined-error");
    relativeDensityImperial = catalogue.formula("stand/relative-density-imperial");
    criticalHeightVolume = catalogue.formula("point/critical-height-volume");
    treeBasalArea = catalogue.formula("tree/basal-area");
    lineTreeFactor = catalogue.formula("line/horizontal-tree-factor");
    topTreeFactor = catalogue.formula("line/vertical-line-tree-factor");
    expansionFactor = catalogue.formula("plot/expansion-factor");
    standardErrorFinite = catalogue.formula("sampling/standard-error-finite");
    stratifiedMean = catalogue.formula("sampling/stratified-mean");
  }

  double relativeDensityImperial(double basalAreaFt2Ac, double quadraticMeanIn) {
    return relativeDensityImperial.apply(basalAreaFt2Ac, quadraticMeanIn);
  }

  double divisionWidth(double diameterCm, double divisions) {
    return divisionWidth.apply(diameterCm, divisions);
  }

  double diameter(double widthCm, double divisions) {
    return diameter.apply(widthCm, divisions);
  }

  double diameterElevated(double widthCm, double divisions, double angle, double calibration) {
    return diameterElevated.apply(widthCm, divisions, angle, calibration);
  }

  double height(double distance, double angle, double baseAngle) {
    return height.apply(distance, angle, baseAngle);
  }

  /** Also a piece of which only one diameter is known. */
  double huber(double middleCm, double length) {
    return cylinder.apply(middleCm, length);
  }

  /** The formula is the same both ways; its larger end comes first. */
  double smalian(double oneCm, double otherCm, double length) {
    return smalian.apply(Math.max(oneCm, otherCm), Math.min(oneCm, otherCm), length);
  }

  double newton(double oneCm, double middleCm, double otherCm, double length) {
    return newton.apply(Math.max(oneCm, otherCm), middleCm, Math.min(oneCm, otherCm), length);
  }

  double cone(double footCm, double length) {
    return coneFrustum.apply(footCm, 0, length);
  }

  double ratio(double volume, double dbhCm) {
    return ratio.apply(volume, dbhCm);
  }

  double limitingDistance(double factor, double dbhCm) {
    return limitingDistance.apply(factor, dbhCm);
  }

  /**
   * The level part of a distance along a slope. A height of 45° above a level sight is as high as
   * its distance is long, so the height formula for a taped slope gives it.
   */
  double horizontal(double slopeDistance, double slope) {
    return horizontal.apply(slopeDistance, slope);
  }

  double volume(double basalArea, double ratio) {
    return volume.apply(basalArea, ratio);
  }

  double standardError(double deviation, double count) {
    return standardError.apply(deviation, count);
  }

  /** As above, of a finite number of plots. */
  double standardErrorFinite(double deviation, double count, double population) {
    return standardErrorFinite.apply(deviation, count, population);
  }

  /** Trees a hectare of a tree on a plot, or plots of this size that a hectare holds. */
  double expansionFactor(double areaM2) {
    return expansionFactor.apply(areaM2);
  }

  double treeBasalArea(double dbhCm) {
    return treeBasalArea.apply(dbhCm);
  }

  double lineTreeFactor(double lengthM, double factor, double dbhCm) {
    return lineTreeFactor.apply(lengthM, factor, dbhCm);
  }

  double topTreeFactor(double angle, double heightM, double lengthM) {
    return topTreeFactor.apply(angle, heightM, lengthM);
  }

  /** Metres to the axis of a stem whose near face was measured to. */
  static double axisDistance(double faceM, double diameterCm) {
    return Measures.in(
        OpticalScales.axisDistance(Measures.metres(faceM), Measures.centimetres(diameterCm)),
        ForestUnits.METRE);
  }

  /** Nothing for a point without trees. */
  double criticalHeightVolume(double factor, double[] heights) {
    return heights.length == 0 ? 0 : criticalHeightVolume.applyTo(new double[] {factor}, heights);
  }

  double halfWidth(double mean, double error, double degreesOfFreedom) {
    return interval.apply(mean, error, degreesOfFreedom, 95);
  }

  double combined(double one, double other) {
    return combined.apply(one, other);
  }

  /** The plain mean, as strata of one area. */
  double mean(double[] values) {
    double[] ones = new double[values.length];
    Arrays.fill(ones, 1);
    return stratifiedMean.applyTo(ones, values);
  }
}
