package org.mensuration.internal.wood;

import java.util.List;
import org.mensuration.wood.WoodMeasure;
import org.mensuration.wood.WoodMeasure.Kind;

/** The measures that published factors lead from and to. Immutable and thread-safe. */
final class WoodMeasures {
  static final WoodMeasure SE_LOOSE =
      new WoodMeasure("se:m3s", Kind.LOOSE, "m3", "cubic metre poured loosely, Sweden");
  static final WoodMeasure SE_SOLID =
      new WoodMeasure("se:m3f", Kind.SOLID, "m3", "cubic metre of solid wood, Sweden");

  /** In the order of the printed matrix. */
  static final List<WoodMeasure> SWEDISH =
      List.of(
          new WoodMeasure("se:m3sk", Kind.SOLID, "m3", "stem over bark with its tip, Sweden"),
          new WoodMeasure("se:m3fpb", Kind.SOLID, "m3", "solid wood over bark, Sweden"),
          new WoodMeasure("se:m3fub", Kind.SOLID, "m3", "solid wood under bark, Sweden"),
          new WoodMeasure(
              "se:m3to", Kind.CUSTOM, "m3", "top-measured: length times the top's area, Sweden"),
          new WoodMeasure("se:m3t", Kind.STACKED, "m3", "cubic metre of stack, Sweden"));

  static final WoodMeasure AT_ENERGY_ROUND =
      new WoodMeasure(
          "at:rm-energy", Kind.STACKED, "m3", "cubic metre of stacked energy roundwood, Austria");
  static final WoodMeasure AT_SOLID =
      new WoodMeasure("at:fm", Kind.SOLID, "m3", "cubic metre of solid wood, Austria");

  /** In the order of the printed matrix. */
  static final List<WoodMeasure> AUSTRIAN =
      List.of(
          new WoodMeasure("at:fm-round", Kind.SOLID, "m3", "solid roundwood, Austria"),
          new WoodMeasure("at:rm-split", Kind.STACKED, "m3", "stack of split 1 m pieces, Austria"),
          new WoodMeasure("at:rm-short", Kind.STACKED, "m3", "stack of short pieces, Austria"),
          new WoodMeasure("at:srm-short", Kind.LOOSE, "m3", "short pieces poured, Austria"),
          new WoodMeasure("at:srm-chips", Kind.LOOSE, "m3", "chips poured loosely, Austria"));

  static final WoodMeasure DE_STACK_MEASURED =
      new WoodMeasure(
          "de:rm-ob-measured", Kind.STACKED, "m3", "stack over bark as measured, Germany");
  static final WoodMeasure DE_STACKED_OVER =
      new WoodMeasure("de:rm-ob", Kind.STACKED, "m3", "cubic metre of stack over bark, Germany");
  static final WoodMeasure DE_STACKED_UNDER =
      new WoodMeasure("de:rm-ub", Kind.STACKED, "m3", "cubic metre of stack under bark, Germany");
  static final WoodMeasure DE_CHIPS_OVER =
      new WoodMeasure("de:srm-ob", Kind.LOOSE, "m3", "loose cubic metre over bark, Germany");
  static final WoodMeasure DE_DRY_TONNE =
      new WoodMeasure("de:t-dry-ob", Kind.MASS, "t", "tonne absolutely dry over bark, Germany");
  static final WoodMeasure DE_SOLID_UNDER =
      new WoodMeasure("de:fm-ub", Kind.SOLID, "m3", "solid wood under bark, Germany");

  static final WoodMeasure FR_STERE =
      new WoodMeasure("fr:stere", Kind.STACKED, "st", "stere, a cubic metre of stack, France");
  static final WoodMeasure FR_SOLID =
      new WoodMeasure("fr:m3", Kind.SOLID, "m3", "cubic metre of solid wood, France");

  static final WoodMeasure SU_STACKED =
      new WoodMeasure("su:stacked-m3", Kind.STACKED, "m3", "cubic metre of load, Soviet Union");
  static final WoodMeasure SU_SOLID_UNDER =
      new WoodMeasure("su:m3-ub", Kind.SOLID, "m3", "solid wood under bark, Soviet Union");

  static final WoodMeasure GB_LOAD_SQUARED =
      new WoodMeasure("gb:load-squared", Kind.SOLID, "load", "load of squared timber, Britain");
  static final WoodMeasure GB_LOAD_UNHEWN =
      new WoodMeasure("gb:load-unhewn", Kind.SOLID, "load", "load of unhewn timber, Britain");
  static final WoodMeasure GB_CUBIC_FOOT =
      new WoodMeasure("gb:ft3", Kind.SOLID, "ft3", "cubic foot of timber, Britain");

  static final WoodMeasure NB_SOLID =
      new WoodMeasure("nb:m3", Kind.SOLID, "m3", "cubic metre of solid wood, New Brunswick");
  static final WoodMeasure NB_CORD =
      new WoodMeasure("nb:cord", Kind.STACKED, "cord", "cord of stacked wood, New Brunswick");
  static final WoodMeasure NB_BOARD_FEET =
      new WoodMeasure("nb:mbf", Kind.LUMBER, "1000 bf", "thousand board feet, New Brunswick");

  static final WoodMeasure US_CORD =
      new WoodMeasure("us:cord", Kind.STACKED, "cord", "cord, ranked and well stowed");
  static final WoodMeasure US_PULP_CORD =
      new WoodMeasure("us:pulp-cord", Kind.STACKED, "cord", "pulpwood cord of 5 ft pieces");
  static final WoodMeasure US_STACKED_FOOT =
      new WoodMeasure("us:stacked-ft3", Kind.STACKED, "ft3", "cubic foot of stack");
  static final WoodMeasure STACKED_METRE =
      new WoodMeasure("stacked-m3", Kind.STACKED, "m3", "cubic metre of stack");
  static final WoodMeasure US_CUBIC_FOOT =
      new WoodMeasure("us:ft3", Kind.SOLID, "ft3", "cubic foot of solid wood");
  static final WoodMeasure US_LUMBER =
      new WoodMeasure("us:mbf-lumber", Kind.LUMBER, "1000 bf", "thousand board feet of lumber");
  static final WoodMeasure LUMBER_FOOT =
      new WoodMeasure("lumber-ft3", Kind.LUMBER, "ft3", "cubic foot of lumber");
  static final WoodMeasure LUMBER_METRE =
      new WoodMeasure("lumber-m3", Kind.LUMBER, "m3", "cubic metre of lumber");
  static final WoodMeasure US_SCALE_WEST =
      new WoodMeasure("us:bf-west-side", Kind.CUSTOM, "bf", "board feet in logs up to 40 ft");
  static final WoodMeasure US_SCALE_EAST =
      new WoodMeasure("us:bf-east-side", Kind.CUSTOM, "bf", "board feet in logs up to 20 ft");
  static final WoodMeasure LOG_METRE =
      new WoodMeasure("log-m3", Kind.SOLID, "m3", "cubic metre of sawlogs");
  static final WoodMeasure SOLID_UNDER =
      new WoodMeasure("m3-ub", Kind.SOLID, "m3", "cubic metre of roundwood under bark");
  static final WoodMeasure MASS_WITH_BARK =
      new WoodMeasure("kg-with-bark", Kind.MASS, "kg", "kilogram of wood with its bark");
  static final WoodMeasure MASS_OF_BARK =
      new WoodMeasure("kg-bark", Kind.MASS, "kg", "kilogram of bark");

  private WoodMeasures() {}
}
