package org.mensuration.internal.statistics;

import java.util.function.DoubleSupplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.TSampler;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.mensuration.kernel.CoverageRanks;
import org.mensuration.uncertainty.InputDistribution;

/** Draws of one input from a source of random bits. Stateless and thread-safe. */
final class InputSampler {
  private InputSampler() {}

  /** A supplier of draws; as little thread-safe as the source. */
  static DoubleSupplier of(InputDistribution input, UniformRandomProvider source) {
    if (input instanceof InputDistribution.Normal normal) {
      return sampler(NormalDistribution.of(normal.mean(), normal.standardUncertainty()), source);
    }
    if (input instanceof InputDistribution.Rectangular rectangular) {
      double middle = rectangular.middle();
      double halfWidth = rectangular.halfWidth();
      return sampler(
          UniformContinuousDistribution.of(middle - halfWidth, middle + halfWidth), source);
    }
    if (input instanceof InputDistribution.Triangular triangular) {
      double middle = triangular.middle();
      double halfWidth = triangular.halfWidth();
      return sampler(
          TriangularDistribution.of(middle - halfWidth, middle, middle + halfWidth), source);
    }
    if (input instanceof InputDistribution.ArcSine arcSine) {
      double middle = arcSine.middle();
      double halfWidth = arcSine.halfWidth();
      return () -> CoverageRanks.swung(middle, halfWidth, source.nextDouble());
    }
    if (input instanceof InputDistribution.StudentT student) {
      // The distribution itself would search for each draw; this sampler need not.
      TSampler sampler = TSampler.of(source, student.degreesOfFreedom());
      return () -> student.mean() + student.scale() * sampler.sample();
    }
    double exact = ((InputDistribution.Exact) input).value();
    return () -> exact;
  }

  private static DoubleSupplier sampler(
      ContinuousDistribution distribution, UniformRandomProvider source) {
    ContinuousDistribution.Sampler sampler = distribution.createSampler(source);
    return sampler::sample;
  }
}
