package org.mensuration.internal.convention;

import static org.mensuration.internal.convention.ClassSteps.NONE;

import org.mensuration.formula.Domain;
import org.mensuration.internal.catalogue.Gb4814Formulas;
import org.mensuration.internal.catalogue.LogTableFormulas;
import org.mensuration.internal.catalogue.MiddleFormulas;
import org.mensuration.internal.catalogue.RecalledFormulas;
import org.mensuration.internal.catalogue.SmallEndFormulas;
import org.mensuration.internal.convention.Diameters.Pair;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.source.Citation;

/** The metric conventions with their roundings. Immutable and thread-safe. */
public final class Conventions {
  private static final ClassSteps WHOLE = ClassSteps.down(1, 1);
  private static final ClassSteps TENTHS = ClassSteps.down(1, 10);
  private static final ClassSteps THOUSANDTHS = ClassSteps.nearest(1, 1000);
  private static final ClassSteps HUNDREDTHS = ClassSteps.nearest(1, 100);
  private static final ClassSteps WHOLE_THEN_EVEN = WHOLE.from(14, 2, 1);
  private static final double PAIR_CM = 20;

  /** Four decimals for the classes of 4 and 6 cm, three from 8 cm. */
  private static final Sizing GB4814_RESULT =
      new SmallEnds.FinerBelow(8, ClassSteps.nearest(1, 10000), THOUSANDTHS);

  /** Mean diameter, unrounded. */
  public static final Convention BRERETON =
      new Convention(
          RuleFacts.of("Brereton", SmallEndFormulas.BRERETON).underBark(), new BothEnds.Each());

  /** Customs rule of 1961. */
  public static final Convention SOUTH_SEA =
      new Convention(
          RuleFacts.of("South Sea customs rule of 1961", SmallEndFormulas.BRERETON_MEAN)
              .rounding(ClassSteps.down(1, 5), THOUSANDTHS)
              .citing(RoundingSources.SOUTH_SEA),
          new BothEnds.MeanOfFour(ClassSteps.down(2, 1), WHOLE));

  /** Small-end square, logs under 6 m. */
  public static final Convention JAS_SHORT = jas("JAS, logs under 6 m", SmallEndFormulas.JAS_SHORT);

  /** Small-end square, logs from 6 m. */
  public static final Convention JAS_LONG = jas("JAS, logs from 6 m", SmallEndFormulas.JAS_LONG);

  /** Small-end square. */
  public static final Convention JAS = jas("JAS", SmallEndFormulas.JAS);

  /** Rule of 1968. */
  public static final Convention UNIFIED_1968 =
      jas("Unified rule of 1968 for US wood", SmallEndFormulas.UNIFIED_1968);

  /** Mean of the smallest and largest. */
  public static final Convention HIRAGOKU =
      new Convention(
          RuleFacts.of("Hiragoku", SmallEndFormulas.HIRAGOKU), new SmallEnds.SmallestAndLargest());

  /** Small-end square, Korea. */
  public static final Convention KOREAN_SMALL_END =
      new Convention(
          RuleFacts.of("Korean small-end square", SmallEndFormulas.JAS)
              .rounding(TENTHS, THOUSANDTHS)
              .citing(RoundingSources.KOREA),
          Diameters.at(ReadingPlace.SMALL, WHOLE));

  /** GB 4814-84. */
  public static final Convention GB4814 =
      new Convention(
          RuleFacts.of("GB 4814-84", Gb4814Formulas.BOTH).citing(RoundingSources.GB4814),
          GB4814_RESULT);

  /** GB 4814-84 outside its table. */
  public static final Convention GB4814_OUTSIDE =
      new Convention(
          RuleFacts.of("GB 4814-84 outside its table", Gb4814Formulas.OUTSIDE)
              .citing(RoundingSources.GB4814, RoundingSources.GB4814_END),
          new SmallEnds.OutsideTable(Domain.closed(4, 120), Domain.closed(2, 10), GB4814_RESULT));

