package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that the conventions of countries cite. Immutable and thread-safe. */
public final class ConventionWorks {
  /** USSR State Committee for Standards, 1975. */
  public static final Source GOST2708_COPY_A =
      new Source(
          "gost2708_copy_a",
          "USSR State Committee for Standards",
          "1975",
          "GOST 2708-75 Round timber. Tables of volumes (table copy A, 14-48 cm, 1-9 m)",
          "GOST 2708-75",
          "http://xn--90abjmfe8alfadz.xn--p1ai/poleznoe/stati/14-tablitsa-opredeleniya-kubatury-kruglogo-lesa");

  /** USSR State Committee for Standards, 1975. */
  public static final Source GOST2708_COPY_B =
      new Source(
          "gost2708_copy_b",
          "USSR State Committee for Standards",
          "1975",
          "GOST 2708-75 (table copy B, 10-30 cm including odd diameters, 3-8 m)",
          "GOST 2708-75",
          "https://xn--90adbdsbbwpfz.xn--p1ai/raznoe/kubaturnik-kruglogo-lesa-tablica-12-metrov-kubaturnik-gost-arxitektor-kasatkin-i-partnyory-proektirovanie-i-stroitelstvo-derevyannyx-doma-i-bannyx-kompleksov-po-texnologii-post-and-bea.html");

  /** USSR State Committee for Standards, 1975. */
  public static final Source GOST2708_COPY_C =
      new Source(
          "gost2708_copy_c",
          "USSR State Committee for Standards",
          "1975",
          "GOST 2708-75 (table copy C, 22-38 cm, 6-11 m)",
          "GOST 2708-75",
          "https://rusdom43.ru/vazhno/tablica-obemov-kruglogo-lesa-gost-2708-7.html");

  /** USSR State Committee for Standards, 1975. */
  public static final Source GOST2708_SCOPE =
      new Source(
          "gost2708_scope",
          "USSR State Committee for Standards",
          "1975",
          "GOST 2708-75 (text of scope)",
          "GOST 2708-75",
          "https://pdfslide.net/documents/oef-2708-75-.html");

  /** teaching note on GB 4814-84. */
  public static final Source GB4814_EXAMPLES =
      new Source(
          "gb4814_examples",
          "(teaching note on GB 4814-84)",
          "",
          "Log volume formulas of GB 4814-84 with examples 1-4",
          "document site",
          "https://m.wenke99.com/p-2190078.html");

  /** National Bureau of Standards of China, 1984. */
  public static final Source GB4814_COPY_1 =
      new Source(
          "gb4814_copy_1",
          "National Bureau of Standards of China",
          "1984",
          "GB 4814-84 Log volume table (copy 1)",
          "GB 4814-84",
          "http://biz.doczj.com/doc/0815649016.html");

  /** National Bureau of Standards of China, 1984. */
  public static final Source GB4814_COPY_2 =
      new Source(
          "gb4814_copy_2",
          "National Bureau of Standards of China",
          "1984",
          "GB 4814-84 Log volume table (copy 2)",
          "GB 4814-84",
          "https://360docs.net/doc/0d18277106.html");

  /** National Bureau of Standards of China, 1984. */
  public static final Source GB4814_COPY_3 =
      new Source(
          "gb4814_copy_3",
          "National Bureau of Standards of China",
          "1984",
          "GB 4814-84 Log volume table (copy 3, 4-6 cm)",
          "GB 4814-84",
          "https://dajudeng.com/Document/Details?fid=88b73deeb7f847ee89aa9101af64ecb2");

  /** news note on GB 4814. */
  public static final Source GB4814_FORMULAS =
      new Source(
          "gb4814_formulas",
          "(news note on GB 4814)",
          "",
          "Formulas of GB 4814",
          "news site",
          "https://m.tftnews.com/news8270682");

  /** timber merchant's explanation. */
  public static final Source JP_CUSTOMS_RULE =
      new Source(
          "jp_customs_rule",
          "(timber merchant's explanation)",
          "",
          "Present scaling methods: customs (South Sea) rule and softwood rule",
          "web page",
          "http://www.meimokuso.co.jp/kenryo1.htm");

  /** timber merchant's explanation. */
  public static final Source JP_DOMESTIC_RULES =
      new Source(
          "jp_domestic_rules",
          "(timber merchant's explanation)",
          "",
          "Other domestic scaling: unified US-wood rule (1968), Hiragoku",
          "web page",
          "http://www.meimokuso.co.jp/kenryo3.htm");

  /** forestry blog quoting the Ministry of Agriculture. */
  public static final Source JAS_QUOTATION =
      new Source(
          "jas_quotation",
          "(forestry blog quoting the Ministry of Agriculture)",
          "",
          "How to compute log volume (quotes the Japanese Agricultural Standard for raw timber)",
          "blog",
          "https://keixx.net/entry/maruta-zaiseki/");

