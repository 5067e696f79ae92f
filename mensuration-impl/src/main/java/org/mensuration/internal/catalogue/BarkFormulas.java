package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.pi;
import static org.mensuration.formula.Equations.squared;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.GirthAndBarkWorks;
import org.mensuration.kernel.BarkThickness;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Bark in general: factors, thickness, shares, allowances. Immutable and thread-safe. */
public final class BarkFormulas {
  private static final Domain FACTOR = Domain.aboveUpTo(0, 1);
  private static final Domain SIZE = Domain.atLeast(0);
  private static final String FACTOR_MEANING = "diameter inside bark over diameter outside";
  private static final String SINGLE = "thickness of the bark on one side";

  /** Inside from a factor. */
  public static final BoundFormula INSIDE_FROM_FACTOR =
      Definition.of(
              "bark/inside-from-factor", "Diameter inside bark from a factor", Nature.GEOMETRIC)
          .input("outside_diameter", "D", "cm", SIZE, "diameter over bark")
          .input("bark_factor", "k", "1", FACTOR, FACTOR_MEANING)
          .gives("diameter", "d", "cm", times(sym("k"), sym("D")))
          .cites(Citation.derived("definition of the bark factor"))
          .cites(
              Citation.published(
                  Role.EXPLAINS, GirthAndBarkWorks.GOUDIE93, "message: about 0.91 for Douglas-fir"))
          .note("near constant along the stem of most conifers, but not at the butt of some pines")
          .kernel2(BarkThickness::insideFromFactor);

  /** Inside from thickness. */
  public static final BoundFormula INSIDE_FROM_THICKNESS =
      Definition.of(
              "bark/inside-from-thickness",
              "Diameter inside bark from its thickness",
              Nature.GEOMETRIC)
          .input("outside_diameter", "D", "cm", SIZE, "diameter over bark")
          .input("bark_thickness", "b", "cm", SIZE, SINGLE)
          .relation("bark_thickness", AT_MOST, 0.5, "outside_diameter", "b ≤ D/2")
          .gives("diameter", "d", "cm", minus(sym("D"), times(num(2), sym("b"))))
          .definedBy(GirthAndBarkWorks.MEN201_II, "worked example 2")
          .tabulatedBy(GirthAndBarkWorks.GFC, "example")
          .kernel2(BarkThickness::insideFromThickness);

  /** Girth inside. */
  public static final BoundFormula GIRTH_INSIDE =
      Definition.of("bark/girth-inside", "Girth inside bark from its thickness", Nature.GEOMETRIC)
          .input("outside_girth", "G", "cm", SIZE, "girth over bark")
          .input("bark_thickness", "b", "cm", SIZE, SINGLE)
          .relation("bark_thickness", AT_MOST, 0.15915494309189535, "outside_girth", "b ≤ G/(2 π)")
          .gives("girth", "g", "cm", minus(sym("G"), times(num(2), pi(), sym("b"))))
          .definedBy(GirthAndBarkWorks.MEN201_II, "worked example 2")
          .kernel2(BarkThickness::girthInside);

  /** Share of volume. */
  public static final BoundFormula VOLUME_SHARE =
      Definition.of("bark/volume-share", "Share of bark in the volume", Nature.GEOMETRIC)
          .input("bark_factor", "k", "1", FACTOR, FACTOR_MEANING)
          .gives("share", "s", "1", minus(num(1), squared(sym("k"))))
          .cites(Citation.derived("areas are as the squares of diameters, at a constant factor"))
          .kernel1(BarkThickness::volumeShare);

  /** Volume inside. */
  public static final BoundFormula VOLUME_INSIDE =
      Definition.of("bark/volume-inside", "Volume inside bark", Nature.GEOMETRIC)
          .input("volume_outside", "V", "m3", SIZE, "volume over bark")
          .input("bark_factor", "k", "1", FACTOR, FACTOR_MEANING)
          .gives("volume", "v", "m3", times(sym("V"), squared(sym("k"))))
          .cites(Citation.derived("areas are as the squares of diameters, at a constant factor"))
          .kernel2(BarkThickness::volumeInside);

  /** Share of area. */
  public static final BoundFormula AREA_SHARE =
      Definition.of("bark/area-share", "Share of bark in the area of a section", Nature.GEOMETRIC)
          .input("double_bark", "B", "mm", SIZE, "bark thickness of both sides together")
          .input("outside_diameter", "d", "cm", Domain.above(0), "diameter over bark")
          .relation("double_bark", AT_MOST, 10, "outside_diameter", "B ≤ 10 d")
          .gives(
              "share",
              "s",
              "%",
              times(
                  num(100),
                  minus(num(1), squared(minus(num(1), over(sym("B"), times(num(10), sym("d"))))))))
          .definedBy(GirthAndBarkWorks.RINDENABZUG, "function and text under it")
          .explainedBy(GirthAndBarkWorks.MEN201_II, "section 7")
          .kernel2((bark, diameter) -> BarkThickness.areaShare(diameter, bark));

  /** An inch and a half in a foot. */
  public static final BoundFormula INCH_AND_HALF =
      quarterGirth("bark/inch-and-half-in-foot", "Bark allowance of 1 1/2 in in a foot")
          .gives("allowance", "a", "in", over(times(num("1.5"), sym("q")), num(12)))
          .definedBy(GirthAndBarkWorks.UNSQUARED_TIMBER, "paragraph on bark")
          .note("the source gives it as one eighth of the girth as well")
          .kernel1(BarkThickness::inchAndHalfInFoot);

  /** A twelfth. */
  public static final BoundFormula TWELFTH =
      quarterGirth("bark/twelfth-of-quarter-girth", "Bark allowance of a twelfth")
          .gives("allowance", "a", "in", over(sym("q"), num(12)))
          .definedBy(
              GirthAndBarkWorks.UNSQUARED_TIMBER, "paragraph on bark: a general fair average")
          .kernel1(BarkThickness::twelfth);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(
          INSIDE_FROM_FACTOR,
          INSIDE_FROM_THICKNESS,
          GIRTH_INSIDE,
          VOLUME_SHARE,
          VOLUME_INSIDE,
          AREA_SHARE,
          INCH_AND_HALF,
          TWELFTH);

  private BarkFormulas() {}

  private static Definition quarterGirth(String id, String title) {
    return Definition.of(id, title, Nature.CONVENTION)
        .input("quarter_girth", "q", "in", SIZE, "quarter of the girth over bark");
  }
}
