package org.mensuration.internal.stand;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The names of the points of a tally. A hash set of the platform makes an object a name, which
 * takes longer than all sums of a point together. Here names stand in the order in which they came,
 * and a table of numbers finds them: a slot has the hash of a name above and its number, from one,
 * below; an empty slot is zero. Slots follow the order of the hashes, so that two sets are merged
 * from one end to the other and not by jumps through memory. Not thread-safe.
 */
final class PointNames {
  private static final int FIRST_ROOM = 16;
  private static final long NUMBER = 0xffff_ffffL;
  private static final int HASH_AT = 32;

  private @Nullable String[] names = new String[FIRST_ROOM];
  private int size;

  /** A power of two; three quarters are used at most. */
  private long[] slots = new long[FIRST_ROOM];

  PointNames copy() {
    PointNames copy = new PointNames();
    copy.names = names.clone();
    copy.slots = slots.clone();
    copy.size = size;
    return copy;
  }

  int size() {
    return size;
  }

  boolean contains(String name) {
    return slots[slot(name, mixed(name))] != 0;
  }

  /** Adds a name; adding it again changes nothing. */
  void add(String name) {
    reserve(Math.addExact(size, 1));
    int hash = mixed(name);
    int slot = slot(name, hash);
    if (slots[slot] == 0) {
      names[size] = name;
      slots[slot] = filled(hash, ++size);
    }
  }

  /** Adds the names of another set, or none of them if one is here: that one is given back. */
  Optional<String> addAll(PointNames other) {
    reserve(Math.addExact(size, other.size));
    System.arraycopy(other.names, 0, names, size, other.size);
    for (int i = 0; i < other.slots.length; i++) {
      long filled = other.slots[i];
      if (filled == 0) {
        continue;
      }
      int slot = sameHash(hash(filled));
      if (slots[slot] != 0) {
        String name = other.name(filled);
        slot = slot(name, hash(filled));
        if (slots[slot] != 0) {
          takeBack(other, i);
          return Optional.of(name);
        }
      }
      slots[slot] = filled + size;
    }
    size += other.size;
    return Optional.empty();
  }

  /** Empties the slots filled last, from the last to the first, so that none hides another. */
  private void takeBack(PointNames other, int end) {
    for (int i = end - 1; i >= 0; i--) {
      long filled = other.slots[i];
      if (filled != 0) {
        int slot = place(hash(filled));
        while (slots[slot] != filled + size) {
          slot = next(slot);
        }
        slots[slot] = 0;
      }
    }
    Arrays.fill(names, size, size + other.size, null);
  }

  /** Where the name is, or the empty slot where it goes. */
  private int slot(String name, int hash) {
    int slot = sameHash(hash);
    while (slots[slot] != 0 && !(hash(slots[slot]) == hash && name.equals(name(slots[slot])))) {
      slot = next(slot);
    }
    return slot;
  }

  /** The first slot with this hash, or the empty slot where it goes. */
  private int sameHash(int hash) {
    int slot = place(hash);
    while (slots[slot] != 0 && hash(slots[slot]) != hash) {
      slot = next(slot);
    }
    return slot;
  }

  private int next(int slot) {
    return (slot + 1) & (slots.length - 1);
  }

  /** The high bits of the hash. */
  private int place(int hash) {
    return hash >>> (Integer.numberOfLeadingZeros(slots.length) + 1);
  }

  private String name(long filled) {
    return Objects.requireNonNull(names[(int) (filled & NUMBER) - 1]);
  }

  private static long filled(int hash, int number) {
    return (long) hash << HASH_AT | number;
  }

  private static int hash(long filled) {
    return (int) (filled >> HASH_AT);
  }

  /** Names that differ in their last digits only must not crowd together in the high bits. */
  private static int mixed(String name) {
    return name.hashCode() * 0x9e37_79b9;
  }

  private void reserve(int wanted) {
    if (wanted > names.length) {
      names = Arrays.copyOf(names, room(wanted, names.length));
    }
    if (4L * wanted > 3L * slots.length) {
      long[] old = slots;
      slots = new long[room(Math.addExact(wanted, wanted / 3 + 1), old.length)];
      for (long filled : old) {
        if (filled != 0) {
          int slot = place(hash(filled));
          while (slots[slot] != 0) {
            slot = next(slot);
          }
          slots[slot] = filled;
        }
      }
    }
  }

  private static int room(int wanted, int now) {
    int room = now;
    while (room < wanted) {
      room = Math.multiplyExact(room, 2);
    }
    return room;
  }
}
