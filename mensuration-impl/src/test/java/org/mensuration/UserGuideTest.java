package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.height.HeightCurveForm.NASLUND;
import static org.mensuration.stand.DiameterClasses.ofWidth;
import static org.mensuration.units.ForestUnits.CENTIMETRE;
import static org.mensuration.units.ForestUnits.CUBIC_FOOT;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.CUBIC_METRE_PER_HECTARE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.ForestUnits.PER_HECTARE;
import static org.mensuration.units.ForestUnits.SQUARE_METRE_PER_HECTARE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.degrees;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.hectares;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.mensuration.edge.EdgeRule;
import org.mensuration.formula.Explanation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Gradient;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.height.HeightCurveSet;
import org.mensuration.log.Log;
import org.mensuration.log.LogTotal;
import org.mensuration.log.LogWarning;
import org.mensuration.log.RuleComparison;
import org.mensuration.log.Tip;
import org.mensuration.optics.DistanceRange;
import org.mensuration.optics.Graduation;
import org.mensuration.optics.OpticalScale;
import org.mensuration.optics.RatioScale;
import org.mensuration.optics.Sighting;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.BasalAreaPerArea;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.LogScaler;
import org.mensuration.scaling.ScaledLog;
import org.mensuration.stand.Interval;
import org.mensuration.stand.SampleLayout;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTable;
import org.mensuration.stand.StratifiedEstimate;
import org.mensuration.stand.Stratum;
import org.mensuration.stand.TallyPlan;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.StemStation;
import org.mensuration.uncertainty.CoverageInterval;
import org.mensuration.uncertainty.DrawnResult;
import org.mensuration.uncertainty.InputDistribution;
import org.mensuration.uncertainty.StatedResult;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.WoodAmount;

/** The examples of the README, which quotes what stands between the marks. */
@Tag("locale")
class UserGuideTest {
  @Test
  void firstVolume() {
    // begin first-volume
    OpticalScale scale = OpticalScales.calibratedOnStem(centimetres(42), 6); // 6 divisions cover it
    Quantity<Length> upper = scale.diameter(4.5); // 31.5 cm
    Quantity<Volume> section = LogRules.smalian().volume(Log.of(centimetres(46), upper, metres(5)));
    double cubicFeet = in(section, CUBIC_FOOT);
    Explanation steps = LogRules.smalian().formula().explain(46, 31.5, 5); // with its source
    // end first-volume
    assertThat(in(upper, CENTIMETRE)).isEqualTo(31.5);
    // By hand: π (46² + 31.5²) 5 / 80000 m³, over 0.3048³.
    double cubicMetres = Math.PI * (2116 + 992.25) * 5 / 80000;
    assertThat(in(section, CUBIC_METRE)).isCloseTo(cubicMetres, within(1e-15));
    assertThat(cubicFeet).isCloseTo(cubicMetres / (0.3048 * 0.3048 * 0.3048), within(1e-12));
    assertThat(steps.toString()).contains("46", "31.5", "Smalian").doesNotContain("31,5");
  }

  @Test
  void outOfReach() {
    // begin out-of-reach
    RatioScale scale = OpticalScales.graduated(OpticalScales.ofRatio(0.01), Graduation.of(12));
    Quantity<Length> axis = OpticalScales.axisDistance(metres(15), centimetres(52)); // 15.26 m
    Sighting sight = Sighting.toAxis(axis).at(degrees(24)); // it does not compensate for slope
    Quantity<Length> exact = scale.diameter(2.25, sight); // 37.58 cm, by the tangent lines
    Quantity<Length> field = scale.proportionalDiameter(2.25, sight); // ratio times distance
    double reading = MeasurementErrors.rectangular(0.125); // an eighth of a division either way
    Quantity<Length> error = scale.standardError(2.25, reading, axis, centimetres(5)); // 1.1 cm
    Quantity<Length> next = centimetres(40);
    Quantity<Length> threeDivisions = scale.workingDistance(next, 3); // 13.3 m
    DistanceRange good = scale.distancesWithin(next, reading, centimetres(5), centimetres(1));
    // end out-of-reach
    // By hand: b/(2 cos 24°) is the tangent of half the angle.
    double half = 0.0225 / 2 / Math.cos(Math.toRadians(24));
    assertThat(in(exact, METRE))
        .isCloseTo(2 * 15.26 * half / Math.sqrt(1 + half * half), within(1e-14));
    assertThat(in(exact, CENTIMETRE)).isCloseTo(37.58, within(0.005));
    assertThat(in(field, METRE)).isCloseTo(2 * 15.26 * half, within(1e-14));
    assertThat(in(error, CENTIMETRE)).isCloseTo(1.1, within(0.05));
    assertThat(in(threeDivisions, METRE)).isCloseTo(0.4 / 0.03 * 1.0001125, within(1e-6));
    assertThat(in(good.farthest(), METRE)).isCloseTo(13.7, within(0.05));
    // Nearer, twelve divisions do not hold it.
    assertThat(in(good.nearest(), METRE)).isCloseTo(3.339, within(0.0005));
  }

