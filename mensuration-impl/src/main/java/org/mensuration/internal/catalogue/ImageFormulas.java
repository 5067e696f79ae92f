package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Comparison.AT_MOST;
import static org.mensuration.formula.Comparison.LESS;
import static org.mensuration.formula.Equation.FunctionName.ASIN;
import static org.mensuration.formula.Equation.FunctionName.ATAN;
import static org.mensuration.formula.Equation.FunctionName.IN_DEGREES;
import static org.mensuration.formula.Equation.FunctionName.TAN;
import static org.mensuration.formula.Equations.cosDegrees;
import static org.mensuration.formula.Equations.fn;
import static org.mensuration.formula.Equations.minus;
import static org.mensuration.formula.Equations.num;
import static org.mensuration.formula.Equations.over;
import static org.mensuration.formula.Equations.plus;
import static org.mensuration.formula.Equations.sinDegrees;
import static org.mensuration.formula.Equations.sym;
import static org.mensuration.formula.Equations.times;
import static org.mensuration.formula.Equations.where;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.kernel.ImagePlane;
import org.mensuration.source.Citation;

/** Stems on images. Immutable and thread-safe. */
public final class ImageFormulas {
  private static final Domain POSITIVE = Domain.above(0);
  private static final Domain PITCH = Domain.open(-90, 90);
  private static final String LENS = "rectilinear lens, undistorted image";

  /** Focal length in pixels. */
  public static final BoundFormula FOCAL_LENGTH =
      Definition.of("optics/focal-length-pixels", "Focal length in pixels", Nature.GEOMETRIC)
          .input("focal_length", "F", "mm", POSITIVE, "focal length")
          .input("pixel_pitch", "q", "mm", POSITIVE, "distance between two pixels")
          .gives("focal_length_pixels", "f", "1", over(sym("F"), sym("q")))
          .cites(Citation.derived("pinhole image"))
          .kernel2(ImagePlane::focalLengthPixels);

  /** Ratio from pixels. */
  public static final BoundFormula RATIO =
      Definition.of("optics/ratio-from-pixels", "Sighted ratio from an image", Nature.GEOMETRIC)
          .input("pixels", "p", "1", Domain.atLeast(0), "width of the stem in pixels")
          .input("focal_length_pixels", "f", "1", POSITIVE, "focal length in pixels")
          .gives("ratio", "b", "1", over(sym("p"), sym("f")))
          .cites(Citation.derived("pinhole image"))
          .note(LENS)
          .note("level camera, stem axis in the middle column")
          .kernel2(ImagePlane::ratio);

  /** Pixels that a stem fills. */
  public static final BoundFormula WIDTH =
      Definition.of("optics/image-width", "Width of a stem in an image", Nature.GEOMETRIC)
          .input("diameter", "D", "m", POSITIVE, "diameter of the stem")
          .input("axis_distance", "R", "m", POSITIVE, "horizontal distance to the stem axis")
          .input("focal_length_pixels", "f", "1", POSITIVE, "focal length in pixels")
          .relation("diameter", LESS, 2, "axis_distance", "D < 2R")
          .gives(
              "pixels",
              "p",
              "1",
              times(num(2), sym("f"), fn(TAN, fn(ASIN, over(sym("D"), times(num(2), sym("R")))))))
          .cites(Citation.derived("pinhole image of the tangent lines"))
          .note(LENS)
          .note("level camera, stem axis in the middle column")
          .kernel3(ImagePlane::width);

  /** Azimuth between two edges. */
  public static final BoundFormula AZIMUTH =
      Definition.of(
              "optics/azimuth-from-pixels",
              "Azimuth between the edges of an upright stem in an image",
              Nature.GEOMETRIC)
          .input("left", "x_1", "1", Domain.any(), "column of the left edge from the middle")
          .input("right", "x_2", "1", Domain.any(), "column of the right edge from the middle")
          .input("row", "v", "1", Domain.any(), "row of both readings from the middle, up positive")
          .input("focal_length_pixels", "f", "1", POSITIVE, "focal length in pixels")
          .input("pitch", "c", "deg", PITCH, "elevation of the camera's axis")
          .relation("left", AT_MOST, 1, "right", "x_1 ≤ x_2")
          .gives(
              "angle",
              "t",
              "deg",
              where(
                  "z",
                  minus(
                      times(sym("f"), cosDegrees(sym("c"))), times(sym("v"), sinDegrees(sym("c")))),
                  fn(
                      IN_DEGREES,
                      minus(
                          fn(ATAN, over(sym("x_2"), sym("z"))),
                          fn(ATAN, over(sym("x_1"), sym("z")))))))
          .cites(Citation.derived("a pixel is the direction (x, f, v), turned up by the pitch"))
          .note(LENS + "; z must be above zero: the row lies below the zenith")
          .note(
              "exact anywhere in the image, since the tangent planes of an upright stem are upright")
          .kernelOfArrays(x -> ImagePlane.azimuth(x[0][0], x[1][0], x[2][0], x[3][0], x[4][0]));

  /** Elevation of a row. */
  public static final BoundFormula ELEVATION =
      Definition.of("optics/elevation-from-row", "Elevation of a row of an image", Nature.GEOMETRIC)
          .input("row", "v", "1", Domain.any(), "row from the middle, up positive")
          .input("focal_length_pixels", "f", "1", POSITIVE, "focal length in pixels")
          .input("pitch", "c", "deg", PITCH, "elevation of the camera's axis")
          .gives(
              "elevation",
              "e",
              "deg",
              plus(sym("c"), fn(IN_DEGREES, fn(ATAN, over(sym("v"), sym("f"))))))
          .cites(Citation.derived("pinhole image, middle column"))
          .note(LENS)
          .kernel3(ImagePlane::elevation);

  /** The topic. */
  public static final List<BoundFormula> ALL =
      List.of(FOCAL_LENGTH, RATIO, WIDTH, AZIMUTH, ELEVATION);

  private ImageFormulas() {}
}
