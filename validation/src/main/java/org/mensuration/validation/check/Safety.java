package org.mensuration.validation.check;

/** The cautions that every run prints. Stateless and thread-safe. */
public final class Safety {
  /** One line, in plain words. */
  public static final String LINE =
      "Look up only when standing still; keep well away from dead, hung-up or "
          + "wind-loaded trees and stop in wind; never sight toward the sun; mind a "
          + "rangefinder's laser class; not alone; never climb for a reading; enter a "
          + "neighbour's land only with leave; local rules come first. Figures for trade or "
          + "tax follow local scaling law and a licensed scaler; rules differ by country, so "
          + "name the rule with every figure.";

  private Safety() {}
}
