package org.mensuration;

import java.util.List;
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

  private ComparedRules() {}
}
