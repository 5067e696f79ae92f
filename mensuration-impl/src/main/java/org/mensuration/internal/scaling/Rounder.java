package org.mensuration.internal.scaling;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.AmountRounding;
import org.mensuration.scaling.ScalingStep;
import org.mensuration.scaling.SizeClass;
import org.mensuration.scaling.StepRounding;
import org.mensuration.units.Measures;

/** Rounds as a convention says and writes down every step. Not thread-safe. */
final class Rounder {
  private final String convention;
  private final Halves halves;
  private final List<ScalingStep> steps = new ArrayList<>();

  Rounder(String convention, Halves halves) {
    this.convention = convention;
    this.halves = halves;
  }

  /** Counts exact halves, so that they can go up and down by turns. Not thread-safe. */
  static final class Halves {
    private int met;

    private boolean next() {
      met++;
      return met % 2 == 1;
    }
  }

  List<ScalingStep> steps() {
    return steps;
  }

  void step(String what, double before, double after, String unit) {
    steps.add(new ScalingStep(what, before, after, unit));
  }

  /** A length in the unit of the classes to its class. */
  double toClass(String what, double value, SizeClass classes) {
    double width = classes.width().getValue().doubleValue();
    String unit = unit(classes);
    double rounded = rounded(what, value, width, classes.rounding(), unit);
    step(what + " to its class", value, rounded, unit);
    return rounded;
  }

  /** An amount to the step of its rounding; no step is no rounding. */
  LogScale amount(String what, LogScale amount, AmountRounding rounding) {
    if (!(rounding.step() > 0)) {
      return amount;
    }
    double after =
        rounded(what, amount.amount(), rounding.step(), rounding.rounding(), amount.unit());
    step(what + " rounded", amount.amount(), after, amount.unit());
    return new LogScale(amount.rule(), after, amount.unit(), amount.bark());
  }

  static String unit(SizeClass classes) {
    return classes.width().getUnit().toString();
  }

  static double inClassUnit(String what, Quantity<Length> length, SizeClass classes) {
    double given = length.getValue().doubleValue();
    if (!(Math.abs(given) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          what + " is " + given + " " + length.getUnit() + ", wanted a length");
    }
    return Measures.in(length, classes.width().getUnit());
  }

  private double rounded(
      String what, double value, double width, StepRounding rounding, String unit) {
    return switch (rounding) {
      case DOWN -> SizeClasses.down(value, width);
      case UP -> SizeClasses.up(value, width);
      case HALF_UP -> SizeClasses.nearestHalfUp(value, width);
      case HALF_DOWN -> SizeClasses.nearestHalfDown(value, width);
      case HALF_ALTERNATING_UP_FIRST -> byTurns(value, width, true);
      case HALF_ALTERNATING_DOWN_FIRST -> byTurns(value, width, false);
      case HALF_REFUSED -> {
        if (SizeClasses.half(value, width)) {
          throw new IllegalArgumentException(
              convention
                  + ": "
                  + what
                  + " of "
                  + value
                  + " "
                  + unit
                  + " lies half way between two classes of "
                  + width
                  + " "
                  + unit
                  + "; the source does not settle it, choose a rounding of halves");
        }
        yield SizeClasses.nearestHalfUp(value, width);
      }
    };
  }

  private double byTurns(double value, double width, boolean upFirst) {
    boolean up = !SizeClasses.half(value, width) || halves.next() == upFirst;
    return up ? SizeClasses.nearestHalfUp(value, width) : SizeClasses.nearestHalfDown(value, width);
  }
}
