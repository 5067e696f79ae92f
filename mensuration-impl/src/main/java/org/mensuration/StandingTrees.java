package org.mensuration;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.internal.stem.CountedStems;
import org.mensuration.stem.DiameterPlace;
import org.mensuration.stem.StandingStem;
import org.mensuration.stem.StandingTree;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TreeCondition;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Trees as they stand: forked, in coppice, leaning, buttressed, broken, dead. Stateless and
 * thread-safe.
 *
 * <p>Keep well away from dead and broken trees and stop in wind.
 */
public final class StandingTrees {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);

  private StandingTrees() {}

  /**
   * A plumb stem counted by its diameter at breast height.
   *
   * @param profile its profile, which must reach breast height
   * @param breastHeight breast height of the country
   * @return the stem
   */
  public static StandingStem stem(StemProfile profile, Quantity<Length> breastHeight) {
    return stem(profile, breastHeight, DiameterPlace.BREAST_HEIGHT);
  }

  /**
   * A plumb stem counted by its diameter at a stated height, as above a buttress or a swelling.
   *
   * @param profile its profile, which must reach that height
   * @param height where the diameter is taken
   * @param place why it is taken there
   * @return the stem
   */
  public static StandingStem stem(
      StemProfile profile, Quantity<Length> height, DiameterPlace place) {
    return new StandingStem(
        profile, StemReading.of(height, profile.diameterAt(height)), place, Measures.degrees(0));
  }

  /**
   * A tree of one stem.
   *
   * @param stem the stem
   * @param condition whether it lives
   * @return the tree
   */
  public static StandingTree tree(StandingStem stem, TreeCondition condition) {
    return new CountedStems(List.of(stem), condition);
  }

  /**
   * A forked tree. Forked below breast height it is two trees, each with a diameter of its own;
   * forked at breast height or above it is one, counted by its first stem, with the volumes of both
   * stems summed.
   *
   * @param stem the stem from the ground up
   * @param limb the other stem; of a tree forked at breast height or above, a profile that begins
   *     at the fork or above it
   * @param fork height of the fork
   * @param breastHeight breast height of the country
   * @param condition whether it lives
   * @return two trees or one
   * @throws IllegalArgumentException if the other stem of one tree begins below the fork, for the
   *     wood there would be counted twice
   */
  public static List<StandingTree> forked(
      StandingStem stem,
      StandingStem limb,
      Quantity<Length> fork,
      Quantity<Length> breastHeight,
      TreeCondition condition) {
    double forkMetres = METRES.read(fork);
    double breast = METRES.read(breastHeight);
    if (!(forkMetres >= 0 && breast >= 0)) {
      throw new IllegalArgumentException(
          "fork at " + forkMetres + " m, breast height " + breast + " m, allowed [0, ∞) m");
    }
    if (forkMetres < breast) {
      return List.of(tree(stem, condition), tree(limb, condition));
    }
    double limbBase = METRES.read(limb.profile().base());
    if (!(limbBase >= forkMetres)) {
      throw new IllegalArgumentException(
          "forked at "
              + forkMetres
              + " m: the other stem begins at "
              + limbBase
              + " m, allowed from the fork up, or the wood below is counted twice");
    }
    return List.of(new CountedStems(List.of(stem, limb), condition));
  }

  /**
   * The stems of a coppice stool: each is a tree of its own.
   *
   * @param stems the stems
   * @param condition whether they live
   * @return one tree a stem
   */
  public static List<StandingTree> coppice(List<StandingStem> stems, TreeCondition condition) {
    List<StandingTree> trees = new ArrayList<>();
    for (StandingStem stem : stems) {
      trees.add(tree(stem, condition));
    }
    return List.copyOf(trees);
  }
}
