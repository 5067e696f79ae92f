package org.mensuration.validation.worked;

/** The rule for the volume between readings. */
enum SectionRule {
  SMALIAN("log/smalian", "Smalian: mean of the two end areas times the length"),
  HUBER("log/huber", "Huber: the area in the middle times the stated length"),
  NEWTON("log/newton", "Newton: ends and four times the middle, a sixth of it times the length");

  private final String formula;
  private final String words;

  SectionRule(String formula, String words) {
    this.formula = formula;
    this.words = words;
  }

  String formula() {
    return formula;
  }

  String words() {
    return words;
  }
}
