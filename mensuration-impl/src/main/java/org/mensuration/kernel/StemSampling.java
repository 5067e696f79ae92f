package org.mensuration.kernel;

/**
 * Sampling along one stem and among stems: diameters in cm, heights in m, volumes in m³. Unchecked:
 * NaN in, NaN out. Stateless and thread-safe.
 */
public final class StemSampling {
  /** Divides π d² with d in cm to give an area in m². */
  private static final double AREA_DIVISOR = 40000.0;

  private static final double HALF_ROOT = Math.sqrt(0.5);

  private StemSampling() {}

  /**
   * Height of a random number under a paraboloid as proxy.
   *
   * @param heightM height of the tree
   * @param u part of the proxy's volume below, at least 0 and less than 1
   * @return height in m
   */
  public static double importanceHeight(double heightM, double u) {
    return heightM * u / (1 + Math.sqrt(1 - u));
  }

  /**
   * Estimate of a full stem from the diameter at a height, with a paraboloid as proxy.
   *
   * @param diameterCm diameter found there
   * @param heightM height of the tree
   * @param sampledHeightM the height
   * @return volume in m³
   */
  public static double importance(double diameterCm, double heightM, double sampledHeightM) {
    double overProxy = heightM / (heightM - sampledHeightM);
    return Math.PI * (diameterCm * diameterCm) * heightM * overProxy / (2 * AREA_DIVISOR);
  }

  /**
   * Estimate from the diameter at a height, with any proxy.
   *
   * @param proxyVolumeM3 volume of the proxy over the part wanted
   * @param diameterCm diameter found
   * @param proxyDiameterCm diameter of the proxy at that height
   * @return volume in m³
   */
  public static double importanceProxy(
      double proxyVolumeM3, double diameterCm, double proxyDiameterCm) {
    double ratio = diameterCm / proxyDiameterCm;
    return proxyVolumeM3 * (ratio * ratio);
  }

  /**
   * Height below which half of a paraboloid lies.
   *
   * @param heightM height of the tree
   * @return height in m
   */
  public static double centroidHeight(double heightM) {
    return importanceHeight(heightM, 0.5);
  }

  /**
   * Estimate of a full stem from the diameter at that height.
   *
   * @param diameterCm diameter there
   * @param heightM height of the tree
   * @return volume in m³
   */
  public static double centroid(double diameterCm, double heightM) {
    return Math.PI * (diameterCm * diameterCm) * heightM * HALF_ROOT / AREA_DIVISOR;
  }

  /**
   * Total from predictions and the mean ratio of the trees drawn.
   *
   * @param predictions sum of the predictions of all trees
   * @param meanRatio mean of measured over predicted
   * @return total
   */
  public static double threePTotal(double predictions, double meanRatio) {
    return predictions * meanRatio;
  }

  /**
   * Total from the ratios of the trees drawn, not adjusted for the number drawn.
   *
   * @param x ratios of measured over predicted; largest random number
   * @return total
   */
  public static double threePUnadjusted(double[][] x) {
    double sum = 0;
    for (double ratio : x[0]) {
      sum += ratio;
    }
    return x[1][0] * sum;
  }

  /**
   * Trees to expect in the sample.
   *
   * @param predictions sum of the predictions
   * @param ceiling largest random number
   * @return number of trees
   */
  public static double threePSample(double predictions, double ceiling) {
    return predictions / ceiling;
  }
}
