package org.mensuration.kernel;

/**
 * Volume of logs by the conventions of countries, from readings that are rounded already: diameters
 * in cm, length in m, the rule's cubic metres. Unchecked: NaN in, NaN out. Stateless and
 * thread-safe.
 */
public final class ScaledVolume {
  private static final double SQUARE_CENTIMETRES = 10000.0;

  private ScaledVolume() {}

  /**
   * Cylinder of the middle class.
   *
   * @param middleCm diameter of the middle in cm
   * @param lengthM length in m
   * @return volume in m³
   */
  public static double conventionalMid(double middleCm, double lengthM) {
    return LogVolume.huber(middleCm, lengthM);
  }

  /**
   * Brereton: cylinder of the mean of the end diameters, with the printed 0.7854.
   *
   * @param largeCm diameter of the large end in cm
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double brereton(double largeCm, double smallCm, double lengthM) {
    return breretonMean((largeCm + smallCm) / 2, lengthM);
  }

  /**
   * Brereton from the mean of the four readings.
   *
   * @param meanCm mean diameter in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double breretonMean(double meanCm, double lengthM) {
    return 0.7854 * (meanCm * meanCm) * lengthM / SQUARE_CENTIMETRES;
  }

  /**
   * Square of the small end, logs under 6 m.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double jasShort(double smallCm, double lengthM) {
    return smallCm * smallCm * lengthM / SQUARE_CENTIMETRES;
  }

  /**
   * Square of the small end with an allowance for taper, logs of 6 m and over.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double jasLong(double smallCm, double lengthM) {
    return jasShort(smallCm + (Math.floor(lengthM) - 4) / 2, lengthM);
  }

  /**
   * Square of the small end, the branch by the length.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double jas(double smallCm, double lengthM) {
    return lengthM < 6 ? jasShort(smallCm, lengthM) : jasLong(smallCm, lengthM);
  }

  /**
   * The unified rule of 1968: the taper term counts 0.6 below 30 cm, 0.8 below 60 cm, else whole.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double unified1968(double smallCm, double lengthM) {
    double share = smallCm < 30 ? 0.6 : smallCm < 60 ? 0.8 : 1;
    return jasShort(smallCm + share * ((Math.floor(lengthM) - 4) / 2), lengthM);
  }

  /**
   * Diameter class of a small end that is not round: from 14 cm on, two centimetres more for every
   * full 6 cm (from 40 cm on 8 cm) that the largest diameter exceeds the smallest.
   *
   * @param smallestCm class of the smallest diameter in cm
   * @param largestCm class of the largest diameter in cm
   * @return diameter in cm
   */
  public static double crossedClass(double smallestCm, double largestCm) {
    if (smallestCm < 14) {
      return smallestCm;
    }
    return smallestCm + 2 * Math.floor((largestCm - smallestCm) / (smallestCm < 40 ? 6 : 8));
  }

  /**
   * Hiragoku: square of the mean of the smallest and the largest diameter.
   *
   * @param smallestCm smallest diameter in cm
   * @param largestCm largest diameter in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double hiragoku(double smallestCm, double largestCm, double lengthM) {
    return jasShort((smallestCm + largestCm) / 2, lengthM);
  }

  /**
   * GB 4814-84 for classes below 14 cm.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double gb4814Small(double smallCm, double lengthM) {
    double diameter = smallCm + 0.45 * lengthM + 0.2;
    return 0.7854 * lengthM * (diameter * diameter) / SQUARE_CENTIMETRES;
  }

  /**
   * GB 4814-84 for classes from 14 cm.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double gb4814Large(double smallCm, double lengthM) {
    double rest = 14 - lengthM;
    double diameter =
        smallCm
            + 0.5 * lengthM
            + 0.005 * (lengthM * lengthM)
            + 0.000125 * lengthM * (rest * rest) * (smallCm - 10);
    return 0.7854 * lengthM * (diameter * diameter) / SQUARE_CENTIMETRES;
  }

  /**
   * GB 4814-84, the branch by the diameter.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double gb4814(double smallCm, double lengthM) {
    return smallCm < 14 ? gb4814Small(smallCm, lengthM) : gb4814Large(smallCm, lengthM);
  }

  /**
   * GB 4814-84 for logs outside its table.
   *
   * @param smallCm diameter of the small end in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double gb4814Outside(double smallCm, double lengthM) {
    double diameter = smallCm + 0.5 * lengthM;
    return 0.8 * lengthM * (diameter * diameter) / SQUARE_CENTIMETRES;
  }

  /**
   * Mean of the end areas from radii.
   *
   * @param buttCm radius class of the butt in cm
   * @param topCm radius class of the top in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double radiusClasses(double buttCm, double topCm, double lengthM) {
    return Math.PI * (topCm * topCm + buttCm * buttCm) * lengthM / (2 * SQUARE_CENTIMETRES);
  }

  /**
   * Top measure: area ten centimetres inside the top, times length.
   *
   * @param topCm diameter under bark ten centimetres from the top end, in cm
   * @param lengthM length in m
   * @return the rule's m³
   */
  public static double topMeasured(double topCm, double lengthM) {
    return LogVolume.huber(topCm, lengthM);
  }

  /**
   * Cylinder of the middle less double bark.
   *
   * @param outsideCm diameter of the middle over bark in cm
   * @param doubleBarkCm double bark thickness in cm
   * @param lengthM length in m
   * @return volume under bark in m³
   */
  public static double lessDoubleBark(double outsideCm, double doubleBarkCm, double lengthM) {
    return LogVolume.huber(outsideCm - doubleBarkCm, lengthM);
  }

  /**
   * Mean of crossed readings.
   *
   * @param diametersCm readings in cm
   * @return their mean in cm
   */
  public static double mean(double[] diametersCm) {
    double sum = 0;
    for (double diameter : diametersCm) {
      sum += diameter;
    }
    return sum / diametersCm.length;
  }

  /**
   * Length that is given free: a hundredth, at least ten centimetres.
   *
   * @param lengthM nominal length in m
   * @return allowance in m
   */
  public static double lengthAllowance(double lengthM) {
    return Math.max(0.01 * lengthM, 0.1);
  }

  /**
   * Length to be cut for a nominal length.
   *
   * @param lengthM nominal length in m
   * @return length with its allowance in m
   */
  public static double lengthWithAllowance(double lengthM) {
    return lengthM + lengthAllowance(lengthM);
  }
}
