package org.mensuration.log;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.Physical;

/**
 * The tip of a stem above its last section. Immutable and thread-safe.
 *
 * @param form the solid it is taken for
 * @param foot diameter of its foot
 * @param length length from its foot to the end of the stem
 */
public record Tip(Form form, Quantity<Length> foot, Quantity<Length> length) {

  /** The solids a tip is taken for. */
  public enum Form {
    /** A third of the foot area times the length. */
    CONE,
    /** Half the foot area times the length. */
    PARABOLOID
  }

  /**
   * Checks that nothing is null.
   *
   * @param form the solid it is taken for
   * @param foot diameter of its foot
   * @param length length from its foot to the end of the stem
   */
  public Tip {
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(foot, "foot");
    Objects.requireNonNull(length, "length");
  }

  /**
   * A tip taken for a cone.
   *
   * @param foot diameter of its foot
   * @param length length from its foot to the end of the stem
   * @return the tip
   */
  public static Tip cone(Quantity<Length> foot, Quantity<Length> length) {
    return new Tip(Form.CONE, foot, length);
  }

  /**
   * A tip taken for a paraboloid.
   *
   * @param foot diameter of its foot
   * @param length length from its foot to the end of the stem
   * @return the tip
   */
  public static Tip paraboloid(Quantity<Length> foot, Quantity<Length> length) {
    return new Tip(Form.PARABOLOID, foot, length);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Tip tip
        && form == tip.form
        && Physical.same(foot, tip.foot)
        && Physical.same(length, tip.length);
  }

  @Override
  public int hashCode() {
    return Objects.hash(form, Physical.hash(foot), Physical.hash(length));
  }
}
