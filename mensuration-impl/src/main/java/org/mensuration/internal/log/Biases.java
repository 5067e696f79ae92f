package org.mensuration.internal.log;

import org.mensuration.formula.Formula;
import org.mensuration.internal.catalogue.Topics;
import org.mensuration.log.SolidRule;

/** Finds the bias of a rule by the name that both share. Stateless and thread-safe. */
public final class Biases {
  private static final String RULES = "log/";

  private Biases() {}

  /**
   * Bias on a frustum.
   *
   * @param rule the rule
   * @return its formula
   * @throws IllegalArgumentException if there is none
   */
  public static Formula frustum(SolidRule rule) {
    return find("bias/", rule, "bias");
  }

  /**
   * Bias of the sum of sections.
   *
   * @param rule the rule
   * @return its formula
   * @throws IllegalArgumentException if there is none
   */
  public static Formula sectional(SolidRule rule) {
    return find("bias/sectional-", rule, "bias of the sum of sections");
  }

  /**
   * Mean absolute error of single sections.
   *
   * @param rule the rule
   * @return its formula
   * @throws IllegalArgumentException if there is none
   */
  public static Formula section(SolidRule rule) {
    return find("bias/section-", rule, "error of single sections");
  }

  private static Formula find(String prefix, SolidRule rule, String what) {
    String id = rule.formula().id();
    String name = id.startsWith(RULES) ? id.substring(RULES.length()) : id;
    return Topics.CATALOGUE
        .find(prefix + name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no " + what + " is known for " + rule.formula().title() + " (" + id + ")"));
  }
}
