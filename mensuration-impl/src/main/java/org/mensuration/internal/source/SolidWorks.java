package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works on solid volume that formulas cite. Immutable and thread-safe. */
public final class SolidWorks {
  /** J.-Y. Massenet, 2006. */
  public static final Source MASSENET2006 =
      new Source(
          "massenet2006",
          "J.-Y. Massenet",
          "2006",
          "Dendrometrie, chapitre IV: estimation du volume",
          "Lycee forestier, Mesnieres-en-Bray",
          "https://fdocuments.fr/document/chapitre-4-estimation-du-volume-dun-arbre-i-jymassenet-foretfrcoursdendrometriecoursdendrometrieppt.html ; https://pdfprof.com/PDFV2/Documents4/23546/17/2");

  /** G. Cruz de Leon, L. P. Uranga-Valencia, 2013. */
  public static final Source CRUZ2013 =
      new Source(
          "cruz_de_leon2013",
          "G. Cruz de Leon, L. P. Uranga-Valencia",
          "2013",
          "Theoretical evaluation of Huber, Smalian and Newton methods on paraboloid, cone and neiloid",
          "Bosque",
          "https://dialnet.unirioja.es/servlet/articulo?codigo=9382850&info=resumen");

  /** C. J. Goulding, 1979. */
  public static final Source GOULDING1979 =
      new Source(
          "goulding1979",
          "C. J. Goulding",
          "1979",
          "Cubic spline curves and calculation of volume of sectionally measured trees",
          "New Zealand Journal of Forestry Science 9(1)",
          "https://studylib.net/doc/18757027/cubic-spline-curves-and-calculation-of-volume-of-sectionally");

  /** H. V. Wiant, G. B. Wood, G. M. Furnival, 1992. */
  public static final Source WIANT1992 =
      new Source(
          "wiant1992",
          "Wiant, Wood and Furnival",
          "1992",
          "Estimating log volume using the centroid position",
          "Forest Science 38",
          "");

  /** A treatise on mensuration. */
  public static final Source MENSURATION_TREATISE =
      new Source(
          "mensuration_treatise",
          "",
          "",
          "Treatise on practical mensuration",
          "Google Books id AQ41AAAAMAAJ",
          "https://books.google.com.jm/books?pg=PA184&id=AQ41AAAAMAAJ&output=text");

  /** C. Brack, G. Wood, 1998. */
  public static final Source BRACK_WOOD1998_LOGS =
      new Source(
          "brack_wood1998_logs",
          "C. Brack, G. Wood",
          "1998",
          "Forest Mensuration: logs, standard sectional method, common formulae",
          "Australian National University",
          "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/LOGS.HTM");

  /** Homework answer on a log cut at intervals. */
  public static final Source PLAINMATH_LOG =
      new Source(
          "plainmath_log",
          "",
          "",
          "Log cut at 1 m intervals, midpoint rule",
          "homework answer site",
          "https://plainmath.net/13740/meter-intervals-itscross-sectional-areas-distance-theend-listed-table");

  /** Research Working Group 2, 1999. */
  public static final Source RWG2_CODE =
      new Source(
          "rwg2_code",
          "Research Working Group 2 (Wood, Turner and Brack, eds)",
          "1999",
          "Code of Forest Mensuration Practice: a guide to good tree measurement practice in"
              + " Australia and New Zealand",
          "ISBN 0-7315-3310-0",
          "https://fennerschool-associated.anu.edu.au/mensuration/rwg2/code/index.htm");

  /** Gosstandart of Russia, 2003. */
  public static final Source GOST_R_52117 =
      new Source(
          "gost_r_52117_2003",
          "Gosstandart of Russia",
          "2003",
          "GOST R 52117-2003 Round timber. Methods of measurements",
          "GOST R 52117-2003 with amendment 1",
          "https://docs.cntd.ru/document/1200034092/titles/7DE0K8");

  private SolidWorks() {}
}
