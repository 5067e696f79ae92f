package org.mensuration;

import java.util.Random;
import org.mensuration.diameter.SectionPoints;
import org.mensuration.units.ForestUnits;

/** Invented slices of round stems: an arc of points, alike noise in both directions, and strays. */
final class Slices {
  /** A slice and what is true of it. */
  record Slice(SectionPoints points, double diameter, double arc, double noise, int strays) {}

  private Slices() {}

  /** A slice of an arc of 90 to 360 degrees, noise of 2 to 10 mm, and up to a fifth of strays. */
  static Slice draw(Random random) {
    double diameter = 0.15 + 0.65 * random.nextDouble();
    double arc = 90 + 270 * random.nextDouble();
    double noise = 0.002 + 0.008 * random.nextDouble();
    int count = 120 + random.nextInt(280);
    int strays = (int) (count * 0.2 * random.nextDouble());
    boolean clustered = random.nextBoolean();
    double from = 360 * random.nextDouble();
    double centreX = 20 * random.nextDouble() - 10;
    double centreY = 20 * random.nextDouble() - 10;
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count - strays; i++) {
      double angle = Math.toRadians(from + arc * random.nextDouble());
      x[i] = centreX + diameter / 2 * Math.cos(angle) + noise * random.nextGaussian();
      y[i] = centreY + diameter / 2 * Math.sin(angle) + noise * random.nextGaussian();
    }
    double blobAngle = Math.toRadians(from + arc * random.nextDouble());
    double blobAway = diameter / 2 + 0.05 + 0.3 * random.nextDouble();
    if (random.nextInt(3) == 0) {
      blobAway = (diameter / 2 - 0.05) * random.nextDouble();
    }
    for (int i = count - strays; i < count; i++) {
      if (clustered) {
        // A branch or a neighbouring stem: a clump of points off the surface.
        x[i] = centreX + blobAway * Math.cos(blobAngle) + 0.01 * random.nextGaussian();
        y[i] = centreY + blobAway * Math.sin(blobAngle) + 0.01 * random.nextGaussian();
      } else {
        x[i] = centreX + 1.5 * diameter * (2 * random.nextDouble() - 1);
        y[i] = centreY + 1.5 * diameter * (2 * random.nextDouble() - 1);
      }
    }
    return new Slice(SectionPoints.of(x, y, ForestUnits.METRE), diameter, arc, noise, strays);
  }
}
