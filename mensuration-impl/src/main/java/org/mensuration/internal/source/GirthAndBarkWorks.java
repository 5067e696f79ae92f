package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that girth rules and bark formulas cite. Immutable and thread-safe. */
public final class GirthAndBarkWorks {
  /** forest-owner advisory sheet, 2011. */
  public static final Source CUBAGE2011 =
      new Source(
          "cubage2011",
          "(forest-owner advisory sheet)",
          "2011",
          "Le cubage des bois abattus (on NF B 53-020)",
          "advisory sheet dated 25/10/2011",
          "https://doczz.fr/doc/4326109/le-cubage-des-bois-abattus");

  /** tree-work advisory page. */
  public static final Source CUBAGE_ABATTUS =
      new Source(
          "cubage_abattus",
          "(tree-work advisory page)",
          "",
          "Cubage des bois abattus (on NF B 53020)",
          "web page",
          "http://passion-elagage.fr/?p=390");

  /** encyclopaedia entry. */
  public static final Source CUBAGE_ENTRY =
      new Source(
          "cubage_entry",
          "(encyclopaedia entry)",
          "",
          "Cubage",
          "web copy of an older encyclopaedia",
          "https://lernznoire.lu/cubage");

  /** Danguy, J. */
  public static final Source DANGUY =
      new Source(
          "danguy",
          "Danguy, J.",
          "",
          "Constructions rurales",
          "Wikisource copy",
          "https://fr.wikisource.org/wiki/Page:Jacques_Danguy_-_Constructions_rurales.djvu/112");

  /** encyclopaedia contributors. */
  public static final Source HOPPUS_ENTRY =
      new Source(
          "hoppus_entry",
          "encyclopaedia contributors",
          "",
          "Hoppus",
          "encyclopaedia mirror",
          "https://db0nus869y26v.cloudfront.net/en/Hoppus");

  /** woodland management page. */
  public static final Source HOPPUS_FOOT =
      new Source(
          "hoppus_foot",
          "(woodland management page)",
          "",
          "Hoppus foot",
          "web page",
          "http://www.woodland-management.co.uk/hoppusfoot.html");

  /** Dictionary of units of measurement, 2015. */
  public static final Source HOPPUS_UNITS2015 =
      new Source(
          "hoppus_units2015",
          "(Dictionary of units of measurement)",
          "2015",
          "hoppus foot",
          "dictionary mirror",
          "http://measurement.en-academic.com/1158/hoppus_foot");

  /** Griffiths, F. A. */
  public static final Source GRIFFITHS =
      new Source(
          "griffiths",
          "Griffiths, F. A.",
          "",
          "The Artillerist's Manual and British Soldier's Compendium",
          "digital reprint",
          "https://bitlit.ru/page/en/f-a-griffiths/the-artillerists-manual-and-british-soldiers-compendium/310");

  /** (book with) Table XLIV, solid content of cylindrical trees. */
  public static final Source SCOTS_TABLE44 =
      new Source(
          "scots_table44",
          "",
          "",
          "(book with) Table XLIV, solid content of cylindrical trees",
          "National Library of Scotland, Antiquarian Books of Scotland",
          "https://digital.nls.uk/antiquarian-books-of-scotland/archive/113404488?mode=transcription");

  /** (mensuration book, p. 364). */
  public static final Source MENSURATION_P364 =
      new Source(
          "mensuration_p364",
          "",
          "",
          "(mensuration book, p. 364)",
          "Google Books id DPo2AAAAMAAJ",
          "https://books.google.co.ve/books?id=DPo2AAAAMAAJ&pg=PA364");

  /** How-To: unsquared timber. */
  public static final Source UNSQUARED_TIMBER =
      new Source(
          "unsquared_timber",
          "",
          "",
          "How-To: unsquared timber",
          "web copy of a 19th-century workshop book",
          "http://chestofbooks.com/crafts/mechanics/How-To/Unsquared-Timber.html");

