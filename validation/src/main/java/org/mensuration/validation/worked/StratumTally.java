package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.AngleGauges;
import org.mensuration.Stands;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
import org.mensuration.gauge.SweepCorrection;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;
import org.mensuration.units.Measures;

/** Adds up the points of one stratum. Not thread-safe. */
final class StratumTally {
  private final TallyPlan plan;
  private final StandTally all;
  private final boolean keep;
  private final List<CountPoint> kept = new ArrayList<>();
  private final List<CountedTree> trees = new ArrayList<>();
  private StandTally open;
  private boolean edgeRecorded;
  private int points;

  StratumTally(Stratum stratum) {
    StratumChoices choices = stratum.choices();
    TallyPlan usual =
        TallyPlan.of(AngleGauges.ofFactor(Measures.squareMetresPerHectare(stratum.factor())))
            .with(new CountChoices(true, true, choices.dead()))
            .with(choices.layout());
    this.plan =
        choices.classWidth().isPresent()
            ? usual.tabulatedBy(
                DiameterClasses.ofWidth(Measures.centimetres(choices.classWidth().getAsDouble())))
            : usual;
    this.all = Stands.tally(plan);
    this.open = Stands.tally(plan);
    // Only a dominant height needs the trees again; where none is wanted they are forgotten.
    this.keep = choices.curve().isPresent();
  }

  TallyPlan plan() {
    return plan;
  }

  void begin(String point, SweepCorrection sweep) {
    open = Stands.tally(plan);
    open.begin(point, sweep);
    trees.clear();
  }

  void tree(
      OptionalDouble dbh,
      double weight,
      double edgeWeight,
      String species,
      boolean dead,
      Optional<NotedHeight> height) {
    if (dbh.isEmpty()) {
      open.unmeasured(weight, edgeWeight);
    } else {
      open.tree(dbh.getAsDouble(), weight, edgeWeight);
    }
    if (!species.isEmpty()) {
      open.species(open.speciesNumber(species));
    }
    open.stem(StemKind.SINGLE, dead);
    if (height.isPresent()) {
      open.height(height.get().metres(), height.get().predicted());
    }
    if (keep && dbh.isPresent()) {
      keep(dbh.getAsDouble(), weight, edgeWeight, dead, height);
    }
  }

  private void keep(
      double dbh, double weight, double edgeWeight, boolean dead, Optional<NotedHeight> height) {
    CountedTree plain = new CountedTree(Optional.of(Measures.centimetres(dbh)), weight, edgeWeight);
    CountedTree tree = dead ? plain.dead() : plain;
    trees.add(height.isPresent() ? tree.withHeight(Measures.metres(height.get().metres())) : tree);
  }

  /** A weight was written down, be it 1. */
  void recordEdge() {
    edgeRecorded = true;
  }

  boolean edgeRecorded() {
    return edgeRecorded;
  }

  /** Closes the open point and says what it gives by itself. */
  StandEstimate end(String point, SweepCorrection sweep) {
    open.end();
    points++;
    all.merge(open);
    if (keep) {
      kept.add(new CountPoint(point, trees, sweep, false));
    }
    return open.estimate();
  }

  /** The estimate of all points; empty if none was taken. */
  Optional<StandEstimate> estimate() {
    return points == 0 ? Optional.empty() : Optional.of(all.estimate());
  }

  /** The points with their trees, if they were kept. */
  List<CountPoint> kept() {
    return List.copyOf(kept);
  }
}
