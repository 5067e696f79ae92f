package org.mensuration.internal.scaling;

import static org.mensuration.scaling.StepRounding.HALF_ALTERNATING_DOWN_FIRST;
import static org.mensuration.scaling.StepRounding.HALF_ALTERNATING_UP_FIRST;
import static org.mensuration.scaling.StepRounding.HALF_REFUSED;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.inches;

import java.util.List;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.Works;
import org.mensuration.scaling.AmountRounding;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.Minimums;
import org.mensuration.scaling.Roundings;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.StepRounding;
import org.mensuration.scaling.Taper;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.source.Source;

/**
 * The conventions that sources document, each part cited; what they leave open stands in the notes.
 * Immutable and thread-safe.
 */
public final class PublishedConventions {
  /** Idaho. */
  public static final ScalingConvention IDAHO =
      ScalingConvention.of("Idaho", inch(StepRounding.HALF_UP), SizeClass.full(feet(2)))
          .withMinimums(Minimums.none().withDiameter(inches(5.51)))
          .citing(
              List.of(
                  published(
                      BoardWorks.IBSP_HOWTO,
                      "sections Scaling cylinder; Log diameter measurements")),
              List.of(
                  "10 in is 9 1/2 to just under 10 1/2 in",
                  "least class 6 in, 5.51 in as measured; a thinner log is cut back to the next"
                      + " shorter 2-ft length with full trim and measured again",
                  "2-ft lengths follow from that; the amount of trim and the longest log stand in"
                      + " parts that were not read, so neither is set here"));

  /** Georgia. */
  public static final ScalingConvention GEORGIA =
      ScalingConvention.of("Georgia", inch(HALF_ALTERNATING_UP_FIRST), SizeClass.full(feet(2)))
          .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()))
          .citing(
              List.of(published(BoardWorks.GA2_14_80, "paragraphs (a)-(e)")),
              List.of(
                  "halves are shared evenly up and down over the logs; that the first goes up is a"
                      + " choice of this library",
                  "from 18 ft to below 34 ft two logs, from 34 ft three or more, near equal in even"
                      + " feet; that the longer ones lie at the butt, and the diameters at the cuts"
                      + " by even taper, are choices of this library",
                  "the legal rule is Scribner Decimal C"));

  /** Vermont. */
  public static final ScalingConvention VERMONT =
      ScalingConvention.of("Vermont", inch(HALF_REFUSED), SizeClass.full(feet(1)))
          .withLongLogs(LongLogs.split(feet(12), Split.FULL_FROM_SMALL_END, Taper.even()))
          .citing(
              List.of(published(Works.VT2693, "whole section")),
              List.of(
                  "the statute does not settle an exact half inch",
                  "sections of 12 ft from the small end; the statute has each measured, here the"
                      + " diameters at the cuts are taken by even taper",
                  "whole feet are a choice of this library; the rule is board/vermont"));

  /** National forests about 1918. */
  public static final ScalingConvention NATIONAL_FORESTS_1918 =
      ScalingConvention.of(
              "National forests about 1918", inch(HALF_REFUSED), SizeClass.full(feet(2)))
          .withLongLogs(LongLogs.split(feet(16), Split.NEAR_EQUAL, Taper.even()))
          .citing(
              List.of(published(BoardWorks.BOERKER1918, "page 51 of the web copy")),
              List.of(
                  "top end inside bark to the nearest inch; an exact half is not settled",
                  "over 16 ft two or more lengths, at least 12 ft where practicable; near equal"
                      + " even lengths and even taper are choices of this library"));

  /** National forests, short logs. */
  public static final ScalingConvention EAST_SIDE =
      nationalForest("National forests, east side", 20)
          .citing(
              nationalForestSources(),
              List.of(
                  "longest scaling length 20 ft",
                  "nearest inch with a half up is read for butt ends and used for both ends",
                  "trim of 6 in, taper in whole inches and net in tens are from memory"));

  /** National forests, long logs. */
  public static final ScalingConvention WEST_SIDE =
      nationalForest("National forests, west side", 40)
          .citing(
              nationalForestSources(),
              List.of(
                  "longest scaling length 40 ft; a log up to that is one cylinder of its small end",
                  "nearest inch with a half up is read for butt ends and used for both ends",
                  "trim of 6 in, taper in whole inches and net in tens are from memory"));

  /** Landowners. */
  public static final ScalingConvention LANDOWNER =
      ScalingConvention.of("Landowner", inch(HALF_ALTERNATING_DOWN_FIRST), SizeClass.full(feet(1)))
          .withTrim(inches(4))
          .citing(
              List.of(
                  published(BoardWorks.LANDOWNER_MEASURE, "section Measuring logs"),
                  published(BoardWorks.WOODWEB_OVERRUN2002, "scaling exercise, last full foot")),
              List.of("a log of 16 ft is cut 16 ft 4 in", "halves by turns, the first down"));

  /** All of them. */
  public static final List<ScalingConvention> ALL =
      List.of(IDAHO, GEORGIA, VERMONT, NATIONAL_FORESTS_1918, EAST_SIDE, WEST_SIDE, LANDOWNER);

  private PublishedConventions() {}

  private static SizeClass inch(StepRounding rounding) {
    return new SizeClass(inches(1), rounding);
  }

  private static Citation published(Source source, String place) {
    return Citation.published(Role.DEFINES, source, place);
  }

  private static ScalingConvention nationalForest(String name, double longestFt) {
    return ScalingConvention.of(name, inch(StepRounding.HALF_UP), SizeClass.full(feet(1)))
        .withTrim(inches(6))
        .withLongLogs(LongLogs.split(feet(longestFt), Split.NEAR_EQUAL, Taper.wholeClasses()))
        .withRoundings(
            new Roundings(
                AmountRounding.none(), AmountRounding.nearest(1), AmountRounding.nearest(10)));
  }

  private static List<Citation> nationalForestSources() {
    return List.of(
        published(BoardWorks.FSH11_R10_2004, "s.12, s.14"),
        published(BoardWorks.PNW_LONGSHORT, "paragraphs 1-2"),
        published(BoardWorks.FSH11_20_1985, "s.21, fractions of a deduction"),
        published(BoardWorks.FSH11A_R6_1998, "21-4, steps 1-7, halves of an inch"),
        published(BoardWorks.STAEBLER1953, "opening text, no taper in long logs"),
        Citation.fromMemory("trim of 6 in, taper in whole inches, net in tens"));
  }
}
