package org.mensuration.internal.log;

import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.LogScale;

/**
 * A board-foot rule that is applied to sections of a length from the small end, the rest at the
 * butt. Diameters at the cuts lie on a straight line between the ends. Immutable and thread-safe.
 *
 * @param formula its formula of a list of diameters and a list of lengths
 * @param sectionFt length of a section in feet
 */
public record SectionRule(BoundFormula formula, double sectionFt) implements ScaleRule {
  @Override
  public LogScale scale(Log log) {
    double length = BoardRule.feet(log.length());
    double small = BoardRule.inches(Place.SMALL.needed(formula, log));
    // A length that is no number is left to the formula to refuse.
    int parts = length < 1e6 ? SizeClasses.parts(length, sectionFt) : 1;
    double large = parts > 1 ? BoardRule.inches(Place.LARGE.needed(formula, log)) : small;
    double[] diameters = new double[parts];
    double[] lengths = new double[parts];
    for (int i = 0; i < parts; i++) {
      double from = i * sectionFt;
      lengths[i] = i == parts - 1 ? length - from : sectionFt;
      diameters[i] = parts == 1 ? small : SizeClasses.alongTaper(small, large, from, length);
    }
    double boardFeet = formula.applyTo(diameters, lengths);
    Tidiness.of(formula, log);
    return new LogScale(formula.title(), boardFeet, BoardRule.unit(formula), log.bark());
  }
}
