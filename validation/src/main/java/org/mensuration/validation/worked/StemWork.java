package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Cuts one stem into pieces and adds them up. Not thread-safe. */
final class StemWork {
  /** A middle reading may miss the middle by this share of its section. */
  private static final double MIDDLE_SHARE = 0.05;

  /** Sections stated for Huber's rule may miss each other by this many metres. */
  private static final double JOINT = 0.05;

  /** Heights that differ by less, in metres, are the same height. */
  private static final double LEVEL = 1e-6;

  private final Arithmetic arithmetic;
  private final SectionRule rule;
  private final TipForm tip;
  private final Stem stem;
  private final OptionalDouble stumpHeight;
  private final double topDiameter;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<String> gaps = new ArrayList<>();

  private StemWork(
      Arithmetic arithmetic,
      SectionRule rule,
      TipForm tip,
      Stem stem,
      OptionalDouble stumpHeight,
      double topDiameter) {
    this.arithmetic = arithmetic;
    this.rule = rule;
    this.tip = tip;
    this.stem = stem;
    this.stumpHeight = stumpHeight;
    this.topDiameter = topDiameter;
  }

  static StemVolume measure(
      Arithmetic arithmetic, Options options, Stem stem, OptionalDouble stumpHeight) {
    return new StemWork(
            arithmetic, options.rule(), options.tip(), stem, stumpHeight, options.topDiameterCm())
        .measure();
  }

  private StemVolume measure() {
    List<Reading> readings = stem.readings();
    if (readings.isEmpty()) {
      gaps.add("no diameter with a height");
      return new StemVolume(stem, List.of(), 0, List.copyOf(gaps), List.of());
    }
    double bottom = bottom(readings.get(0));
    foot(readings.get(0), bottom);
    switch (rule) {
      case SMALIAN -> smalian(readings);
      case HUBER -> huber(readings);
      case NEWTON -> newton(readings);
    }
    top(readings.get(readings.size() - 1));
    double volume = 0;
    for (Piece piece : pieces) {
      volume += piece.counted() ? piece.volume().orElse(0) : 0;
    }
    return new StemVolume(
        stem,
        List.copyOf(pieces),
        volume,
        List.copyOf(gaps),
        ProfileWork.lines(stem, tip, stumpHeight, topDiameter));
  }

  private double bottom(Reading lowest) {
    return rule == SectionRule.HUBER && lowest.length().isPresent()
        ? lowest.height() - lowest.length().getAsDouble() / 2
        : lowest.height();
  }

  /** Stump and butt: both as wide as the lowest reading, for nothing was measured below it. */
  private void foot(Reading lowest, double bottom) {
    if (stem.start().isEmpty()) {
      pieces.add(
          Piece.missing(
              "butt",
              OptionalDouble.empty(),
              OptionalDouble.of(bottom),
              "no base row: nothing below is added"));
      gaps.add("no base row, so nothing below its lowest reading");
      return;
    }
    double start = stem.start().getAsDouble();
    if (bottom < start - LEVEL) {
      throw lowest.row().bad("height_m", "readings above the base of the stem");
    }
    double stump = Math.max(start, stumpHeight.orElse(start));
    double d = lowest.diameter();
    if (stump > start && bottom < stump - LEVEL) {
      pieces.add(
          Piece.missing(
              "stump",
              OptionalDouble.of(start),
              OptionalDouble.of(stump),
              "within the sections, not taken off"));
      stump = start;
    } else if (stump > start) {
      pieces.add(
          Piece.of("stump", start, stump)
              .upper(d)
              .volume(arithmetic.huber(d, stump - start))
              .notCounted()
              .note("as wide as the lowest reading; not in the volume"));
    }
    if (bottom > stump + LEVEL) {
      pieces.add(
          Piece.of(start > 0 ? "foot" : "butt", stump, bottom)
              .upper(d)
              .volume(arithmetic.huber(d, bottom - stump))
              .note("as wide as the lowest reading"));
    }
  }

