package org.mensuration.internal.stem;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.mensuration.formula.Formula;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.stem.TaperCurve;
import org.mensuration.units.ForestUnits;
import org.mensuration.units.Measures;
import org.mensuration.units.UnitReader;

/** A taper curve by its formulas of diameter and volume. Immutable and thread-safe. */
final class FormulaTaper implements TaperCurve {
  private static final UnitReader<Length> METRES = UnitReader.in(ForestUnits.METRE);
  private static final UnitReader<Length> CENTIMETRES = UnitReader.in(ForestUnits.CENTIMETRE);
  private static final int MOST_STEPS = 200;
  private static final double RELATIVE = Math.ulp(1.0);
  private static final double TINY = 1e-300;

  private final BoundFormula diameter;
  private final BoundFormula volume;
  private final double[] head;
  private final double[] coefficients;
  private final double height;
  private final double[] turns;

  /**
   * A curve.
   *
   * @param diameter its formula of the diameter
   * @param volume its formula of the volume
   * @param head first inputs of both, the height of the tip last
   * @param coefficients last inputs of both
   * @param turns relative heights between which the diameter only rises or only falls, in order
   */
  FormulaTaper(
      BoundFormula diameter,
      BoundFormula volume,
      double[] head,
      double[] coefficients,
      double... turns) {
    this.diameter = diameter;
    this.volume = volume;
    this.head = head.clone();
    this.coefficients = coefficients.clone();
    this.height = head[head.length - 1];
    List<Double> places = new ArrayList<>();
    places.add(0.0);
    for (double turn : turns) {
      if (turn < 1 && turn * height > places.get(places.size() - 1)) {
        places.add(turn * height);
      }
    }
    places.add(height);
    this.turns = places.stream().mapToDouble(place -> place).toArray();
    for (double place : this.turns) {
      if (!(at(place) >= 0)) {
        throw new IllegalArgumentException(
            diameter.title()
                + " ("
                + diameter.id()
                + "): "
                + at(place)
                + " cm at "
                + place
                + " m with these coefficients, allowed [0, ∞) cm from ground to tip");
      }
    }
  }

  private double at(double metres) {
    return diameter.applyTo(inputs(metres));
  }

  private double[][] inputs(double... between) {
    double[][] inputs = new double[head.length + between.length + coefficients.length][];
    int next = 0;
    for (double[] part : new double[][] {head, between, coefficients}) {
      for (double value : part) {
        inputs[next++] = new double[] {value};
      }
    }
    return inputs;
  }

  @Override
  public Formula formula() {
    return diameter;
  }

  @Override
  public List<Double> coefficients() {
    List<Double> list = new ArrayList<>();
    for (double coefficient : coefficients) {
      list.add(coefficient);
    }
    return Collections.unmodifiableList(list);
  }

  @Override
  public Quantity<Length> height() {
    return Measures.metres(height);
  }

  @Override
  public Quantity<Length> diameterAt(Quantity<Length> height) {
    return Measures.centimetres(at(METRES.read(height)));
  }

  @Override
  public List<Quantity<Length>> heightsOf(Quantity<Length> diameter) {
    double wanted = CENTIMETRES.read(diameter);
    if (!(wanted >= 0 && wanted < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("diameter: " + wanted + " cm, allowed [0, ∞) cm");
    }
    List<Quantity<Length>> heights = new ArrayList<>();
    for (int i = 0; i + 1 < turns.length; i++) {
      double low = at(turns[i]) - wanted;
      double high = at(turns[i + 1]) - wanted;
      if (low == 0) {
        heights.add(Measures.metres(turns[i]));
      }
      if (low * high < 0) {
        heights.add(
            Measures.metres(
                new BrentSolver(RELATIVE, TINY, 0)
                    .solve(MOST_STEPS, h -> at(h) - wanted, turns[i], turns[i + 1])));
      }
      if (high == 0 && i + 2 == turns.length) {
        heights.add(Measures.metres(turns[i + 1]));
      }
    }
    return List.copyOf(heights);
  }

  @Override
  public Quantity<Volume> volume() {
    return Measures.cubicMetres(volume.applyTo(inputs(0, height)));
  }

  @Override
  public Quantity<Volume> volume(Quantity<Length> from, Quantity<Length> to) {
    return Measures.cubicMetres(volume.applyTo(inputs(METRES.read(from), METRES.read(to))));
  }

  @Override
  public Quantity<Length> heightOfPart(Quantity<Length> from, Quantity<Length> to, double part) {
    if (!(part >= 0 && part <= 1)) {
      throw new IllegalArgumentException("part of the volume: " + part + ", allowed [0, 1]");
    }
    double low = METRES.read(from);
    double high = METRES.read(to);
    double wanted = part * volume.applyTo(inputs(low, high));
    if (!(part > 0 && part < 1 && low < high)) {
      return part > 0 ? to : from;
    }
    return Measures.metres(
        new BrentSolver(RELATIVE, TINY, 0)
            .solve(MOST_STEPS, h -> volume.applyTo(inputs(low, h)) - wanted, low, high));
  }
}
