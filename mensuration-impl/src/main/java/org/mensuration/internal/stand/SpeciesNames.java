package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers of species in one tally; the empty name is number 0. Not thread-safe. */
final class SpeciesNames {
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> names = new ArrayList<>();

  SpeciesNames() {
    number("");
  }

  int number(String name) {
    Integer known = numbers.get(name);
    if (known != null) {
      return known;
    }
    numbers.put(name, names.size());
    names.add(name);
    return names.size() - 1;
  }

  int size() {
    return names.size();
  }

  String name(int number) {
    return names.get(number);
  }

  /** Here the number of each species of another tally. */
  int[] numbersOf(SpeciesNames other) {
    int[] here = new int[other.size()];
    for (int i = 0; i < here.length; i++) {
      here[i] = number(other.name(i));
    }
    return here;
  }
}
