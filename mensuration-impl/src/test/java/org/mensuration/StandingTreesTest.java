package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.DiameterPlace;
import org.mensuration.stem.StandingStem;
import org.mensuration.stem.StandingTree;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.Tip;
import org.mensuration.stem.TreeCondition;

class StandingTreesTest {
  private static final Quantity<Length> BREAST_HEIGHT = metres(1.3);
  private static final StemProfile MAIN =
      Stems.profile(StemsTest.readings(0.5, 60, 1.3, 50, 8, 35), metres(24));
  private static final StemProfile OTHER =
      Stems.profile(StemsTest.readings(0.5, 40, 1.3, 33, 8, 22), metres(20));
  private static final StemProfile LIMB =
      Stems.profile(
          StemsTest.readings(4, 20, 9, 12),
          BarkBasis.UNKNOWN,
          Butt.atLowestReading(),
          Tip.cone(metres(15)));

  private static double volume(StemProfile profile) {
    return in(profile.volume(), CUBIC_METRE);
  }

  private static double volume(StandingTree tree) {
    return in(tree.volume(), CUBIC_METRE);
  }

  @Test
  void forkedBelowBreastHeightIsTwoTrees() {
    List<StandingTree> trees =
        StandingTrees.forked(
            StandingTrees.stem(MAIN, BREAST_HEIGHT),
            StandingTrees.stem(OTHER, BREAST_HEIGHT),
            metres(1.29),
            BREAST_HEIGHT,
            TreeCondition.LIVING);
    assertThat(trees).hasSize(2);
    assertThat(in(trees.get(0).reference().diameter(), CENTIMETRE)).isEqualTo(50);
    assertThat(in(trees.get(1).reference().diameter(), CENTIMETRE)).isEqualTo(33);
    assertThat(volume(trees.get(1))).isEqualTo(volume(OTHER));
  }

  @Test
  void forkedAtBreastHeightOrAboveIsOneTreeWithItsStemsSummed() {
    StandingStem main = StandingTrees.stem(MAIN, BREAST_HEIGHT);
    StandingStem limb = StandingTrees.stem(LIMB, metres(5), DiameterPlace.ABOVE_SWELLING);
    List<StandingTree> trees =
        StandingTrees.forked(main, limb, metres(4), BREAST_HEIGHT, TreeCondition.LIVING);
    assertThat(trees).hasSize(1);
    StandingTree tree = trees.get(0);
    assertThat(volume(tree)).isCloseTo(volume(MAIN) + volume(LIMB), within(1e-15));
    assertThat(in(tree.reference().diameter(), CENTIMETRE)).isEqualTo(50);
    assertThat(tree.stems()).containsExactly(main, limb);
    assertThat(in(tree.length(), METRE)).isEqualTo(24);
    assertThat(StandingTrees.forked(main, limb, BREAST_HEIGHT, BREAST_HEIGHT, TreeCondition.LIVING))
        .hasSize(1);
    assertThatThrownBy(
            () ->
                StandingTrees.forked(
                    main,
                    StandingTrees.stem(OTHER, BREAST_HEIGHT),
                    metres(4),
                    BREAST_HEIGHT,
                    TreeCondition.LIVING))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll("forked at 4.0 m", "begins at 0.0 m", "counted twice");
    assertThatThrownBy(
            () -> StandingTrees.forked(main, limb, metres(-1), BREAST_HEIGHT, TreeCondition.LIVING))
        .hasMessageContaining("fork at -1.0 m");
  }

  @Test
  void eachStemOfACoppiceIsATree() {
    List<StandingTree> trees =
        StandingTrees.coppice(
            List.of(
                StandingTrees.stem(MAIN, BREAST_HEIGHT), StandingTrees.stem(OTHER, BREAST_HEIGHT)),
            TreeCondition.LIVING);
    assertThat(trees).hasSize(2);
    assertThat(volume(trees.get(0))).isEqualTo(volume(MAIN));
    assertThat(trees.get(1).condition()).isEqualTo(TreeCondition.LIVING);
  }

  @Test
  void leanTellsLengthFromHeight() {
    StandingTree tree =
        StandingTrees.tree(
            StandingTrees.stem(MAIN, BREAST_HEIGHT).leaning(degrees(10)), TreeCondition.LIVING);
    assertThat(in(tree.length(), METRE)).isEqualTo(24);
    assertThat(in(tree.height(), METRE))
        .isCloseTo(24 * Math.cos(Math.toRadians(10)), within(1e-12));
    StandingStem flat = StandingTrees.stem(MAIN, BREAST_HEIGHT).leaning(degrees(90));
    assertThatThrownBy(() -> StandingTrees.tree(flat, TreeCondition.LIVING))
        .isInstanceOf(OutOfDomainException.class);
  }

  @Test
  void aButtressedStemIsCountedByADiameterAboveIt() {
    StandingStem stem = StandingTrees.stem(MAIN, metres(3), DiameterPlace.ABOVE_BUTTRESS);
    assertThat(stem.place()).isEqualTo(DiameterPlace.ABOVE_BUTTRESS);
    assertThat(in(stem.reference().height(), METRE)).isEqualTo(3);
    assertThat(stem.reference().diameter()).isEqualTo(MAIN.diameterAt(metres(3)));
    assertThat(StandingTrees.stem(MAIN, BREAST_HEIGHT).place())
        .isEqualTo(DiameterPlace.BREAST_HEIGHT);
    assertThatThrownBy(() -> StandingTrees.stem(LIMB, BREAST_HEIGHT))
        .hasMessageContaining("height: 1.3 m");
  }

  @Test
  void aDeadTreeCarriesItsConditionAndABrokenOneItsBreak() {
    StemProfile broken =
        Stems.profile(
            StemsTest.readings(0.5, 60, 1.3, 50, 8, 35),
            BarkBasis.OVER,
            Butt.cylinder(),
            Tip.cone(metres(24)).brokenAt(metres(12)));
    StandingTree tree =
        StandingTrees.tree(StandingTrees.stem(broken, BREAST_HEIGHT), TreeCondition.DEAD_BROKEN);
    assertThat(tree.condition()).isEqualTo(TreeCondition.DEAD_BROKEN);
    assertThat(in(tree.height(), METRE)).isEqualTo(12);
    assertThat(volume(tree)).isEqualTo(volume(broken));
    assertThatThrownBy(
            () -> StandingTrees.tree(StandingTrees.stem(broken, BREAST_HEIGHT), TreeCondition.DEAD))
        .hasMessageContainingAll("broken at 12.0 m", "DEAD_BROKEN");
    assertThat(
            StandingTrees.tree(StandingTrees.stem(MAIN, BREAST_HEIGHT), TreeCondition.DEAD)
                .condition())
        .isEqualTo(TreeCondition.DEAD);
  }
}
