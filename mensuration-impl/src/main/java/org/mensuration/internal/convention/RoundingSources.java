package org.mensuration.internal.convention;

import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.internal.source.GirthAndBarkWorks;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.source.Source;

/** Where the readings and roundings of the conventions are stated. Immutable and thread-safe. */
final class RoundingSources {
  static final Citation SOUTH_SEA = published(ConventionWorks.JP_CUSTOMS_RULE, "section hardwood");
  static final Citation JAS_DIAMETER =
      published(ConventionWorks.JAS_QUOTATION, "quotation on diameter: smallest, without bark");
  static final Citation JAS_CLASSES =
      recalled(
          ConventionWorks.GOST2292_JAS,
          "JAS: whole cm below 14 cm, even cm from there, both down; result to 3 decimals");
  static final Citation KOREA = published(ConventionWorks.KR_SMALL_END, "both examples");
  static final Citation GB4814 =
      published(ConventionWorks.GB4814_EXAMPLES, "remark after the formulas: decimals");
  static final Citation GB4814_END = Citation.fromMemory("the table of GB 4814-84 ends at 120 cm");
  static final Citation GOST2708 =
      published(ConventionWorks.GOST2708_SCOPE, "scope paragraphs: tables, two nearly equal parts");
  static final Citation GOST2292 =
      recalled(
          ConventionWorks.GOST2292_JAS,
          "GOST 2292-88: whole cm up to 13 cm, even cm from 14 cm, halves up");
  static final Citation DERTINGEN =
      published(ConventionWorks.DERTINGEN, "diameter and length paragraphs");
  static final Citation TUTTLINGEN =
      published(ConventionWorks.TUTTLINGEN, "diameter and length paragraphs");
  static final Citation RUNDHOLZ =
      published(ConventionWorks.RUNDHOLZ_PAGE, "diameter rule: two readings from 20 cm");
  static final Citation NF_LENGTH =
      published(GirthAndBarkWorks.CUBAGE2011, "truncation to the decimetre or half metre");
  static final Citation NF_GIRTH =
      published(GirthAndBarkWorks.CUBAGE_ABATTUS, "whole cm rounded down; 3 decimals");
  static final Citation BRITAIN =
      recalled(
          ConventionWorks.HAMILTON1975,
          "middle down to whole cm; length down to 0.1 m up to 10 m, to whole metres above; logs"
              + " over 15 m in sections");
  static final Citation BRITAIN_TOP =
      recalled(ConventionWorks.HAMILTON1975, "top-diameter tables assume a taper of 1 in 120");
  static final Citation NEW_ZEALAND = recalled(ConventionWorks.ELLIS1982, "formula, unverified");
  static final Citation NATIONAL_CUBIC =
      Citation.fromMemory(
          "National Forest Cubic Scaling Handbook: whole-inch diameters, segments of at most 20 ft,"
              + " tenths of a cubic foot");
  static final Citation REGION_6 =
      published(BoardWorks.FSH11A_R6_1998, "21-4, steps 5-7: two readings of an end");
  static final Citation RADII =
      recalled(ConventionWorks.BC_SCALING2011, "radii in whole centimetres");
  static final Citation SWEDEN_TOP = published(ConventionWorks.M3TO_TERM, "definition of m3to");
  static final Citation SWEDEN_MID =
      Citation.commonPractice("middle diameter under bark; in use, but rare");
  static final Citation SWEDEN_CLASSES =
      published(ConventionWorks.KLASSBOTTEN, "entry: class bottom until 1999, then class middle");
  static final Citation CZECH_A =
      published(GirthAndBarkWorks.CSN480009_COPY_A, "formula and coefficient table");
  static final Citation CZECH_B =
      published(GirthAndBarkWorks.CSN480009_COPY_B, "points 1-6 and coefficient table");

  private RoundingSources() {}

  private static Citation published(Source source, String place) {
    return Citation.published(Role.DEFINES, source, place);
  }

  private static Citation recalled(Source source, String what) {
    return Citation.fromMemory(Role.DEFINES, source, what);
  }
}
