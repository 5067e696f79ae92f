package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works on form, volume and taper of stems. Immutable and thread-safe. */
public final class StemWorks {
  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2013. */
  public static final Source AWF_SHAPE =
      new Source(
          "awf_shape",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2013",
          "Stem shape",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?title=Stem_shape&oldid=9722");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes). */
  public static final Source AWF_IS =
      new Source(
          "awf_importance",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "",
          "Importance sampling",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php/Importance_sampling");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2010. */
  public static final Source AWF_HEIGHT =
      new Source(
          "awf_height",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2010",
          "Tree height",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?title=Tree_height&diff=2648&oldid=2647");

  /** G. B. Wood, B. J. Turner, C. L. Brack (eds), 1999. */
  public static final Source CODE99_215 =
      new Source(
          "code99_form",
          "G. B. Wood, B. J. Turner, C. L. Brack (eds)",
          "1999",
          "Code of Forest Mensuration Practice",
          "Research Working Group 2",
          "https://fennerschool-associated.anu.edu.au/mensuration/rwg2/code/2-1-5.htm");

  /** Wangdi, 2026. */
  public static final Source MEN201_V =
      new Source(
          "men201_v",
          "Wangdi",
          "2026",
          "MEN 201 Forest Mensuration, Unit V: measurement of tree volume",
          "College of Natural Resources, Royal University of Bhutan (lecture material, free for teaching with attribution; data marked hypothetical)",
          "https://github.com/wangdiues/men201-forest-mensuration, file notes/MEN201_Notes_Unit_V.html and MEN201_Unit_V_Measurement_of_Tree_Volume.html");

  /** Wangdi, 2026. */
  public static final Source MEN201_H =
      new Source(
          "men201_h",
          "Wangdi",
          "2026",
          "MEN 201 Forest Mensuration, Calculation Handbook",
          "College of Natural Resources, Royal University of Bhutan (lecture material, free for teaching with attribution; data marked hypothetical)",
          "https://github.com/wangdiues/men201-forest-mensuration, file notes/MEN201_Calculation_Handbook.html");

  /** encyclopedia contributors, 2017. */
  public static final Source GFC =
      new Source(
          "girard_page",
          "encyclopedia contributors",
          "2017",
          "Girard form class",
          "encyclopedia",
          "https://en.wikipedia.org/wiki/Girard_form_class?oldid=790287672");

  /** Austrian Research Centre for Forests (BFW). */
  public static final Source BFW =
      new Source(
          "bfw",
          "Austrian Research Centre for Forests (BFW)",
          "",
          "Pi mal Daumen (quick figures handbook, press notice)",
          "BFW",
          "https://www.bfw.gv.at/pressemeldungen/handbuch-faustzahlen-kleinwald/");

  /** H. Kramer, A. Akca, 2002. */
  public static final Source KRAMER02 =
      new Source(
          "kramer2002",
          "H. Kramer, A. Akca",
          "2002",
          "Leitfaden zur Waldmesslehre",
          "Sauerlaender",
          "");

  /** Aus und fuer die Praxis: Holz und Wald (manuscript). */
  public static final Source HOLZWALD =
      new Source(
          "holzwald",
          "",
          "",
          "Aus und fuer die Praxis: Holz und Wald (manuscript)",
          "private collection, Steyr",
          "http://steyr.dahoam.net/wp-flippingbooks/Holz_und_Wald/38 to /40");

  /** L. R. Grosenbaugh, 1954. */
  public static final Source GROS54 =
      new Source(
          "grosenbaugh1954",
          "L. R. Grosenbaugh",
          "1954",
          "New tree-measurement concepts: height accumulation, giant tree, taper and shape",
          "USDA FS Southern Forest Experiment Station Occasional Paper 134",
          "https://docslib.org/download/12340946/height-accumulation-giant-tree-taper-and-shape");

  /** B. Husch, T. W. Beers, J. A. Kershaw, 2003. */
  public static final Source HBK =
      new Source(
          "husch2003",
          "B. Husch, T. W. Beers, J. A. Kershaw",
          "2003",
          "Forest Mensuration, 4th ed.",
          "Wiley",
          "");

  /** M. S. Williams, H. V. Wiant Jr., 1998. */
  public static final Source WW98 =
      new Source(
          "williams_wiant1998",
          "M. S. Williams, H. V. Wiant Jr.",
          "1998",
          "Double sampling with importance sampling to eliminate bias in tree volume estimation of the centroid method",
          "Forest Ecology and Management 104: 77-88",
          "https://c.coek.info/pdf-double-sampling-with-importance-sampling-to-eliminate-bias-in-tree-volume-estima.html");

  /** newsletter (unsigned), 1995. */
  public static final Source POINT3P =
      new Source(
          "point3p",
          "newsletter (unsigned)",
          "1995",
          "Point-3P sampling",
          "sampling newsletter, July 1995",
          "http://www.john-bell-associates.com/3p/point3p.htm");

  /** Journal of Korean Society of Forest Science, 2023. */
  public static final Source QACUTA =
      new Source(
          "qacuta",
          "Journal of Korean Society of Forest Science",
          "2023",
          "Taper equations for Quercus acuta (tables)",
          "J. Korean Soc. For. Sci. 112(4): 417",
          "http://journal.kfs21.or.kr/download/download_excel?pid=jksfs-112-4-417&tid=T4");

  /** T. A. Max, H. E. Burkhart, 1976. */
  public static final Source MB76 =
      new Source(
          "max_burkhart1976",
          "T. A. Max, H. E. Burkhart",
          "1976",
          "Segmented polynomial regression applied to taper equations",
          "Forest Science 22: 283-289",
          "");

  /** A. Kozak, D. D. Munro, J. H. G. Smith, 1969. */
  public static final Source KOZAK69 =
      new Source(
          "kozak1969",
          "A. Kozak, D. D. Munro, J. H. G. Smith",
          "1969",
          "Taper functions and their application in forest inventory",
          "Forestry Chronicle 45",
          "");

  /** EPM, exercises of dasometry. */
  public static final Source OVI7 =
      new Source(
          "ovi7",
          "EPM",
          "",
          "Dasometria e inventario, ejercicios del tema 7, solucion",
          "Universidad de Oviedo",
          "https://zh.scribd.com/document/264838341/07-solucion-ejercicios-volumenes-temas-6-7-pdf");

  /** Forest Ecosystems article 40663-018-0134-2, 2018. */
  public static final Source PNWTAPER =
      new Source(
          "pnw_taper2018",
          "",
          "2018",
          "Estimating upper stem diameters and volume of Douglas-fir and western hemlock trees in the Pacific Northwest",
          "Forest Ecosystems 5",
          "https://forestecosyst.springeropen.com/articles/10.1186/s40663-018-0134-2/tables/2");

  private StemWorks() {}
}
