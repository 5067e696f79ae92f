package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.AmountRounding;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.Minimums;
import org.mensuration.scaling.Roundings;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.StepRounding;
import org.mensuration.scaling.Taper;

/** The records of scaling: what they accept, and that equal measurements are equal. */
class ScalingRecordsTest {
  private static ScalingConvention own() {
    return ScalingConvention.of("own", SizeClass.nearest(inches(1)), SizeClass.full(feet(2)))
        .withTrim(inches(4))
        .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()))
        .withMinimums(Minimums.none().withDiameter(inches(6)).withLength(feet(8)).withNetShare(0.3))
        .withRoundings(
            new Roundings(
                AmountRounding.none(), AmountRounding.nearest(1), AmountRounding.nearest(10)));
  }

  private static ScalingConvention ownInMetres() {
    return ScalingConvention.of(
            "own", SizeClass.nearest(centimetres(2.54)), SizeClass.full(metres(0.6096)))
        .withTrim(centimetres(10.16))
        .withLongLogs(LongLogs.split(metres(4.8768), Split.NEAR_EQUAL, Taper.even()))
        .withMinimums(
            Minimums.none()
                .withDiameter(centimetres(15.24))
                .withLength(metres(2.4384))
                .withNetShare(0.3))
        .withRoundings(
            new Roundings(
                AmountRounding.none(), AmountRounding.nearest(1), AmountRounding.nearest(10)));
  }

  private static void alike(Object one, Object other) {
    assertThat(one).isEqualTo(other);
    assertThat(one).hasSameHashCodeAs(other);
  }

  @Test
  void equalMeasurementsAreEqualWhateverTheirUnit() {
    alike(SizeClass.full(feet(1)), SizeClass.full(inches(12)));
    alike(Taper.stated(inches(1), feet(8)), Taper.stated(inches(1), inches(96)));
    alike(LongLogs.refusedAbove(feet(16)), LongLogs.refusedAbove(inches(192)));
    alike(Minimums.none().withLength(feet(8)), Minimums.none().withLength(inches(96)));
    alike(own().trim(), own().trim());
    assertThat(own()).isNotEqualTo(ownInMetres().named("another"));
    ScalingConvention feet = own().withTrim(feet(1));
    alike(feet, own().withTrim(inches(12)));
    assertThat(feet).isNotEqualTo(own());
  }

  @Test
  void everyPartOfAConventionTells() {
    ScalingConvention base = own();
    List<ScalingConvention> changed = new ArrayList<>();
    changed.add(base);
    changed.add(base.named("other"));
    changed.add(base.withDiameters(SizeClass.full(inches(1))));
    changed.add(base.withLengths(SizeClass.full(feet(1))));
    changed.add(base.withTrim(inches(5)));
    changed.add(base.withLongLogs(LongLogs.inOnePiece()));
    changed.add(base.withMinimums(Minimums.none()));
    changed.add(base.withRoundings(Roundings.none()));
    changed.add(base.citing(List.of(), List.of("a note")));
    changed.add(base.citing(Scaling.idaho().citations(), List.of()));
    assertThat(changed).doesNotHaveDuplicates();
    assertThat(base.named("other").name()).isEqualTo("other");
    assertThat(base.withTrim(inches(5)).longLogs()).isEqualTo(base.longLogs());
    assertThat(base.withDiameters(SizeClass.full(inches(1))).roundings())
        .isEqualTo(base.roundings());
  }

  @Test
  void everyPartOfAPartTells() {
    assertThat(
            List.of(
                SizeClass.nearest(inches(1)), SizeClass.full(inches(1)), SizeClass.full(inches(2))))
        .doesNotHaveDuplicates();
    assertThat(
            List.of(
                LongLogs.inOnePiece(),
                LongLogs.refusedAbove(feet(16)),
                LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()),
                LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.none()),
                LongLogs.split(feet(16), Split.FULL_FROM_SMALL_END, Taper.even())))
        .doesNotHaveDuplicates();
    assertThat(
            List.of(
                Taper.none(),
                Taper.even(),
                Taper.wholeClasses(),
                Taper.stated(inches(1), feet(8)),
                Taper.stated(inches(1), feet(4)),
                Taper.stated(inches(2), feet(4))))
        .doesNotHaveDuplicates();
    assertThat(
            List.of(
                Minimums.none(),
                Minimums.none().withDiameter(inches(6)),
                Minimums.none().withDiameter(inches(7)),
                Minimums.none().withLength(feet(6)),
                Minimums.none().withNetShare(0.5)))
        .doesNotHaveDuplicates();
  }

  @Test
  void defectsCompareByWhatTheyMeasure() {
    alike(
        new Defect.Squared(inches(6), inches(12), feet(1)),
        new Defect.Squared(inches(6), feet(1), inches(12)));
    alike(
        new Defect.InteriorRot(inches(6), inches(12), feet(1)),
        new Defect.InteriorRot(inches(6), feet(1), inches(12)));
    alike(new Defect.Sector(degrees(90), feet(1)), new Defect.Sector(degrees(90), inches(12)));
    alike(new Defect.LengthCut(feet(1)), new Defect.LengthCut(inches(12)));
    alike(new Defect.DiameterCut(feet(1)), new Defect.DiameterCut(inches(12)));
    alike(new Defect.Sweep(feet(1)), new Defect.Sweep(inches(12)));
    alike(new Defect.Crook(inches(3), feet(1)), new Defect.Crook(inches(3), inches(12)));
    List<Defect> all =
        List.of(
            new Defect.Squared(inches(1), inches(2), feet(3)),
            new Defect.Squared(inches(4), inches(2), feet(3)),
            new Defect.Squared(inches(1), inches(4), feet(3)),
            new Defect.Squared(inches(1), inches(2), feet(4)),
            new Defect.InteriorRot(inches(1), inches(2), feet(3)),
            new Defect.InteriorRot(inches(4), inches(2), feet(3)),
            new Defect.InteriorRot(inches(1), inches(4), feet(3)),
            new Defect.InteriorRot(inches(1), inches(2), feet(4)),
            new Defect.Sector(degrees(10), feet(3)),
            new Defect.Sector(degrees(20), feet(3)),
            new Defect.Sector(degrees(10), feet(4)),
            new Defect.LengthCut(feet(3)),
            new Defect.LengthCut(feet(4)),
            new Defect.DiameterCut(inches(3)),
            new Defect.DiameterCut(inches(4)),
            new Defect.Sweep(inches(3)),
            new Defect.Sweep(inches(4)),
            new Defect.Crook(inches(3), feet(3)),
            new Defect.Crook(inches(4), feet(3)),
            new Defect.Crook(inches(3), feet(4)),
            new Defect.Percent(3),
            new Defect.Percent(4));
    assertThat(all).doesNotHaveDuplicates();
    Map<Class<?>, List<Defect>> kinds =
        all.stream().collect(Collectors.groupingBy(Defect::getClass));
    kinds.forEach(
        (kind, defects) ->
            assertThat(defects.stream().map(Object::hashCode).distinct().count())
                .as(kind.getSimpleName())
                .isEqualTo(defects.size()));
    LogScale feet = new LogScale("Doyle", 5, "bf", BarkBasis.UNDER);
    assertThat(new Defect.Stated(feet).title()).isEqualTo("stated amount");
    assertThat(new Defect.Crook(inches(3), feet(3)).title()).isEqualTo("crook");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> SizeClass.full(feet(0)))
        .hasMessageContaining("width of a class is 0 ft, allowed above zero");
    assertThatThrownBy(() -> own().named(" ")).hasMessageContaining("the name is blank");
    assertThatThrownBy(() -> own().withTrim(inches(-1)))
        .hasMessageContaining("own: trim is -1 in, allowed zero or more");
    assertThatThrownBy(() -> LongLogs.refusedAbove(feet(0)))
        .hasMessageContaining("longest segment is 0 ft");
    assertThatThrownBy(() -> new LongLogs(Optional.empty(), Split.NEAR_EQUAL, Taper.none()))
        .hasMessageContaining("near equal segments needs a longest segment");
    assertThatThrownBy(() -> new Taper(Taper.Kind.STATED, Optional.empty(), Optional.of(feet(4))))
        .hasMessageContaining("has its rise and its run");
    assertThatThrownBy(
            () -> new Taper(Taper.Kind.EVEN, Optional.of(inches(1)), Optional.of(feet(4))))
        .hasMessageContaining("has its rise and its run");
    assertThatThrownBy(() -> new Taper(Taper.Kind.STATED, Optional.of(inches(1)), Optional.empty()))
        .hasMessageContaining("has its rise and its run");
    assertThatThrownBy(() -> Taper.stated(inches(-1), feet(4))).hasMessageContaining("rise");
    assertThatThrownBy(() -> Taper.stated(inches(1), feet(0))).hasMessageContaining("run");
    assertThatThrownBy(() -> Minimums.none().withNetShare(1.5))
        .hasMessageContaining("least net share is 1.5, allowed [0.0, 1.0]");
    assertThatThrownBy(
            () -> new Minimums(Optional.empty(), Optional.empty(), OptionalDouble.of(Double.NaN)))
        .hasMessageContaining("least net share is NaN");
    assertThatThrownBy(() -> Minimums.none().withDiameter(inches(-1)))
        .hasMessageContaining("least diameter");
    assertThatThrownBy(() -> Minimums.none().withLength(feet(-1)))
        .hasMessageContaining("least length");
    assertThatThrownBy(() -> AmountRounding.nearest(-5)).hasMessageContaining("step");
    assertThatThrownBy(() -> AmountRounding.nearest(Double.NaN)).hasMessageContaining("step");
    assertThatThrownBy(() -> new ScalingStep("x", Double.NaN, 1, "ft"))
        .hasMessageContaining("x: before");
    assertThatThrownBy(() -> new ScalingStep("x", 1, Double.POSITIVE_INFINITY, "ft"))
        .hasMessageContaining("x: after");
    for (double bad : new double[] {-0.1, 100.1, Double.NaN}) {
      assertThatThrownBy(() -> new Defect.Percent(bad))
          .hasMessageContaining("allowed [0.0, 100.0]");
    }
    assertThatThrownBy(() -> new Defect.Squared(inches(-1), inches(1), feet(1)))
        .hasMessageContaining("squared defect: width");
    assertThatThrownBy(() -> new Defect.Squared(inches(1), inches(-1), feet(1)))
        .hasMessageContaining("squared defect: height");
    assertThatThrownBy(() -> new Defect.Squared(inches(1), inches(1), feet(-1)))
        .hasMessageContaining("squared defect: length");
    assertThatThrownBy(() -> new Defect.InteriorRot(inches(-1), inches(1), feet(1)))
        .hasMessageContaining("interior rot: width");
    assertThatThrownBy(() -> new Defect.InteriorRot(inches(1), inches(-1), feet(1)))
        .hasMessageContaining("interior rot: height");
    assertThatThrownBy(() -> new Defect.InteriorRot(inches(1), inches(1), feet(-1)))
        .hasMessageContaining("interior rot: length");
    assertThatThrownBy(() -> new Defect.Sector(degrees(1), feet(-1)))
        .hasMessageContaining("sector: length");
    assertThatThrownBy(() -> new Defect.LengthCut(feet(-1))).hasMessageContaining("length cut");
    assertThatThrownBy(() -> new Defect.DiameterCut(inches(-1)))
        .hasMessageContaining("diameter reduction");
    assertThatThrownBy(() -> new Defect.Sweep(inches(-1))).hasMessageContaining("sweep");
    assertThatThrownBy(() -> new Defect.Crook(inches(-1), feet(1)))
        .hasMessageContaining("crook: deflection");
    assertThatThrownBy(() -> new Defect.Crook(inches(1), feet(-1)))
        .hasMessageContaining("crook: length");
  }

  @Test
  void theRecordOfAScaleShowsEveryDeduction() {
    Log log = Log.of(inches(12.2), feet(16.5)).withBark(BarkBasis.UNDER);
    assertThat(
            Scaling.scaler(Scaling.landowner(), LogRules.scribnerDecimalC())
                .scale(log, new Defect.LengthCut(feet(4)), new Defect.Percent(10)))
        .hasToString(
            """
            Landowner
              length less trim: 16.5 ft → 16.16666667 ft
              length to its class: 16.16666667 ft → 16.0 ft
              small end to its class: 12.2 in → 12.0 in
              segment 1: rounded by the rule: 78.4 bf → 80.0 bf
              segment 1: gross 80.0 bf, length cut 20.0 bf, per cent 8.0 bf, net 52.0 bf
              gross 80.0 bf Scribner Decimal C (under bark)
              net 52.0 bf Scribner Decimal C (under bark)""");
  }

  @Test
  void everyPublishedConventionCitesItsPartsAndSaysWhatIsOpen() {
    assertThat(Scaling.published())
        .containsExactly(
            Scaling.idaho(),
            Scaling.georgia(),
            Scaling.vermont(),
            Scaling.nationalForests1918(),
            Scaling.eastSide(),
            Scaling.westSide(),
            Scaling.landowner());
    for (ScalingConvention convention : Scaling.published()) {
      assertThat(convention.citations()).as(convention.name()).isNotEmpty();
      assertThat(convention.notes()).as(convention.name()).isNotEmpty();
      assertThat(convention.minimums().netShare()).as(convention.name()).isEmpty();
    }
    assertThat(Scaling.eastSide().longLogs().longest().map(Object::toString)).contains("20 ft");
    assertThat(Scaling.westSide().longLogs().longest().map(Object::toString)).contains("40 ft");
    assertThat(Scaling.eastSide().citations().toString()).contains("from memory");
    assertThat(Scaling.landowner().diameters().toString())
        .isEqualTo("classes of 1 in, nearest, halves by turns, the first down");
    assertThat(Scaling.landowner().diameters().rounding())
        .isEqualTo(StepRounding.HALF_ALTERNATING_DOWN_FIRST);
  }
}
