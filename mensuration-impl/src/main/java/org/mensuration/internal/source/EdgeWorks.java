package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that formulas of edges and height curves cite. Immutable and thread-safe. */
public final class EdgeWorks {
  /** Ducey, M. J.; Gove, J. H.; Valentine, H. T., 2004. */
  public static final Source AG_S38 =
      new Source(
          "AG_S38",
          "Ducey, M. J.; Gove, J. H.; Valentine, H. T.",
          "2004",
          "A Walkthrough Solution to the Boundary Overlap Problem",
          "Forest Science 50(4):427-435",
          "https://studylib.net/doc/13237276/a-walkthrough-solution-to-the-boundary-overlap-problem");

  /** Inventory newsletter, after 2004. */
  public static final Source AG_S39 =
      new Source(
          "AG_S39",
          "author not shown (inventory newsletter)",
          "after 2004",
          "A great practical edge-effect solution for typical cruising situations",
          "inventory newsletter, online issue 4",
          "http://john-bell-associates.com/regular/regular_online4.htm");

  /** Iles, K. */
  public static final Source AG_S40 =
      new Source(
          "AG_S40",
          "Iles, K.",
          "",
          "Edge Effect in Forest Sampling (Part II)",
          "inventory newsletter 53a",
          "http://john-bell-associates.com/regular/regular53a.htm");

  /** Schmid-Haas, P.; Gregoire, T. G., 1969 and 1982. */
  public static final Source AG_M10 =
      new Source(
          "AG_M10",
          "Schmid-Haas, P.; Gregoire, T. G.",
          "1969; 1982",
          "mirage / reflection method at stand borders",
          "papers",
          "");

  /** Height-diameter equations of an article, 2024. */
  public static final Source AG_S75 =
      new Source(
          "AG_S75",
          "not shown on the page",
          "2024 (from the address)",
          "Standardized height-diameter equations evaluated in the study (table of an article)",
          "Forestry Studies (Metsanduslikud Uurimused), article fsmu-2024-0011",
          "https://reference-global.com/article/10.2478/fsmu-2024-0011?tab=figures-and-tables");

  /** Kentucky forest management workshop, 1995. */
  public static final Source AG_S52 =
      new Source(
          "AG_S52",
          "not shown (Kentucky forest management workshop)",
          "1995",
          "Trees per acre by spacing",
          "workshop manual page",
          "http://kyphilom.com/www/sm/wood/woodtpa.html");

  /** not shown (course MEN 201 Forest Mensuration, CNR, Bhutan). */
  public static final Source AG_S73 =
      new Source(
          "AG_S73",
          "not shown (course MEN 201 Forest Mensuration, CNR, Bhutan)",
          "",
          "Unit VI, Measurement of Crop: the spacing factor method",
          "course slides",
          "https://github.com/wangdiues/men201-forest-mensuration (file"
              + " MEN201_Unit_VI_Measurement_of_Crop.html)");

  private EdgeWorks() {}
}
