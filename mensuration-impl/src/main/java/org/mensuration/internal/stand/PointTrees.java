package org.mensuration.internal.stand;

import java.util.Arrays;
import org.mensuration.gauge.StemKind;

/**
 * The trees of the open point in columns that are used again for the next point, so that no object
 * is made for a tree. Not thread-safe.
 */
final class PointTrees {
  /** Stands for a value that was not measured; each is outside what its column may hold. */
  static final double MISSING = -1;

  /** No slope is so steep. */
  static final double NO_SLOPE = 100;

  static final int NO_GROUP = 0;

  private static final int FIRST_ROOM = 16;

  double[] diameter = new double[FIRST_ROOM];
  double[] weight = new double[FIRST_ROOM];
  double[] edgeWeight = new double[FIRST_ROOM];
  double[] height = new double[FIRST_ROOM];
  double[] volume = new double[FIRST_ROOM];
  double[] distance = new double[FIRST_ROOM];
  double[] slope = new double[FIRST_ROOM];
  int[] group = new int[FIRST_ROOM];
  boolean[] predicted = new boolean[FIRST_ROOM];
  boolean[] dead = new boolean[FIRST_ROOM];
  StemKind[] kind = new StemKind[FIRST_ROOM];
  int size;
  private boolean noted;

  /** Columns beyond the weights hold what is missing until a note is set, and again after. */
  PointTrees() {
    forget(FIRST_ROOM);
  }

  void clear() {
    if (noted) {
      forget(size);
      noted = false;
    }
    size = 0;
  }

  private void forget(int rows) {
    Arrays.fill(height, 0, rows, MISSING);
    Arrays.fill(volume, 0, rows, MISSING);
    Arrays.fill(distance, 0, rows, MISSING);
    Arrays.fill(slope, 0, rows, NO_SLOPE);
    Arrays.fill(group, 0, rows, NO_GROUP);
    Arrays.fill(predicted, 0, rows, false);
    Arrays.fill(dead, 0, rows, false);
    Arrays.fill(kind, 0, rows, StemKind.SINGLE);
  }

  void add(double newDiameter, double newWeight, double newEdgeWeight) {
    if (size == diameter.length) {
      grow();
    }
    diameter[size] = newDiameter;
    weight[size] = newWeight;
    edgeWeight[size] = newEdgeWeight;
    size++;
  }

  /** The tree given last, of which something is about to be noted. */
  int last() {
    if (size == 0) {
      throw new IllegalStateException("no tree was given at this point yet");
    }
    noted = true;
    return size - 1;
  }

  private void grow() {
    int room = Math.multiplyExact(size, 2);
    diameter = Arrays.copyOf(diameter, room);
    weight = Arrays.copyOf(weight, room);
    edgeWeight = Arrays.copyOf(edgeWeight, room);
    height = Arrays.copyOf(height, room);
    volume = Arrays.copyOf(volume, room);
    distance = Arrays.copyOf(distance, room);
    slope = Arrays.copyOf(slope, room);
    group = Arrays.copyOf(group, room);
    predicted = Arrays.copyOf(predicted, room);
    dead = Arrays.copyOf(dead, room);
    kind = Arrays.copyOf(kind, room);
    Arrays.fill(height, size, room, MISSING);
    Arrays.fill(volume, size, room, MISSING);
    Arrays.fill(distance, size, room, MISSING);
    Arrays.fill(slope, size, room, NO_SLOPE);
    Arrays.fill(kind, size, room, StemKind.SINGLE);
  }
}
