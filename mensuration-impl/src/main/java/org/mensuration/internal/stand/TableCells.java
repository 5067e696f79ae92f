package org.mensuration.internal.stand;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.mensuration.internal.statistics.ExactSum;
import org.mensuration.kernel.Limits;
import org.mensuration.stand.DiameterClasses;
import org.mensuration.stand.DiameterClasses.ClosedEnd;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;

/** Sums by group and diameter class. Not thread-safe. */
final class TableCells {
  /** A power of two. */
  private static final int FIRST_ROOM = 32;

  private final double widthCm;
  private final double originCm;
  private final boolean lowerClosed;
  private long[] keys = new long[FIRST_ROOM];
  private @Nullable Cell[] cells = new Cell[FIRST_ROOM];
  private int size;

  TableCells(DiameterClasses classes) {
    widthCm = Measures.in(classes.width(), ForestUnits.CENTIMETRE);
    originCm = Measures.in(classes.origin(), ForestUnits.CENTIMETRE);
    lowerClosed = classes.closedEnd() == ClosedEnd.LOWER;
  }

  /** The sums of one group in one class. */
  static final class Cell {
    final ExactSum count = ExactSum.ofNumbers();
    final ExactSum basalArea = ExactSum.ofNumbers();
    final ExactSum stems = ExactSum.ofNumbers();
    final ExactSum volume = ExactSum.ofNumbers();

    void add(Cell other) {
      count.add(other.count);
      basalArea.add(other.basalArea);
      stems.add(other.stems);
      volume.add(other.volume);
    }
  }

  /** The number of a class; a diameter that misses a limit by rounding only is on it. */
  int classOf(double diameterCm) {
    double steps = (diameterCm - originCm) / widthCm;
    double whole = Math.rint(steps);
    boolean onLimit = Limits.on(originCm + whole * widthCm, diameterCm);
    double number = Math.floor(steps);
    if (onLimit) {
      number = lowerClosed ? whole : whole - 1;
    }
    if (!(Math.abs(number) <= Integer.MAX_VALUE)) {
      throw new ArithmeticException(
          "diameter " + diameterCm + " cm lies too far from the classes of " + widthCm + " cm");
    }
    return (int) number;
  }

  /** The cell of a group and class: open addressing, so that no key is boxed for a tree. */
  Cell cell(int group, int diameterClass) {
    long key = ((long) group << Integer.SIZE) | (diameterClass & 0xffff_ffffL);
    int slot = slot(key);
    if (cells[slot] == null) {
      if (2 * (size + 1) > cells.length) {
        grow();
        slot = slot(key);
      }
      keys[slot] = key;
      cells[slot] = new Cell();
      size++;
    }
    return cells[slot];
  }

  private int slot(long key) {
    long mixed = key * 0x9e37_79b9_7f4a_7c15L;
    int slot = (int) (mixed >>> Integer.SIZE) & (cells.length - 1);
    while (cells[slot] != null && keys[slot] != key) {
      slot = (slot + 1) & (cells.length - 1);
    }
    return slot;
  }

  private void grow() {
    long[] oldKeys = keys;
    @Nullable Cell[] oldCells = cells;
    keys = new long[2 * oldKeys.length];
    cells = new Cell[2 * oldCells.length];
    for (int i = 0; i < oldCells.length; i++) {
      if (oldCells[i] != null) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        cells[slot] = oldCells[i];
      }
    }
  }

  void merge(TableCells other, int[] groupHere) {
    for (int i = 0; i < other.cells.length; i++) {
      if (other.cells[i] != null) {
        long key = other.keys[i];
        cell(groupHere[group(key)], diameterClass(key)).add(other.cells[i]);
      }
    }
  }

  /** The cells by group number and class. */
  Map<Long, Cell> sorted() {
    Map<Long, Cell> sorted = new TreeMap<>();
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] != null) {
        sorted.put(keys[i], cells[i]);
      }
    }
    return sorted;
  }

  double lowerCm(int diameterClass) {
    return originCm + diameterClass * widthCm;
  }

  double widthCm() {
    return widthCm;
  }

  static int group(long key) {
    return (int) (key >> Integer.SIZE);
  }

  static int diameterClass(long key) {
    return (int) key;
  }
}
