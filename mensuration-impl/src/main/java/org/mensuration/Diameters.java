package org.mensuration;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.diameter.CrossedRule;
import org.mensuration.diameter.SectionDiameter;
import org.mensuration.diameter.StationReading;
import org.mensuration.internal.catalogue.DiameterFormulas;
import org.mensuration.internal.catalogue.OvalSectionFormulas;
import org.mensuration.internal.diameter.CrossedReadings;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Diameters of stems from tapes, calipers, forks and sticks. Stateless and thread-safe.
 *
 * <p>Every call throws {@link org.mensuration.formula.OutOfDomainException} when a length is
 * negative or an angle without meaning.
 *
 * <p>Equation, limits and sources of an id such as {@code diameter/from-girth}: {@link
 * Catalogues#standard}.
 */
public final class Diameters {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  private Diameters() {}

  /**
   * Diameter from girth ({@code diameter/from-girth}). It overstates the area of every section that
   * is not a circle.
   *
   * @param girth girth by a tape
   * @return diameter
   */
  public static Quantity<Length> fromGirth(Quantity<Length> girth) {
    return Measures.centimetres(DiameterFormulas.FROM_GIRTH.value(CENTIMETRES.read(girth)));
  }

  /**
   * Sectional area from girth ({@code diameter/area-from-girth}).
   *
   * @param girth girth by a tape
   * @return area of the circle of that girth
   */
  public static Quantity<Area> areaFromGirth(Quantity<Length> girth) {
    return Measures.squareMetres(DiameterFormulas.AREA_FROM_GIRTH.value(CENTIMETRES.read(girth)));
  }

  /**
   * One diameter from two at right angles, by caliper or from two stations.
   *
   * @param first one diameter
   * @param second the diameter at right angles to it
   * @param rule how they become one
   * @return diameter
   */
  public static Quantity<Length> crossed(
      Quantity<Length> first, Quantity<Length> second, CrossedRule rule) {
    return Measures.centimetres(
        CrossedReadings.mean(CENTIMETRES.read(first), CENTIMETRES.read(second), rule));
  }

  /**
   * Diameters by height from readings of several stations: two readings of one height are a crossed
   * pair. Heights that differ by less than a millimetre are one height.
   *
   * @param readings in any order
   * @param rule how a crossed pair becomes one
   * @return from the lowest height on
   * @throws IllegalArgumentException if two readings of one height and one station differ, or more
   *     than two stations read one height
   */
  public static List<SectionDiameter> byHeight(List<StationReading> readings, CrossedRule rule) {
    return CrossedReadings.byHeight(readings, rule);
  }

  /**
   * Diameter from a V-fork pushed on until both jaws touch ({@code diameter/v-fork}).
   *
   * @param vertexToContact distance along a jaw from the vertex to the stem
   * @param halfOpening half the opening of the fork, below 90 degrees
   * @return diameter
   */
  public static Quantity<Length> vFork(
      Quantity<Length> vertexToContact, Quantity<Angle> halfOpening) {
    return Measures.centimetres(
        DiameterFormulas.FORK_CONTACT.value(
            CENTIMETRES.read(vertexToContact), DEGREES.read(halfOpening)));
  }

  /**
   * Diameter from a sector fork ({@code diameter/sector-fork}).
   *
   * @param pivotOffset distance of the crossbar from the pivot of the sight
   * @param angle angle of the tangent sight from the arm, below 90 degrees
   * @return diameter
   */
  public static Quantity<Length> sectorFork(Quantity<Length> pivotOffset, Quantity<Angle> angle) {
    return Measures.centimetres(
        DiameterFormulas.SECTOR_FORK.value(CENTIMETRES.read(pivotOffset), DEGREES.read(angle)));
  }

  /**
   * Diameter from a straight stick held against the stem ({@code diameter/graduated-stick}).
   *
   * @param mark length read on the stick
   * @param reach distance from the eye to the stick
   * @return diameter
   */
  public static Quantity<Length> stick(Quantity<Length> mark, Quantity<Length> reach) {
    return Measures.centimetres(
        DiameterFormulas.STICK_READING.value(CENTIMETRES.read(mark), CENTIMETRES.read(reach)));
  }

  /**
   * Where a diameter's mark stands on a straight stick ({@code diameter/stick-mark}).
   *
   * @param diameter diameter
   * @param reach distance from the eye to the stick
   * @return length from the start of the stick
   */
  public static Quantity<Length> stickMark(Quantity<Length> diameter, Quantity<Length> reach) {
    return Measures.centimetres(
        DiameterFormulas.STICK_MARK.value(CENTIMETRES.read(diameter), CENTIMETRES.read(reach)));
  }

  /**
   * Diameter between two nearly parallel sights ({@code diameter/parallel-sights}).
   *
   * @param separation distance between the sights, the reading
   * @param axisDistance distance to the stem axis
   * @param divergence angle by which the sights part, coming together negative
   * @return diameter
   * @throws org.mensuration.formula.OutOfDomainException also if the sights cross before the stem
   */
  public static Quantity<Length> parallelSights(
      Quantity<Length> separation, Quantity<Length> axisDistance, Quantity<Angle> divergence) {
    double diameter =
        DiameterFormulas.PARALLEL_SIGHTS.value(
            CENTIMETRES.read(separation), METRES.read(axisDistance), DEGREES.read(divergence));
    return Measures.centimetres(CrossedReadings.notCrossed(diameter));
  }

  /**
   * Area of an oval section as an ellipse ({@code diameter/ellipse-area}).
   *
   * @param longAxis long axis
   * @param shortAxis short axis
   * @return area
   */
  public static Quantity<Area> ellipseArea(Quantity<Length> longAxis, Quantity<Length> shortAxis) {
    return Measures.squareMetres(
        OvalSectionFormulas.AREA.value(CENTIMETRES.read(longAxis), CENTIMETRES.read(shortAxis)));
  }

  /**
   * Diameter from a V-fork and the distance of its vertex from the stem axis ({@code
   * diameter/v-fork-axis}).
   *
   * @param vertexToAxis distance from the vertex to the axis
   * @param halfOpening half the opening of the fork, below 90 degrees
   * @return diameter
   */
  public static Quantity<Length> vForkToAxis(
      Quantity<Length> vertexToAxis, Quantity<Angle> halfOpening) {
    return Measures.centimetres(
        DiameterFormulas.FORK_AXIS.value(
            CENTIMETRES.read(vertexToAxis), DEGREES.read(halfOpening)));
  }

  /**
   * Quadratic mean of diameters, that of the mean area ({@code diameter/quadratic-mean}).
   *
   * @param diameters at least one
   * @return diameter
   */
  public static Quantity<Length> quadraticMean(List<Quantity<Length>> diameters) {
    return Measures.centimetres(
        DiameterFormulas.QUADRATIC_MEAN_OF_READINGS.applyTo(
            diameters.stream().mapToDouble(CENTIMETRES::read).toArray()));
  }
}