  @Test
  void drawnUncertainty() {
    // begin uncertainty
    Formula huber = Catalogues.standard().formula("log/huber"); // middle in cm, length in m
    List<InputDistribution> inputs =
        List.of(new InputDistribution.Normal(34, 0.6), new InputDistribution.Rectangular(5, 0.05));
    DrawnResult drawn = DrawnUncertainty.through(huber, inputs, 100_000, 7, 95); // seed 7
    CoverageInterval interval = drawn.shortest(); // 0.422 to 0.486 m3
    StatedResult stated = StatedResults.nearest(drawn.mean(), drawn.standardUncertainty(), 2);
    Gradient slopes = huber.gradient(34, 5);
    double[] byInput = {slopes.partial(0), slopes.partial(1)}; // of first order, to compare
    double[] errors = {0.6, MeasurementErrors.rectangular(0.05)};
    double firstOrder = MeasurementErrors.combined(byInput, errors); // 0.016 m3
    // end uncertainty
    // First order by hand: the relative error is twice that of the diameter and that of the length.
    double volume = Math.PI * 0.34 * 0.34 / 4 * 5;
    double relative = Math.hypot(2 * 0.6 / 34, 0.05 / Math.sqrt(3) / 5);
    assertThat(firstOrder).isCloseTo(volume * relative, within(1e-15));
    // Of a hundred thousand draws the deviation is known to 0.2 %, four times that is allowed.
    assertThat(drawn.standardUncertainty()).isCloseTo(firstOrder, within(0.01 * firstOrder));
    assertThat(stated).hasToString("0.454 (standard uncertainty 0.016)");
    // Nearly normal; the ends of a shortest interval of so many draws are known to 0.0004.
    assertThat(interval.lower()).isCloseTo(volume * (1 - 1.96 * relative), within(0.001));
    assertThat(interval.upper()).isCloseTo(volume * (1 + 1.96 * relative), within(0.001));
  }

  @Test
  void sections() {
    // begin sections
    Log butt = Log.of(centimetres(46), centimetres(38), metres(4)).withMiddle(centimetres(47));
    Log upper = Log.of(centimetres(38), centimetres(30), metres(4)).withMiddle(centimetres(34));
    Tip tip = Tip.cone(centimetres(30), metres(9));
    LogTotal stem = LogRules.total(LogRules.newton(), List.of(butt, upper), tip);
    List<LogWarning> odd = stem.warnings(); // the middle of 47 cm: computed, and said
    double bias = LogBias.percent(LogRules.smalian(), 2, 0.8); // 0.82 % on a cone to 0.8
    WoodAmount stack = WoodConversions.stackAs(metres(5), metres(2), metres(1), "de:rm-ob");
    ConversionFactor factor = WoodConversions.factors("de:rm-ob", "de:fm-ub").get(0); // 0.7
    WoodAmount solid = factor.convert(stack); // 7 m3 of 10; one way, with its source
    // end sections
    // By hand, in units of π/40000 m³: both sections by Newton, a third of the foot for the tip.
    double byHand =
        (2116 + 4 * 2209 + 1444) / 6.0 * 4 + (1444 + 4 * 1156 + 900) / 6.0 * 4 + 900 / 3.0 * 9;
    assertThat(in(stem.volume(), CUBIC_METRE)).isCloseTo(byHand * Math.PI / 40000, within(1e-14));
    assertThat(odd).singleElement().satisfies(o -> assertThat(o.reading()).isEqualTo("middle"));
    assertThat(bias).isCloseTo(0.8197, within(0.00005));
    assertThat(stack.amount()).isEqualTo(10);
    assertThat(factor.condition()).isEqualTo("HKS, pieces of 1 m");
    assertThat(solid).isEqualTo(WoodConversions.amount(7, "de:fm-ub"));
  }

