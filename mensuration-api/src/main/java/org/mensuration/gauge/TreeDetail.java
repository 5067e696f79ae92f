package org.mensuration.gauge;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.Physical;

/**
 * What is noted of a counted tree besides its diameter and weights. Immutable and thread-safe;
 * quantities compare by what they measure. Values are checked where they are used.
 *
 * @param height height of the tree; empty if not measured
 * @param heightPredicted true if the height was read from a height curve and not measured
 * @param volume volume of the stem; empty if not worked out
 * @param species species; empty text if not noted
 * @param treeClass class or condition by the crew's own key; empty text if not noted
 * @param kind what the stem is to its tree
 * @param dead true for a dead tree
 * @param distanceToCentre horizontal distance from the sample point to the centre of the stem at
 *     breast height; empty if not measured
 * @param sightSlope slope of the sight from the eye to the stem; empty if not measured
 */
public record TreeDetail(
    Optional<Quantity<Length>> height,
    boolean heightPredicted,
    Optional<Quantity<Volume>> volume,
    String species,
    String treeClass,
    StemKind kind,
    boolean dead,
    Optional<Quantity<Length>> distanceToCentre,
    Optional<Quantity<Angle>> sightSlope) {
  /** Nothing noted: a living single stem. */
  public static final TreeDetail NONE =
      new TreeDetail(
          Optional.empty(),
          false,
          Optional.empty(),
          "",
          "",
          StemKind.SINGLE,
          false,
          Optional.empty(),
          Optional.empty());

  /**
   * Checks that nothing is null.
   *
   * @param height height of the tree
   * @param heightPredicted whether the height is predicted
   * @param volume volume of the stem
   * @param species species
   * @param treeClass class or condition
   * @param kind what the stem is to its tree
   * @param dead whether the tree is dead
   * @param distanceToCentre horizontal distance to the centre of the stem
   * @param sightSlope slope of the sight
   */
  public TreeDetail {
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(treeClass, "treeClass");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(distanceToCentre, "distanceToCentre");
    Objects.requireNonNull(sightSlope, "sightSlope");
  }

  TreeDetail withHeight(Quantity<Length> newHeight, boolean predicted) {
    return new TreeDetail(
        Optional.of(newHeight),
        predicted,
        volume,
        species,
        treeClass,
        kind,
        dead,
        distanceToCentre,
        sightSlope);
  }

  TreeDetail withVolume(Quantity<Volume> newVolume) {
    return new TreeDetail(
        height,
        heightPredicted,
        Optional.of(newVolume),
        species,
        treeClass,
        kind,
        dead,
        distanceToCentre,
        sightSlope);
  }

  TreeDetail withNames(String newSpecies, String newClass) {
    return new TreeDetail(
        height,
        heightPredicted,
        volume,
        newSpecies,
        newClass,
        kind,
        dead,
        distanceToCentre,
        sightSlope);
  }

  TreeDetail withState(StemKind newKind, boolean nowDead) {
    return new TreeDetail(
        height,
        heightPredicted,
        volume,
        species,
        treeClass,
        newKind,
        nowDead,
        distanceToCentre,
        sightSlope);
  }

  TreeDetail withDistance(Quantity<Length> newDistance) {
    return new TreeDetail(
        height,
        heightPredicted,
        volume,
        species,
        treeClass,
        kind,
        dead,
        Optional.of(newDistance),
        sightSlope);
  }

  TreeDetail withSightSlope(Quantity<Angle> newSlope) {
    return new TreeDetail(
        height,
        heightPredicted,
        volume,
        species,
        treeClass,
        kind,
        dead,
        distanceToCentre,
        Optional.of(newSlope));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TreeDetail detail
        && Physical.same(height, detail.height)
        && heightPredicted == detail.heightPredicted
        && Physical.same(volume, detail.volume)
        && species.equals(detail.species)
        && treeClass.equals(detail.treeClass)
        && kind == detail.kind
        && dead == detail.dead
        && Physical.same(distanceToCentre, detail.distanceToCentre)
        && Physical.same(sightSlope, detail.sightSlope);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        Physical.hash(height),
        heightPredicted,
        Physical.hash(volume),
        species,
        treeClass,
        kind,
        dead,
        Physical.hash(distanceToCentre),
        Physical.hash(sightSlope));
  }
}