  /** timber firm blog. */
  public static final Source JP_VOLUME_NOTE =
      new Source(
          "jp_volume_note",
          "(timber firm blog)",
          "",
          "On the volume of wood",
          "blog",
          "https://takesimaya.p-kit.com/userblog/index.php?action=view&blog_id=156905");

  /** exam note, Korea. */
  public static final Source KR_SMALL_END =
      new Source(
          "kr_small_end",
          "(exam note, Korea)",
          "",
          "Volume of felled timber: small-end-squared rule",
          "blog",
          "https://eidsn.tistory.com/12883795");

  /** Waldwirtschaft Dertingen. */
  public static final Source DERTINGEN =
      new Source(
          "dertingen",
          "Waldwirtschaft Dertingen",
          "",
          "Vermessen von Stammholz",
          "association page",
          "https://www.waldwirtschaft-dertingen.de/holzernte-gewusst-wie/vermessen-von-stammholz/");

  /** FBG Landkreis Tuttlingen. */
  public static final Source TUTTLINGEN =
      new Source(
          "tuttlingen",
          "FBG Landkreis Tuttlingen",
          "",
          "Stammholz vermessen",
          "association page",
          "https://fbg-landkreis-tuttlingen.de/stammholz-vermessen");

  /** teaching page on HKS. */
  public static final Source RUNDHOLZ_PAGE =
      new Source(
          "rundholz_page",
          "(teaching page on HKS)",
          "",
          "Rundholzvermessung am geraden Rundholz",
          "web page",
          "http://www.holzwurm-page.de/holz/rohholz/rohholzsortierung.htm");

  /** Standing committee of the RVR. */
  public static final Source RVR_QUESTIONS =
      new Source(
          "rvr_questions",
          "Standing committee of the RVR",
          "",
          "RVR questions and answers",
          "industry association",
          "http://www.saegeindustrie.de/rvr/struktur.php?id=43");

  /** Skogforsk, Skogsagarna, Skogsstyrelsen, 2016. */
  public static final Source M3TO_TERM =
      new Source(
          "m3to_term",
          "Skogforsk, Skogsagarna, Skogsstyrelsen",
          "2016",
          "Term record: m3to",
          "Rikstermbanken",
          "https://rikstermbanken.se/termposter/3497/kubikmeter_fast_m%C3%A5tt%2C_toppm%C3%A4tt_volym");

  /** Hakansson, M. (ed, 2000. */
  public static final Source KLASSBOTTEN =
      new Source(
          "klassbotten",
          "Hakansson, M. (ed.)",
          "2000",
          "Skogsencyklopedin: klassbottenkubering",
          "Sveriges Skogsvardsforbund",
          "https://www.skogen.se/glossary/klassbottenkubering/");

  /** Mancilla Terrazas, R. F, 2003. */
  public static final Source MANCILLA2003 =
      new Source(
          "mancilla2003",
          "Mancilla Terrazas, R. F.",
          "2003",
          "Manual para estimar el volumen de la madera en troza y aserrada",
          "BIOFOR project, Peten",
          "https://vdocumento.com/manual-para-estimar-el-volumen-de-la-madera-en-troza-y-aserrada.html");

  /** timber blog, 2023. */
  public static final Source BRERETON_BLOG2023 =
      new Source(
          "brereton_blog2023",
          "(timber blog)",
          "2023",
          "Estimating log volume: Brereton, Smalian, JAS",
          "blog",
          "https://aboutwood.asia/2023/08/estimate-logs-volume-which-one-is-most.html");

  /** British Columbia Ministry of Forests, 2011. */
  public static final Source BC_SCALING2011 =
      new Source(
          "bc_scaling2011",
          "British Columbia Ministry of Forests",
          "2011",
          "Scaling Manual, chapter 4 Smalian's formula",
          "government manual",
          "");

  /** GOST 2292-88 diameter rounding; JAS crossed-diameter increments. */
  public static final Source GOST2292_JAS =
      new Source(
          "gost2292_jas",
          "",
          "",
          "GOST 2292-88 diameter rounding; JAS crossed-diameter increments",
          "standards",
          "");

  /** Hamilton, 1975, not seen. */
  public static final Source HAMILTON1975 =
      new Source(
          "hamilton1975",
          "Hamilton, G. J.",
          "1975",
          "Forest Mensuration Handbook",
          "Forestry Commission Booklet 39",
          "");

  /** Ellis, 1982, not seen. */
  public static final Source ELLIS1982 =
      new Source(
          "ellis1982",
          "Ellis, J. C.",
          "1982",
          "A three-dimensional formula for coniferous log volumes in New Zealand",
          "FRI Bulletin 20",
          "");

  private ConventionWorks() {}
}
