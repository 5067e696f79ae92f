package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.internal.catalogue.StemFormFormulas;
import org.mensuration.stem.StandingStem;
import org.mensuration.stem.StandingTree;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TreeCondition;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/**
 * Stems that are counted as one tree. Immutable and thread-safe.
 *
 * @param stems at least one
 * @param condition whether it lives
 */
public record CountedStems(List<StandingStem> stems, TreeCondition condition)
    implements StandingTree {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Angle> DEGREES = UnitReader.in(ForestUnits.DEGREE);

  /**
   * Copies the stems and checks their lean and their breaks.
   *
   * @param stems at least one
   * @param condition whether it lives
   */
  public CountedStems {
    stems = List.copyOf(stems);
    if (stems.isEmpty()) {
      throw new IllegalArgumentException("tree: no stem, allowed at least one");
    }
    for (StandingStem stem : stems) {
      vertical(stem);
    }
    StandingStem first = stems.get(0);
    boolean broken = METRES.read(first.profile().top()) < METRES.read(first.profile().intactTop());
    if (condition == TreeCondition.DEAD && broken) {
      throw new IllegalArgumentException(
          "tree: its stem is broken at "
              + METRES.read(first.profile().top())
              + " m, so a dead one is DEAD_BROKEN, not DEAD");
    }
  }

  private static double vertical(StandingStem stem) {
    return StemFormFormulas.VERTICAL_HEIGHT.value(
        METRES.read(stem.profile().top()), DEGREES.read(stem.lean()));
  }

  @Override
  public StemReading reference() {
    return stems.get(0).reference();
  }

  @Override
  public Quantity<Volume> volume() {
    List<Quantity<Volume>> volumes = new ArrayList<>();
    for (StandingStem stem : stems) {
      volumes.add(stem.profile().volume());
    }
    return Measures.sum(volumes, ForestUnits.CUBIC_METRE);
  }

  @Override
  public Quantity<Length> length() {
    return Measures.metres(
        stems.stream().mapToDouble(stem -> METRES.read(stem.profile().top())).max().orElse(0));
  }

  @Override
  public Quantity<Length> height() {
    return Measures.metres(stems.stream().mapToDouble(CountedStems::vertical).max().orElse(0));
  }
}
