package org.mensuration.internal.diameter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.diameter.CrossedRule;
import org.mensuration.diameter.SectionDiameter;
import org.mensuration.diameter.StationReading;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.internal.catalogue.DiameterFormulas;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Two diameters of a section made one. Stateless and thread-safe. */
public final class CrossedReadings {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);

  /** Heights nearer together than this are one height. */
  private static final double SAME_HEIGHT_CM = 0.1;

  private CrossedReadings() {}

  /**
   * The mean of two diameters.
   *
   * @param firstCm one in cm
   * @param secondCm the other in cm
   * @param rule which mean
   * @return mean in cm
   */
  public static double mean(double firstCm, double secondCm, CrossedRule rule) {
    return switch (rule) {
      case ARITHMETIC_MEAN -> DiameterFormulas.MEAN_OF_TWO.value(firstCm, secondCm);
      case QUADRATIC_MEAN -> DiameterFormulas.QUADRATIC_MEAN.value(firstCm, secondCm);
      case GEOMETRIC_MEAN -> DiameterFormulas.GEOMETRIC_MEAN.value(firstCm, secondCm);
    };
  }

  /**
   * Diameters by height.
   *
   * @param readings in any order
   * @param rule how a crossed pair becomes one
   * @return from the lowest height on
   */
  public static List<SectionDiameter> byHeight(List<StationReading> readings, CrossedRule rule) {
    List<StationReading> sorted = new ArrayList<>(readings);
    sorted.sort(Comparator.comparingDouble(reading -> CENTIMETRES.read(reading.height())));
    List<SectionDiameter> sections = new ArrayList<>();
    List<StationReading> here = new ArrayList<>();
    for (StationReading reading : sorted) {
      if (!here.isEmpty() && !sameHeight(here.get(0), reading)) {
        sections.add(section(here, rule));
        here.clear();
      }
      add(here, reading);
    }
    if (!here.isEmpty()) {
      sections.add(section(here, rule));
    }
    return List.copyOf(sections);
  }

  /**
   * Passes a diameter between parallel sights on.
   *
   * @param diameterCm diameter in cm
   * @return the diameter
   * @throws OutOfDomainException if it is below zero
   */
  public static double notCrossed(double diameterCm) {
    if (!(diameterCm >= 0)) {
      throw new OutOfDomainException(
          DiameterFormulas.PARALLEL_SIGHTS,
          "D",
          diameterCm,
          "cm",
          "[0, ∞); the sights cross before the stem");
    }
    return diameterCm;
  }

  private static boolean sameHeight(StationReading lower, StationReading upper) {
    return CENTIMETRES.read(upper.height()) - CENTIMETRES.read(lower.height()) < SAME_HEIGHT_CM;
  }

  private static void add(List<StationReading> here, StationReading reading) {
    for (StationReading other : here) {
      if (other.station().equals(reading.station())) {
        if (!agree(other.diameter(), reading.diameter())) {
          throw new IllegalArgumentException(
              "readings: station "
                  + reading.station()
                  + " read "
                  + other.diameter()
                  + " and "
                  + reading.diameter()
                  + " at the height of "
                  + reading.height()
                  + "; one reading a station and height, or name the sides as stations");
        }
        return;
      }
    }
    here.add(reading);
  }

  /** The same figure, also when it was written in another unit. */
  private static boolean agree(Quantity<Length> one, Quantity<Length> other) {
    double first = CENTIMETRES.read(one);
    double second = CENTIMETRES.read(other);
    return Math.abs(first - second) <= 1e-9 * Math.abs(first);
  }

  private static SectionDiameter section(List<StationReading> here, CrossedRule rule) {
    StationReading first = here.get(0);
    if (here.size() > 2) {
      throw new IllegalArgumentException(
          "readings: "
              + here.size()
              + " stations read the height of "
              + first.height()
              + ", a crossed pair has 2");
    }
    if (here.size() == 1) {
      return new SectionDiameter(first.height(), first.diameter(), false);
    }
    double mean =
        mean(CENTIMETRES.read(first.diameter()), CENTIMETRES.read(here.get(1).diameter()), rule);
    return new SectionDiameter(first.height(), Measures.centimetres(mean), true);
  }
}
