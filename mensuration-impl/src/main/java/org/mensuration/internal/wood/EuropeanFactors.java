package org.mensuration.internal.wood;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.mensuration.internal.source.SolidWorks;
import org.mensuration.internal.source.WoodWorks;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;
import org.mensuration.source.Source;
import org.mensuration.wood.ConversionFactor;
import org.mensuration.wood.FactorAddition;
import org.mensuration.wood.WoodMeasure;

/** Factors published in Europe, as printed and in the direction printed. Immutable, thread-safe. */
final class EuropeanFactors {
  private static final Citation SWEDEN = published(WoodWorks.SKOGSSTYRELSEN, "conversion matrix");
  private static final Citation AUSTRIA =
      published(WoodWorks.FHP2007, "factor matrix quoted from the 2007 brochure");
  private static final Citation BAVARIA = published(WoodWorks.BAYERN_RVR, "table stacked to solid");
  private static final Citation BAVARIA_MASS =
      published(WoodWorks.BAYERN_RVR, "weight to solid table");
  private static final Citation FRANCE =
      published(SolidWorks.MASSENET2006, "section 4.3 table, coefficient");
  private static final Citation FRANCE_POPULAR =
      published(WoodWorks.PAPERBLOG_STERE, "last paragraphs");
  private static final Citation SOVIET = published(WoodWorks.OST_13_43, "table, items 1.1 and 1.2");

  /** The whole matrix: a row converts its first measure to that of each column. */
  private static final String[][] SWEDISH = {
    {"", "0.95", "0.84", "0.68", "1.49"},
    {"1.05", "", "0.88", "0.71", "1.56"},
    {"1.20", "1.14", "", "0.81", "1.78"},
    {"1.46", "1.40", "1.23", "", "2.19"},
    {"0.67", "0.64", "0.56", "0.46", ""},
  };

  private static final String[][] AUSTRIAN = {
    {"", "1.40", "1.20", "2.00", "2.50"},
    {"0.70", "", "0.85", "1.40", "1.80"},
    {"0.85", "1.20", "", "1.67", "2.00"},
    {"0.50", "0.70", "0.60", "", "1.25"},
    {"0.40", "0.55", "0.50", "0.80", ""},
  };

  private static final String[][] DRY_TONNE = {
    {"oak", "1.4"},
    {"beech", "1.5"},
    {"poplar", "2.2"},
    {"other hard broadleaves", "1.6"},
    {"other soft broadleaves", "1.9"},
    {"spruce, fir", "2.2"},
    {"pine", "2.1"},
    {"Douglas fir", "2.1"},
    {"larch", "1.8"},
  };

  private static final String[][] STERE = {
    {"well split quarters", "0.75"},
    {"quarters and rounds half and half", "0.65"},
    {"straight rounds", "0.60"},
    {"oak or beech rounds", "0.57"},
  };

  private static final String[][] STERE_POPULAR = {
    {"average", "0.67"},
    {"fir", "0.76"},
    {"beech rounds", "0.60"},
    {"crooked oak crown wood", "0.55"},
  };

  private static final String[][] SOVIET_STACK = {
    {
      "conifer pulpwood and pit wood of 6-18 cm, 2.1-2.9 m long, wagon without cap or lorry", "0.64"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 3.0-3.9 m long, wagon with cap, ordinary gauge",
      "0.60"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 3.0-3.9 m long, wagon with cap, zonal gauge",
      "0.63"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 3.0-3.9 m long, wagon without cap or lorry", "0.64"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 4.0-5.5 m long, wagon with cap, ordinary gauge",
      "0.55"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 4.0-5.5 m long, wagon with cap, zonal gauge",
      "0.58"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 4.0-5.5 m long, wagon without cap or lorry", "0.59"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 5.6-6.5 m long, wagon with cap, ordinary gauge",
      "0.53"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 5.6-6.5 m long, wagon with cap, zonal gauge",
      "0.56"
    },
    {
      "conifer pulpwood and pit wood of 6-18 cm, 5.6-6.5 m long, wagon without cap or lorry", "0.57"
    },
    {"conifer pulpwood grade 4 of 6-40 cm, 2.1-2.9 m long, wagon without cap or lorry", "0.60"},
    {"conifer pulpwood grade 4 of 6-40 cm, 3.0-3.9 m long, wagon with cap, ordinary gauge", "0.56"},
    {"conifer pulpwood grade 4 of 6-40 cm, 3.0-3.9 m long, wagon with cap, zonal gauge", "0.59"},
    {"conifer pulpwood grade 4 of 6-40 cm, 3.0-3.9 m long, wagon without cap or lorry", "0.60"},
    {"conifer pulpwood grade 4 of 6-40 cm, 4.0-5.5 m long, wagon with cap, ordinary gauge", "0.52"},
    {"conifer pulpwood grade 4 of 6-40 cm, 4.0-5.5 m long, wagon with cap, zonal gauge", "0.55"},
    {"conifer pulpwood grade 4 of 6-40 cm, 4.0-5.5 m long, wagon without cap or lorry", "0.56"},
    {"conifer pulpwood grade 4 of 6-40 cm, 5.6-6.5 m long, wagon with cap, ordinary gauge", "0.50"},
    {"conifer pulpwood grade 4 of 6-40 cm, 5.6-6.5 m long, wagon with cap, zonal gauge", "0.52"},
    {"conifer pulpwood grade 4 of 6-40 cm, 5.6-6.5 m long, wagon without cap or lorry", "0.53"},
  };

