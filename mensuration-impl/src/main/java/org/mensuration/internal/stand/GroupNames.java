package org.mensuration.internal.stand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers of the groups of a stand table in one tally; number 0 is that of a tree of which nothing
 * is noted. Not thread-safe.
 */
final class GroupNames {
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> names = new ArrayList<>();

  GroupNames(String unnoted) {
    number(unnoted);
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

  /** Here the number of each group of another tally. */
  int[] numbersOf(GroupNames other) {
    int[] here = new int[other.size()];
    for (int i = 0; i < here.length; i++) {
      here[i] = number(other.name(i));
    }
    return here;
  }
}
