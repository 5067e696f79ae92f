package org.mensuration.benchmarks;

import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.squareMetresPerHectare;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.mensuration.AngleGauges;
import org.mensuration.Stands;
import org.mensuration.gauge.AngleGauge;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.kernel.LimitingDistance;
import org.mensuration.stand.StandEstimate;
import org.mensuration.stand.StandTally;
import org.mensuration.stand.TallyPlan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A stand of few and of many trees a point: a plain loop in double arithmetic, the tally fed with
 * numbers, and records collected by one thread and by several; beside them the same records only
 * read by one thread and by several, which shows what the cores of the machine allow. Times are for
 * the whole stand. The heap is touched beforehand: where pages are dear, the first touch of a page
 * would be measured else. Where a scheduler now and then wakes the second thread late, the mean
 * shows it; {@code -bm sample} gives the median too.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
    value = 2,
    jvmArgsAppend = {"-Xms4g", "-Xmx4g", "-XX:+AlwaysPreTouch"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StandTallyBenchmark {
  private static final double FACTOR = 4;

  private final AngleGauge gauge = AngleGauges.ofFactor(squareMetresPerHectare(FACTOR));

  /** Points of the stand. */
  @Param({"100", "14300", "143000"})
  public int points = 14_300;

  /** Trees of each point. */
  @Param({"7", "70"})
  public int trees = 7;

  private String[] ids = {};
  private double[] diameters = {};
  private List<CountPoint> records = List.of();

  /** Created by the harness. */
  public StandTallyBenchmark() {}

  /** Draws the stand. */
  @Setup
  public void prepare() {
    Random random = new Random(6);
    ids = new String[points];
    diameters = new double[points * trees];
    records = new ArrayList<>(points);
    for (int p = 0; p < points; p++) {
      ids[p] = "point " + p;
      List<CountedTree> counted = new ArrayList<>(trees);
      for (int t = 0; t < trees; t++) {
        double diameter = Math.rint(100 + 500 * random.nextDouble()) / 10;
        diameters[p * trees + t] = diameter;
        counted.add(CountedTree.of(centimetres(diameter)));
      }
      records.add(new CountPoint(ids[p], counted));
    }
  }

  /**
   * Stems per hectare by a plain loop: nothing checked, no errors, no order kept.
   *
   * @return stems per hectare
   */
  @Benchmark
  public double plainLoop() {
    double sum = 0;
    for (double diameter : diameters) {
      sum += LimitingDistance.treeFactor(FACTOR, diameter);
    }
    return sum / points;
  }

  /**
   * The records only read, by one thread.
   *
   * @return stems per hectare
   */
  @Benchmark
  public double readOneThread() {
    return records.stream().mapToDouble(StandTallyBenchmark::stems).sum() / points;
  }

  /**
   * The records only read, by all cores: no parallel pass over them can gain more on this machine.
   *
   * @return stems per hectare
   */
  @Benchmark
  public double readParallel() {
    return records.parallelStream().mapToDouble(StandTallyBenchmark::stems).sum() / points;
  }

  private static double stems(CountPoint point) {
    double sum = 0;
    for (CountedTree tree : point.trees()) {
      sum +=
          LimitingDistance.treeFactor(
              FACTOR, tree.diameter().orElseThrow().getValue().doubleValue());
    }
    return sum;
  }

  /**
   * The tally fed with numbers.
   *
   * @return the estimate
   */
  @Benchmark
  public StandEstimate numbers() {
    StandTally tally = Stands.tally(TallyPlan.of(gauge));
    int next = 0;
    for (String id : ids) {
      tally.begin(id);
      for (int t = 0; t < trees; t++) {
        tally.tree(diameters[next++], 1, 1);
      }
      tally.end();
    }
    return tally.estimate();
  }

  /**
   * Records, one thread.
   *
   * @return the estimate
   */
  @Benchmark
  public StandEstimate recordsOneThread() {
    return records.stream().collect(Stands.tallying(gauge));
  }

  /**
   * Records, all cores.
   *
   * @return the estimate
   */
  @Benchmark
  public StandEstimate recordsParallel() {
    return records.parallelStream().collect(Stands.tallying(gauge));
  }
}