  private EuropeanFactors() {}

  static List<ConversionFactor> all() {
    List<ConversionFactor> all = new ArrayList<>();
    matrix(all, WoodMeasures.SWEDISH, SWEDISH, SWEDEN);
    all.add(
        factor(
            WoodMeasures.SE_LOOSE,
            WoodMeasures.SE_SOLID,
            "0.36",
            "",
            published(WoodWorks.SKOGSSTYRELSEN, "under the matrix")));
    matrix(all, WoodMeasures.AUSTRIAN, AUSTRIAN, AUSTRIA);
    all.add(
        factor(
            WoodMeasures.AT_ENERGY_ROUND,
            WoodMeasures.AT_SOLID,
            "0.6",
            "straight softwood",
            published(WoodWorks.FHP2007, "text under the matrix")));
    german(all);
    list(all, WoodMeasures.FR_STERE, WoodMeasures.FR_SOLID, STERE, FRANCE);
    list(all, WoodMeasures.FR_STERE, WoodMeasures.FR_SOLID, STERE_POPULAR, FRANCE_POPULAR);
    list(all, WoodMeasures.SU_STACKED, WoodMeasures.SU_SOLID_UNDER, SOVIET_STACK, SOVIET);
    return all;
  }

  static List<FactorAddition> additions() {
    return List.of(soviet("0.04", "roughly debarked"), soviet("0.06", "clean debarked"));
  }

  private static FactorAddition soviet(String printed, String wood) {
    return new FactorAddition(
        WoodMeasures.SU_STACKED,
        WoodMeasures.SU_SOLID_UNDER,
        new BigDecimal(printed),
        wood,
        published(WoodWorks.OST_13_43, "text above the table"));
  }

  private static void german(List<ConversionFactor> all) {
    WoodMeasure over = WoodMeasures.DE_STACKED_OVER;
    WoodMeasure solid = WoodMeasures.DE_SOLID_UNDER;
    all.add(factor(over, solid, "0.7", "HKS, pieces of 1 m", BAVARIA));
    all.add(factor(over, solid, "0.65", "HKS, pieces of 2 m", BAVARIA));
    all.add(factor(over, solid, "0.6", "HKS, pieces of 3 m", BAVARIA));
    all.add(factor(over, solid, "0.7", "RVR", BAVARIA));
    all.add(factor(WoodMeasures.DE_STACKED_UNDER, solid, "0.8", "RVR", BAVARIA));
    // Printed as a deduction of 4 per cent.
    all.add(
        factor(
            WoodMeasures.DE_STACK_MEASURED,
            over,
            "0.96",
            "stacks of 20 rm and more, 4 % taken off for oversize",
            published(WoodWorks.BAYERN_RVR, "section measurement of stacks, minimum stack 20 rm")));
    all.add(
        factor(
            WoodMeasures.DE_CHIPS_OVER,
            solid,
            "0.4",
            "forest chips",
            published(WoodWorks.TUTTLINGEN_RVR, "last line")));
    list(all, WoodMeasures.DE_DRY_TONNE, solid, DRY_TONNE, BAVARIA_MASS);
  }

  private static void matrix(
      List<ConversionFactor> all, List<WoodMeasure> measures, String[][] cells, Citation citation) {
    for (int row = 0; row < cells.length; row++) {
      for (int column = 0; column < cells.length; column++) {
        if (row != column) {
          all.add(
              factor(measures.get(row), measures.get(column), cells[row][column], "", citation));
        }
      }
    }
  }

  private static void list(
      List<ConversionFactor> all,
      WoodMeasure from,
      WoodMeasure to,
      String[][] cells,
      Citation citation) {
    for (String[] cell : cells) {
      all.add(factor(from, to, cell[1], cell[0], citation));
    }
  }

  static ConversionFactor factor(
      WoodMeasure from, WoodMeasure to, String printed, String condition, Citation citation) {
    return new ConversionFactor(from, to, new BigDecimal(printed), condition, citation);
  }

  static Citation published(Source source, String place) {
    return Citation.published(Role.DEFINES, source, place);
  }
}
