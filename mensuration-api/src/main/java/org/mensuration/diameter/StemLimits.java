package org.mensuration.diameter;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.Physical;

/**
 * From where to where a stem counts, and from which ground its heights are measured. Immutable and
 * thread-safe; compared physically, whatever the units.
 *
 * @param breastHeight breast height
 * @param ground the one ground point of breast height, stump and tree height
 * @param stumpHeight height of the stump; empty if the stem counts from the ground
 * @param topDiameter diameter at which the stem ends; empty if it counts to the tip
 * @param topBark whether that diameter includes the bark; unknown without a limit
 */
public record StemLimits(
    BreastHeight breastHeight,
    GroundPoint ground,
    Optional<Quantity<Length>> stumpHeight,
    Optional<Quantity<Length>> topDiameter,
    BarkBasis topBark) {

  /**
   * Checks the limits.
   *
   * @param breastHeight breast height
   * @param ground the one ground point of breast height, stump and tree height
   * @param stumpHeight height of the stump
   * @param topDiameter diameter at which the stem ends
   * @param topBark whether that diameter includes the bark
   * @throws IllegalArgumentException if the stump is below the ground or above breast height, the
   *     top diameter is negative, or its bark is not stated
   */
  public StemLimits {
    Objects.requireNonNull(breastHeight, "breastHeight");
    Objects.requireNonNull(ground, "ground");
    Objects.requireNonNull(stumpHeight, "stumpHeight");
    Objects.requireNonNull(topDiameter, "topDiameter");
    Objects.requireNonNull(topBark, "topBark");
    double breast = breastHeight.height().toSystemUnit().getValue().doubleValue();
    double stump = stumpHeight.map(StemLimits::metres).orElse(0.0);
    if (!(stump >= 0 && stump <= breast)) {
      throw new IllegalArgumentException(
          "stump height: " + stump + " m, allowed [0, " + breast + "] m, up to breast height");
    }
    double top = topDiameter.map(StemLimits::metres).orElse(0.0);
    if (!(top >= 0 && top < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("top diameter: " + top + " m, allowed [0, ∞) m");
    }
    if (topDiameter.isPresent() && topBark == BarkBasis.UNKNOWN) {
      throw new IllegalArgumentException(
          "top diameter: say whether it is over or under bark, given is " + topBark);
    }
  }

  /**
   * A stem from the ground on the uphill side to the tip.
   *
   * @param breastHeight breast height
   * @return the limits
   */
  public static StemLimits of(BreastHeight breastHeight) {
    return new StemLimits(
        breastHeight,
        GroundPoint.UPHILL_SIDE,
        Optional.empty(),
        Optional.empty(),
        BarkBasis.UNKNOWN);
  }

  /**
   * The limits with heights from another ground point.
   *
   * @param point the ground point
   * @return limits with it
   */
  public StemLimits from(GroundPoint point) {
    return new StemLimits(breastHeight, point, stumpHeight, topDiameter, topBark);
  }

  /**
   * The limits with a stump.
   *
   * @param height height of the stump above the ground point
   * @return limits with it
   */
  public StemLimits stump(Quantity<Length> height) {
    return new StemLimits(breastHeight, ground, Optional.of(height), topDiameter, topBark);
  }

  /**
   * The limits with a top diameter.
   *
   * @param diameter diameter at which the stem ends
   * @param bark whether it includes the bark
   * @return limits with it
   */
  public StemLimits top(Quantity<Length> diameter, BarkBasis bark) {
    return new StemLimits(breastHeight, ground, stumpHeight, Optional.of(diameter), bark);
  }

  /**
   * Passes a tree height on if it was measured from the ground point of breast height.
   *
   * @param height tree height
   * @param measuredFrom ground point that it was measured from
   * @return the height
   * @throws IllegalArgumentException if it was measured from another point
   */
  public Quantity<Length> height(Quantity<Length> height, GroundPoint measuredFrom) {
    if (measuredFrom != ground) {
      throw new IllegalArgumentException(
          "tree height: measured from "
              + measuredFrom
              + ", breast height from "
              + ground
              + "; both need one ground point");
    }
    return height;
  }

  private static double metres(Quantity<Length> length) {
    return length.toSystemUnit().getValue().doubleValue();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StemLimits that
        && breastHeight.equals(that.breastHeight)
        && ground == that.ground
        && topBark == that.topBark
        && Physical.same(stumpHeight, that.stumpHeight)
        && Physical.same(topDiameter, that.topDiameter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(breastHeight, ground, topBark, Physical.hash(stumpHeight));
  }
}
