package org.mensuration.internal.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
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
    assertThat(left.shared(right).isPresent()).isEqualTo(!common.isEmpty());
    left.shared(right).ifPresent(name -> assertThat(common).contains(name));
    for (String name : second) {
      assertThat(left.contains(name)).isEqualTo(first.contains(name));
    }
    Set<String> rest = new HashSet<>(second);
    rest.removeAll(first);
    PointNames joined = left.copy();
    joined.addAll(of(rest));
    assertThat(joined.size()).isEqualTo(first.size() + rest.size());
    assertThat(first).allMatch(joined::contains);
    assertThat(second).allMatch(joined::contains);
    assertThat(left.size()).isEqualTo(first.size());
    assertThat(rest).noneMatch(left::contains);
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
    assertThat(names.shared(other)).isEmpty();
    other.add("BBBB");
    other.add("BBAa");
    assertThat(names.shared(other)).contains("BBAa");
  }

  private static PointNames of(Set<String> names) {
    PointNames set = new PointNames();
    names.forEach(set::add);
    return set;
  }
}
