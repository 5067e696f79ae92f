package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that formulas of counting and sampling cite. Immutable and thread-safe. */
public final class CountingWorks {
  /** Rural Technology Initiative, Washington State University. */
  public static final Source AG_S13 =
      new Source(
          "AG_S13",
          "Rural Technology Initiative, Washington State University",
          "",
          "Virtual course on forest inventory, Lesson 10: Basic Inventory Calculations",
          "extension course",
          "http://ruraltech.org/virtual_cruiser/lessons/lesson_10/index.htm");

  /** Iles, K. */
  public static final Source AG_S08 =
      new Source(
          "AG_S08",
          "Iles, K.",
          "",
          "OOPS - I used the wrong plot radius factor for the borderline trees",
          "inventory newsletter, online issue 12",
          "http://john-bell-associates.com/regular/regular_online12.htm");

  /** Curtis, R. O.; Marshall, D. D., 2000. */
  public static final Source AG_S22 =
      new Source(
          "AG_S22",
          "Curtis, R. O.; Marshall, D. D.",
          "2000",
          "Technical Note: Why Quadratic Mean Diameter?",
          "West. J. Appl. For. 15(3):137-139",
          "https://studylib.net/doc/18438302/technical-note--why-quadratic-mean-diameter%3F");

  /** Curtis, R. O., 1982. */
  public static final Source AG_S23 =
      new Source(
          "AG_S23",
          "Curtis, R. O.",
          "1982",
          "A Simple Index of Stand Density for Douglas-fir",
          "Forest Science 28(1):92-94",
          "https://studylib.net/doc/12787329/");

