package org.mensuration.internal.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mensuration.units.Measures.metres;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.mensuration.edge.Position;

class ExactGeometryTest {
  /** An L of 4 m by 4 m without its upper right quarter. */
  private static final PolygonBoundary ANGLE = polygon(0, 0, 4, 0, 4, 2, 2, 2, 2, 4, 0, 4);

  private static PolygonBoundary polygon(double... coordinates) {
    Position[] corners = new Position[coordinates.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Position.of(metres(coordinates[2 * i]), metres(coordinates[2 * i + 1]));
    }
    return PolygonBoundary.of(List.of(corners));
  }

  @Property(tries = 300)
  void theSideOfALineIsThatOfDecimals(@ForAll long seed) {
    Random random = new Random(seed);
    double ax = 100 * random.nextDouble();
    double ay = 100 * random.nextDouble();
    double bx = ax + random.nextGaussian();
    double by = ay + random.nextGaussian();
    double share = 3 * random.nextDouble();
    // Next to the line, where doubles alone decide wrongly, and off it.
    double px = ax + share * (bx - ax) + (random.nextBoolean() ? random.nextGaussian() : 0);
    double py = ay + share * (by - ay) + random.nextInt(3) * 1e-15;
    BigDecimal left = minus(bx, ax).multiply(minus(py, ay));
    BigDecimal right = minus(by, ay).multiply(minus(px, ax));
    assertThat(Exact.side(ax, ay, bx, by, px, py)).isEqualTo(left.compareTo(right));
    assertThat(Exact.side(ax, ay, bx, by, bx, by)).isZero();
  }

  @Test
  void besideALineThroughFarPlacesTheLastDigitsDecide() {
    double step = Math.ulp(0.5);
    for (int i = 0; i < 64; i++) {
      for (int j = 0; j < 64; j++) {
        // From a place above the diagonal the line passes under its far end, which is left of it.
        int side = Exact.side(0.5 + i * step, 0.5 + j * step, 12, 12, 24, 24);
        assertThat(side).as(i + " " + j).isEqualTo(Integer.signum(j - i));
      }
    }
    assertThat(Exact.side(7, 7, 7, 7, 7, 7)).isZero();
  }

  private static BigDecimal minus(double left, double right) {
    return new BigDecimal(left).subtract(new BigDecimal(right));
  }

  @Test
  void aTreeAtItsLimitIsWithinAndOneBeyondIsNot() {
    // 4 · 1 · (3² + 4²) = 10²
    assertThat(within(10, 3, 4)).isTrue();
    assertThat(within(Math.nextDown(10.0), 3, 4)).isFalse();
    assertThat(within(10, Math.nextUp(3.0), 4)).isFalse();
    assertThat(within(10, 3, Math.nextDown(4.0))).isTrue();
    assertThat(within(10, 30, 40)).isFalse();
    assertThat(within(10, 0, 0)).isTrue();
  }

  @Test
  void imagesDecideWithoutRoundingToo() {
    RectangleBoundary tract = new RectangleBoundary(0, 0, 20, 30);
    Image west = Image.mirrored(tract, false).get(0);
    for (Image image : Image.mirrored(tract, true)) {
      double x = image.x(1);
      double y = image.y(2);
      assertThat(image.exactX(1)).isEqualByComparingTo(new BigDecimal(x));
      assertThat(image.exactY(2)).isEqualByComparingTo(new BigDecimal(y));
      assertThat(Exact.within(1, 10, image, 1, 2, x + 3, y + 4)).isTrue();
      assertThat(Exact.within(1, Math.nextDown(10.0), image, 1, 2, x + 3, y + 4)).isFalse();
    }
    assertThat(Image.mirrored(tract, true)).hasSize(9);
    assertThat(Image.mirrored(tract, false)).hasSize(5).contains(west);
    assertThat(Image.wrapped(tract)).extracting(Image::shiftX).containsOnly(-20.0, 0.0, 20.0);
    assertThat(Image.wrapped(tract)).extracting(Image::shiftY).containsOnly(-30.0, 0.0, 30.0);
  }

  private static boolean within(double diameterCm, double x, double y) {
    return Exact.within(1, diameterCm, Image.SELF, 0, 0, x, y);
  }

  @Test
  void anAngleHoldsItsSidesAndNotItsNotch() {
    for (double[] in :
        new double[][] {{1, 1}, {3, 1}, {1, 3}, {0, 0}, {4, 2}, {2, 3}, {3, 2}, {2, 2}}) {
      assertThat(ANGLE.holds(in[0], in[1])).as(in[0] + " " + in[1]).isTrue();
    }
    for (double[] out :
        new double[][] {
          {3, 3},
          {-1, 1},
          {5, 1},
          {5, 2},
          {-1, 2},
          {-1, 0},
          {-1, 4},
          {2, 5},
          {3, 4},
          {5, 0},
          {2.0000001, 3}
        }) {
      assertThat(ANGLE.holds(out[0], out[1])).as(out[0] + " " + out[1]).isFalse();
    }
  }

  @Test
  void aLineMeetsASideWithItsEnds() {
    // Side 0 runs from (0, 0) to (4, 0).
    assertThat(ANGLE.meets(0, 1, -1, 1, 1)).isTrue();
    assertThat(ANGLE.meets(0, 5, -1, 5, 1)).isFalse();
    assertThat(ANGLE.meets(0, 1, 1, 2, 3)).isFalse();
    assertThat(ANGLE.meets(0, 1, 0, 1, 3)).as("starts on it").isTrue();
    assertThat(ANGLE.meets(0, 1, 3, 1, 0)).as("ends on it").isTrue();
    assertThat(ANGLE.meets(0, 1, 3, 1, 1e-9)).isFalse();
    assertThat(ANGLE.meets(0, -1, 0, 5, 0)).as("along it").isTrue();
    assertThat(ANGLE.meets(0, 5, 0, 6, 0)).as("along its line").isFalse();
    assertThat(ANGLE.meets(0, -2, 0, -1, 0)).isFalse();
    assertThat(ANGLE.meets(0, -1, -1, 1, 1)).as("through its start").isTrue();
    assertThat(ANGLE.meets(0, 3, -1, 5, 1)).as("through its end").isTrue();
    assertThat(ANGLE.meets(0, -3, -3, -1, -1)).as("toward its start").isFalse();
    assertThat(ANGLE.meets(0, 6, 2, 5, 1)).as("toward its end").isFalse();
    assertThat(ANGLE.innerSide(0, 9, 1)).isTrue();
    assertThat(ANGLE.innerSide(0, 9, 0)).isTrue();
    assertThat(ANGLE.innerSide(0, 1, -1)).isFalse();
  }

  @Test
  void cornersMayRunEitherWay() {
    PolygonBoundary clockwise = polygon(0, 4, 2, 4, 2, 2, 4, 2, 4, 0, 0, 0);
    assertThat(clockwise.squareMetres()).isEqualTo(12);
    for (int side = 0; side < 6; side++) {
      assertThat(clockwise.innerSide(side, 1, 1)).isTrue();
    }
    assertThat(clockwise.holds(3, 3)).isFalse();
  }
}
