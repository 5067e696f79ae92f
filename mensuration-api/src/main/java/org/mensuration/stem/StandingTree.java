package org.mensuration.stem;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;

/** A tree that is counted as one. Implementations are immutable and thread-safe. */
public interface StandingTree {

  /**
   * Its stems.
   *
   * @return the first is the one by whose diameter it is counted
   */
  List<StandingStem> stems();

  /**
   * Whether it lives.
   *
   * @return the condition
   */
  TreeCondition condition();

  /**
   * The diameter by which it is counted, with its height.
   *
   * @return the reference of its first stem
   */
  StemReading reference();

  /**
   * The volume of its stems as they stand, together.
   *
   * @return the sum, each to its break or tip
   */
  Quantity<Volume> volume();

  /**
   * The length along its longest stem.
   *
   * @return from the ground to the top as it stands
   */
  Quantity<Length> length();

  /**
   * The vertical height of its highest stem ({@code stem/vertical-height}).
   *
   * @return the height of the top as it stands
   */
  Quantity<Length> height();
}