  /** H. S. Graves (from memory, 1902. */
  public static final Source BULLETIN36 =
      new Source(
          "bulletin36",
          "H. S. Graves (from memory)",
          "1902",
          "The Woodsman's Handbook, Bulletin 36 (title from memory)",
          "U.S. Bureau of Forestry / Forest Service",
          "https://www.bookdepository.com/Bulletin-36-United-States-Forest-Service/9781236842435");

  /** Karki, P.; Dangal, S.; Cedamon, E, 2026. */
  public static final Source KARKI2026 =
      new Source(
          "karki2026",
          "Karki, P.; Dangal, S.; Cedamon, E.",
          "2026",
          "Exploring the volume paradox: comparing formulas for wood volume of trees and logs in"
              + " Nepal",
          "Scientifica, doi 10.1155/sci5/4884890",
          "https://tomesphere.com/paper/PMC12820573.md");

  /** Selection of suitable formula for volume measurement of Shisham logs, 2004. */
  public static final Source SHISHAM2004 =
      new Source(
          "shisham2004",
          "",
          "2004",
          "Selection of suitable formula for volume measurement of Shisham logs",
          "Pakistan Journal of Forestry 54(1)",
          "https://define.pk/document.php?id=222115&jid=629&type=article");

  /** forest owner page. */
  public static final Source AUFMASS_PAGE =
      new Source(
          "aufmass_page",
          "(forest owner page)",
          "",
          "Aufmass",
          "web page",
          "https://www.waldreich.eu/forstwirtschaft-1/aufma%C3%9F-waldinventur/");

  /** waldwissen.net; functions by Altherr, Unfried, Hradetzky and Hradetzky. */
  public static final Source RINDENABZUG =
      new Source(
          "rindenabzug",
          "(waldwissen.net; functions by Altherr, Unfried, Hradetzky and Hradetzky)",
          "",
          "Rindenabzug richtig bemessen",
          "forest research information network",
          "https://www.waldwissen.net/de/waldwirtschaft/holz-und-markt/rohholz-und-holzsortierung/rindenabzug-richtig-bemessen");

  /** measuring-tool dealer quoting CSN 48 0009. */
  public static final Source CSN480009_COPY_A =
      new Source(
          "csn480009_copy_a",
          "(measuring-tool dealer quoting CSN 48 0009)",
          "",
          "Tabulky pro kubirovani drivi",
          "web page",
          "https://www.nejedlyasyn.com/products/tabulky-pro-kubirovani-drivi/");

  /** firewood dealer quoting CSN 48 0009, 2010-2021. */
  public static final Source CSN480009_COPY_B =
      new Source(
          "csn480009_copy_b",
          "(firewood dealer quoting CSN 48 0009)",
          "2010-2021",
          "Kubirovani kulatiny",
          "web page",
          "http://bspholding.cz/tabulky.html");

  /** summary of the Bureau of Indian Standards, 2000. */
  public static final Source IS5246 =
      new Source(
          "is5246",
          "(summary of the Bureau of Indian Standards)",
          "2000",
          "IS 5246:2000 Coniferous logs",
          "standard summary page",
          "https://infralens.in/code/IS-5246-2000");

  /** Wangdi, 2026. */
  public static final Source MEN201_II =
      new Source(
          "men201_ii",
          "Wangdi",
          "2026",
          "MEN 201 Forest Mensuration, Unit II notes: diameter, girth and bark thickness",
          "College of Natural Resources, Royal University of Bhutan (lecture material, free for"
              + " teaching with attribution; data marked hypothetical)",
          "https://github.com/wangdiues/men201-forest-mensuration, file"
              + " notes/MEN201_Notes_Unit_II.html");

  /** encyclopedia contributors, 2017. */
  public static final Source GFC =
      new Source(
          "gfc",
          "encyclopedia contributors",
          "2017",
          "Girard form class",
          "encyclopedia",
          "https://en.wikipedia.org/wiki/Girard_form_class?oldid=790287672");

  /** J. Goudie, 1993. */
  public static final Source GOUDIE93 =
      new Source(
          "goudie93",
          "J. Goudie",
          "1993",
          "Upper stem bark thickness (mailing-list note)",
          "BC Ministry of Forests",
          "http://www.metla.fi/archive/forest/1993/11/msg00012.html");

  private GirthAndBarkWorks() {}
}
