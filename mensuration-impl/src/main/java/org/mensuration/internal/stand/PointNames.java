package org.mensuration.internal.stand;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The names of the points of a tally. A hash set of the platform makes an object a name, which
 * takes longer than all sums of a point together; this one keeps names and their hashes in two
 * arrays. Places follow the order of the hashes, so that two sets are merged from one end to the
 * other and not by jumps through memory. Not thread-safe.
 */
final class PointNames {
  /** A power of two. */
  private static final int FIRST_ROOM = 16;

  private @Nullable String[] names = new String[FIRST_ROOM];
  private int[] hashes = new int[FIRST_ROOM];
  private int size;

  PointNames copy() {
    PointNames copy = new PointNames();
    copy.names = names.clone();
    copy.hashes = hashes.clone();
    copy.size = size;
    return copy;
  }

  boolean contains(String name) {
    return names[slot(name, mixed(name))] != null;
  }

  /** Adds a name; adding it again changes nothing. */
  void add(String name) {
    int hash = mixed(name);
    int slot = slot(name, hash);
    if (names[slot] != null) {
      return;
    }
    if (2 * (size + 1) > names.length) {
      reserve(1);
      slot = slot(name, hash);
    }
    names[slot] = name;
    hashes[slot] = hash;
    size++;
  }

  int size() {
    return size;
  }

  /** A name that both hold, if any. Only the kept hashes are read, names where they are equal. */
  Optional<String> shared(PointNames other) {
    for (int i = 0; i < names.length; i++) {
      String name = names[i];
      if (name != null && other.names[other.slot(name, hashes[i])] != null) {
        return Optional.of(name);
      }
    }
    return Optional.empty();
  }

  /** Adds the names of another set, which shares none with this one. */
  void addAll(PointNames other) {
    reserve(other.size);
    for (int i = 0; i < other.names.length; i++) {
      String name = other.names[i];
      if (name != null) {
        int slot = slot(name, other.hashes[i]);
        names[slot] = name;
        hashes[slot] = other.hashes[i];
      }
    }
    size += other.size;
  }

  /** Where the name is, or the empty place where it goes. */
  private int slot(String name, int hash) {
    int slot = place(hash, names.length);
    String there = names[slot];
    while (there != null && !(hashes[slot] == hash && there.equals(name))) {
      slot = (slot + 1) & (names.length - 1);
      there = names[slot];
    }
    return slot;
  }

  /** The high bits of the hash, for a room that is a power of two. */
  private static int place(int hash, int room) {
    return hash >>> (Integer.numberOfLeadingZeros(room) + 1);
  }

  /** Names that differ in their last digits only must not crowd together. */
  private static int mixed(String name) {
    int hash = name.hashCode() * 0x9e37_79b9;
    return hash ^ (hash >>> 15);
  }

  private void reserve(int more) {
    int room = names.length;
    while (room < 2 * ((long) size + more)) {
      room = Math.multiplyExact(room, 2);
    }
    if (room > names.length) {
      grow(room);
    }
  }

  private void grow(int room) {
    @Nullable String[] oldNames = names;
    int[] oldHashes = hashes;
    names = new String[room];
    hashes = new int[room];
    for (int i = 0; i < oldNames.length; i++) {
      if (oldNames[i] != null) {
        int slot = place(oldHashes[i], room);
        while (names[slot] != null) {
          slot = (slot + 1) & (room - 1);
        }
        names[slot] = oldNames[i];
        hashes[slot] = oldHashes[i];
      }
    }
  }
}
