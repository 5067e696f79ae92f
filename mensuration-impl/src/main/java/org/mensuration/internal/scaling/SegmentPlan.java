package org.mensuration.internal.scaling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.kernel.SizeClasses;
import org.mensuration.log.Log;
import org.mensuration.scaling.LongLogs;
import org.mensuration.scaling.ScalingConvention;
import org.mensuration.scaling.Split;
import org.mensuration.scaling.Taper;
import org.mensuration.units.Measures;

/** Cuts a log on paper into segments with their classes. Not thread-safe. */
final class SegmentPlan {
  /** A longer log is a slip of the pen, and would fill the memory. */
  private static final int MOST_SEGMENTS = 100;

  private final ScalingConvention convention;
  private final Rounder rounder;
  private final Log log;
  private final double measured;

  SegmentPlan(ScalingConvention convention, Rounder rounder, Log log) {
    this.convention = convention;
    this.rounder = rounder;
    this.log = log;
    this.measured =
        Rounder.inClassUnit(convention.name() + ": length", log.length(), convention.lengths());
  }

  /** The segments from the small end to the butt. */
  List<Log> segments() {
    double small = diameter("small end", needed("small end", log.small()));
    Optional<Double> large = log.large().map(reading -> diameter("large end", reading));
    requireSizes(small, large);
    double length = nominalLength();
    double[] lengths = lengths(length);
    if (lengths.length == 1) {
      return List.of(whole(small, large, length));
    }
    double[] diameters = diameters(small, large, lengths);
    List<Log> segments = new ArrayList<>();
    for (int i = 0; i < lengths.length; i++) {
      segments.add(Log.of(diameterOf(diameters[i]), lengthOf(lengths[i])).withBark(log.bark()));
    }
    return List.copyOf(segments);
  }

  private Log whole(double small, Optional<Double> large, double length) {
    Quantity<Length> smallClass = diameterOf(toClass("small end", small));
    Log segment =
        large.isPresent()
            ? Log.of(diameterOf(toClass("large end", large.get())), smallClass, lengthOf(length))
            : Log.of(smallClass, lengthOf(length));
    if (log.middle().isPresent()) {
      double middle = diameter("middle", log.middle().get());
      segment = segment.withMiddle(diameterOf(toClass("middle", middle)));
    }
    return segment.withBark(log.bark());
  }

  private Quantity<Length> needed(String what, Optional<Quantity<Length>> diameter) {
    if (!diameter.isPresent()) {
      throw new IllegalArgumentException(convention.name() + " needs the diameter of the " + what);
    }
    return diameter.get();
  }

  private double diameter(String what, Quantity<Length> reading) {
    double value = Rounder.inClassUnit(what(what), reading, convention.diameters());
    if (!(value >= 0)) {
      throw new IllegalArgumentException(
          what(what) + " is " + value + " " + diameterUnit() + ", allowed zero or more");
    }
    return value;
  }

  private String what(String what) {
    return convention.name() + ": diameter of the " + what;
  }

  private String diameterUnit() {
    return Rounder.unit(convention.diameters());
  }

  private String lengthUnit() {
    return Rounder.unit(convention.lengths());
  }

  private void requireSizes(double small, Optional<Double> large) {
    if (large.isPresent() && !atMost(small, large.get())) {
      throw new IllegalArgumentException(
          what("small end")
              + " is "
              + small
              + " "
              + diameterUnit()
              + ", allowed at most that of the large end, "
              + large.get()
              + " "
              + diameterUnit());
    }
    convention
        .minimums()
        .diameter()
        .map(least -> Measures.in(least, convention.diameters().width().getUnit()))
        .filter(least -> !atMost(least, small))
        .ifPresent(
            least -> {
              throw new IllegalArgumentException(
                  what("small end")
                      + " is "
                      + small
                      + " "
                      + diameterUnit()
                      + ", allowed at least "
                      + least
                      + " "
                      + diameterUnit());
            });
  }

  /** Converted readings miss exact limits by an ulp. */
  private static boolean atMost(double value, double limit) {
    return value <= limit || SizeClasses.widths(value, limit) == 1;
  }

