package org.mensuration.internal.log;

import org.mensuration.internal.catalogue.BoardFormulas;
import org.mensuration.internal.catalogue.BoardTableFormulas;
import org.mensuration.internal.catalogue.PolynomialBoardFormulas;
import org.mensuration.log.ScaleRule;

/** The board-foot rules. Immutable and thread-safe. */
public final class BoardRules {
  /** Doyle. */
  public static final ScaleRule DOYLE = BoardRule.ofSmallEnd(BoardFormulas.DOYLE);

  /** Scribner in its regression form. */
  public static final ScaleRule SCRIBNER_FORMULA =
      BoardRule.ofSmallEnd(PolynomialBoardFormulas.SCRIBNER_FORMULA);

  /** Scribner Decimal C. */
  public static final ScaleRule SCRIBNER_DECIMAL_C =
      BoardRule.ofSmallEnd(BoardTableFormulas.SCRIBNER_DECIMAL_C);

  /** International 1/4-inch as printed. */
  public static final ScaleRule INTERNATIONAL_QUARTER_TABLE =
      BoardRule.ofSmallEnd(BoardTableFormulas.INTERNATIONAL_QUARTER_TABLE);

  /** Doyle up to 28 in, Scribner above. */
  public static final ScaleRule DOYLE_SCRIBNER = BoardRule.ofSmallEnd(BoardFormulas.DOYLE_SCRIBNER);

  /** International 1/4-inch by sections. */
  public static final ScaleRule INTERNATIONAL_QUARTER =
      BoardRule.ofSmallEnd(BoardFormulas.INTERNATIONAL_QUARTER);

  /** International 1/4-inch in continuous form. */
  public static final ScaleRule INTERNATIONAL_QUARTER_CONTINUOUS =
      BoardRule.ofSmallEnd(BoardFormulas.INTERNATIONAL_QUARTER_CONTINUOUS);

  /** International 1/8-inch by sections. */
  public static final ScaleRule INTERNATIONAL_EIGHTH =
      BoardRule.ofSmallEnd(BoardFormulas.INTERNATIONAL_EIGHTH);

  /** Vermont in its compact form. */
  public static final ScaleRule VERMONT = BoardRule.ofSmallEnd(PolynomialBoardFormulas.VERMONT);

  /** Vermont by sections of twelve feet. */
  public static final ScaleRule VERMONT_SECTIONS =
      new SectionRule(PolynomialBoardFormulas.VERMONT_SECTIONS, 12);

  /** Blodgett units. */
  public static final ScaleRule BLODGETT =
      new BoardRule(PolynomialBoardFormulas.BLODGETT, Place.MIDDLE);

  /** Blodgett in board feet by the middle. */
  public static final ScaleRule BLODGETT_MIDDLE =
      new BoardRule(PolynomialBoardFormulas.BLODGETT_MIDDLE, Place.MIDDLE);

  /** Blodgett in board feet by the small end. */
  public static final ScaleRule BLODGETT_SMALL_END =
      BoardRule.ofSmallEnd(PolynomialBoardFormulas.BLODGETT_SMALL_END);

  /** Roy. */
  public static final ScaleRule ROY = BoardRule.ofSmallEnd(PolynomialBoardFormulas.ROY);

  /** Ontario. */
  public static final ScaleRule ONTARIO = BoardRule.ofSmallEnd(PolynomialBoardFormulas.ONTARIO);

  /** British Columbia. */
  public static final ScaleRule BRITISH_COLUMBIA =
      BoardRule.ofSmallEnd(PolynomialBoardFormulas.BRITISH_COLUMBIA);

  /** Knouf. */
  public static final ScaleRule KNOUF = BoardRule.ofSmallEnd(PolynomialBoardFormulas.KNOUF);

  /** Ropp. */
  public static final ScaleRule ROPP = BoardRule.ofSmallEnd(PolynomialBoardFormulas.ROPP);

  private BoardRules() {}
}
