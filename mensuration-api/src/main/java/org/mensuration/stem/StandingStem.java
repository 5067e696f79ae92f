package org.mensuration.stem;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;

/**
 * A stem as it stands. Immutable and thread-safe.
 *
 * @param profile its profile, heights along the stem
 * @param reference the diameter by which it is counted, at a stated height
 * @param place why it was taken there
 * @param lean lean from the plumb line
 */
public record StandingStem(
    StemProfile profile, StemReading reference, DiameterPlace place, Quantity<Angle> lean) {

  /**
   * Checks that nothing is null.
   *
   * @param profile its profile, heights along the stem
   * @param reference the diameter by which it is counted, at a stated height
   * @param place why it was taken there
   * @param lean lean from the plumb line
   */
  public StandingStem {
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(reference, "reference");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(lean, "lean");
  }

  /**
   * The same stem, leaning.
   *
   * @param lean lean from the plumb line
   * @return a new stem
   */
  public StandingStem leaning(Quantity<Angle> lean) {
    return new StandingStem(profile, reference, place, lean);
  }
}
