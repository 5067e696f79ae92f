package org.mensuration.scaling;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.quantity.LogScale;
import org.mensuration.quantity.Physical;

/**
 * A defect and the way in which it is deducted. All kinds are immutable and thread-safe, and equal
 * when their measurements are physically equal. Measurements are those of the defect, not of the
 * log.
 */
public sealed interface Defect {

  /**
   * What it is called in the record of the scale.
   *
   * @return for example {@code squared defect}
   */
  String title();

  /**
   * A defect boxed in: width and height each an inch more, times length, in feet of Scribner's kind
   * ({@code deduction/squared-defect}). Rules of another kind refuse it.
   *
   * @param width width as measured
   * @param height height as measured
   * @param length length
   */
  record Squared(Quantity<Length> width, Quantity<Length> height, Quantity<Length> length)
      implements Defect {
    /**
     * Checks the measurements.
     *
     * @param width width as measured
     * @param height height as measured
     * @param length length
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public Squared {
      Amounts.requireNotNegative(width, "squared defect: width");
      Amounts.requireNotNegative(height, "squared defect: height");
      Amounts.requireNotNegative(length, "squared defect: length");
    }

    @Override
    public String title() {
      return "squared defect";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Squared box
          && Physical.same(width, box.width)
          && Physical.same(height, box.height)
          && Physical.same(length, box.length);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(width), Physical.hash(height), Physical.hash(length));
    }
  }

  /**
   * A sector of the end, over a length ({@code deduction/sector}).
   *
   * @param angle angle of the sector
   * @param length length of the defect
   */
  record Sector(Quantity<Angle> angle, Quantity<Length> length) implements Defect {
    /**
     * Checks the length; the angle is checked by the formula.
     *
     * @param angle angle of the sector
     * @param length length of the defect
     * @throws IllegalArgumentException if the length is negative or not finite
     */
    public Sector {
      Objects.requireNonNull(angle, "angle");
      Amounts.requireNotNegative(length, "sector: length");
    }

    @Override
    public String title() {
      return "sector";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Sector sector
          && Physical.same(angle, sector.angle)
          && Physical.same(length, sector.length);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(angle), Physical.hash(length));
    }
  }

  /**
   * Everything over a length ({@code deduction/length-cut}).
   *
   * @param length length of the defect
   */
  record LengthCut(Quantity<Length> length) implements Defect {
    /**
     * Checks the length.
     *
     * @param length length of the defect
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public LengthCut {
      Amounts.requireNotNegative(length, "length cut: length");
    }

    @Override
    public String title() {
      return "length cut";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof LengthCut cut && Physical.same(length, cut.length);
    }

    @Override
    public int hashCode() {
      return Physical.hash(length);
    }
  }

  /**
   * Scale at the diameter less the scale at a smaller diameter, both by the rule of the log.
   *
   * @param reduction what the diameter is reduced by
   */
  record DiameterCut(Quantity<Length> reduction) implements Defect {
    /**
     * Checks the reduction.
     *
     * @param reduction what the diameter is reduced by
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public DiameterCut {
      Amounts.requireNotNegative(reduction, "diameter reduction");
    }

    @Override
    public String title() {
      return "diameter reduction";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof DiameterCut cut && Physical.same(reduction, cut.reduction);
    }

    @Override
    public int hashCode() {
      return Physical.hash(reduction);
    }
  }

  /**
   * Rot within sound wood, by its width and height ({@code deduction/interior-share}).
   *
   * @param width width of the rot
   * @param height height of the rot
   * @param length length of the rot
   */
  record InteriorRot(Quantity<Length> width, Quantity<Length> height, Quantity<Length> length)
      implements Defect {
    /**
     * Checks the measurements.
     *
     * @param width width of the rot
     * @param height height of the rot
     * @param length length of the rot
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public InteriorRot {
      Amounts.requireNotNegative(width, "interior rot: width");
      Amounts.requireNotNegative(height, "interior rot: height");
      Amounts.requireNotNegative(length, "interior rot: length");
    }

    @Override
    public String title() {
      return "interior rot";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof InteriorRot rot
          && Physical.same(width, rot.width)
          && Physical.same(height, rot.height)
          && Physical.same(length, rot.length);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(width), Physical.hash(height), Physical.hash(length));
    }
  }

  /**
   * Sweep of a segment of 16 ft, the length that the rule is stated for ({@code
   * deduction/sweep-share}).
   *
   * @param departure departure from a straight line
   */
  record Sweep(Quantity<Length> departure) implements Defect {
    /**
     * Checks the departure.
     *
     * @param departure departure from a straight line
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Sweep {
      Amounts.requireNotNegative(departure, "sweep");
    }

    @Override
    public String title() {
      return "sweep";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Sweep sweep && Physical.same(departure, sweep.departure);
    }

    @Override
    public int hashCode() {
      return Physical.hash(departure);
    }
  }

  /**
   * A crook over a part of the length ({@code deduction/crook-share}).
   *
   * @param deflection its deflection
   * @param length its length
   */
  record Crook(Quantity<Length> deflection, Quantity<Length> length) implements Defect {
    /**
     * Checks the measurements.
     *
     * @param deflection its deflection
     * @param length its length
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public Crook {
      Amounts.requireNotNegative(deflection, "crook: deflection");
      Amounts.requireNotNegative(length, "crook: length");
    }

    @Override
    public String title() {
      return "crook";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Crook crook
          && Physical.same(deflection, crook.deflection)
          && Physical.same(length, crook.length);
    }

    @Override
    public int hashCode() {
      return Objects.hash(Physical.hash(deflection), Physical.hash(length));
    }
  }

  /**
   * A share of the scale, judged by eye.
   *
   * @param percent the share in per cent, 0 to 100
   */
  record Percent(double percent) implements Defect {
    /**
     * Checks the share.
     *
     * @param percent the share in per cent
     * @throws IllegalArgumentException if it is outside 0 to 100
     */
    public Percent {
      Amounts.requireIn(percent, 0, 100, "deduction in per cent");
    }

    @Override
    public String title() {
      return "per cent";
    }
  }

  /**
   * An amount in the feet of the rule that it is taken from; another rule's are refused.
   *
   * @param amount the amount
   */
  record Stated(LogScale amount) implements Defect {
    /**
     * Checks that there is an amount.
     *
     * @param amount the amount
     */
    public Stated {
      Objects.requireNonNull(amount, "amount");
    }

    @Override
    public String title() {
      return "stated amount";
    }
  }
}
