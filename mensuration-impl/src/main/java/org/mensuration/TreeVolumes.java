package org.mensuration;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.CountPoint;
import org.mensuration.internal.stand.VolumeRules;
import org.mensuration.internal.stand.VolumeTable;
import org.mensuration.stand.TreeVolume;

/**
 * Volumes of counted trees by a rule of the caller's choice. Stateless and thread-safe.
 *
 * <p>A volume from a stem's profile is a {@link TreeVolume} of your own, such as {@code tree ->
 * profileOf(tree).volume()}.
 *
 * <p>Equation, limits and sources of an id such as {@code tree/volume-from-form-factor}: {@link
 * Catalogues#standard}.
 */
public final class TreeVolumes {
  private TreeVolumes() {}

  /**
   * The points with a volume for every tree that has a diameter and no volume yet.
   *
   * @param points the points
   * @param rule the rule
   * @return new points
   * @throws IllegalArgumentException if the rule lacks something of a tree; the message names it
   */
  public static List<CountPoint> fill(Iterable<CountPoint> points, TreeVolume rule) {
    List<CountPoint> filled = new ArrayList<>();
    for (CountPoint point : points) {
      filled.add(VolumeRules.fill(point, rule));
    }
    return filled;
  }

  /**
   * A volume function of the diameter.
   *
   * @param function gives the volume of a diameter
   * @return the rule
   */
  public static TreeVolume ofDiameter(Function<Quantity<Length>, Quantity<Volume>> function) {
    return tree -> function.apply(VolumeRules.diameter(tree));
  }

  /**
   * A volume function of diameter and height.
   *
   * @param function gives the volume of a diameter and a height
   * @return the rule; it refuses trees without height
   */
  public static TreeVolume ofDiameterAndHeight(
      BiFunction<Quantity<Length>, Quantity<Length>, Quantity<Volume>> function) {
    return tree -> function.apply(VolumeRules.diameter(tree), VolumeRules.height(tree));
  }

  /**
   * A volume table by diameter. Classes go from each lower limit to below the next; the last ends
   * below {@code end}. Trees outside the table are refused.
   *
   * @param lowerDiameters lower limits of the classes, rising
   * @param end where the last class ends
   * @param volumes one volume a class
   * @return the rule
   * @throws IllegalArgumentException if limits do not rise or the numbers differ
   */
  public static TreeVolume table(
      List<Quantity<Length>> lowerDiameters, Quantity<Length> end, List<Quantity<Volume>> volumes) {
    return VolumeTable.oneEntry(lowerDiameters, end, volumes);
  }

  /**
   * A volume table by diameter and height. Classes go from each lower limit to below the next; the
   * last end below {@code endDiameter} and {@code endHeight}. Trees outside the table are refused.
   *
   * @param lowerDiameters lower limits of the diameter classes, rising
   * @param endDiameter where the last of them ends
   * @param lowerHeights lower limits of the height classes, rising
   * @param endHeight where the last of them ends
   * @param volumes for each diameter class the volumes of its height classes
   * @return the rule; it refuses trees without height
   * @throws IllegalArgumentException if limits do not rise or the numbers differ
   */
  public static TreeVolume table(
      List<Quantity<Length>> lowerDiameters,
      Quantity<Length> endDiameter,
      List<Quantity<Length>> lowerHeights,
      Quantity<Length> endHeight,
      List<List<Quantity<Volume>>> volumes) {
    return VolumeTable.twoEntries(lowerDiameters, endDiameter, lowerHeights, endHeight, volumes);
  }

  /**
   * Basal area times height times a form factor ({@code tree/volume-from-form-factor}).
   *
   * @param formFactor form factor at breast height, above zero
   * @return the rule; it refuses trees without height
   * @throws OutOfDomainException if the factor is not above zero or not finite
   */
  public static TreeVolume formFactor(double formFactor) {
    return VolumeRules.formFactor(formFactor);
  }

  /**
   * Basal area times a volume-basal-area ratio ({@code tree/volume-from-ratio}).
   *
   * @param ratioM3M2 volume over basal area in m³ per m², not negative
   * @return the rule
   * @throws OutOfDomainException if the ratio is negative or not finite
   */
  public static TreeVolume volumeBasalAreaRatio(double ratioM3M2) {
    return VolumeRules.ratio(ratioM3M2);
  }
}