  /** GOST 2708-75. */
  public static final Convention GOST2708 =
      gost2708("GOST 2708-75", Diameters.at(ReadingPlace.SMALL, NONE), RoundingSources.GOST2708);

  /** GOST 2708-75, diameters put into their classes. */
  public static final Convention GOST2708_READINGS =
      gost2708(
          "GOST 2708-75, diameters classed",
          Diameters.at(ReadingPlace.SMALL, ClassSteps.nearest(1, 1).from(14, 2, 1)),
          RoundingSources.GOST2708,
          RoundingSources.GOST2292);

  /** GOST 2708-75 between its cells. */
  public static final Convention GOST2708_INTERPOLATED =
      gost2708(
          "GOST 2708-75, interpolated",
          new SmallEnds.Interpolated(LogTableFormulas.GOST2708_TABLE),
          RoundingSources.GOST2708);

  /** Mid diameter, Germany, two readings from 20 cm. */
  public static final Convention GERMAN_MID =
      german("German mid-diameter rule", new Pair(PAIR_CM, true), RoundingSources.RUNDHOLZ);

  /** Mid diameter, Germany, two readings above 20 cm. */
  public static final Convention GERMAN_MID_ABOVE =
      german(
          "German mid-diameter rule, one reading at 20 cm",
          new Pair(PAIR_CM, false),
          RoundingSources.DERTINGEN,
          RoundingSources.TUTTLINGEN);

  /** Mid diameter, France. */
  public static final Convention FRENCH_MID = french("French real volume", TENTHS);

  /** Mid diameter, France, half metres. */
  public static final Convention FRENCH_MID_HALF_METRES =
      french("French real volume by half metres", ClassSteps.down(1, 2));

  /** Mid girth, France. */
  public static final Convention FRENCH_GIRTH =
      new Convention(
          RuleFacts.of("French real volume by girth", MiddleFormulas.CYLINDER)
              .rounding(TENTHS, THOUSANDTHS)
              .citing(RoundingSources.NF_GIRTH, RoundingSources.NF_LENGTH),
          new Girths(Girths.Unit.METRE, ClassSteps.down(1, 100)));

  /** Mid diameter, United Kingdom. */
  public static final Convention BRITISH_MID =
      new Convention(
          RuleFacts.of("British mid-diameter rule", MiddleFormulas.CONVENTIONAL_MID)
              .rounding(TENTHS.from(10, 1, 1), NONE)
              .allowing(Domain.aboveUpTo(0, 15))
              .citing(RoundingSources.BRITAIN),
          Diameters.at(ReadingPlace.MIDDLE, WHOLE));

  /** Top diameter and a taper, United Kingdom. */
  public static final Convention BRITISH_TOP =
      new Convention(
          RuleFacts.of("British top-diameter rule", RecalledFormulas.BRITISH_TOP)
              .rounding(TENTHS.from(10, 1, 1), NONE)
              .citing(RoundingSources.BRITAIN, RoundingSources.BRITAIN_TOP),
          Diameters.at(ReadingPlace.SMALL, WHOLE));

  /** Three-dimensional rule, New Zealand. */
  public static final Convention THREE_DIMENSIONAL =
      new Convention(
          RuleFacts.of("New Zealand three-dimensional rule", RecalledFormulas.THREE_DIMENSIONAL)
              .underBark()
              .citing(RoundingSources.NEW_ZEALAND),
          new BothEnds.Each());

  /** Cubic scale of the national forests. */
  public static final Convention NATIONAL_CUBIC =
      new Convention(
          RuleFacts.of("National forest cubic scale", RecalledFormulas.NATIONAL_CUBIC)
              .rounding(NONE, ClassSteps.nearest(1, 10))
              .underBark()
              .allowing(Domain.aboveUpTo(0, 20))
              .citing(RoundingSources.NATIONAL_CUBIC, RoundingSources.REGION_6),
          new BothEnds.Inches(ClassSteps.nearest(1, 1)));

  /** Radius classes. */
  public static final Convention RADIUS_CLASSES =
      new Convention(
          RuleFacts.of("Metric scale by radius classes", SmallEndFormulas.RADIUS_CLASSES)
              .citing(RoundingSources.RADII),
          new BothEnds.Radii(ClassSteps.nearest(1, 1)));

