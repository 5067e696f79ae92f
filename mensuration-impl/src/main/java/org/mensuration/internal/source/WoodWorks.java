package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works on stacked wood and conversion that factors cite. Immutable and thread-safe. */
public final class WoodWorks {
  /** Skogliga matt och enheter. */
  public static final Source SKOGSSTYRELSEN =
      new Source(
          "skogsstyrelsen_units",
          "Skogsstyrelsen",
          "",
          "Skogliga matt och enheter",
          "Swedish Forest Agency",
          "http://www.skogsstyrelsen.se/Aga-och-bruka/Skogsbruk/Aga-skog/Matt-och-enheter-/");

  /** Holz richtig ausgeformt (factors quoted by a heating advice page). */
  public static final Source FHP2007 =
      new Source(
          "fhp2007",
          "FHP (Kooperationsplattform Forst Holz Papier)",
          "2007",
          "Holz richtig ausgeformt (factors quoted by a heating advice page)",
          "brochure",
          "https://willheizen.at/masseinheiten");

  /** Abrechnungsmasse und Umrechnungsfaktoren nach RVR. */
  public static final Source BAYERN_RVR =
      new Source(
          "bayern_rvr",
          "Bayerischer Waldbesitzerverband",
          "",
          "Abrechnungsmasse und Umrechnungsfaktoren nach RVR",
          "presentation",
          "https://expydoc.com/doc/10474684/abrechnungsma%C3%9Fe-und-umrechnungsfaktoren-ma%C3%9Feinheiten-im");

  /** Umrechnungsfaktoren (after RVR). */
  public static final Source TUTTLINGEN_RVR =
      new Source(
          "tuttlingen_rvr",
          "Landkreis Tuttlingen",
          "",
          "Umrechnungsfaktoren (after RVR)",
          "public authority page",
          "https://brennholz.landkreis-tuttlingen.de/index.php/wissenswertes/umrechnungsfaktoren");

  /** Du stere et du metre cube. */
  public static final Source PAPERBLOG_STERE =
      new Source(
          "paperblog_stere",
          "",
          "",
          "Du stere et du metre cube",
          "paperblog",
          "https://paperblog.fr/512969/du-stere-et-du-metre-cube/amp");

  /** OST 13-43-79 Round timber. Geometric method (stack factors). */
  public static final Source OST_13_43 =
      new Source(
          "ost_13_43_79",
          "(USSR branch standard)",
          "1979",
          "OST 13-43-79 Round timber. Geometric method (stack factors)",
          "table quoted by a timber firm's library page",
          "https://kirovles-lpk.ru/library/30");

  /** Forest products industry conversion tables. */
  public static final Source FOREST_NB =
      new Source(
          "forest_nb",
          "Forest NB",
          "",
          "Forest products industry conversion tables",
          "industry association",
          "https://www.forestnb.com/archives/forest-nb-news/resources/conversions/");

  /** Cord (firewood). */
  public static final Source CORD_DEFINITION =
      new Source(
          "cord_definition",
          "",
          "",
          "Cord (firewood)",
          "unit conversion page",
          "http://onlineunitconversion.com/cord.firewood_to_cord.foot.timber.html");

  /** How-To: unsquared timber. */
  public static final Source UNSQUARED_TIMBER =
      new Source(
          "unsquared_timber",
          "",
          "",
          "How-To: unsquared timber",
          "web copy of a 19th-century workshop book",
          "http://chestofbooks.com/crafts/mechanics/How-To/Unsquared-Timber.html");

  /** Definitions and conversions around the timber trade. */
  public static final Source GLOBALWOOD =
      new Source(
          "globalwood",
          "",
          "",
          "Definitions and conversions around the timber trade",
          "timber-trade reference page",
          "http://www.globalwood.org/tech/tech_01001.htm");

  /** Handbook 130, method of sale: fireplace and stove wood 2.4. */
  public static final Source NIST130 =
      new Source(
          "nist130_2004",
          "NIST",
          "2004",
          "Handbook 130, method of sale: fireplace and stove wood 2.4",
          "NIST Handbook 130",
          "https://www.scribd.com/document/5498847/sale-method-fire");

  /** One cord of wood contains ... (quotes a leaflet "What is a cord?" p. 2). */
  public static final Source CORD_62 =
      new Source(
          "cord_62",
          "",
          "",
          "One cord of wood contains ... (quotes a leaflet \"What is a cord?\" p. 2)",
          "quiz page",
          "https://education-academia.github.io/botany/botany/forestry/one-cord-of-wood-contains--cubic-ft-of-wood-air-and-bark.html");

  /** Forest product conversion factors: project overview and status. */
  public static final Source UNECE2009 =
      new Source(
          "unece2009",
          "UNECE/FAO",
          "2009",
          "Forest product conversion factors: project overview and status",
          "UNECE, 10 March 2009",
          "https://studylib.net/doc/8105286/forest-product-conversion-factors");

  private WoodWorks() {}
}
