package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.Butt;
import org.mensuration.stem.ButtForm;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.Tip;
import org.mensuration.stem.TipForm;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.UnitReader;

/** Checks readings of a stem and lays the profile through them. Stateless and thread-safe. */
public final class StemReadings {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  private StemReadings() {}

  /** A reading with its numbers. */
  private record Point(double height, double diameter, StemReading reading) {}

  /**
   * The profile through readings.
   *
   * @param readings in any order
   * @param bark whether they include the bark
   * @param butt what lies below the lowest
   * @param tip what lies above the highest
   * @return the profile
   * @throws IllegalArgumentException if the readings make no stem; the message says which and why
   */
  public static StemProfile profile(
      List<StemReading> readings, BarkBasis bark, Butt butt, Tip tip) {
    List<Point> points = points(readings);
    int n = points.size();
    double[] heights = new double[n];
    double[] diameters = new double[n];
    List<StemReading> sorted = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      heights[i] = points.get(i).height();
      diameters[i] = points.get(i).diameter();
      sorted.add(points.get(i).reading());
    }
    double base = base(butt, heights);
    double intact = intactTop(tip, heights, diameters);
    double top = top(tip, heights[n - 1], intact);
    if (!(base < intact)) {
      throw new IllegalArgumentException(
          "stem: one reading, at " + base + " m, and neither butt nor tip; allowed at least two");
    }
    if (butt.form() == ButtForm.EXTENDED) {
      requireFoot(heights, diameters, base);
    }
    StemCurve curve = StemCurve.through(heights, diameters, butt.form(), base, tip.form(), intact);
    return new ReadStem(
        sorted, bark, curve, new Sections(heights, diameters, base, top), base, top, intact);
  }

  private static List<Point> points(List<StemReading> readings) {
    List<Point> points = new ArrayList<>();
    for (StemReading reading : readings) {
      double height = METRES.read(reading.height());
      double diameter = CENTIMETRES.read(reading.diameter());
      if (!(Math.abs(height) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("height of a reading: " + height + " m, no number");
      }
      if (!(diameter >= 0 && diameter < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "diameter at " + height + " m: " + diameter + " cm, allowed [0, ∞) cm");
      }
      points.add(new Point(height, diameter, reading));
    }
    if (points.isEmpty()) {
      throw new IllegalArgumentException("stem: no readings, allowed at least one");
    }
    points.sort(Comparator.comparingDouble(Point::height));
    List<Point> single = new ArrayList<>();
    for (Point point : points) {
      Point before = single.isEmpty() ? null : single.get(single.size() - 1);
      if (before != null && before.height() == point.height()) {
        if (before.diameter() != point.diameter()) {
          throw new IllegalArgumentException(
              "two readings at "
                  + point.height()
                  + " m that differ: "
                  + before.diameter()
                  + " cm and "
                  + point.diameter()
                  + " cm; allowed one, such as their mean by a named rule");
        }
      } else {
        single.add(point);
      }
    }
    return single;
  }

  private static double base(Butt butt, double[] heights) {
    if (butt.form() == ButtForm.NOT_MEASURED) {
      return heights[0];
    }
    double base = number(butt.base(), 0, "base");
    if (!(heights[0] >= base)) {
      throw new IllegalArgumentException(
          "reading at " + heights[0] + " m, below the base of the stem at " + base + " m");
    }
    return base;
  }

  private static double intactTop(Tip tip, double[] heights, double[] diameters) {
    int last = heights.length - 1;
    double top = number(tip.height(), heights[last], "height of the tip");
    if (!(heights[last] <= top)) {
      throw new IllegalArgumentException(
          "reading at " + heights[last] + " m, above the tip at " + top + " m");
    }
    if (tip.form() != TipForm.NOT_MEASURED && heights[last] == top && diameters[last] != 0) {
      throw new IllegalArgumentException(
          "reading at the tip, " + top + " m: " + diameters[last] + " cm, allowed 0 cm");
    }
    for (int i = 0; i <= last; i++) {
      if (diameters[i] == 0 && heights[i] < top) {
        throw new IllegalArgumentException(
            "diameter at " + heights[i] + " m: 0 cm, but the stem goes on to " + top + " m");
      }
    }
    return top;
  }

  private static double top(Tip tip, double highest, double intact) {
    if (!tip.broken().isPresent()) {
      return intact;
    }
    double broken = number(tip.broken(), intact, "height of the break");
    if (!(broken >= highest && broken <= intact)) {
      throw new IllegalArgumentException(
          "break at "
              + broken
              + " m, allowed ["
              + highest
              + ", "
              + intact
              + "] m, from the highest reading to the height of the intact stem");
    }
    return broken;
  }

  private static void requireFoot(double[] heights, double[] diameters, double base) {
    if (heights.length < 2) {
      throw new IllegalArgumentException(
          "butt extended from the two lowest readings, but there is one");
    }
    if (!(StemCurve.extendedFoot(heights, diameters, base) >= 0)) {
      throw new IllegalArgumentException(
          "butt extended from the readings at "
              + heights[0]
              + " m and "
              + heights[1]
              + " m has no area at the base, "
              + base
              + " m; take a cylinder");
    }
  }

  private static double number(Optional<Quantity<Length>> height, double otherwise, String what) {
    if (!height.isPresent()) {
      return otherwise;
    }
    double metres = METRES.read(height.get());
    if (!(Math.abs(metres) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + ": " + metres + " m, no number");
    }
    return metres;
  }
}