  /** Top measure, Sweden. */
  public static final Convention SWEDISH_TOP = swedishTop("Swedish top measure", NONE);

  /** Mid measure, Sweden. */
  public static final Convention SWEDISH_MID =
      new Convention(
          RuleFacts.of("Swedish mid measure", MiddleFormulas.CONVENTIONAL_MID)
              .underBark()
              .citing(RoundingSources.SWEDEN_MID),
          Diameters.at(ReadingPlace.MIDDLE, NONE));

  private Conventions() {}

  /**
   * Top measure, Sweden, by classes.
   *
   * @param name name of the rule
   * @param classes rounding of the diameter
   * @return the rule
   */
  public static Convention swedishTop(String name, ClassSteps classes) {
    return new Convention(
        RuleFacts.of(name, SmallEndFormulas.TOP_MEASURED)
            .underBark()
            .citing(RoundingSources.SWEDEN_TOP, RoundingSources.SWEDEN_CLASSES),
        Diameters.at(ReadingPlace.SMALL, classes));
  }

  /**
   * Mid diameter less bark, Czech standard.
   *
   * @param name name of the rule
   * @param bark double bark in cm from the diameter in cm
   * @return the rule
   */
  public static Convention czech(String name, BoundFormula bark) {
    return new Convention(
        RuleFacts.of(name, MiddleFormulas.LESS_DOUBLE_BARK)
            .deductingBark()
            .citing(RoundingSources.CZECH_A, RoundingSources.CZECH_B),
        new LessBark(bark));
  }

  /**
   * A rule of the metric middle girth, unrounded.
   *
   * @param name name of the rule
   * @param formula girth in m and length in m to m³
   * @return the rule
   */
  public static Convention metricGirth(String name, BoundFormula formula) {
    return new Convention(RuleFacts.of(name, formula), new Girths(Girths.Unit.METRE, NONE));
  }

  /**
   * A rule of the middle girth in inches, unrounded.
   *
   * @param name name of the rule
   * @param formula girth in inches and length in feet
   * @return the rule
   */
  public static Convention girth(String name, BoundFormula formula) {
    return new Convention(RuleFacts.of(name, formula), new Girths(Girths.Unit.INCH, NONE));
  }

  /**
   * A rule of squared timber, unrounded.
   *
   * @param name name of the rule
   * @param formula small-end diameter in inches and length in feet
   * @return the rule
   */
  public static Convention squaredTimber(String name, BoundFormula formula) {
    return new Convention(RuleFacts.of(name, formula), new SquaredTimber());
  }

  private static Convention jas(String name, BoundFormula formula) {
    return new Convention(
        RuleFacts.of(name, formula)
            .rounding(NONE, THOUSANDTHS)
            .underBark()
            .citing(RoundingSources.JAS_DIAMETER, RoundingSources.JAS_CLASSES),
        new SmallEnds.Widened(WHOLE_THEN_EVEN));
  }

  private static Convention gost2708(String name, Sizing part, Citation... sources) {
    return new Convention(
        RuleFacts.of(name, LogTableFormulas.GOST2708).citing(sources),
        new InTwoParts(13.5, ClassSteps.down(1, 2), part));
  }

  private static Convention german(String name, Pair pair, Citation... sources) {
    return new Convention(
        RuleFacts.of(name, MiddleFormulas.CONVENTIONAL_MID)
            .rounding(NONE, HUNDREDTHS)
            .underBark()
            .citing(sources),
        new Diameters(ReadingPlace.MIDDLE, WHOLE, WHOLE, pair));
  }

  private static Convention french(String name, ClassSteps length) {
    return new Convention(
        RuleFacts.of(name, MiddleFormulas.CONVENTIONAL_MID)
            .rounding(length, THOUSANDTHS)
            .citing(RoundingSources.NF_GIRTH, RoundingSources.NF_LENGTH),
        Diameters.at(ReadingPlace.MIDDLE, WHOLE));
  }
}
