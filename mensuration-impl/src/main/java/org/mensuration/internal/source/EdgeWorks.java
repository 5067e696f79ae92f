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
          "kentucky_spacing1995",
          "not shown (Kentucky forest management workshop)",
          "1995",
          "Trees per acre by spacing",
          "workshop manual page",
          "http://kyphilom.com/www/sm/wood/woodtpa.html");

  /** not shown (course MEN 201 Forest Mensuration, CNR, Bhutan). */
  public static final Source AG_S73 =
      new Source(
          "men201_spacing",
          "not shown (course MEN 201 Forest Mensuration, CNR, Bhutan)",
          "",
          "Unit VI, Measurement of Crop: the spacing factor method",
          "course slides",
          "https://github.com/wangdiues/men201-forest-mensuration (file"
              + " MEN201_Unit_VI_Measurement_of_Crop.html)");

  /** Book page on statistics for the environment. */
  public static final Source AG_S17 =
      new Source(
          "statistics_environment",
          "not shown on the page",
          "",
          "Mathematics and Statistics for the Environment",
          "book page copy",
          "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-145.html");

  /** Johnson, T., 2024. */
  public static final Source AG_S66 =
      new Source(
          "stat422_srs",
          "Johnson, T. (University of Idaho)",
          "2024",
          "Statistics 422 Survey Sampling Methods: Simple Random Sampling Homework",
          "course web site",
          "https://github.com/trobinj/stat422 (file hw-srs.html)");

  /** Course on survey sampling, separate estimators. */
  public static final Source AG_S69 =
      new Source(
          "strata_ratio_script",
          "not shown (Spanish course on survey sampling); example by Portela and Villeta",
          "",
          "Chapter on ratio and regression estimation, block R8: separate estimators in three regions",
          "course script with printed output",
          "");

  /** Shaw, J. D.; Long, J. N. */
  public static final Source AG_S61 =
      new Source(
          "AG_S61",
          "Shaw, J. D.; Long, J. N.",
          "",
          "Consistent Definition and Application of Reineke's Stand Density Index in Silviculture and Stand Projection",
          "USDA Forest Service proceedings",
          "https://studylib.net/doc/10548641/");

  private EdgeWorks() {}
}
