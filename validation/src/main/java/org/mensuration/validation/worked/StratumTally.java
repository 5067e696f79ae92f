package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.mensuration.AngleGauges;
import org.mensuration.Stands;
import org.mensuration.edge.EdgeRule;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.StemKind;
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
  private final boolean extended;
  private final List<CountPoint> kept = new ArrayList<>();
  private final List<CountedTree> trees = new ArrayList<>();
  private StandTally open;
  private boolean edgeRecorded;
  private int points;
  private int beyondEdge;

  StratumTally(Stratum stratum) {
    StratumChoices choices = stratum.choices();
    TallyPlan usual =
        TallyPlan.of(AngleGauges.ofFactor(Measures.squareMetresPerHectare(stratum.factor())))
            .with(new CountChoices(true, true, choices.dead()))
            .with(choices.layout());
    TallyPlan edged = choices.extendedGrid() ? usual.with(EdgeRule.EXTENDED_GRID) : usual;
    this.plan =
        choices.classWidth().isPresent()
            ? edged.tabulatedBy(
                DiameterClasses.ofWidth(Measures.centimetres(choices.classWidth().getAsDouble())))
            : edged;
    this.all = Stands.tally(plan);
    this.open = Stands.tally(plan);
    // Only a dominant height needs the trees again; where none is wanted they are forgotten.
    this.keep = choices.curve().isPresent();
    this.extended = choices.extendedGrid();
  }

  TallyPlan plan() {
    return plan;
  }

  void begin(PointSum point) {
    open = Stands.tally(plan);
    if (point.outside()) {
      open.beginBeyondEdge(point.name());
      beyondEdge++;
    } else {
      open.begin(point.name(), point.sweep());
    }
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
    if (keep || extended) {
      keep(dbh, weight, edgeWeight, dead, height);
    }
  }

  private void keep(
      OptionalDouble dbh,
      double weight,
      double edgeWeight,
      boolean dead,
      Optional<NotedHeight> height) {
    CountedTree plain =
        dbh.isPresent()
            ? new CountedTree(
                Optional.of(Measures.centimetres(dbh.getAsDouble())), weight, edgeWeight)
            : new CountedTree(Optional.empty(), weight, edgeWeight);
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
  StandEstimate end(PointSum point) {
    open.end();
    points++;
    all.merge(open);
    if (keep) {
      List<CountedTree> measured =
          trees.stream().filter(tree -> tree.diameter().isPresent()).toList();
      kept.add(new CountPoint(point.name(), measured, point.sweep(), point.outside()));
    }
    // By itself a point has no side of the edge.
    return extended
        ? Stands.estimate(
            plan.with(EdgeRule.NONE),
            List.of(new CountPoint(point.name(), trees, point.sweep(), false)))
        : open.estimate();
  }

  /** Whether the points stand on both sides of the edge, as the extended grid has them. */
  boolean onBothSides() {
    return beyondEdge > 0 && beyondEdge < points;
  }

  /** The estimate of all points; empty if none was taken. */
  Optional<StandEstimate> estimate() {
    return points == 0 || (extended && !onBothSides())
        ? Optional.empty()
        : Optional.of(all.estimate());
  }

  /** The points with their trees, if they were kept. */
  List<CountPoint> kept() {
    return List.copyOf(kept);
  }
}
