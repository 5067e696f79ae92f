package org.mensuration.internal.scaling;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.mensuration.internal.catalogue.DeductionFormulas;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.log.Log;
import org.mensuration.log.ScaleRule;
import org.mensuration.quantity.LogScale;
import org.mensuration.scaling.Defect;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** What a defect takes off a segment, before rounding. Not thread-safe. */
final class DefectAmount {
  private static final UnitReader<Length> INCHES = UnitReader.in(ForestUnits.INCH);
  private static final UnitReader<Length> FEET = UnitReader.in(ForestUnits.FOOT);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /** The length that the rule for sweep is stated for. */
  private static final double SWEEP_FEET = 16;

  private final ScalingConvention convention;
  private final ScaleRule rule;
  private final Rounder rounder;

  DefectAmount(ScalingConvention convention, ScaleRule rule, Rounder rounder) {
    this.convention = convention;
    this.rule = rule;
    this.rounder = rounder;
  }

  LogScale of(Defect defect, int number, Log segment, LogScale gross) {
    if (defect instanceof Defect.Stated stated) {
      // Refuses feet of another rule, naming both.
      gross.plus(stated.amount());
      return stated.amount();
    }
    if (defect instanceof Defect.DiameterCut cut) {
      return gross.minus(reduced(cut, number, segment, gross));
    }
    double amount =
        defect instanceof Defect.Squared box
            ? squared(box)
            : share(defect, segment) * gross.amount();
    return new LogScale(gross.rule(), amount, gross.unit(), gross.bark());
  }

  private double squared(Defect.Squared box) {
    if (!ScribnerKind.holds(rule.formula())) {
      throw new IllegalArgumentException(
          DeductionFormulas.SQUARED_DEFECT.id()
              + ": its feet are of Scribner's kind and are not taken from "
              + rule.formula().title()
              + " ("
              + rule.formula().id()
              + "); allowed with "
              + ScribnerKind.words()
              + ", or take a share of the scale");
    }
    return DeductionFormulas.SQUARED_DEFECT.value(
        INCHES.read(box.width()), INCHES.read(box.height()), FEET.read(box.length()));
  }

  private double share(Defect defect, Log segment) {
    double log = FEET.read(segment.length());
    double diameter = INCHES.read(small(segment));
    if (defect instanceof Defect.Sector sector) {
      return DeductionFormulas.SECTOR.value(
          FEET.read(sector.length()), log, DEGREES.read(sector.angle()));
    } else if (defect instanceof Defect.LengthCut cut) {
      return DeductionFormulas.LENGTH_CUT.value(FEET.read(cut.length()), log);
    } else if (defect instanceof Defect.InteriorRot rot) {
      return DeductionFormulas.INTERIOR_SHARE.apply(
          INCHES.read(rot.width()),
          INCHES.read(rot.height()),
          diameter,
          FEET.read(rot.length()),
          log);
    } else if (defect instanceof Defect.Sweep sweep) {
      return sweep(sweep, log, diameter);
    } else if (defect instanceof Defect.Crook crook) {
      return DeductionFormulas.CROOK_SHARE.value(
          INCHES.read(crook.deflection()), diameter, FEET.read(crook.length()), log);
    } else if (defect instanceof Defect.Percent percent) {
      return percent.percent() / 100;
    }
    throw new IllegalStateException("no share for " + defect);
  }

  private static double sweep(Defect.Sweep sweep, double log, double diameter) {
    if (SizeClasses.widths(log, SWEEP_FEET) != 1) {
      throw new IllegalArgumentException(
          DeductionFormulas.SWEEP_SHARE.id()
              + ": L = "
              + log
              + " ft, allowed 16 ft, the length that the rule is stated for");
    }
    return DeductionFormulas.SWEEP_SHARE.value(INCHES.read(sweep.departure()), diameter);
  }

  private LogScale reduced(Defect.DiameterCut cut, int number, Log segment, LogScale gross) {
    double diameter =
        Measures.in(small(segment), convention.diameters().width().getUnit())
            - Measures.in(cut.reduction(), convention.diameters().width().getUnit());
    String what = "segment " + number + ": reduced diameter";
    if (!(diameter > 0)) {
      throw new IllegalArgumentException(
          convention.name()
              + ": "
              + what
              + " is "
              + diameter
              + " "
              + Rounder.unit(convention.diameters())
              + ", allowed above zero");
    }
    Quantity<Length> less =
        Measures.of(
            rounder.toClass(what, diameter, convention.diameters()),
            convention.diameters().width().getUnit());
    LogScale scale = rule.scale(Log.of(less, segment.length()).withBark(segment.bark()));
    // Refuses a rule that changes its name from log to log.
    gross.plus(scale);
    return rounder.amount(what + ", scale", scale, convention.roundings().segment());
  }

  private static Quantity<Length> small(Log segment) {
    Optional<Quantity<Length>> small = segment.small();
    if (!small.isPresent()) {
      throw new IllegalStateException("a segment has its small end");
    }
    return small.get();
  }
}