  private void smalian(List<Reading> readings) {
    for (int i = 1; i < readings.size(); i++) {
      Reading low = readings.get(i - 1);
      Reading up = readings.get(i);
      pieces.add(
          Piece.of("section", low.height(), up.height())
              .ends(low.diameter(), up.diameter())
              .volume(arithmetic.smalian(low.diameter(), up.diameter(), up.height() - low.height()))
              .note(up.how()));
    }
  }

  private void newton(List<Reading> readings) {
    for (int i = 0; i + 1 < readings.size(); i += 2) {
      Reading low = readings.get(i);
      if (i + 2 >= readings.size()) {
        lacksMiddle(low, readings.get(i + 1), "no reading in its middle");
        return;
      }
      Reading mid = readings.get(i + 1);
      Reading up = readings.get(i + 2);
      double length = up.height() - low.height();
      double off = Math.abs(mid.height() - (low.height() + up.height()) / 2);
      if (!(off <= MIDDLE_SHARE * length)) {
        lacksMiddle(low, up, "its middle reading is not in the middle");
        continue;
      }
      pieces.add(
          Piece.of("section", low.height(), up.height())
              .ends(low.diameter(), up.diameter())
              .middle(mid.diameter())
              .volume(arithmetic.newton(low.diameter(), mid.diameter(), up.diameter(), length))
              .note(up.how()));
    }
  }

  private void lacksMiddle(Reading low, Reading up, String why) {
    pieces.add(
        Piece.missing(
            "section",
            OptionalDouble.of(low.height()),
            OptionalDouble.of(up.height()),
            why + ", which Newton's rule needs"));
    gaps.add("a section without the middle that Newton's rule needs");
  }

  private void huber(List<Reading> readings) {
    double reached = Double.NaN;
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      if (reading.length().isEmpty()) {
        if (i == readings.size() - 1 && i > 0) {
          gap(reached, reading.height());
          return;
        }
        throw reading
            .row()
            .bad("length_m", "the length around this middle, which Huber's rule needs");
      }
      double length = reading.length().getAsDouble();
      double from = reading.height() - length / 2;
      if (reached - from > JOINT) {
        throw reading.row().bad("length_m", "sections that do not overlap");
      }
      gap(reached, from);
      reached = from + length;
      pieces.add(
          Piece.of("section", from, reached)
              .middle(reading.diameter())
              .volume(arithmetic.huber(reading.diameter(), length))
              .note(reading.how()));
    }
  }

  private void gap(double from, double to) {
    if (to - from > JOINT) {
      pieces.add(
          Piece.missing(
              "gap", OptionalDouble.of(from), OptionalDouble.of(to), "no section covers this"));
      gaps.add("a gap between its sections");
    }
  }

  private void top(Reading last) {
    boolean middle = rule == SectionRule.HUBER && last.length().isPresent();
    double height = last.height() + (middle ? last.length().orElseThrow() / 2 : 0);
    OptionalDouble from = OptionalDouble.of(height);
    if (stem.end().isEmpty()) {
      pieces.add(Piece.missing("tip", from, stem.top(), "neither break nor tip was noted"));
      gaps.add("neither break nor tip was noted");
      return;
    }
    if (stem.top().isEmpty()) {
      String why = "the height of its " + stem.end() + " was not measured";
      pieces.add(Piece.missing(stem.end(), from, stem.top(), why));
      gaps.add(why);
      return;
    }
    double length = stem.top().getAsDouble() - height;
    if (stem.end().equals("break")) {
      brokenTop(from, length);
    } else if (middle) {
      String why = "no diameter at the foot of its tip";
      pieces.add(Piece.missing("tip", from, stem.top(), why));
      gaps.add(why);
    } else if (length > 0) {
      pieces.add(
          Piece.of("tip", height, stem.top().getAsDouble())
              .ends(last.diameter(), 0)
              .volume(tip.volume(arithmetic, last.diameter(), length))
              .note(tip == TipForm.CONE ? "as a cone" : "as a paraboloid"));
    }
  }

  private void brokenTop(OptionalDouble from, double length) {
    if (length > LEVEL) {
      String why = "no diameter at the break";
      pieces.add(Piece.missing("break", from, stem.top(), why));
      gaps.add(why);
      return;
    }
    pieces.add(
        Piece.missing("break", from, from, "the stem ends here; what broke off is not counted"));
  }
}
