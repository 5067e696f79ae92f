package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that formulas cite. Immutable and thread-safe. */
public final class Works {
  /** D. Briggs, 1994. */
  public static final Source BRIGGS_CH2 =
      new Source(
          "briggs_ch2",
          "D. Briggs",
          "1994",
          "Forest Products Measurements and Conversion Factors, chapter 2 Measurement of Logs",
          "University of Washington, College of Forest Resources",
          "http://www.ruraltech.org/projects/conversions/briggs_conversions/briggs_ch02/briggs_chapter02_complete.asp");

  /** State of Louisiana, 1992. */
  public static final Source LA4641 =
      new Source(
          "la4641",
          "State of Louisiana",
          "1992",
          "RS 3:4641 Standard rule for measuring saw logs",
          "Louisiana Revised Statutes, Acts 1992 No. 55",
          "https://self-law.org/code/la/title-3/3-873");

  /** Daniel Cassens, 2001. */
  public static final Source CASSENS_FNR191 =
      new Source(
          "cassens_fnr191",
          "Daniel Cassens",
          "2001",
          "Log and Tree Scaling Techniques",
          "Purdue University FNR-191",
          "https://docslib.org/doc/12689756/log-and-tree-scaling-techniques-fnr-191 ; https://online.documentine.com/tree-service-estimate-form-printable/1/log-and-tree-scaling-techniques-fnr-191.html");

  /** E. A. Chase, 1913. */
  public static final Source CHASE1913 =
      new Source(
          "chase1913",
          "E. A. Chase",
          "1913",
          "Timber Cruising Manual and Record",
          "American Lumberman, Chicago",
          "http://cord.distantreader.org/stacks/trust/ncs1/ncs1_ark+=13960=t18k7m29r.txt");

  /** State of Michigan, 1941. */
  public static final Source MI290401 =
      new Source(
          "mi290401",
          "State of Michigan",
          "1941",
          "MCL 290.401 Standard log rule; establishment",
          "Act 208 of 1941",
          "https://self-law.org/code/mi/chapter-290/290-401");

  /** Commonwealth of Massachusetts, . */
  public static final Source MA96_11A =
      new Source(
          "ma96_11a",
          "Commonwealth of Massachusetts",
          "",
          "General Laws chapter 96 section 11A",
          "General Laws",
          "https://malegislature.gov/Laws/GeneralLaws/PartI/TitleXV/Chapter96/Section11A");

  /** Society of American Foresters, 2008. */
  public static final Source DOF_INT14 =
      new Source(
          "dof_int14",
          "Society of American Foresters",
          "2008",
          "The Dictionary of Forestry: international quarter-inch rule; international log rule; log rule",
          "SAF online dictionary, entries updated 07/17/2008",
          "http://www.dictionaryofforestry.org/dict/term/international_quarter-inch_rule ; http://dictionaryofforestry.org/dict/term/international_log_rule");

  /** Gene Wengert, 2001. */
  public static final Source WENGERT2001A =
      new Source(
          "wengert2001a",
          "Gene Wengert",
          "2001",
          "Log Volume: charts for International 1/4-inch and Scribner log volume",
          "trade-journal knowledge-base article",
          "https://woodweb.com/knowledge_base/Log_Volume.html");

  /**
   * How much wood can you expect from your logs? (table: Gross volume of a log, International
   * 1/4-inch rule), .
   */
  public static final Source MILLPAGE_INT14 =
      new Source(
          "millpage_int14",
          "",
          "",
          "How much wood can you expect from your logs? (table: Gross volume of a log, International 1/4-inch rule)",
          "small custom sawmill web page reproducing the table",
          "https://logstolumbernow.com/wood-volume/");