  private double nominalLength() {
    double trim = Measures.in(convention.trim(), convention.lengths().width().getUnit());
    double left = measured;
    if (trim > 0) {
      left = measured - trim;
      rounder.step("length less trim", measured, left, lengthUnit());
    }
    double length = left > 0 ? rounder.toClass("length", left, convention.lengths()) : 0;
    double least =
        convention
            .minimums()
            .length()
            .map(limit -> Measures.in(limit, convention.lengths().width().getUnit()))
            .orElse(0.0);
    if (!(length > 0 && atMost(least, length))) {
      throw new IllegalArgumentException(
          convention.name()
              + ": length is "
              + measured
              + " "
              + lengthUnit()
              + ", without trim and in its class "
              + length
              + " "
              + lengthUnit()
              + ", allowed "
              + (least > 0 ? "at least " + least + " " + lengthUnit() : "above zero"));
    }
    return length;
  }

  private double[] lengths(double length) {
    LongLogs custom = convention.longLogs();
    if (!custom.longest().isPresent()) {
      return new double[] {length};
    }
    double width = convention.lengths().width().getValue().doubleValue();
    double longest =
        SizeClasses.down(
            Measures.in(custom.longest().get(), convention.lengths().width().getUnit()), width);
    int parts = SizeClasses.parts(length, longest);
    if (parts == 1) {
      return new double[] {length};
    }
    boolean split = custom.split() != Split.NONE;
    if (!split || parts > MOST_SEGMENTS) {
      throw new IllegalArgumentException(
          convention.name()
              + ": length is "
              + length
              + " "
              + lengthUnit()
              + " in its class, allowed at most "
              + (split ? MOST_SEGMENTS * longest : longest)
              + " "
              + lengthUnit());
    }
    double[] lengths = new double[parts];
    double rest = length;
    for (int i = 0; i < parts; i++) {
      lengths[i] =
          custom.split() == Split.NEAR_EQUAL
              ? SizeClasses.wholeShare(SizeClasses.widths(length, width), parts, i) * width
              : Math.min(longest, rest);
      rest -= lengths[i];
      rounder.step("segment " + (i + 1) + " of the length", length, lengths[i], lengthUnit());
    }
    return lengths;
  }

  private double[] diameters(double small, Optional<Double> large, double[] lengths) {
    Taper taper = convention.longLogs().taper();
    double smallClass = toClass("small end", small);
    double[] diameters = new double[lengths.length];
    diameters[0] = smallClass;
    if (taper.kind() == Taper.Kind.NONE) {
      Arrays.fill(diameters, smallClass);
      return diameters;
    }
    if (taper.kind() == Taper.Kind.WHOLE_CLASSES) {
      double width = convention.diameters().width().getValue().doubleValue();
      double largeClass = toClass("large end", needed(large));
      // Like ends on a half that goes up once and down once would else taper backwards.
      double rise = Math.max(0, SizeClasses.widths(largeClass - smallClass, width));
      for (int i = 1; i < diameters.length; i++) {
        double share = SizeClasses.wholeShare(rise, lengths.length, i - 1) * width;
        diameters[i] = diameters[i - 1] + share;
        rounder.step(
            "small end of segment " + (i + 1) + " by whole classes of taper",
            smallClass,
            diameters[i],
            diameterUnit());
      }
      return diameters;
    }
    double fromSmall = 0;
    for (int i = 1; i < diameters.length; i++) {
      fromSmall += lengths[i - 1];
      double tapered = tapered(taper, small, large, fromSmall);
      String what = "small end of segment " + (i + 1);
      rounder.step(what + " by taper", small, tapered, diameterUnit());
      diameters[i] = toClass(what, tapered);
    }
    return diameters;
  }

  private double tapered(Taper taper, double small, Optional<Double> large, double fromSmall) {
    if (taper.kind() == Taper.Kind.STATED) {
      double rise = Measures.in(taper.rise().get(), convention.diameters().width().getUnit());
      double run = Measures.in(taper.run().get(), convention.lengths().width().getUnit());
      return SizeClasses.alongTaper(small, small + rise, fromSmall, run);
    }
    return SizeClasses.alongTaper(small, needed(large), fromSmall, measured);
  }

  private double needed(Optional<Double> large) {
    if (!large.isPresent()) {
      throw new IllegalArgumentException(
          convention.name()
              + " needs the diameter of the large end to share the taper of a long log");
    }
    return large.get();
  }

  private double toClass(String what, double value) {
    return rounder.toClass(what, value, convention.diameters());
  }

  private Quantity<Length> diameterOf(double value) {
    return Measures.of(value, convention.diameters().width().getUnit());
  }

  private Quantity<Length> lengthOf(double value) {
    return Measures.of(value, convention.lengths().width().getUnit());
  }
}
