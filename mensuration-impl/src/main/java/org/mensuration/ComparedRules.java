package org.mensuration;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.log.ConventionRule;
import org.mensuration.log.ScaleRule;
import org.mensuration.log.SolidRule;

/**
 * The rules that a comparison asks. A rule joins with one line, here and nowhere else. Immutable
 * and thread-safe.
 */
final class ComparedRules {
  static final List<SolidRule> SOLIDS =
      List.of(
          LogRules.huber(),
          LogRules.smalian(),
          LogRules.newton(),
          LogRules.coneFrustum(),
          LogRules.neiloidFrustum(),
          LogRules.meanDiameter(),
          LogRules.bruceButt(),
          LogRules.hossfeld(),
          LogRules.simony(),
          LogRules.threeEighths(),
          LogRules.centroid(),
          LogRules.smallEndCylinder(),
          LogRules.sorenson());

  static final List<ScaleRule> BOARD_FEET =
      List.of(
          LogRules.doyle(),
          LogRules.scribnerFormula(),
          LogRules.scribnerDecimalC(),
          LogRules.doyleScribner(),
          LogRules.internationalQuarter(),
          LogRules.internationalQuarterTable(),
          LogRules.internationalQuarterContinuous(),
          LogRules.internationalEighth(),
          LogRules.vermont(),
          LogRules.vermontSections(),
          LogRules.blodgett(),
          LogRules.blodgettMiddle(),
          LogRules.blodgettSmallEnd(),
          LogRules.roy(),
          LogRules.ontario(),
          LogRules.britishColumbia(),
          LogRules.knouf(),
          LogRules.ropp());

  static final List<ConventionRule> CONVENTIONS =
      List.of(
          GirthRules.hoppus(),
          GirthRules.fifthGirth(),
          GirthRules.quarterGirth113(),
          GirthRules.cylinderTable(),
          GirthRules.twoThirds(),
          GirthRules.inscribedSquare(),
          GirthRules.quarterGirthMetric(),
          GirthRules.fifthDeducted(),
          GirthRules.sixthDeducted(),
          LogConventions.brereton(),
          LogConventions.southSea(),
          LogConventions.jas(),
          LogConventions.jasShort(),
          LogConventions.jasLong(),
          LogConventions.unified1968(),
          LogConventions.hiragoku(),
          LogConventions.koreanSmallEnd(),
          LogConventions.gb4814(),
          LogConventions.gb4814Outside(),
          LogConventions.gost2708(),
          LogConventions.gost2708Readings(),
          LogConventions.gost2708Interpolated(),
          LogConventions.germanMid(),
          LogConventions.germanMidTwoReadingsAbove20(),
          LogConventions.frenchMid(),
          LogConventions.frenchMidHalfMetres(),
          LogConventions.frenchGirth(),
          LogConventions.britishMid(),
          LogConventions.britishTop(),
          LogConventions.threeDimensional(),
          LogConventions.nationalCubic(),
          LogConventions.radiusClasses(),
          LogConventions.swedishTop(),
          LogConventions.swedishMid(),
          LogConventions.czechSpruce(),
          LogConventions.czechPine(),
          LogConventions.czechBeech());

  private ComparedRules() {}

  /** Every rule with a unit of its own. */
  static List<ScaleRule> scales() {
    List<ScaleRule> scales = new ArrayList<>(BOARD_FEET);
    scales.addAll(CONVENTIONS);
    return scales;
  }
}
