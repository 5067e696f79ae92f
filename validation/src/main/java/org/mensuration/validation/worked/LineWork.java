package org.mensuration.validation.worked;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.mensuration.Estimators;
import org.mensuration.stand.EstimatedNumber;
import org.mensuration.validation.worked.LineEstimate.LineSum;
import org.mensuration.validation.worked.NotedLine.LineTree;

/**
 * Works lines out, a stratum and a kind of choice at a time. Lines need not be of one length, so
 * the mean is a ratio: what all lines say, over their length. Not thread-safe.
 */
final class LineWork {
  private final Arithmetic arithmetic;
  private final Cautions cautions;

  private LineWork(Arithmetic arithmetic, Cautions cautions) {
    this.arithmetic = arithmetic;
    this.cautions = cautions;
  }

  static List<LineEstimate> estimates(
      Arithmetic arithmetic, Collection<Stratum> strata, List<NotedLine> lines, Cautions cautions) {
    var work = new LineWork(arithmetic, cautions);
    List<LineEstimate> estimates = new ArrayList<>();
    for (Stratum stratum : strata) {
      for (boolean byTop : new boolean[] {false, true}) {
        List<NotedLine> own =
            lines.stream()
                .filter(l -> l.stratum().name().equals(stratum.name()))
                .filter(l -> l.angle().isPresent() == byTop)
                .toList();
        if (!own.isEmpty()) {
          estimates.add(work.estimate(stratum, own));
        }
      }
    }
    return estimates;
  }

  private LineEstimate estimate(Stratum stratum, List<NotedLine> lines) {
    boolean volumes = true;
    for (NotedLine line : lines) {
      for (LineTree tree : line.counted()) {
        if (tree.volume().isEmpty()) {
          volumes = false;
          cautions.add(
              "Trees on lines without a volume, so no volume from these lines",
              "line " + line.name() + " tree " + tree.tree());
        }
      }
    }
    List<LineSum> sums = new ArrayList<>();
    for (NotedLine line : lines) {
      sums.add(sum(line, volumes));
    }
    return new LineEstimate(
        stratum,
        sums,
        mean(sums, LineSum::basalArea),
        mean(sums, LineSum::stems),
        volumes ? mean(sums, s -> s.volume().orElseThrow()) : null);
  }

  private LineSum sum(NotedLine line, boolean volumes) {
    double basalArea = 0;
    double stems = 0;
    double volume = 0;
    for (LineTree tree : line.counted()) {
      double dbh = tree.dbh().orElseThrow();
      double factor =
          line.angle().isPresent()
              ? arithmetic.topTreeFactor(
                  line.angle().getAsDouble(), tree.height().orElseThrow(), line.length())
              : arithmetic.lineTreeFactor(line.length(), line.factor().orElseThrow(), dbh);
      stems += factor;
      basalArea += factor * arithmetic.treeBasalArea(dbh);
      volume += factor * tree.volume().orElse(0);
    }
    return new LineSum(
        line, basalArea, stems, volumes ? OptionalDouble.of(volume) : OptionalDouble.empty());
  }

  private Estimate mean(List<LineSum> sums, ToDoubleFunction<LineSum> figure) {
    double[] lengths = sums.stream().mapToDouble(s -> s.line().length()).toArray();
    if (sums.size() == 1) {
      return Estimate.of(arithmetic, figure.applyAsDouble(sums.get(0)), OptionalDouble.empty(), 0);
    }
    double[] along =
        sums.stream().mapToDouble(s -> figure.applyAsDouble(s) * s.line().length()).toArray();
    EstimatedNumber mean = Estimators.ratio(lengths, along, 0);
    return Estimate.of(
        arithmetic, mean.value(), OptionalDouble.of(mean.standardError()), mean.degreesOfFreedom());
  }
}