  /**
   * University of Goettingen, forest inventory chair (after Kleinn 2007 lecture notes), 2013 and
   * 2017 revisions.
   */
  public static final Source AG_S28 =
      new Source(
          "AG_S28",
          "University of Goettingen, forest inventory chair (after Kleinn 2007 lecture notes)",
          "2013 and 2017 revisions",
          "Angle-count sampling page of the inventory lecture-note wiki",
          "university wiki",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?diff=prev&oldid=8526");

  /** University of Goettingen, forest inventory chair, 2013 and 2017 revisions. */
  public static final Source AG_S29 =
      new Source(
          "AG_S29",
          "University of Goettingen, forest inventory chair",
          "2013 and 2017 revisions",
          "Slope correction",
          "university wiki",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?title=Slope_correction&diff=prev&oldid=13269");

  /** forst-rast (author not shown). */
  public static final Source AG_S30 =
      new Source(
          "AG_S30",
          "forst-rast (author not shown)",
          "",
          "Die Winkelzaehlprobe",
          "how-to article (German)",
          "http://www.forst-rast.de/WZP.html");

  /** Soares, C. P. B.; Paula Neto, F. de; Souza, A. L. de. */
  public static final Source AG_S33 =
      new Source(
          "AG_S33",
          "Soares, C. P. B.; Paula Neto, F. de; Souza, A. L. de",
          "",
          "Dendrometria e Inventario Florestal, capitulo 7",
          "textbook, web edition (Portuguese)",
          "http://www.mensuracaoflorestal.com.br/ (capitulo 7 of the web edition)");

  /** not shown. */
  public static final Source AG_S42 =
      new Source(
          "AG_S42",
          "not shown",
          "",
          "More practical critical height sampling",
          "USDA Forest Service SRS publication 47676",
          "https://srs.fs.usda.gov/pubs/47676");

  /** McTague, J. P.; Bailey, R. L., 1985. */
  public static final Source AG_S43 =
      new Source(
          "AG_S43",
          "McTague, J. P.; Bailey, R. L.",
          "1985",
          "Critical height sampling (title not fully shown)",
          "Forest Science 31(4):899-911",
          "http://www1.cnpereading.com/pages/publications/form/article/402881b643794e5401437b53744538ab");

  /** Lopez Pena, C. */
  public static final Source AG_S46 =
      new Source(
          "AG_S46",
          "Lopez Pena, C.",
          "",
          "Dasometria (open course of the Technical University of Madrid)",
          "lecture notes (Spanish)",
          "https://www.yumpu.com/es/document/view/26533538/click-here-to-get-the-file-ocw-upm/31");

  /** Zhao, D.; Kane, M.; Borders, B. E., 2012. */
  public static final Source AG_S56 =
      new Source(
          "AG_S56",
          "Zhao, D.; Kane, M.; Borders, B. E.",
          "2012",
          "Crown Ratio and Relative Spacing Relationships for Loblolly Pine Plantations",
          "Open Journal of Forestry 2(3):110-115",
          "https://file.scirp.org/Html/21075.html");

  /** Alabama Cooperative Extension System. */
  public static final Source AG_S58 =
      new Source(
          "AG_S58",
          "Alabama Cooperative Extension System",
          "",
          "Fixed-radius plots as inventory method in southern forests",
          "extension article",
          "https://www.aces.edu/blog/topics/forestry/fixed-radius-plots-as-inventory-method-in-southern-forests/");

  /** not shown (encyclopedia copy). */
  public static final Source AG_S59 =
      new Source(
          "AG_S59",
          "not shown (encyclopedia copy)",
          "",
          "Stand density index",
          "encyclopedia",
          "https://en.formulasearchengine.com/wiki/Ishimori_equation");

  /** Curtis, R. O., 2010. */
  public static final Source AG_S62 =
      new Source(
          "AG_S62",
          "Curtis, R. O.",
          "2010",
          "Effect of diameter limits and stand structure on relative density indices: a case study",
          "West. J. Appl. For. 25(4):169-175",
          "https://www.fs.usda.gov/treesearch/pubs/38794");

  /** Johnson, T. (University of Idaho), 2024 (course of the autumn semester). */
  public static final Source AG_S65 =
      new Source(
          "AG_S65",
          "Johnson, T. (University of Idaho)",
          "2024 (course of the autumn semester)",
          "Statistics 422 Survey Sampling Methods: Stratified Random Sampling Homework",
          "course web site",
          "https://github.com/trobinj/stat422 (file hw-stratified.html)");

  /** Johnson, T. (University of Idaho), 2024 (course of the autumn semester). */
  public static final Source AG_S67 =
      new Source(
          "AG_S67",
          "Johnson, T. (University of Idaho)",
          "2024 (course of the autumn semester)",
          "Statistics 422 Survey Sampling Methods: Ratio and Regression Estimators",
          "course web site",
          "https://github.com/trobinj/stat422 (file hw-ratio.html)");

  /** not shown (course MEN 201 Forest Mensuration, CNR, Bhutan). */
  public static final Source AG_S71 =
      new Source(
          "AG_S71",
          "not shown (course MEN 201 Forest Mensuration, CNR, Bhutan)",
          "",
          "Unit VI, Measurement of Crop: diameter and height of the crop",
          "course slides",
          "https://github.com/wangdiues/men201-forest-mensuration (file MEN201_Unit_VI_Measurement_of_Crop.html)");

  /** not shown (course MEN 201 Forest Mensuration, CNR, Bhutan). */
  public static final Source AG_S72 =
      new Source(
          "AG_S72",
          "not shown (course MEN 201 Forest Mensuration, CNR, Bhutan)",
          "",
          "Unit VI, Measurement of Crop: point sampling",
          "course slides",
          "https://github.com/wangdiues/men201-forest-mensuration (file MEN201_Unit_VI_Measurement_of_Crop.html)");

  /** Goodman, L. A., 1960. */
  public static final Source AG_M07 =
      new Source(
          "AG_M07",
          "Goodman, L. A.",
          "1960",
          "On the exact variance of products",
          "J. Amer. Stat. Assoc. 55:708-713",
          "");

  /** Barrett, J. P.; Nevers, H. P., 1967. */
  public static final Source AG_M08 =
      new Source(
          "AG_M08",
          "Barrett, J. P.; Nevers, H. P.",
          "1967",
          "Slope correction when point sampling",
          "J. For. 65(3):206-207",
          "");

  /** Hirata, T., 1955. */
  public static final Source AG_M09 =
      new Source(
          "AG_M09",
          "Hirata, T.",
          "1955",
          "Height estimation through angle-count (vertical) method",
          "Japan (title uncertain)",
          "");

  private CountingWorks() {}
}
