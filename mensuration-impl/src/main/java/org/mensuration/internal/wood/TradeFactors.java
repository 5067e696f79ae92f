package org.mensuration.internal.wood;

import static org.mensuration.internal.wood.EuropeanFactors.factor;
import static org.mensuration.internal.wood.EuropeanFactors.published;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.WoodWorks;
import org.mensuration.wood.ConversionFactor;

/**
 * Loads, cords, board feet and mass, as printed and in the direction printed. Left out are figures
 * of one source that others prove wrong; validation lists them as deviations. Immutable,
 * thread-safe.
 */
final class TradeFactors {
  private TradeFactors() {}

  static List<ConversionFactor> all() {
    List<ConversionFactor> all = new ArrayList<>();
    loads(all);
    cords(all);
    lumber(all);
    mass(all);
    return all;
  }

  private static void loads(List<ConversionFactor> all) {
    all.add(
        factor(
            WoodMeasures.GB_LOAD_SQUARED,
            WoodMeasures.GB_CUBIC_FOOT,
            "50",
            "",
            published(WoodWorks.UNSQUARED_TIMBER, "list of loads")));
    all.add(
        factor(
            WoodMeasures.GB_LOAD_UNHEWN,
            WoodMeasures.GB_CUBIC_FOOT,
            "40",
            "",
            published(WoodWorks.UNSQUARED_TIMBER, "list of loads")));
  }

  private static void cords(List<ConversionFactor> all) {
    all.add(
        factor(
            WoodMeasures.US_CORD,
            WoodMeasures.US_STACKED_FOOT,
            "128",
            "",
            published(WoodWorks.NIST130, "2.4.1")));
    all.add(
        factor(
            WoodMeasures.US_CORD,
            WoodMeasures.STACKED_METRE,
            "3.6246",
            "",
            published(WoodWorks.CORD_DEFINITION, "definition")));
    // Printed as a pile of 4 by 5 by 8 ft.
    all.add(
        factor(
            WoodMeasures.US_PULP_CORD,
            WoodMeasures.US_STACKED_FOOT,
            "160",
            "some places, pile of 4 by 5 by 8 ft",
            published(BoardWorks.BAILEY1911, "cord measure")));
    all.add(
        factor(
            WoodMeasures.US_CORD,
            WoodMeasures.US_CUBIC_FOOT,
            "79",
            "62 % wood, 28 % air, 10 % bark; depends most on how it is piled",
            published(WoodWorks.CORD_62, "explanation 5, second-hand")));
    all.add(
        factor(
            WoodMeasures.NB_CORD,
            WoodMeasures.NB_SOLID,
            "2.5",
            "",
            published(WoodWorks.FOREST_NB, "conversion table")));
    all.add(
        factor(
            WoodMeasures.NB_SOLID,
            WoodMeasures.NB_CORD,
            "0.415",
            "",
            published(WoodWorks.FOREST_NB, "conversion table")));
  }

  private static void lumber(List<ConversionFactor> all) {
    all.add(
        factor(
            WoodMeasures.NB_SOLID,
            WoodMeasures.NB_BOARD_FEET,
            "0.424",
            "",
            published(WoodWorks.FOREST_NB, "conversion table")));
    all.add(
        factor(
            WoodMeasures.US_LUMBER,
            WoodMeasures.LUMBER_FOOT,
            "83.3",
            "",
            published(WoodWorks.GLOBALWOOD, "row FBM")));
    all.add(
        factor(
            WoodMeasures.US_LUMBER,
            WoodMeasures.LUMBER_METRE,
            "2.36",
            "",
            published(WoodWorks.GLOBALWOOD, "row FBM")));
    // Printed as 20 per cent more.
    all.add(
        factor(
            WoodMeasures.US_SCALE_WEST,
            WoodMeasures.US_SCALE_EAST,
            "1.20",
            "California tax practice",
            published(BoardWorks.PNW_LONGSHORT, "paragraphs 1-2")));
    all.add(
        factor(
            WoodMeasures.LOG_METRE,
            WoodMeasures.LUMBER_METRE,
            "0.41",
            "logs of 15 cm at the top; lumber dried and surfaced",
            published(WoodWorks.UNECE2009, "s.1.1")));
    all.add(
        factor(
            WoodMeasures.LOG_METRE,
            WoodMeasures.LUMBER_METRE,
            "0.63",
            "logs of 60 cm at the top; lumber dried and surfaced",
            published(WoodWorks.UNECE2009, "s.1.1")));
  }

  /** The moisture stands in a part that was not read. */
  private static void mass(List<ConversionFactor> all) {
    all.add(
        factor(
            WoodMeasures.SOLID_UNDER,
            WoodMeasures.MASS_WITH_BARK,
            "860",
            "Norway spruce, 780 kg wood and 80 kg bark",
            published(WoodWorks.UNECE2009, "introduction")));
    all.add(
        factor(
            WoodMeasures.SOLID_UNDER,
            WoodMeasures.MASS_OF_BARK,
            "80",
            "Norway spruce",
            published(WoodWorks.UNECE2009, "introduction")));
  }
}
