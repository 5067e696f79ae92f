package org.mensuration.internal.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.mensuration.formula.OutOfDomainException;
import org.mensuration.gauge.FixedPlots;
import org.mensuration.gauge.LimitPosition;
import org.mensuration.internal.catalogue.GaugeDistanceFormulas;
import org.mensuration.internal.catalogue.PlotFormulas;
import org.mensuration.internal.gauge.LimitJudge;
import org.mensuration.kernel.Limits;
import org.mensuration.quantity.StemsPerArea;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** Circles around one centre. Immutable and thread-safe. */
public final class NestedPlots implements FixedPlots {
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Area> SQUARE_METRES = UnitReader.in(ForestUnits.SQUARE_METRE);

  private final List<Circle> circles;
  private final double[] smallest;
  private final double[] radius;
  private final double[] expansion;

  private NestedPlots(List<Circle> circles) {
    this.circles = circles;
    this.smallest = new double[circles.size()];
    this.radius = new double[circles.size()];
    this.expansion = new double[circles.size()];
    for (int i = 0; i < circles.size(); i++) {
      smallest[i] = smallest(circles.get(i));
      double area = SQUARE_METRES.read(circles.get(i).area());
      radius[i] = PlotFormulas.RADIUS.value(area);
      expansion[i] = PlotFormulas.EXPANSION_FACTOR.value(area);
      if (i > 0 && !(smallest[i] > smallest[i - 1])) {
        throw new IllegalArgumentException(
            "two circles begin at the diameter " + circles.get(i).smallestDiameter());
      }
    }
  }

  /**
   * Nested circles.
   *
   * @param circles in any order
   * @return the plots
   * @throws IllegalArgumentException if there is none, or two begin at one diameter
   * @throws OutOfDomainException if an area is not above zero
   */
  public static NestedPlots of(List<Circle> circles) {
    if (circles.isEmpty()) {
      throw new IllegalArgumentException("a plot needs at least one circle");
    }
    List<Circle> sorted = new ArrayList<>(circles);
    sorted.sort(Comparator.comparingDouble(NestedPlots::smallest));
    return new NestedPlots(List.copyOf(sorted));
  }

  private static double smallest(Circle circle) {
    double diameter = CENTIMETRES.read(circle.smallestDiameter());
    if (!(diameter >= 0 && diameter < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "smallest diameter of a circle " + circle.smallestDiameter() + ", allowed from 0");
    }
    return diameter;
  }

  @Override
  public List<Circle> circles() {
    return circles;
  }

  @Override
  public Circle circleFor(Quantity<Length> diameter) {
    return circles.get(index(CENTIMETRES.read(diameter)));
  }

  @Override
  public Quantity<StemsPerArea> treeFactor(Quantity<Length> diameter) {
    return Measures.perHectare(expansion[index(CENTIMETRES.read(diameter))]);
  }

  @Override
  public LimitPosition judge(Quantity<Length> diameter, Quantity<Length> distanceToCentre) {
    double metres = METRES.read(distanceToCentre);
    return LimitJudge.judge(PlotFormulas.RADIUS, metres, radius[index(CENTIMETRES.read(diameter))]);
  }

  /**
   * Stems per hectare of a tree.
   *
   * @param diameterCm diameter in cm
   * @return 0 if the tree is thinner than all circles take
   */
  public double stemsPerHectare(double diameterCm) {
    int circle = find(diameterCm);
    return circle < 0 ? 0 : expansion[circle];
  }

  /**
   * Radius of the circle of a tree.
   *
   * @param diameterCm diameter in cm
   * @return in m; 0 if the tree is thinner than all circles take
   */
  public double radius(double diameterCm) {
    int circle = find(diameterCm);
    return circle < 0 ? 0 : radius[circle];
  }

  private int index(double diameterCm) {
    int circle = diameterCm > 0 && diameterCm < Double.POSITIVE_INFINITY ? find(diameterCm) : -1;
    if (circle < 0) {
      String allowed =
          smallest[0] > 0 ? "[" + smallest[0] + ", ∞), what the circles take" : "(0, ∞)";
      throw new OutOfDomainException(
          GaugeDistanceFormulas.TREE_FACTOR, "diameter", diameterCm, "cm", allowed);
    }
    return circle;
  }

  private int find(double diameterCm) {
    int circle = smallest.length - 1;
    while (circle >= 0 && !Limits.reaches(diameterCm, smallest[circle])) {
      circle--;
    }
    return circle;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NestedPlots plots && circles.equals(plots.circles);
  }

  @Override
  public int hashCode() {
    return circles.hashCode();
  }

  @Override
  public String toString() {
    return "nested plots " + circles;
  }
}
