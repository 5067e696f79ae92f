package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.mensuration.diameter.BreastHeight;
import org.mensuration.diameter.CrossedRule;
import org.mensuration.diameter.GroundPoint;
import org.mensuration.diameter.SectionDiameter;
import org.mensuration.diameter.StationReading;
import org.mensuration.diameter.StemLimits;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.units.ForestUnits;

class DiametersTest {
  /** Every instrument touches or sights a circle of this radius by coordinates. */
  @Property(tries = 200)
  void everyInstrumentFindsACircle(
      @ForAll @DoubleRange(min = 5, max = 150) double diameter,
      @ForAll @DoubleRange(min = 10, max = 80) double reach,
      @ForAll @DoubleRange(min = 10, max = 80) double halfOpening) {
    double r = diameter / 2;
    near(Diameters.fromGirth(centimetres(Math.PI * diameter)), diameter);
    double contact = r / StrictMath.tan(StrictMath.toRadians(halfOpening));
    near(Diameters.vFork(centimetres(contact), degrees(halfOpening)), diameter);
    double sight = 2 * StrictMath.toDegrees(StrictMath.atan(r / (reach + r)));
    near(Diameters.sectorFork(centimetres(reach), degrees(sight)), diameter);
    // Eye at the reach before the face; the line of the stick touches the face.
    double mark = reach * StrictMath.tan(StrictMath.asin(r / (reach + r)));
    near(Diameters.stick(centimetres(2 * mark), centimetres(reach)), diameter);
    near(Diameters.stickMark(centimetres(diameter), centimetres(reach)), 2 * mark);
    assertThat(
            in(Diameters.areaFromGirth(centimetres(Math.PI * diameter)), ForestUnits.SQUARE_METRE))
        .isCloseTo(Math.PI * r * r / 10_000, within(1e-12));
  }

  @Test
  void pairsAndOvals() {
    near(Diameters.crossed(centimetres(40), centimetres(42), CrossedRule.ARITHMETIC_MEAN), 41);
    near(
        Diameters.crossed(centimetres(40), centimetres(42), CrossedRule.QUADRATIC_MEAN),
        Math.sqrt(1682));
    near(Diameters.crossed(centimetres(36), centimetres(25), CrossedRule.GEOMETRIC_MEAN), 30);
    assertThat(
            in(Diameters.ellipseArea(centimetres(50), centimetres(40)), ForestUnits.SQUARE_METRE))
        .isCloseTo(Math.PI * 0.05, within(1e-15));
    near(Diameters.parallelSights(centimetres(40), metres(20), degrees(0)), 40);
    // One minute of arc at 20 m is 5.8 mm.
    near(
        Diameters.parallelSights(centimetres(40), metres(20), degrees(1.0 / 60)),
        40 + 2000 * StrictMath.tan(StrictMath.toRadians(1.0 / 60)));
  }

  @Test
  void readingsOfTwoStationsAtOneHeightAreACrossedPair() {
    List<SectionDiameter> sections =
        Diameters.byHeight(
            List.of(
                new StationReading("west", metres(5), centimetres(32)),
                new StationReading("south", metres(1.3), centimetres(40)),
                new StationReading("south", centimetres(500.05), centimetres(30)),
                new StationReading("south", metres(5), metres(0.3)),
                new StationReading("west", metres(5.002), centimetres(31))),
            CrossedRule.ARITHMETIC_MEAN);
    assertThat(sections)
        .containsExactly(
            new SectionDiameter(metres(1.3), centimetres(40), false),
            new SectionDiameter(metres(5), centimetres(31), true),
            new SectionDiameter(metres(5.002), centimetres(31), false));
    assertThat(sections.get(0))
        .isEqualTo(new SectionDiameter(centimetres(130), metres(0.4), false))
        .hasSameHashCodeAs(new SectionDiameter(metres(1.3), centimetres(40), false))
        .isNotEqualTo(new SectionDiameter(metres(1.3), centimetres(40), true));
    assertThat(new StationReading("a", metres(1), metres(0.4)))
        .isEqualTo(new StationReading("a", centimetres(100), metres(0.4)))
        .hasSameHashCodeAs(new StationReading("a", centimetres(100), metres(0.4)))
        .isNotEqualTo(new StationReading("b", metres(1), metres(0.4)));
    assertThat(Diameters.byHeight(List.of(), CrossedRule.ARITHMETIC_MEAN)).isEmpty();
  }

