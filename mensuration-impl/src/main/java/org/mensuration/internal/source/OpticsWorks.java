package org.mensuration.internal.source;

import org.mensuration.source.Source;

/** The works that formulas of optics, diameters and heights cite. Immutable and thread-safe. */
public final class OpticsWorks {
  /** encyclopedia contributors. */
  public static final Source MRAD =
      new Source(
          "milliradian",
          "encyclopedia contributors",
          "",
          "Milliradian",
          "encyclopedia",
          "https://en.wikipedia.org/wiki/Angular_mil");

  /** Distance by subtense bar (surveying exercise 4). */
  public static final Source SUBT =
      new Source(
          "subtense_exercise",
          "",
          "",
          "Distance by subtense bar (surveying exercise 4)",
          "course exercise sheet",
          "https://www.scribd.com/document/479231630/4");

  /** US Army. */
  public static final Source TM1240 =
      new Source(
          "tm1240",
          "US Army",
          "",
          "TM 9-1240-407-12&P (binocular manual)",
          "Department of the Army technical manual",
          "https://binocularsandtelescopes.tpub.com/TM-9-1240-407-12-P/TM-9-1240-407-12-P0020.htm");

  /** Surveying lecture text 4798. */
  public static final Source STADIA_T =
      new Source(
          "stadia_text",
          "",
          "",
          "Surveying lecture text 4798",
          "IFNTUOG library",
          "https://files.library.nung.edu.ua/chytalnya/4798/files/basic-html/page50.html");

  /** J. DeYoung, 2016. */
  public static final Source DEY24 =
      new Source(
          "deyoung24",
          "J. DeYoung",
          "2016",
          "Forest Measurements: an applied approach, 2.4 topographic slope",
          "Open Oregon Educational Resources",
          "https://openoregon.pressbooks.pub/forestmeasurements/chapter/2-4-using-topographic-slope-to-determine-tree-height");

  /** C. Lopez Pena. */
  public static final Source UPM2 =
      new Source(
          "upm2",
          "C. Lopez Pena",
          "",
          "Ejercicio de dendrometria no. 2",
          "EUIT Forestal, Universidad Politecnica de Madrid",
          "https://de.scribd.com/document/372927841/ejer-dendro-2-1");

  /** R. T. Leverett, 2006. */
  public static final Source ENTS_H =
      new Source(
          "nts_height",
          "R. T. Leverett",
          "2006",
          "Height measurement basics",
          "Native Tree Society web note",
          "http://www.nativetreesociety.org/measure/height/height_measurement_basics.htm");

