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

  static final int NO_SPECIES = 0;

  private static final int FIRST_ROOM = 16;

  double[] diameter = new double[FIRST_ROOM];
  double[] weight = new double[FIRST_ROOM];
  double[] edgeWeight = new double[FIRST_ROOM];
  double[] height = new double[FIRST_ROOM];
  double[] volume = new double[FIRST_ROOM];
  double[] distance = new double[FIRST_ROOM];
  double[] slope = new double[FIRST_ROOM];
  int[] species = new int[FIRST_ROOM];
  boolean[] predicted = new boolean[FIRST_ROOM];
  boolean[] dead = new boolean[FIRST_ROOM];
  StemKind[] kind = new StemKind[FIRST_ROOM];
  int size;

  void clear() {
    size = 0;
  }

  void add(double newDiameter, double newWeight, double newEdgeWeight) {
    if (size == diameter.length) {
      grow();
    }
    diameter[size] = newDiameter;
    weight[size] = newWeight;
    edgeWeight[size] = newEdgeWeight;
    height[size] = MISSING;
    volume[size] = MISSING;
    distance[size] = MISSING;
    slope[size] = NO_SLOPE;
    species[size] = NO_SPECIES;
    predicted[size] = false;
    dead[size] = false;
    kind[size] = StemKind.SINGLE;
    size++;
  }

  /** The tree given last. */
  int last() {
    if (size == 0) {
      throw new IllegalStateException("no tree was given at this point yet");
    }
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
    species = Arrays.copyOf(species, room);
    predicted = Arrays.copyOf(predicted, room);
    dead = Arrays.copyOf(dead, room);
    kind = Arrays.copyOf(kind, room);
  }
}
