package org.mensuration.stem;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.log.Log;
import org.mensuration.quantity.BarkBasis;

/**
 * A stem as a curve of its sectional area over its height. Between readings the area follows a
 * piecewise cubic that passes through every reading and rises or falls only where they do, so it
 * has no bulge that was not read. Below the lowest and above the highest reading it is what {@link
 * Butt} and {@link Tip} chose. Implementations are immutable and thread-safe.
 *
 * <p>Heights are above the ground, along the stem. A height outside {@link #base()} and {@link
 * #intactTop()} is refused with an {@link IllegalArgumentException} that names the limits.
 */
public interface StemProfile {

  /**
   * The readings that the curve passes through.
   *
   * @return from the lowest up, each height once
   */
  List<StemReading> readings();

  /**
   * Whether the diameters include the bark.
   *
   * @return the basis of every diameter and volume of this stem
   */
  BarkBasis bark();

  /**
   * Where the stem begins.
   *
   * @return lowest height of the curve
   */
  Quantity<Length> base();

  /**
   * Where the stem ends as it stands.
   *
   * @return height of the break of a broken stem, else of its tip or highest reading
   */
  Quantity<Length> top();

  /**
   * Where the unbroken stem ends.
   *
   * @return highest height of the curve
   */
  Quantity<Length> intactTop();

  /**
   * The diameter at a height.
   *
   * @param height the height
   * @return the diameter, exactly the one read where there is a reading
   */
  Quantity<Length> diameterAt(Quantity<Length> height);

  /**
   * The sectional area at a height.
   *
   * @param height the height
   * @return the area of the circle
   */
  Quantity<Area> areaAt(Quantity<Length> height);

  /**
   * Every height at which the intact stem has a diameter. Where it keeps the diameter over a
   * stretch, both ends of the stretch.
   *
   * @param diameter the diameter
   * @return from the lowest up; empty if the stem is nowhere so thick or so thin
   */
  List<Quantity<Length>> heightsOf(Quantity<Length> diameter);

  /**
   * The volume of the stem as it stands, from base to top.
   *
   * @return the integral of the sectional area
   */
  Quantity<Volume> volume();

  /**
   * The volume between two heights.
   *
   * @param from lower height
   * @param to upper height
   * @return the integral of the sectional area
   */
  Quantity<Volume> volume(Quantity<Length> from, Quantity<Length> to);

  /**
   * The length from a stump to the first point at which the stem, as it stands, becomes thinner
   * than a top diameter: everything below is at least that thick.
   *
   * @param stump height of the stump
   * @param topDiameter smallest diameter wanted
   * @return the length; zero if the stem is thinner at the stump already
   */
  Quantity<Length> merchantableLength(Quantity<Length> stump, Quantity<Length> topDiameter);

  /**
   * Logs cut one after the other, for any rule: with the diameters of both ends, the middle, the
   * quarters and the thirds.
   *
   * @param from height of the first cut
   * @param lengths lengths of the logs from the lowest up
   * @return the logs
   * @throws IllegalArgumentException if they reach above the stem as it stands
   */
  List<Log> logs(Quantity<Length> from, List<Quantity<Length>> lengths);

  /**
   * Logs cut one after the other with a trim allowance: each is sawn longer than it is scaled, and
   * its diameters are those of the piece as sawn.
   *
   * @param from height of the first cut
   * @param lengths lengths as scaled, from the lowest up
   * @param trim what each log is sawn longer
   * @return the logs, of the lengths as scaled
   * @throws IllegalArgumentException if they reach above the stem as it stands
   */
  List<Log> logs(Quantity<Length> from, List<Quantity<Length>> lengths, Quantity<Length> trim);

  /**
   * The volume from base to top with the readings themselves worked by a rule of sections. What
   * lies below the first and above the last section is as {@link Butt} and {@link Tip} chose.
   *
   * @param rule the rule
   * @return the volume
   * @throws IllegalArgumentException if the readings do not make sections of that rule; the message
   *     says which reading
   */
  Quantity<Volume> sectionalVolume(SectionRule rule);
}
