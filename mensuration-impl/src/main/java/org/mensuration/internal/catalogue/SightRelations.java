package org.mensuration.internal.catalogue;

import java.util.List;
import org.mensuration.formula.Comparison;
import org.mensuration.formula.Relation;

/** Limits that formulas of leaning stems share: no sight runs along the stem. */
final class SightRelations {
  private static final double RIGHT = 90;

  private SightRelations() {}

  /** The sight stays below the stem's direction. */
  static Relation below() {
    return new Relation(sum(1), Comparison.LESS, RIGHT, "e + l < 90");
  }

  /** The sight stays above the stem's direction downwards. */
  static Relation above() {
    return new Relation(sum(1), Comparison.GREATER, -RIGHT, "e + l > -90");
  }

  private static List<Relation.Term> sum(double factor) {
    return List.of(new Relation.Term(factor, "elevation"), new Relation.Term(factor, "lean"));
  }
}
