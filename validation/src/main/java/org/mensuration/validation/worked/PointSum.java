package org.mensuration.validation.worked;

/**
 * The sums of one point. Trees are added and forgotten, so a million of them take no room. Not
 * thread-safe.
 */
final class PointSum {
  private final String name;
  private final Stratum stratum;
  private final boolean taken;
  private boolean saidEmpty;
  private long trees;
  private long withoutDbh;
  private double count;
  private double stems;
  private boolean edge;

  PointSum(String name, Stratum stratum, boolean taken) {
    this.name = name;
    this.stratum = stratum;
    this.taken = taken;
  }

  void sayEmpty() {
    saidEmpty = true;
  }

  /** A row of a tree that is left out of the sums still shows that the point is not empty. */
  void meet() {
    trees++;
  }

  void add(double weight, double treeFactor, double edgeWeight) {
    count += weight * edgeWeight;
    stems += treeFactor * weight * edgeWeight;
    edge |= edgeWeight != 1;
  }

  void addWithoutDbh(double weight, double edgeWeight) {
    add(weight, 0, edgeWeight);
    withoutDbh++;
  }

  String name() {
    return name;
  }

  Stratum stratum() {
    return stratum;
  }

  boolean taken() {
    return taken;
  }

  boolean saidEmpty() {
    return saidEmpty;
  }

  long trees() {
    return trees;
  }

  long withoutDbh() {
    return withoutDbh;
  }

  /** Trees times their weights. */
  double count() {
    return count;
  }

  /** Stems per hectare, if no tree lacks its diameter. */
  double stems() {
    return stems;
  }

  boolean edge() {
    return edge;
  }
}