  /** Doyle Log Scale in Board Feet, . */
  public static final Source MILLPAGE_DOYLE =
      new Source(
          "millpage_doyle",
          "",
          "",
          "Doyle Log Scale in Board Feet",
          "small sawmill web page reproducing the table",
          "http://tinytimbers.com/doylescale.htm");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2010. */
  public static final Source AWF_TRIG =
      new Source(
          "awf_trig",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2010",
          "The trigonometric principle",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?diff=16306&oldid=2755&title=The_trigonometric_principle");

  /** J. DeYoung, 2016. */
  public static final Source DEY23 =
      new Source(
          "deyoung23",
          "J. DeYoung",
          "2016",
          "Forest Measurements: an applied approach, 2.3 percent slope",
          "Open Oregon Educational Resources",
          "https://openoregon.pressbooks.pub/forestmeasurements/chapter/2-3-using-percent-slope-to-determine-tree-height");

  /** C. Brack, G. Wood, 1998. */
  public static final Source BW98_H2 =
      new Source(
          "brack_wood1998_h2",
          "C. Brack, G. Wood",
          "1998",
          "Estimating height of vertical trees; sloping ground",
          "Australian National University, Forest Mensuration",
          "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/HEIGHT2.HTM");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2013. */
  public static final Source AWF_DIST =
      new Source(
          "awf_distance",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2013",
          "Distance to tree",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?title=Distance_to_tree&diff=9720&oldid=4816");

  /** encyclopedia contributors, 2018. */
  public static final Source ANGDIAM =
      new Source(
          "angular_diameter",
          "encyclopedia contributors",
          "2018",
          "Angular diameter",
          "encyclopedia copy",
          "https://daily1000knowledge.blogspot.com/2018/11/angular-diameter_73.html");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2011. */
  public static final Source AWF_BIT =
      new Source(
          "awf_angle_count",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2011",
          "Angle-count sampling page of the inventory lecture-note wiki",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?diff=prev&oldid=5550");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2011. */
  public static final Source AWF_SLOPE =
      new Source(
          "awf_slope",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2011",
          "Angle-count sampling page, section on sloped terrain",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?diff=next&oldid=5554");

  /** Point sampling (course slides), . */
  public static final Source PTSLIDES =
      new Source(
          "point_slides",
          "",
          "",
          "Point sampling (course slides)",
          "slide upload",
          "https://www.yumpu.com/en/document/view/47957669/point-sampling/10");

  /** K. Iles, . */
  public static final Source ILES =
      new Source(
          "iles_radius_factor",
          "K. Iles",
          "",
          "Wrong plot radius factor for the borderline trees",
          "sampling newsletter, online no. 12",
          "http://john-bell-associates.com/regular/regular_online12.htm");

  /** Southern Regional Extension Forestry (wiki editor shown as ddrummond), 2012. */
  public static final Source AG_S01 =
      new Source(
          "sref_basal_area",
          "Southern Regional Extension Forestry (wiki editor shown as ddrummond)",
          "2012",
          "Service Forester's Handbook: Basal Area and Plots Per Acre Table",
          "SREF online handbook",
          "https://handbook.sref.info/doku.php?do=diff&id=basal_area_and_plots_per_acre_table&rev=1333652773");

  /** Southern Regional Extension Forestry, 2012. */
  public static final Source AG_S02 =
      new Source(
          "sref_prism",
          "Southern Regional Extension Forestry",
          "2012",
          "Service Forester's Handbook: Use of Wedge Prism",
          "SREF online handbook",
          "https://handbook.sref.info/doku.php?do=export_raw&id=use_of_wedge_prism");

  /** author not shown (inventory newsletter), . */
  public static final Source AG_S10 =
      new Source(
          "newsletter_factor",
          "author not shown (inventory newsletter)",
          "",
          "What BAF Should I Use?",
          "inventory newsletter",
          "http://john-bell-associates.com/iitt/questionftf60.htm");

  /** not shown (Kentucky lecture), . */
  public static final Source AG_S12 =
      new Source(
          "kentucky_slides",
          "not shown (Kentucky lecture)",
          "",
          "Point sampling or variable plot cruising",
          "lecture slides 13-14",
          "https://studylib.net/doc/5701643/13--14");

  /** citing USDA Forest Service 2000, FSH 2409.12 Timber Cruising Handbook, 237 p., 2000. */
  public static final Source AG_S15 =
      new Source(
          "sample_size_handout",
          "citing USDA Forest Service 2000, FSH 2409.12 Timber Cruising Handbook, 237 p.",
          "2000",
          "Calculating Sample Size for Stratified Random Sample",
          "two-page hand-out",
          "https://www.scribd.com/doc/290105300/Calculating-Sample-Size-for-Stratified-Random-Sample");

  /** not shown on the page, . */
  public static final Source AG_S17 =
      new Source(
          "environment_statistics",
          "not shown on the page",
          "",
          "Mathematics and Statistics for the Environment",
          "book page copy",
          "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-145.html");

  /** Bevilacqua, E. (course FOR 322, SUNY ESF), . */
  public static final Source AG_S21 =
      new Source(
          "bevilacqua",
          "Bevilacqua, E. (course FOR 322, SUNY ESF)",
          "",
          "Calculation of quadratic mean diameter",
          "course note 001, citing Avery and Burkhart 1994 p. 290",
          "https://www.esf.edu/for/bevilacqua/for322/note001.htm");

  /** Gove, J. H.; Gregoire, T. G.; Ducey, M. J.; Lynch, T. B., 2020. */
  public static final Source AG_S35 =
      new Source(
          "gove2020",
          "Gove, J. H.; Gregoire, T. G.; Ducey, M. J.; Lynch, T. B.",
          "2020",
          "A note on the estimation of variance for big BAF sampling",
          "Forest Ecosystems 7 (s40663-020-00272-x)",
          "https://forestecosyst.springeropen.com/articles/10.1186/s40663-020-00272-x");

  /** Brack, C. L.; Wood, G. B., 1998. */
  public static final Source AG_S49 =
      new Source(
          "brack_wood1998",
          "Brack, C. L.; Wood, G. B.",
          "1998",
          "Forest Mensuration: stand basal area",
          "Australian National University course",
          "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/S_BA.HTM");

  /** Bruce, D., 1961. */
  public static final Source AG_M06 =
      new Source(
          "bruce1961",
          "Bruce, D.",
          "1961",
          "Prism cruising in the western United States and volume tables for use therewith",
          "Mason, Bruce and Girard",
          "");

  /** David Bruce, 1982. */
  public static final Source BRUCE1982 =
      new Source(
          "bruce1982",
          "David Bruce",
          "1982",
          "Butt log volume estimators",
          "Forest Science 28:489-503",
          "");

  /** Avery and Burkhart; Husch, Miller and Beers, several editions. */
  public static final Source TEXTBOOK_MEM =
      new Source(
          "textbook_mem",
          "Avery and Burkhart; Husch, Miller and Beers",
          "several editions",
          "Forest Measurements; Forest Mensuration",
          "textbooks",
          "");

  /** Frank Freese, 1973. */
  public static final Source FREESE_FPL01 =
      new Source(
          "freese_fpl01",
          "Frank Freese",
          "1973",
          "A Collection of Log Rules",
          "USDA Forest Service General Technical Report FPL-1",
          "https://docslib.org/doc/4983619/a-collection-of-log-rules-u-s-d-a");

  /** State of Vermont, 1967. */
  public static final Source VT2693 =
      new Source(
          "vt2693",
          "State of Vermont",
          "1967",
          "9 V.S.A. 2693 Log measure - the Vermont rule",
          "Vermont Statutes, 1967 No. 102 s.27",
          "http://laws9.com/statutes/vermont/title-09/chapter-73/2693");

  /** Encyclopedia Americana, . */
  public static final Source AMERICANA_WM =
      new Source(
          "americana_wm",
          "Encyclopedia Americana",
          "",
          "Weights and Measures",
          "Encyclopedia Americana vol. 29",
          "http://gluedideas.com/content-collection/encyclopedia-americana-29/Weights-and-Measures_P6.html");

  /** forum answer, . */
  public static final Source TWOPOS1 =
      new Source(
          "two_positions",
          "forum answer",
          "",
          "Height of a tree from two elevations",
          "mathematics forum",
          "https://web2.0calc.com/questions/help_64186");

  private Works() {}
}