  @Test
  void stand() {
    // begin stand
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(4));
    List<CountPoint> points =
        List.of(
            CountPoint.ofDiameters("1", centimetres(31), centimetres(24), centimetres(40)),
            CountPoint.of("2", CountedTree.of(centimetres(28)).half()), // borderline, not measured
            CountPoint.of("3")); // nobody in; still a point
    StandEstimate stand = Stands.estimate(gauge, points);
    double squareMetresPerHectare = in(stand.basalArea().value(), SQUARE_METRE_PER_HECTARE);
    double stemsPerHectare = in(stand.stems().value(), PER_HECTARE);
    Interval<BasalAreaPerArea> interval = stand.basalArea().interval(95); // sampling error only
    // end stand
    // 3½ trees of 4 m²/ha at three points, each standing for 4 over its own basal area.
    assertThat(squareMetresPerHectare).isCloseTo(14.0 / 3, within(1e-14));
    double stems = 1 / 0.0961 + 1 / 0.0576 + 1 / 0.16 + 0.5 / 0.0784;
    assertThat(stemsPerHectare).isCloseTo(16 / Math.PI * stems / 3, within(1e-11));
    double half = 4.302653 * Math.sqrt((148 - 196.0 / 3) / 2) / Math.sqrt(3);
    assertThat(in(interval.upper(), SQUARE_METRE_PER_HECTARE))
        .isCloseTo(14.0 / 3 + half, within(1e-5));
  }

  @Test
  void threeRules() {
    // begin three-rules
    Log log = Log.of(inches(12), feet(16)).withBark(BarkBasis.UNDER);
    LogScale doyle = LogRules.doyle().scale(log); // 64 bf
    LogScale scribner = LogRules.scribnerDecimalC().scale(log); // 80 bf
    LogScale international = LogRules.internationalQuarterTable().scale(log); // 95 bf
    RuleComparison all = LogRules.compare(log); // every rule, or why it does not apply
    LogScaler scaler = Scaling.scaler(Scaling.landowner(), LogRules.scribnerDecimalC());
    Log measured = Log.of(inches(12.2), feet(16.5)).withBark(BarkBasis.UNDER);
    ScaledLog scaled = scaler.scale(measured, new Defect.LengthCut(feet(4)));
    double net = scaled.net().amount(); // 60 bf; scaled.steps() shows every rounding
    // end three-rules
    // The published comparison of an extension leaflet, read second-hand: 64, 80 and 95 bf.
    assertThat(doyle.amount()).isEqualTo(64);
    assertThat(scribner.amount()).isEqualTo(80);
    assertThat(international.amount()).isEqualTo(95);
    assertThat(all.scales().stream().map(line -> line.scale().amount())).contains(64.0, 80.0, 95.0);
    assertThat(all.notApplicable().toString())
        .contains("Newton volume (log/newton) needs the diameter of the large end");
    assertThat(scaled.gross()).isEqualTo(scribner);
    assertThat(net).isEqualTo(60);
    assertThat(scaled.toString())
        .contains("length to its class: 16.16666667 ft → 16.0 ft")
        .contains("small end to its class: 12.2 in → 12.0 in")
        .contains("segment 1: rounded by the rule: 78.4 bf → 80.0 bf");
  }

  @Test
  void standInTotal() {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(4));
    List<CountPoint> points =
        List.of(
            CountPoint.ofDiameters("1", centimetres(31), centimetres(24), centimetres(40)),
            CountPoint.of("2", CountedTree.of(centimetres(28)).half()),
            CountPoint.of("3"));
    // begin stand-in-total
    TallyPlan plan =
        TallyPlan.of(gauge).with(SampleLayout.SYSTEMATIC).tabulatedBy(ofWidth(centimetres(5)));
    List<CountPoint> measured = TreeVolumes.fill(points, TreeVolumes.volumeBasalAreaRatio(9.5));
    StandEstimate estimate = measured.parallelStream().collect(Stands.tallying(plan));
    StandTable table = estimate.table(); // its rows add up to the stand
    Stratum all = new Stratum("all", hectares(12), estimate); // the area is stated
    StratifiedEstimate total = Stands.stratified(List.of(all));
    Interval<Volume> cubicMetres = total.totalVolume().interval(95);
    List<String> printBesideIt = total.remarks(); // choices, cautions, what was left out
    // end stand-in-total
    assertThat(table.cells()).hasSize(4);
    assertThat(table.total().count()).isEqualTo(3.5);
    // 14/3 m²/ha times 9.5 m³/m² on 12 ha, between the ends.
    double middle = 12 * 9.5 * 14 / 3;
    double half = in(cubicMetres.upper(), CUBIC_METRE) - middle;
    assertThat(in(cubicMetres.lower(), CUBIC_METRE)).isCloseTo(middle - half, within(1e-9));
    assertThat(half / middle * 14 / 3)
        .isCloseTo(4.302653 * Math.sqrt((148 - 196.0 / 3) / 2) / Math.sqrt(3), within(1e-5));
    assertThat(printBesideIt).anyMatch(line -> line.startsWith("all: points on a systematic grid"));
  }

  @Test
  void edgesAndHeights() {
    AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(4));
    CountPoint inner =
        CountPoint.of(
            "5",
            CountedTree.of(centimetres(20)).withHeight(metres(17)),
            CountedTree.of(centimetres(30)).withHeight(metres(22)),
            CountedTree.of(centimetres(40)).withHeight(metres(25)));
    // begin edges-and-heights
    TallyPlan plan = TallyPlan.of(gauge).with(EdgeRule.WALKTHROUGH); // refused without weights
    CountedTree edge = CountedTree.of(centimetres(35)).withEdgeWeight(2); // far side is outside
    List<CountPoint> points = List.of(CountPoint.of("4", edge), inner, CountPoint.of("6"));
    HeightCurveSet curves =
        HeightCurves.fitBySpecies(NASLUND, metres(1.3), HeightCurves.samples(points));
    Quantity<Length> residual = curves.curve("").residualError(); // or why there is none
    List<CountPoint> heights = HeightCurves.fill(points, curves); // predicted ones are marked
    List<CountPoint> volumes = TreeVolumes.fill(heights, TreeVolumes.formFactor(0.45));
    StandEstimate stand = Stands.estimate(plan, volumes);
    Quantity<Length> lorey = stand.loreyHeight().get();
    // end edges-and-heights
    assertThat(in(residual, METRE)).isBetween(0.0, 0.5);
    double predicted = in(curves.curve("").height(centimetres(35)).value(), METRE); // counts twice
    assertThat(predicted).isBetween(22.0, 25.0);
    assertThat(in(lorey, METRE)).isCloseTo((2 * predicted + 17 + 22 + 25) / 5, within(1e-12));
    // By hand: 4 m²/ha a count, five counts at three points, and basal area times height times
    // 0.45.
    assertThat(in(stand.volume().value(), CUBIC_METRE_PER_HECTARE))
        .isCloseTo(4 * 5 / 3.0 * in(lorey, METRE) * 0.45, within(1e-11));
    assertThat(stand.remarks())
        .contains("heights from a height curve: 1")
        .anyMatch(line -> line.startsWith("edge weights recorded by walkthrough"));
  }

  @Test
  void stem() {
    // begin stem
    OpticalScale scale = OpticalScales.calibratedOnStem(centimetres(54), 8); // allows for slope
    StemStation station = Stems.station(metres(20), degrees(-4.5)); // distance, sight to base
    double[] sights = {-0.8, 3, 6.7, 10.2, 14, 17.6, 21.3, 25.2, 28.8, 32, 35.4, 38.5};
    double[] divisions = {8, 7.5, 7, 6.75, 6.5, 6, 5.5, 5, 4.25, 3.5, 2.5, 1.5};
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < sights.length; i++) {
      readings.add(station.reading(degrees(sights[i]), scale.diameter(divisions[i])));
    }
    StemProfile stem = Stems.profile(readings, station.height(degrees(41.5))); // ends in a cone
    Quantity<Volume> volume = stem.volume();
    // end stem
    double smalian = 0;
    double below = 0;
    double wide = 54;
    for (int i = 0; i < sights.length; i++) {
      double height = 20 * (Math.tan(Math.toRadians(sights[i])) + Math.tan(Math.toRadians(4.5)));
      double diameter = divisions[i] * 6.75;
      assertThat(in(stem.diameterAt(metres(height)), CENTIMETRE)).isCloseTo(diameter, within(1e-9));
      smalian += Math.PI / 80000 * (wide * wide + diameter * diameter) * (height - below);
      below = height;
      wide = diameter;
    }
    smalian += Math.PI / 120000 * wide * wide * (in(stem.top(), METRE) - below);
    assertThat(in(volume, CUBIC_METRE)).isCloseTo(smalian, within(0.005 * smalian));
  }
}
