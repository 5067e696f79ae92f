package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.SQUARE_METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;
import static org.mensuration.units.Measures.squareMetres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mensuration.edge.Boundary;
import org.mensuration.edge.EdgeRule;
import org.mensuration.edge.MapTally;
import org.mensuration.edge.MapTree;
import org.mensuration.edge.Position;
import org.mensuration.gauge.AngleGauge;

class BoundaryTest {
  private static final AngleGauge GAUGE = AngleGauges.ofFactor(squareMetresPerHectare(4));

  private static Position at(double x, double y) {
    return Position.of(metres(x), metres(y));
  }

  private static Boundary polygon(double... xy) {
    List<Position> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(at(xy[i], xy[i + 1]));
    }
    return EdgeCorrections.polygon(corners);
  }

  /** An L, its inner corner at (2, 1). */
  private static final Boundary ELL = polygon(0, 0, 4, 0, 4, 1, 2, 1, 2, 3, 0, 3);

  @Test
  void aRectangleIsBetweenOppositeCorners() {
    Boundary plot = EdgeCorrections.rectangle(at(5, -1), at(2, 3));
    assertThat(in(plot.area(), SQUARE_METRE)).isEqualTo(12);
    assertThat(plot.corners()).containsExactly(at(2, -1), at(5, -1), at(5, 3), at(2, 3));
    assertThat(plot.rectangle()).isTrue();
    assertThat(ELL.rectangle()).isFalse();
    for (Position edge : List.of(at(2, 0), at(5, 3), at(3, -1), at(3, 3))) {
      assertThat(plot.contains(edge)).isTrue();
    }
    for (Position out : List.of(at(1.9, 0), at(5.1, 0), at(3, -1.1), at(3, 3.1))) {
      assertThat(plot.contains(out)).isFalse();
    }
    assertThatThrownBy(() -> EdgeCorrections.rectangle(at(2, 0), at(2, 3)))
        .hasMessageContaining("enclose no area");
    assertThatThrownBy(() -> EdgeCorrections.rectangle(at(2, 0), at(3, 0)))
        .hasMessageContaining("enclose no area");
    assertThatThrownBy(
            () -> EdgeCorrections.rectangle(Position.of(NanLength.metres(), metres(0)), at(3, 3)))
        .hasMessage("rectangle: coordinate NaN m, wanted a finite number");
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, true",
    "3, 0.5, true",
    "1, 2.5, true",
    "3, 2, false",
    "2.5, 1.5, false",
    "0, 0, true",
    "2, 1, true",
    "2, 2, true",
    "3, 1, true",
    "4, 0.5, true",
    "0, 3, true",
    "-1, 1, false",
    "5, 1, false",
    "5, 0, false",
    "-1, 0, false",
    "-1, 3, false",
    "3, 3, false",
    "1, 1.0, true",
    "3.5, 1.00001, false",
    "1, 0, true",
    "2, 3, true",
    "2.00001, 2, false"
  })
  void aPolygonHoldsItsEdge(double x, double y, boolean inside) {
    assertThat(ELL.contains(at(x, y))).isEqualTo(inside);
    List<Position> reversed = new ArrayList<>(ELL.corners());
    Collections.reverse(reversed);
    assertThat(EdgeCorrections.polygon(reversed).contains(at(x, y))).isEqualTo(inside);
  }

  @Test
  void theEdgeIsDecidedWithoutRounding() {
    // 0.1 + 0.2 is not 0.3 in doubles; the corner (0.3, 0.3) is, and its neighbours are not.
    Boundary slanted = polygon(0, 0, 1, 0, 1, 1);
    assertThat(slanted.contains(at(0.3, 0.3))).isTrue();
    assertThat(slanted.contains(at(0.3, Math.nextUp(0.3)))).isFalse();
    assertThat(slanted.contains(at(0.3, Math.nextDown(0.3)))).isTrue();
  }

  @Test
  void areaDoesNotDependOnTheWayRound() {
    assertThat(in(ELL.area(), SQUARE_METRE)).isEqualTo(8);
    List<Position> reversed = new ArrayList<>(ELL.corners());
    Collections.reverse(reversed);
    assertThat(in(EdgeCorrections.polygon(reversed).area(), SQUARE_METRE)).isEqualTo(8);
    assertThat(EdgeCorrections.polygon(reversed).corners())
        .containsExactlyInAnyOrderElementsOf(ELL.corners());
  }

  @Test
  void polygonsThatEncloseNothingClearAreRefused() {
    assertThatThrownBy(() -> polygon(0, 0, 1, 1))
        .hasMessage("polygon: 2 corners, wanted at least 3");
    assertThatThrownBy(() -> polygon(0, 0, 4, 4, 4, 0, 0, 4)).hasMessageContaining("meet");
    assertThatThrownBy(() -> polygon(0, 0, 4, 0, 4, 0, 0, 4))
        .hasMessage("polygon: the corner (4.0, 0.0) m is given twice");
    assertThatThrownBy(() -> polygon(0, 0, 4, 0, 2, 0)).hasMessageContaining("back on itself");
    assertThatThrownBy(() -> polygon(0, 0, 2, 0, -1, 0, 0, 5))
        .hasMessageContaining("back on itself");
    assertThatThrownBy(() -> polygon(0, 0, 4, 0, 4, 4, 2, 0, 0, 4)).hasMessageContaining("meet");
    Position bad = Position.of(metres(4), NanLength.metres());
    assertThatThrownBy(() -> EdgeCorrections.polygon(List.of(at(0, 0), bad, at(4, 4))))
        .hasMessage("polygon, corner 2: coordinate NaN m, wanted a finite number");
  }

  @Test
  void circlesAreCutByAPolygon() {
    Boundary plot = polygon(0, 0, 40, 0, 40, 10, 20, 10, 20, 30, 0, 30);
    MapTally tally =
        EdgeCorrections.tally(
            List.of(MapTree.of("inner", at(20, 10), centimetres(20))), GAUGE, plot, EdgeRule.NONE);
    assertThat(in(tally.countedArea("inner").orElseThrow(), SQUARE_METRE))
        .isCloseTo(0.75 * Math.PI * 25, within(1e-12));
  }

  @Test
  void mirageAtAPolygonsSideNeedsTheSightToCrossIt() {
    // Mirrored at the line through the inner side x = 20, the point would see the tree through air.
    Boundary plot = polygon(0, 0, 40, 0, 40, 10, 20, 10, 20, 30, 0, 30);
    MapTally tally =
        EdgeCorrections.tally(
            List.of(
                MapTree.of("low", at(19, 5), centimetres(40)),
                MapTree.of("high", at(19, 25), centimetres(40))),
            GAUGE,
            plot,
            EdgeRule.MIRAGE_SIDES_ONLY);
    assertThat(tally.idsFrom(at(17, 27))).containsExactly("high", "high", "high");
    assertThat(tally.idsFrom(at(18, 4))).containsExactly("low", "low");
  }

  @Test
  void aBoundaryOfAnotherMakeIsTakenByItsCorners() {
    Boundary own = EdgeCorrections.rectangle(at(0, 0), at(40, 30));
    Boundary other = foreign(own.corners(), true);
    MapTree tree = MapTree.of("t", at(1, 1), centimetres(16));
    assertThat(
            EdgeCorrections.tally(List.of(tree), GAUGE, other, EdgeRule.MIRAGE).idsFrom(at(1, 1)))
        .hasSize(4);
    assertThat(
            EdgeCorrections.tally(
                    List.of(tree), GAUGE, foreign(own.corners(), false), EdgeRule.MIRAGE_SIDES_ONLY)
                .idsFrom(at(1, 1)))
        .hasSize(3);
  }

  private static Boundary foreign(List<Position> corners, boolean rectangle) {
    return new Boundary() {
      @Override
      public boolean contains(Position position) {
        return true;
      }

      @Override
      public Quantity<Area> area() {
        return squareMetres(1);
      }

      @Override
      public List<Position> corners() {
        return corners;
      }

      @Override
      public boolean rectangle() {
        return rectangle;
      }
    };
  }
}
