package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that formulas of errors and uncertainties cite. Immutable and thread-safe. */
public final class UncertaintyWorks {
  /** Gauge block budget after JCGM 100. */
  public static final Source GUM_H1 =
      new Source(
          "gum_h1",
          "Measurement Standards Laboratory of New Zealand, after JCGM 100:2008 H.1",
          "",
          "Gauge block measurement (GUM H1), documentation of a general uncertainty library",
          "MSL",
          "https://github.com/MSLNZ/GTC (docs/API/GUM_H1.rst)");

  /** V. Stenman, A. Kangas, M. Holopainen, 2023. */
  public static final Source STEN23 =
      new Source(
          "stenman2023",
          "V. Stenman, A. Kangas, M. Holopainen",
          "2023",
          "Upper stem diameter and volume prediction strategies in the National Forest Inventory of Finland",
          "Silva Fennica 57(3) article 23021",
          "https://silvafennica.fi/raw/23021 ; https://silvafennica.fi/article/23021");

  private UncertaintyWorks() {}
}