  @Test
  void oneHeightReachesUpToAMillimetreAndOneFigureMayComeInTwoUnits() {
    StationReading ground = new StationReading("south", centimetres(0), centimetres(30));
    StationReading above = new StationReading("south", centimetres(0.1), centimetres(31));
    assertThat(Diameters.byHeight(List.of(ground, above), CrossedRule.ARITHMETIC_MEAN)).hasSize(2);
    StationReading below = new StationReading("west", centimetres(0.0999), centimetres(31));
    assertThat(Diameters.byHeight(List.of(ground, below), CrossedRule.ARITHMETIC_MEAN))
        .containsExactly(new SectionDiameter(centimetres(0), centimetres(30.5), true));
    // 30 cm over 2.54 cm, as a calculator with eight digits shows it.
    StationReading inInches = new StationReading("south", centimetres(0), inches(11.811024));
    assertThatThrownBy(
            () -> Diameters.byHeight(List.of(ground, inInches), CrossedRule.ARITHMETIC_MEAN))
        .hasMessageContaining("station south read 30 cm and 11.811024 in");
    StationReading longer = new StationReading("south", centimetres(0), inches(11.811023622));
    assertThat(Diameters.byHeight(List.of(ground, longer), CrossedRule.ARITHMETIC_MEAN))
        .containsExactly(new SectionDiameter(centimetres(0), centimetres(30), false));
    StationReading none = new StationReading("south", centimetres(0), centimetres(0));
    assertThat(Diameters.byHeight(List.of(none, none), CrossedRule.ARITHMETIC_MEAN))
        .containsExactly(new SectionDiameter(centimetres(0), centimetres(0), false));
  }

  @Test
  void sightsMayMeetAtTheStemAndNotBeforeIt() {
    near(Diameters.parallelSights(centimetres(0), metres(20), degrees(0)), 0);
  }

  @Test
  void readingsThatContradictEachOtherAreRefused() {
    StationReading south = new StationReading("south", metres(5), centimetres(30));
    assertThatThrownBy(
            () ->
                Diameters.byHeight(
                    List.of(south, new StationReading("south", metres(5), centimetres(31))),
                    CrossedRule.ARITHMETIC_MEAN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("station south read 30 cm and 31 cm at the height of 5 m");
    assertThatThrownBy(
            () ->
                Diameters.byHeight(
                    List.of(
                        south,
                        new StationReading("west", metres(5), centimetres(31)),
                        new StationReading("north", metres(5), centimetres(31))),
                    CrossedRule.ARITHMETIC_MEAN))
        .hasMessageContaining("3 stations read the height of 5 m, a crossed pair has 2");
  }

  @Test
  void instrumentsWithoutMeaningAreRefused() {
    assertThatThrownBy(() -> Diameters.fromGirth(centimetres(-1)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Diameters.vFork(centimetres(10), degrees(90)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Diameters.sectorFork(centimetres(10), degrees(90)))
        .isInstanceOf(OutOfDomainException.class);
    assertThatThrownBy(() -> Diameters.parallelSights(centimetres(10), metres(20), degrees(-1)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessageContaining("the sights cross before the stem");
    assertThatThrownBy(() -> Diameters.ellipseArea(centimetres(10), centimetres(11)))
        .hasMessageContaining("allowed b ≤ a");
  }

  @Test
  void breastHeightIsAParameter() {
    assertThat(BreastHeights.all()).hasSize(5).doesNotHaveDuplicates();
    assertThat(BreastHeights.all()).doesNotContain(BreastHeights.frenchGirth());
    assertThat(in(BreastHeights.unitedStates().height(), ForestUnits.METRE))
        .isCloseTo(1.3716, within(1e-15));
    assertThat(BreastHeights.unitedStates()).isNotEqualTo(BreastHeights.india());
    assertThat(BreastHeight.of(centimetres(130)))
        .isEqualTo(BreastHeights.europe())
        .hasSameHashCodeAs(BreastHeights.europe());
    assertThat(BreastHeights.japan().citation().toString()).contains("from memory");
    for (BreastHeight height : BreastHeights.all()) {
      assertThat(height.used()).isNotEmpty();
    }
  }

  @Test
  void limitsOfAStem() {
    StemLimits limits =
        StemLimits.of(BreastHeights.europe())
            .stump(centimetres(30))
            .top(centimetres(7), BarkBasis.OVER);
    assertThat(limits.ground()).isEqualTo(GroundPoint.UPHILL_SIDE);
    assertThat(limits)
        .isEqualTo(
            StemLimits.of(BreastHeight.of(metres(1.3)))
                .stump(metres(0.3))
                .top(metres(0.07), BarkBasis.OVER))
        .hasSameHashCodeAs(
            StemLimits.of(BreastHeight.of(metres(1.3)))
                .stump(metres(0.3))
                .top(metres(0.07), BarkBasis.OVER))
        .isNotEqualTo(limits.from(GroundPoint.DOWNHILL_SIDE));
    assertThat(limits.height(metres(28), GroundPoint.UPHILL_SIDE)).isEqualTo(metres(28));
    assertThatThrownBy(() -> limits.height(metres(28), GroundPoint.DOWNHILL_SIDE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("both need one ground point");
    assertThatThrownBy(() -> limits.stump(feet(5)))
        .hasMessageContaining("stump height: 1.524 m, allowed [0, 1.3] m");
    assertThatThrownBy(() -> limits.stump(metres(-0.1))).hasMessageContaining("stump height");
    assertThatThrownBy(() -> limits.top(centimetres(7), BarkBasis.UNKNOWN))
        .hasMessageContaining("say whether it is over or under bark");
    assertThatThrownBy(() -> limits.top(centimetres(-7), BarkBasis.OVER))
        .hasMessageContaining("top diameter: -0.07 m");
  }

  private static void near(Quantity<Length> found, double cm) {
    assertThat(in(found, ForestUnits.CENTIMETRE)).isCloseTo(cm, within(1e-9));
  }
}
