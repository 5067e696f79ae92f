package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.BoardWorks;
import org.mensuration.internal.source.WoodWorks;
import org.mensuration.kernel.Conversion;
import org.mensuration.source.Citation;

/** Overrun, board-foot ratio and stacks. Immutable and thread-safe. */
public final class ConversionFormulas {
  private static final Domain NOT_NEGATIVE = Domain.atLeast(0);
  private static final Domain POSITIVE = Domain.above(0);

  /** Overrun. */
  public static final BoundFormula OVERRUN =
      Definition.of("unit/overrun", "Overrun of lumber over log scale", Nature.CONVENTION)
          .input("lumber_tally", "T", "bf", NOT_NEGATIVE, "lumber sawn from the logs")
          .input("log_scale", "S", "bf", POSITIVE, "net scale of the logs by the rule in use")
          .gives("overrun", "O", "%", over(times(num(100), minus(sym("T"), sym("S"))), sym("S")))
          .definedBy(BoardWorks.IBSP_OVERRUN, "whole text as stored")
          .note("the printed formula lacks the brackets round the difference")
          .note("below zero it is an underrun; the net scale is the base")
          .kernel2(Conversion::overrun);

  /** Board-foot ratio. */
  public static final BoundFormula BOARD_FOOT_RATIO =
      Definition.of("unit/board-foot-ratio", "Board feet in a cubic foot of log", Nature.CONVENTION)
          .input("log_scale", "S", "bf", NOT_NEGATIVE, "scale of the logs by a board-foot rule")
          .input("volume", "V", "ft3", POSITIVE, "solid volume of the same logs")
          .gives("ratio", "R", "bf/ft3", over(sym("S"), sym("V")))
          .cites(Citation.commonPractice("board-foot scale over cubic volume of the same logs"))
          .note("holds for the rule, size and length of log that it was worked out for")
          .kernel2(Conversion::boardFootRatio);

  /** Stack. */
  public static final BoundFormula STACK =
      Definition.of("stack/volume", "Outer volume of a stack", Nature.GEOMETRIC)
          .input("length", "l", "m", NOT_NEGATIVE, "length of the stack")
          .input("height", "h", "m", NOT_NEGATIVE, "height of the stack")
          .input("depth", "t", "m", NOT_NEGATIVE, "length of the pieces")
          .gives("stacked_volume", "V", "m3", times(sym("l"), sym("h"), sym("t")))
          .cites(Citation.commonPractice("length, height and depth of the stack"))
          .note("stacked, not solid: wood, bark and air")
          .kernel3(Conversion::stack);

  /** Cords. */
  public static final BoundFormula CORDS =
      Definition.of("stack/cords", "Cords in a stack", Nature.CONVENTION)
          .input("length", "l", "ft", NOT_NEGATIVE, "length of the stack")
          .input("height", "h", "ft", NOT_NEGATIVE, "height of the stack")
          .input("depth", "t", "ft", NOT_NEGATIVE, "length of the pieces")
          .gives("cords", "C", "cord", over(times(sym("l"), sym("h"), sym("t")), num(128)))
          .definedBy(WoodWorks.NIST130, "2.4.1: 128 cubic feet, ranked and well stowed")
          .kernel3(Conversion::cords);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(OVERRUN, BOARD_FOOT_RATIO, STACK, CORDS);

  private ConversionFormulas() {}
}
