package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works on board-foot rules and on scaling. Immutable and thread-safe. */
public final class BoardWorks {
  /** State of Georgia, 1957. */
  public static final Source GA2_14_80 =
      new Source(
          "ga2_14_80",
          "State of Georgia",
          "1957",
          "Code 2-14-80 (Scribner Decimal C as legal standard)",
          "Official Code of Georgia",
          "http://www.lawskills.com/code/ga/2/14/80/");

  /** Idaho Board of Scaling Practices. */
  public static final Source IBSP_OVERRUN =
      new Source(
          "ibsp_overrun",
          "Idaho Board of Scaling Practices",
          "",
          "Scale vs. lumber yield (\"overrun\")",
          "Idaho Board of Scaling Practices",
          "https://ibsp.idaho.gov/?p=1054");

  /** Idaho Board of Scaling Practices. */
  public static final Source IBSP_HOWTO =
      new Source(
          "ibsp_howto",
          "Idaho Board of Scaling Practices",
          "",
          "How to determine the scale of a log",
          "Idaho Board of Scaling Practices",
          "http://www.ibsp.idaho.gov/2_HOW%20TO%20DETERMINE%20THE%20SCALE%20OF%20A%20LOG.htm");

  /** L. H. Bailey, 1911. */
  public static final Source BAILEY1911 =
      new Source(
          "bailey1911",
          "L. H. Bailey",
          "1911 (year from memory)",
          "Farm and Garden Rule-Book, chapters Forest Yields parts 3-5 and Log Scaling Rules",
          "Macmillan",
          "https://chestofbooks.com/gardening-horticulture/farming/Farm-And-Garden-Rule-Book/Log-Scaling-Rules.html"
              + " ; .../Forest-Yields-Part-5.html ; .../Forest-Yields-Part-3.html");

  /** R. H. D. Boerker, 1918. */
  public static final Source BOERKER1918 =
      new Source(
          "boerker1918",
          "R. H. D. Boerker",
          "1918 (year from memory)",
          "Our National Forests",
          "Macmillan",
          "https://bitlit.ru/page/en/richard-h-d-boerker/our-national-forests/51");

  /** USDA Forest Service, 1985. */
  public static final Source FSH11_20_1985 =
      new Source(
          "fsh11_20_1985",
          "USDA Forest Service",
          "1985",
          "National Forest Log Scaling Handbook FSH 2409.11 ch. 20 Defect-deduction methods",
          "FSH 2409.11, Amendment 6",
          "http://www.ibsp.idaho.gov/2409.11_20.htm");

  /** USDA Forest Service, Region 6, 1998. */
  public static final Source FSH11A_R6_1998 =
      new Source(
          "fsh11a_r6_1998",
          "USDA Forest Service, Region 6",
          "1998",
          "FSH 2409.11a R-6 supplement 98-2, 21-4 Determining the large end diameter of butt logs",
          "FSH 2409.11a",
          "https://www.fs.fed.us/im/directives/field/r6pnw/fsh/2409.11a/2409_11a_21_4.doc");

  /** USDA Forest Service, Region 10, 2004. */
  public static final Source FSH11_R10_2004 =
      new Source(
          "fsh11_r10_2004",
          "USDA Forest Service, Region 10",
          "2004",
          "FSH 2409.11 R-10 supplement 2409.11-2004-1 ch. 10",
          "FSH 2409.11",
          "https://paperzz.com/doc/6900578/2409.11_10---usda-forest-service");

  /** G. Knight. */
  public static final Source PNW_LONGSHORT =
      new Source(
          "pnw_longshort",
          "G. Knight",
          "",
          "Western log scale conversions to tons",
          "timber consultancy note",
          "https://forisk.com/western-log-scale-conversions-to-tons");

  /** Minidoka County Schools. */
  public static final Source MINIDOKA =
      new Source(
          "minidoka",
          "Minidoka County Schools",
          "",
          "Forestry contest practicum: log scaling",
          "school contest rules",
          "https://sites.google.com/minidokaschools.org/minicoforestrycde/practicums/log-scaling");

  /** Landowner article: measuring logs (scaling). */
  public static final Source LANDOWNER_MEASURE =
      new Source(
          "landowner_measure",
          "",
          "",
          "Landowner article: measuring logs (scaling)",
          "landowner newsletter",
          "https://docslib.org/doc/1153377/");

  /** Gene Wengert, 2001. */
  public static final Source WENGERT2001B =
      new Source(
          "wengert2001b",
          "Gene Wengert",
          "2001",
          "Measuring Logs and Lumber",
          "trade-journal knowledge-base article",
          "http://www.woodweb.com/knowledge_base/Measuring_Logs_and_Lumber.html and the reprint at"
              + " https://goodwoodcorp.com/logs.html");

  /** L. R. Grosenbaugh, 1952. */
  public static final Source GROSENBAUGH1952 =
      new Source(
          "grosenbaugh1952",
          "L. R. Grosenbaugh",
          "1952",
          "Shortcuts for cruisers and scalers",
          "Southern Forest Experiment Station Occasional Paper 126",
          "");

  /** several, several editions. */
  public static final Source SCRIBNER_FACTORS_MEM =
      new Source(
          "scribner_factors_mem",
          "several",
          "several editions",
          "Scribner factors per foot of length, logs of 16 ft and shorter",
          "textbooks and handbooks",
          "");

  /** G. R. Staebler, 1953. */
  public static final Source STAEBLER1953 =
      new Source(
          "staebler1953",
          "G. R. Staebler",
          "1953",
          "Long logs or short logs with the Scribner scale",
          "The Timberman vol. LIV no. 10 (journal name from memory; page shows volume and number)",
          "https://studylib.net/doc/12786994/");

  /** E. F. Rapraeger, 1940. */
  public static final Source CUBICFOOT1940 =
      new Source(
          "cubicfoot1940",
          "E. F. Rapraeger (name from memory)",
          "1940",
          "The cubic foot as a national log-scaling standard",
          "USDA Forest Service (series from memory)",
          "https://afripics.com/image/search/detail/22BD0D93-EF11-4B14-BA03-E45356A687B1");

  /** several. */
  public static final Source GLOSS_LOGRULE =
      new Source(
          "gloss_logrule",
          "several",
          "",
          "Definitions for log rule (collected glossaries)",
          "glossary collection",
          "http://metaglossary.com/define/log+rule");

  /** Question set by Gene Wengert, 2002. */
  public static final Source WOODWEB_OVERRUN2002 =
      new Source(
          "woodweb_overrun2002",
          "several; question set by Gene Wengert",
          "2002",
          "Log scale and overrun",
          "trade-journal question thread",
          "https://woodweb.com/knowledge_base/Log_scale_and_overrun.html");

  private BoardWorks() {}
}
