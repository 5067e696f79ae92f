package org.mensuration.internal.optics;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.HeightErrorFormulas;
import org.mensuration.internal.catalogue.ImageFormulas;
import org.mensuration.internal.catalogue.SightedDiameterFormulas;
import org.mensuration.optics.CameraScale;
import org.mensuration.optics.ImageReading;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;
import org.mensuration.optics.Sighting.DistanceTo;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * A rectilinear camera.
 *
 * @param focalLengthPixels focal length in pixels
 */
public record PinholeCamera(double focalLengthPixels) implements CameraScale {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * Checks the focal length by asking for the ratio of a pixel.
   *
   * @param focalLengthPixels focal length in pixels
   */
  public PinholeCamera {
    ImageFormulas.RATIO.value(1, focalLengthPixels);
  }

  @Override
  public Quantity<Angle> azimuth(ImageReading reading) {
    return Measures.degrees(azimuthDegrees(reading));
  }

  @Override
  public Quantity<Length> diameter(ImageReading reading, Sighting sighting) {
    if (sighting.leanAway().isPresent() || sighting.apexAboveEye().isPresent()) {
      throw new IllegalArgumentException(
          "camera: edges are read as those of an upright stem without taper; for lean in the plane"
              + " of sight and for taper use the level scale of the camera");
    }
    double angle = azimuthDegrees(reading);
    double distance = METRES.read(sighting.distance());
    double diameter;
    if (sighting.to() == DistanceTo.FACE) {
      diameter = SightedDiameterFormulas.ANGLE_FACE.value(angle, distance);
    } else {
      double level =
          sighting.to() == DistanceTo.AXIS
              ? distance
              : HeightErrorFormulas.HORIZONTAL.value(distance, elevation(reading, sighting));
      diameter = SightedDiameterFormulas.ANGLE_AXIS.value(angle, level);
    }
    return Measures.metres(SightedRatio.leaningAcross(sighting, diameter));
  }

  @Override
  public double width(Quantity<Length> diameter, Quantity<Length> axisDistance) {
    return ImageFormulas.WIDTH.value(
        METRES.read(diameter), METRES.read(axisDistance), focalLengthPixels);
  }

  @Override
  public RatioScale levelScale() {
    return new TangentScale(
        ImageFormulas.RATIO.value(1, focalLengthPixels), true, Optional.empty());
  }

  private double azimuthDegrees(ImageReading reading) {
    return ImageFormulas.AZIMUTH.apply(
        reading.left(), reading.right(), reading.row(), focalLengthPixels, pitch(reading));
  }

  private double elevation(ImageReading reading, Sighting sighting) {
    return sighting.elevation().isPresent()
        ? DEGREES.read(sighting.elevation().get())
        : ImageFormulas.ELEVATION.value(reading.row(), focalLengthPixels, pitch(reading));
  }

  private static double pitch(ImageReading reading) {
    return reading.pitch().isPresent() ? DEGREES.read(reading.pitch().get()) : 0;
  }
}
