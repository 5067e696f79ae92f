package org.mensuration;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.StemSamplingFormulas;
import org.mensuration.internal.statistics.ExactMoments;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Volume of a stem from diameters at heights drawn by chance, and totals of trees drawn by
 * prediction. Stateless and thread-safe.
 *
 * <p>Random numbers come from the caller, so that a sample can be repeated. Values outside a
 * formula's domain throw {@link org.mensuration.formula.OutOfDomainException}.
 *
 * <p>Equation, limits and sources of an id such as {@code stem/importance-height}: {@link
 * Catalogues#standard}.
 */
public final class StemSamples {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Volume> CUBIC_METRES = UnitReader.in(ForestUnits.CUBIC_METRE);

  private StemSamples() {}

  /**
   * The height that a random number draws under a paraboloid ({@code stem/importance-height}).
   *
   * @param height height of the tree
   * @param u random number, evenly spread, at least 0 and less than 1
   * @return where to read the diameter
   */
  public static Quantity<Length> height(Quantity<Length> height, double u) {
    return Measures.metres(StemSamplingFormulas.IMPORTANCE_HEIGHT.value(METRES.read(height), u));
  }

  /**
   * The height that a random number draws under a taper curve.
   *
   * @param proxy the curve
   * @param from lower height of the part wanted
   * @param to upper height of the part wanted
   * @param u random number, evenly spread, from 0 to 1
   * @return where to read the diameter
   */
  public static Quantity<Length> height(
      TaperCurve proxy, Quantity<Length> from, Quantity<Length> to, double u) {
    return proxy.heightOfPart(from, to, u);
  }

  /**
   * The two antithetic heights of a random number, of u and 1 - u: where one estimate is high, the
   * other tends to be low.
   *
   * @param height height of the tree
   * @param u random number, evenly spread, more than 0 and less than 1
   * @return two heights
   */
  public static List<Quantity<Length>> antitheticHeights(Quantity<Length> height, double u) {
    return List.of(height(height, u), height(height, 1 - u));
  }

  /**
   * The mean of the importance estimates of readings at heights drawn under a paraboloid ({@code
   * stem/importance}). Its expectation is the volume of the stem, whatever its form.
   *
   * @param readings at the heights drawn
   * @param height height of the tree
   * @return volume
   * @throws IllegalArgumentException if there is no reading
   */
  public static Quantity<Volume> importance(List<StemReading> readings, Quantity<Length> height) {
    List<Double> volumes = new ArrayList<>();
    for (StemReading reading : readings) {
      volumes.add(
          StemSamplingFormulas.IMPORTANCE.value(
              CENTIMETRES.read(reading.diameter()),
              METRES.read(height),
              METRES.read(reading.height())));
    }
    return mean(volumes);
  }

  /**
   * The mean of the importance estimates of readings at heights drawn under a taper curve ({@code
   * stem/importance-proxy}).
   *
   * @param readings at the heights drawn, between the two heights
   * @param proxy the curve, positive wherever the stem is
   * @param from lower height of the part wanted
   * @param to upper height of the part wanted
   * @return volume of that part
   * @throws IllegalArgumentException if there is no reading
   */
  public static Quantity<Volume> importance(
      List<StemReading> readings, TaperCurve proxy, Quantity<Length> from, Quantity<Length> to) {
    double whole = CUBIC_METRES.read(proxy.volume(from, to));
    List<Double> volumes = new ArrayList<>();
    for (StemReading reading : readings) {
      volumes.add(
          StemSamplingFormulas.IMPORTANCE_PROXY.value(
              whole,
              CENTIMETRES.read(reading.diameter()),
              CENTIMETRES.read(proxy.diameterAt(reading.height()))));
    }
    return mean(volumes);
  }

  private static Quantity<Volume> mean(List<Double> volumes) {
    if (volumes.isEmpty()) {
      throw new IllegalArgumentException("importance sampling: no reading, allowed at least one");
    }
    return Measures.cubicMetres(ExactMoments.meanOf(volumes));
  }

  /**
   * Where the centroid estimate reads its diameter ({@code stem/centroid-height}).
   *
   * @param height height of the tree
   * @return 0.2929 of it
   */
  public static Quantity<Length> centroidHeight(Quantity<Length> height) {
    return Measures.metres(StemSamplingFormulas.CENTROID_HEIGHT.value(METRES.read(height)));
  }

  /**
   * Centroid estimate of a full stem ({@code stem/centroid}).
   *
   * @param diameter diameter at the centroid height
   * @param height height of the tree
   * @return volume; biased for most forms
   */
  public static Quantity<Volume> centroid(Quantity<Length> diameter, Quantity<Length> height) {
    return Measures.cubicMetres(
        StemSamplingFormulas.CENTROID.value(CENTIMETRES.read(diameter), METRES.read(height)));
  }

  /**
   * Total of a 3P sample, adjusted for the number of trees drawn ({@code stem/three-p-total}).
   *
   * @param sumOfPredictions predictions of all trees together
   * @param meanRatio mean of measured over predicted of the trees drawn
   * @return total in the unit of the predictions
   */
  public static double threePTotal(double sumOfPredictions, double meanRatio) {
    return StemSamplingFormulas.THREE_P.value(sumOfPredictions, meanRatio);
  }

  /**
   * Total of a 3P sample, not adjusted ({@code stem/three-p-unadjusted}).
   *
   * @param ratios measured over predicted of each tree drawn
   * @param ceiling largest random number
   * @return total in the unit of the predictions
   */
  public static double threePUnadjusted(double[] ratios, double ceiling) {
    return StemSamplingFormulas.THREE_P_UNADJUSTED.applyTo(ratios, new double[] {ceiling});
  }

  /**
   * Largest random number for a 3P sample of a wanted size; it must exceed the largest prediction
   * ({@code stem/three-p-ceiling}).
   *
   * @param sumOfPredictions predictions of all trees together
   * @param sample trees wanted in the sample
   * @return largest random number in the unit of the predictions
   */
  public static double threePCeiling(double sumOfPredictions, double sample) {
    return StemSamplingFormulas.THREE_P_CEILING.value(sumOfPredictions, sample);
  }

  /**
   * Trees to expect in a 3P sample ({@code stem/three-p-sample}).
   *
   * @param sumOfPredictions predictions of all trees together
   * @param ceiling largest random number
   * @return trees
   */
  public static double threePSample(double sumOfPredictions, double ceiling) {
    return StemSamplingFormulas.THREE_P_SAMPLE.value(sumOfPredictions, ceiling);
  }
}
