package org.mensuration.benchmarks;

import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.inches;
import static org.mensuration.units.Measures.metres;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.mensuration.LogRules;
import org.mensuration.kernel.LogVolume;
import org.mensuration.log.Log;
import org.mensuration.units.ForestUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * One log by Smalian's formula in several ways: the kernel on numbers, the front door on quantities
 * in the formula's own units and in others, and the units library's own arithmetic, on metres
 * alone, which need no conversion, and on the very inputs of the two front-door calls.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SmalianBenchmark {
  private double largeCentimetres = 46;
  private double smallCentimetres = 31.5;
  private double lengthMetres = 5.2;
  private Quantity<Length> large;
  private Quantity<Length> small;
  private Quantity<Length> length;
  private Log log;
  private Log logInInches;
  private Quantity<Length> largeInches;
  private Quantity<Length> smallInches;
  private Quantity<Length> lengthFeet;
  private Quantity<Length> largeMetres;
  private Quantity<Length> smallMetres;

  /** Created by the harness. */
  public SmalianBenchmark() {}

  /** Creates the inputs, all of the same log. */
  @Setup
  public void prepare() {
    large = centimetres(largeCentimetres);
    small = centimetres(smallCentimetres);
    length = metres(lengthMetres);
    log = Log.of(large, small, length);
    largeInches = inches(in(large, ForestUnits.INCH));
    smallInches = inches(in(small, ForestUnits.INCH));
    lengthFeet = feet(in(length, ForestUnits.FOOT));
    logInInches = Log.of(largeInches, smallInches, lengthFeet);
    largeMetres = Quantities.getQuantity(largeCentimetres / 100, Units.METRE);
    smallMetres = Quantities.getQuantity(smallCentimetres / 100, Units.METRE);
  }

  /**
   * The kernel.
   *
   * @return volume in m³
   */
  @Benchmark
  public double kernel() {
    return LogVolume.smalian(largeCentimetres, smallCentimetres, lengthMetres);
  }

  /**
   * The front door with a log in the units of the formula.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> facadeNative() {
    return LogRules.smalian().volume(log);
  }

  /**
   * The front door with a log in inches and feet.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> facadeConverted() {
    return LogRules.smalian().volume(logInInches);
  }

  /**
   * The front door, the record of the log made anew for each call.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> facadeWithRecord() {
    return LogRules.smalian().volume(Log.of(large, small, length));
  }

  /**
   * The units library's arithmetic at its best: everything in metres already.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> naiveMetres() {
    return naive(largeMetres, smallMetres, length);
  }

  /**
   * The units library's arithmetic with diameters in centimetres.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> naiveCentimetres() {
    return naive(large, small, length);
  }

  /**
   * The units library's arithmetic with diameters in inches and the length in feet.
   *
   * @return volume
   */
  @Benchmark
  public Quantity<Volume> naiveInches() {
    return naive(largeInches, smallInches, lengthFeet);
  }

  private static Quantity<Volume> naive(
      Quantity<Length> large, Quantity<Length> small, Quantity<Length> length) {
    var largeArea = large.multiply(large).asType(Area.class);
    var smallArea = small.multiply(small).asType(Area.class);
    return largeArea
        .add(smallArea)
        .multiply(Math.PI / 8)
        .multiply(length)
        .asType(Volume.class)
        .to(Units.CUBIC_METRE);
  }
}
