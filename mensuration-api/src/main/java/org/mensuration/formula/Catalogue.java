package org.mensuration.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Formulas by identifier. Immutable and thread-safe. */
public final class Catalogue {
  private final Map<String, Formula> byId;

  private Catalogue(Map<String, Formula> byId) {
    this.byId = byId;
  }

  /**
   * A catalogue of formulas.
   *
   * @param formulas the formulas, in the order in which they are listed
   * @return the catalogue
   * @throws IllegalArgumentException if two share an identifier
   */
  public static Catalogue of(Collection<? extends Formula> formulas) {
    Map<String, Formula> byId = new LinkedHashMap<>();
    for (Formula formula : formulas) {
      if (byId.put(formula.id(), formula) != null) {
        throw new IllegalArgumentException("catalogue: two formulas are called " + formula.id());
      }
    }
    return new Catalogue(Collections.unmodifiableMap(byId));
  }

  /**
   * All formulas.
   *
   * @return in the order of the catalogue
   */
  public List<Formula> formulas() {
    return List.copyOf(byId.values());
  }

  /**
   * The topics, the part of an identifier before the stroke.
   *
   * @return each once, in the order of the catalogue
   */
  public List<String> topics() {
    return byId.keySet().stream()
        .map(Catalogue::topic)
        .distinct()
        .collect(Collectors.collectingAndThen(Collectors.toList(), List::copyOf));
  }

  /**
   * The formulas of one topic.
   *
   * @param topic for example {@code log}
   * @return in the order of the catalogue; empty if there is no such topic
   */
  public List<Formula> ofTopic(String topic) {
    List<Formula> found = new ArrayList<>();
    for (Formula formula : byId.values()) {
      if (topic(formula.id()).equals(topic)) {
        found.add(formula);
      }
    }
    return Collections.unmodifiableList(found);
  }

  /**
   * A formula, if the catalogue has it.
   *
   * @param id identifier
   * @return the formula
   */
  public Optional<Formula> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * A formula that must be there.
   *
   * @param id identifier
   * @return the formula
   * @throws IllegalArgumentException if there is none; the message lists those of its topic
   */
  public Formula formula(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException(missing(id)));
  }

  private String missing(String id) {
    List<String> near = new ArrayList<>();
    for (String known : byId.keySet()) {
      if (topic(known).equals(topic(id))) {
        near.add(known);
      }
    }
    return "catalogue: no formula "
        + id
        + (near.isEmpty() ? "; topics are " + topics() : "; its topic has " + near);
  }

  private static String topic(String id) {
    int stroke = id.indexOf('/');
    return stroke < 0 ? id : id.substring(0, stroke);
  }
}
