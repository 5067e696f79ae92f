package org.mensuration.benchmarks;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs {@link SmalianBenchmark} with the allocation profiler and prints what a call costs beside
 * the kernel and beside the units library's own arithmetic. Ratios travel between machines;
 * nanoseconds do not.
 */
public final class RatioReport {
  private static final String CHEAPEST_NAIVE = "naiveMetres";
  private static final Map<String, String> SAME_INPUTS =
      Map.of("facadeNative", "naiveCentimetres", "facadeConverted", "naiveInches");

  private RatioReport() {}

  /**
   * Cost of one call.
   *
   * @param nanoseconds time of the best round
   * @param bytes memory allocated
   */
  record Cost(double nanoseconds, double bytes) {}

  /**
   * Prints the report.
   *
   * @param arguments options of the harness, such as {@code -f 1 -i 3}
   * @throws RunnerException if a benchmark fails
   * @throws CommandLineOptionException if an option is not known
   */
  public static void main(String[] arguments) throws RunnerException, CommandLineOptionException {
    var out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.print(report(measure(new CommandLineOptions(arguments))));
  }

  static Map<String, Cost> measure(Options given) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .parent(given)
            .include(SmalianBenchmark.class.getName() + "\\.")
            .addProfiler(GCProfiler.class)
            .build();
    Map<String, Cost> costs = new LinkedHashMap<>();
    for (RunResult result : new Runner(options).run()) {
      var allocated = result.getSecondaryResults().get("gc.alloc.rate.norm");
      costs.put(
          result.getPrimaryResult().getLabel(),
          // Other work on the machine only ever adds time, so the best round is nearest the truth.
          new Cost(
              result.getPrimaryResult().getStatistics().getMin(),
              allocated == null ? Double.NaN : allocated.getScore()));
    }
    return costs;
  }

  static String report(Map<String, Cost> costs) {
    Cost kernel = cost(costs, "kernel");
    Cost metres = cost(costs, CHEAPEST_NAIVE);
    StringBuilder text = new StringBuilder();
    text.append("JDK ").append(System.getProperty("java.vm.version")).append(", ");
    text.append(System.getProperty("os.name")).append(' ').append(System.getProperty("os.arch"));
    text.append(", ").append(Runtime.getRuntime().availableProcessors()).append(" processors\n");
    line(text, "call", "ns", "B", "x kernel", "naive / it", "metres / it", "goal");
    costs.forEach(
        (name, cost) ->
            line(
                text,
                name,
                number("%.2f", cost.nanoseconds()),
                number("%.0f", cost.bytes()),
                number("%.1f", cost.nanoseconds() / kernel.nanoseconds()),
                sameInputs(costs, name),
                number("%.0f", metres.nanoseconds() / cost.nanoseconds()),
                goal(name, cost, costs)));
    return text.toString();
  }

  /** How much dearer the units library's arithmetic is on the very same inputs. */
  private static String sameInputs(Map<String, Cost> costs, String name) {
    String naive = SAME_INPUTS.get(name);
    return naive == null
        ? ""
        : number("%.0f", cost(costs, naive).nanoseconds() / cost(costs, name).nanoseconds());
  }

  private static String goal(String name, Cost cost, Map<String, Cost> costs) {
    return switch (name) {
      case "kernel" -> verdict("0 B", cost.bytes() < 0.5);
      case "facadeNative" ->
          verdict(
              "25 ns, 48 B, 400 x cheaper than naive",
              meets(cost, 25, cost(costs, "naiveCentimetres")));
      case "facadeConverted" ->
          verdict(
              "40 ns, 48 B, 400 x cheaper than naive", meets(cost, 40, cost(costs, "naiveInches")));
      default -> "";
    };
  }

  private static boolean meets(Cost cost, double nanoseconds, Cost naive) {
    return cost.nanoseconds() <= nanoseconds
        && cost.bytes() < 48.5
        && naive.nanoseconds() >= 400 * cost.nanoseconds();
  }

  private static String verdict(String goal, boolean met) {
    return goal + (met ? ": met" : ": missed");
  }

  private static Cost cost(Map<String, Cost> costs, String name) {
    Cost cost = costs.get(name);
    if (cost == null) {
      throw new IllegalStateException("no result for " + name + "; leave the choice to the report");
    }
    return cost;
  }

  private static String number(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }

  private static void line(
      StringBuilder text,
      String call,
      String nanoseconds,
      String bytes,
      String kernel,
      String naive,
      String metres,
      String goal) {
    text.append(
        String.format(
                Locale.ROOT,
                "%-17s %10s %8s %10s %11s %12s  %s",
                call,
                nanoseconds,
                bytes,
                kernel,
                naive,
                metres,
                goal)
            .stripTrailing());
    text.append('\n');
  }
}
