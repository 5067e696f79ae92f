package org.mensuration.internal.source;

import org.mensuration.source.Source;

/**
 * The works that the conventions of countries and bark formulas cite. Immutable and thread-safe.
 */
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

  /** GOST 2292-88 diameter rounding; JAS crossed-diameter increments. */
  public static final Source GOST2292_JAS =
      new Source(
          "gost2292_jas",
          "",
          "",
          "GOST 2292-88 diameter rounding; JAS crossed-diameter increments",
          "standards",
          "");

  private ConventionWorks() {}
}
