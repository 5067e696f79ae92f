package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** Works on estimates of the stand. Immutable and thread-safe. */
public final class StandWorks {
  /** Course on survey sampling, dead trees. */
  public static final Source AG_S68 =
      new Source(
          "lohr_solutions",
          "not shown (Spanish course on survey sampling after Lohr, Sampling: Design and Analysis,"
              + " 3rd ed.); data file: norcalbiostat",
          "",
          "Solutions of the chapter on ratio and regression estimation; data set deadtrees",
          "course script with printed output; course data file",
          "data: https://github.com/norcalbiostat/MATH458 (file data/deadtrees.csv)");

  /** Course on survey sampling, separate estimators. */
  public static final Source AG_S69 =
      new Source(
          "AG_S69",
          "not shown (same Spanish course); example by Portela and Villeta",
          "",
          "Chapter on ratio and regression estimation, block R8: separate estimators in three"
              + " regions",
          "course script with printed output",
          "");

  /** Satterthwaite. */
  public static final Source SATTERTHWAITE =
      new Source(
          "satterthwaite1946",
          "Satterthwaite, F. E.",
          "1946",
          "An approximate distribution of estimates of variance components",
          "Biometrics Bulletin 2",
          "");

  /** ICP Forests. */
  public static final Source AG_S47 =
      new Source(
          "AG_S47",
          "ICP Forests",
          "",
          "Explanatory items 72 (basal area mean tree) and 73 (top height)",
          "monitoring manual pages",
          "https://icp-forests.org/documentation/ExplanatoryItems/73.html");

  private StandWorks() {}
}
