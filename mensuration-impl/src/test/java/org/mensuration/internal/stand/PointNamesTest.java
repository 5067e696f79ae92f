package org.mensuration.internal.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class PointNamesTest {
  @Property(tries = 300)
  void holdsWhatAHashSetHolds(
      @ForAll @Size(max = 60) Set<@AlphaChars @StringLength(min = 1, max = 2) String> first,
      @ForAll @Size(max = 60) Set<@AlphaChars @StringLength(min = 1, max = 2) String> second) {
    PointNames left = of(first);
    PointNames right = of(second);
    Set<String> common = new HashSet<>(first);
    common.retainAll(second);
    assertThat(left.size()).isEqualTo(first.size());
    PointNames tried = left.copy();
    Optional<String> twice = tried.addAll(right);
    assertThat(twice.isPresent()).isEqualTo(!common.isEmpty());
    twice.ifPresent(name -> assertThat(common).contains(name));
    if (!common.isEmpty()) {
      assertHolds(tried, first, second); // as before
    }
    assertHolds(left, first, second);
    Set<String> rest = new HashSet<>(second);
    rest.removeAll(first);
    PointNames joined = left.copy();
    assertThat(joined.addAll(of(rest))).isEmpty();
    Set<String> all = new HashSet<>(first);
    all.addAll(rest);
    assertHolds(joined, all, second);
    assertHolds(left, first, second);
    joined.add("a name of its own");
    assertThat(joined.contains("a name of its own")).isTrue();
    assertThat(joined.size()).isEqualTo(all.size() + 1);
  }

  private static void assertHolds(PointNames names, Set<String> held, Set<String> others) {
    assertThat(names.size()).isEqualTo(held.size());
    assertThat(held).allMatch(names::contains);
    for (String name : others) {
      assertThat(names.contains(name)).isEqualTo(held.contains(name));
    }
  }

  @Test
  void namesOfOneHashAreKeptApart() {
    assertThat("AaBB").hasSameHashCodeAs("BBAa");
    PointNames names = new PointNames();
    names.add("AaBB");
    assertThat(names.contains("BBAa")).isFalse();
    names.add("BBAa");
    names.add("BBAa");
    assertThat(names.size()).isEqualTo(2);
    PointNames other = new PointNames();
    other.add("AaAa");
    other.add("BBBB");
    assertThat(names.copy().addAll(other)).isEmpty();
    other.add("BBAa");
    assertThat(names.addAll(other)).contains("BBAa");
    assertThat(names.size()).isEqualTo(2);
    assertThat(names.contains("BBAa")).isTrue();
    assertThat(names.contains("AaAa")).isFalse();
    assertThat(names.contains("BBBB")).isFalse();
  }

  private static PointNames of(Set<String> names) {
    PointNames set = new PointNames();
    names.forEach(set::add);
    return set;
  }
}
