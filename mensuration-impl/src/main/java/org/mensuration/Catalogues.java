package org.mensuration;

import org.mensuration.formula.Catalogue;
import org.mensuration.internal.catalogue.Topics;

/** The catalogues of formulas. Stateless and thread-safe. */
public final class Catalogues {
  private Catalogues() {}

  /**
   * Every formula of the library.
   *
   * @return the catalogue, always the same one
   */
  public static Catalogue standard() {
    return Topics.CATALOGUE;
  }
}
