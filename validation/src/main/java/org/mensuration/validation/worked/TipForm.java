package org.mensuration.validation.worked;

/** The form given to the piece between the last reading and the tip. */
enum TipForm {
  CONE("log/cone-frustum"),
  PARABOLOID("log/smalian");

  private final String formula;

  TipForm(String formula) {
    this.formula = formula;
  }

  String formula() {
    return formula;
  }

  double volume(Arithmetic arithmetic, double diameter, double length) {
    return this == CONE
        ? arithmetic.cone(diameter, length)
        : arithmetic.smalian(diameter, 0, length);
  }
}
