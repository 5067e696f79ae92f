package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.kernel.Limits;
import org.mensuration.kernel.StemSolid;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.stem.SectionRule;
import org.mensuration.stem.StemProfile;
import org.mensuration.stem.StemReading;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** The profile of a stem through its readings. Immutable and thread-safe. */
final class ReadStem implements StemProfile {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  /** Places between the ends at which rules want a diameter. */
  private static final double[] PLACES = {0.25, 1.0 / 3, 0.5, 2.0 / 3, 0.75};

  private final List<StemReading> readings;
  private final BarkBasis bark;
  private final StemCurve curve;
  private final Sections sections;
  private final double base;
  private final double top;
  private final double intactTop;

  ReadStem(
      List<StemReading> readings,
      BarkBasis bark,
      StemCurve curve,
      Sections sections,
      double base,
      double top,
      double intactTop) {
    this.readings = List.copyOf(readings);
    this.bark = bark;
    this.curve = curve;
    this.sections = sections;
    this.base = base;
    this.top = top;
    this.intactTop = intactTop;
  }

  @Override
  public List<StemReading> readings() {
    return readings;
  }

  @Override
  public BarkBasis bark() {
    return bark;
  }

  @Override
  public Quantity<Length> base() {
    return Measures.metres(base);
  }

  @Override
  public Quantity<Length> top() {
    return Measures.metres(top);
  }

  @Override
  public Quantity<Length> intactTop() {
    return Measures.metres(intactTop);
  }

  @Override
  public Quantity<Length> diameterAt(Quantity<Length> height) {
    return Measures.centimetres(diameter(within(height, "height")));
  }

  @Override
  public Quantity<Area> areaAt(Quantity<Length> height) {
    return Measures.squareMetres(StemSolid.area(curve.square(within(height, "height"))));
  }

  @Override
  public List<Quantity<Length>> heightsOf(Quantity<Length> diameter) {
    double wanted = diameter(diameter, "diameter");
    List<Quantity<Length>> heights = new ArrayList<>();
    for (double height : curve.heightsOf(wanted * wanted)) {
      heights.add(Measures.metres(height));
    }
    return List.copyOf(heights);
  }

  @Override
  public Quantity<Volume> volume() {
    return Measures.cubicMetres(StemSolid.area(curve.integral(base, top)));
  }

  @Override
  public Quantity<Volume> volume(Quantity<Length> from, Quantity<Length> to) {
    double low = within(from, "lower height");
    double high = within(to, "upper height");
    if (low > high) {
      throw new IllegalArgumentException(
          "volume between heights: from " + low + " m to " + high + " m, allowed from ≤ to");
    }
    return Measures.cubicMetres(StemSolid.area(curve.integral(low, high)));
  }

  @Override
  public Quantity<Length> merchantableLength(Quantity<Length> stump, Quantity<Length> topDiameter) {
    double from = standing(within(stump, "stump"), "stump");
    double wanted = diameter(topDiameter, "top diameter");
    return Measures.metres(curve.firstBelow(wanted * wanted, from, top) - from);
  }

  @Override
  public List<Log> logs(Quantity<Length> from, List<Quantity<Length>> lengths) {
    return logs(from, lengths, Measures.metres(0));
  }

  @Override
  public List<Log> logs(
      Quantity<Length> from, List<Quantity<Length>> lengths, Quantity<Length> trim) {
    double allowance = METRES.read(trim);
    if (!(allowance >= 0)) {
      throw new IllegalArgumentException("trim: " + allowance + " m, allowed [0, ∞) m");
    }
    double low = standing(within(from, "first cut"), "first cut");
    List<Log> logs = new ArrayList<>();
    for (Quantity<Length> length : lengths) {
      double scaled = METRES.read(length);
      String what = "log " + (logs.size() + 1);
      if (!(scaled > 0)) {
        throw new IllegalArgumentException(what + ": length " + scaled + " m, allowed (0, ∞) m");
      }
      double high = standing(low + scaled + allowance, "upper end of " + what);
      logs.add(log(low, high, length));
      low = high;
    }
    return List.copyOf(logs);
  }

  private Log log(double low, double high, Quantity<Length> length) {
    double one = diameter(low);
    double other = diameter(high);
    Log log =
        Log.of(
                Measures.centimetres(Math.max(one, other)),
                Measures.centimetres(Math.min(one, other)),
                length)
            .withBark(bark);
    double large = one >= other ? low : high;
    for (double share : PLACES) {
      double at = large + (low + high - 2 * large) * share;
      log = log.withDiameterAt(share, Measures.centimetres(diameter(at)));
    }
    return log;
  }

  @Override
  public Quantity<Volume> sectionalVolume(SectionRule rule) {
    Sections.Stretch stretch = sections.by(rule);
    double below = StemSolid.area(curve.integral(base, stretch.from()));
    double above = StemSolid.area(curve.integral(stretch.to(), top));
    return Measures.cubicMetres(below + stretch.volume() + above);
  }

  private double diameter(double height) {
    return Math.sqrt(curve.square(height));
  }

  private static double diameter(Quantity<Length> diameter, String what) {
    double centimetres = CENTIMETRES.read(diameter);
    if (!(centimetres >= 0 && centimetres < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + ": " + centimetres + " cm, allowed [0, ∞) cm");
    }
    return centimetres;
  }

  private double within(Quantity<Length> height, String what) {
    double metres = METRES.read(height);
    if (!(metres >= base && metres <= intactTop)) {
      throw new IllegalArgumentException(
          what + ": " + metres + " m, allowed [" + base + ", " + intactTop + "] m of this stem");
    }
    return metres;
  }

  private double standing(double metres, String what) {
    // Lengths that add up to the top miss it by an ulp or two.
    if (!Limits.keepsTo(metres, top)) {
      throw new IllegalArgumentException(
          what + ": " + metres + " m, but the stem ends at " + top + " m");
    }
    return Math.min(metres, top);
  }
}