  /** D. C. Bragg, L. E. Frelich, R. T. Leverett, W. Blozan, D. J. Luthringer, 2011. */
  public static final Source BRAGG11 =
      new Source(
          "bragg2011",
          "D. C. Bragg, L. E. Frelich, R. T. Leverett, W. Blozan, D. J. Luthringer",
          "2011",
          "The sine method: an alternative height measurement technique",
          "USDA FS Research Note SRS-22",
          "scribd document 846700098");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2013. */
  public static final Source AWF_GEOM =
      new Source(
          "awf_geometric",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2013",
          "The geometric principle",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?diff=9708&oldid=4798&title=The_geometric_principle");

  /** Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes), 2010. */
  public static final Source AWF_HEIGHT =
      new Source(
          "awf_tree_height",
          "Chair of Forest Inventory and Remote Sensing (after C. Kleinn 2007 lecture notes)",
          "2010",
          "Tree height",
          "University of Goettingen",
          "http://wiki.awf.forst.uni-goettingen.de/wiki/index.php?title=Tree_height&diff=2648&oldid=2647");

  /** Height estimation. */
  public static final Source SCOUT =
      new Source(
          "scout_height",
          "",
          "",
          "Height estimation",
          "scout handbook page",
          "https://scoutlibrary.in/height-estimation/");

  /** C. Brack, G. Wood, 1998. */
  public static final Source BW98_H3 =
      new Source(
          "brack_wood1998_h3",
          "C. Brack, G. Wood",
          "1998",
          "Estimating height of leaning trees",
          "Australian National University, Forest Mensuration",
          "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/HEIGHT3.HTM");

  /** C. Brack, G. Wood, 1998. */
  public static final Source BW98_D =
      new Source(
          "brack_wood1998_d",
          "C. Brack, G. Wood",
          "1998",
          "Comparing diameter measuring instruments",
          "Australian National University, Forest Mensuration",
          "https://fennerschool-associated.anu.edu.au/mensuration/BrackandWood1998/COMPTAPE.HTM");

  /** Wangdi, 2026. */
  public static final Source MEN201_IV =
      new Source(
          "men201_iv",
          "Wangdi",
          "2026",
          "MEN 201 Forest Mensuration, Unit IV: measurement of tree height",
          "College of Natural Resources, Royal University of Bhutan (lecture material, free for teaching with attribution; data marked hypothetical)",
          "https://github.com/wangdiues/men201-forest-mensuration, file notes/MEN201_Notes_Unit_IV.html and MEN201_Unit_IV_Measurement_of_Tree_Height.html");

  /** Forestry examples: trigonometry and vectors. */
  public static final Source BCIT_TV =
      new Source(
          "bcit_tv",
          "",
          "",
          "Forestry examples: trigonometry and vectors",
          "British Columbia Institute of Technology, mathematics department",
          "http://commons.bcit.ca/math/examples/forestry/trig_vectors/index.html");

  /** D. V. Souza, 2025. */
  public static final Source SOUZA_D =
      new Source(
          "souza_diameter",
          "D. V. Souza",
          "2025",
          "Dendrometria (FL03029), slides on the measurement of diameters",
          "Universidade Federal do Para",
          "https://github.com/DeivisonSouza/FL03029-Dendrometria, file Slides/03-Medicao-Diametro.Rmd, version ca6408f");

  /** B. Matern, 1956. */
  public static final Source MATERN56 =
      new Source(
          "matern1956",
          "B. Matern",
          "1956",
          "On the geometry of the cross-section of a stem",
          "Meddelanden fran Statens Skogsforskningsinstitut 46(11)",
          "https://online.documentine.com/cross-sectional-area-circle/1/on-the-geometry-of-the-cross-section-of-a-stem.html");

  /** L. R. Grosenbaugh, 1980. */
  public static final Source GROS80 =
      new Source(
          "grosenbaugh1980",
          "L. R. Grosenbaugh",
          "1980",
          "Avoiding dendrometry bias when trees lean or taper",
          "Forest Science 26(2): 203-215",
          "http://www.ingentaconnect.com/content/saf/fs/1980/00000026/00000002/art00007");

  /** several. */
  public static final Source SCICOOK =
      new Source(
          "scipy_circle",
          "several",
          "",
          "Least squares circle",
          "SciPy cookbook (general numerical documentation)",
          "https://github.com/scipy/scipy-cookbook, file ipython/Least_Squares_Circle.ipynb ; https://scipy.github.io/old-wiki/pages/Cookbook/Least_Squares_Circle");

  /** W. Gander, G. H. Golub, R. Strebel, 1994. */
  public static final Source GGS94 =
      new Source(
          "gander1994",
          "W. Gander, G. H. Golub, R. Strebel",
          "1994",
          "Least-squares fitting of circles and ellipses",
          "BIT 34:558-578",
          "https://www.scribd.com/document/45179060/Least-Squares-Fitting-of-Circles-and-Ellipses");

  /** G. B. Wood, B. J. Turner, C. L. Brack (eds), 1999. */
  public static final Source CODE99_211 =
      new Source(
          "code1999_211",
          "G. B. Wood, B. J. Turner, C. L. Brack (eds)",
          "1999",
          "Code of Forest Mensuration Practice",
          "Research Working Group 2",
          "https://fennerschool-associated.anu.edu.au/mensuration/rwg2/code/2-1-1.htm");

  /** glossary (BCFT modified). */
  public static final Source BH_GLOSS =
      new Source(
          "breast_height_glossary",
          "glossary (BCFT modified)",
          "",
          "Breast height",
          "glossary",
          "http://metaglossary.com/define/breast+height");

  /** CRPF Poitou-Charentes. */
  public static final Source CRPF =
      new Source(
          "crpf_poitou",
          "CRPF Poitou-Charentes",
          "",
          "Le cubage des arbres sur pied",
          "regional forestry centre",
          "http://www.crpf-poitou-charentes.fr/Le-cubage-des-arbres-sur-pied-n.html");

  /** M. O. Kimberley, P. N. Beets, 2007. */
  public static final Source KB07 =
      new Source(
          "kimberley2007",
          "M. O. Kimberley, P. N. Beets",
          "2007",
          "National volume function for estimating total stem volume of Pinus radiata stands in New Zealand",
          "NZ Journal of Forestry Science",
          "https://online.documentine.com/tree-bark-function/1/national-volume-function-for-estimating-total-stem-volume.html");

  private OpticsWorks() {}
}
