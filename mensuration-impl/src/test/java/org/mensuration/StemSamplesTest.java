package org.mensuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.ForestUnits.CUBIC_METRE;
import static org.mensuration.units.ForestUnits.METRE;
import static org.mensuration.units.Measures.centimetres;
import static org.mensuration.units.Measures.in;
import static org.mensuration.units.Measures.metres;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.mensuration.stem.StemReading;
import org.mensuration.stem.TaperCurve;

class StemSamplesTest {
  private static final Quantity<Length> HEIGHT = metres(20);

  /** Solids of 50 cm and 20 m by the exponent of the diameter. */
  private static TaperCurve solid(double exponent) {
    return Tapers.power(centimetres(50), metres(0), HEIGHT, exponent);
  }

  private static StemReading read(TaperCurve stem, Quantity<Length> height) {
    return StemReading.of(height, stem.diameterAt(height));
  }

  @Test
  void theMeanOverTheRandomNumberIsTheVolumeOfParaboloidConeAndNeiloid() {
    int n = 2000;
    for (double exponent : new double[] {0.5, 1, 1.5}) {
      TaperCurve stem = solid(exponent);
      double truth = in(stem.volume(), CUBIC_METRE);
      List<StemReading> readings = new ArrayList<>();
      List<StemReading> pairs = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double u = (i + 0.5) / n;
        readings.add(read(stem, StemSamples.height(HEIGHT, u)));
        StemSamples.antitheticHeights(HEIGHT, u).forEach(h -> pairs.add(read(stem, h)));
      }
      assertThat(in(StemSamples.importance(readings, HEIGHT), CUBIC_METRE))
          .isCloseTo(truth, within(2e-5 * truth));
      assertThat(in(StemSamples.importance(pairs, HEIGHT), CUBIC_METRE))
          .isCloseTo(truth, within(2e-5 * truth));
    }
  }

  @Test
  void anotherProxyIsWithoutBiasToo() {
    TaperCurve stem = Tapers.quadratic(centimetres(45), HEIGHT, 1.1, -1.3, 0.2);
    double truth = in(stem.volume(metres(0.3), metres(16)), CUBIC_METRE);
    for (double exponent : new double[] {0.5, 1, 1.5}) {
      double coarse = mean(stem, solid(exponent), 500);
      double fine = mean(stem, solid(exponent), 1000);
      // Means over evenly spread numbers err by 1/n², so these two tell where they lead; what the
      // tip of the proxy adds falls more slowly and is less than a tenth of what is taken away.
      assertThat((4 * fine - coarse) / 3)
          .isCloseTo(truth, within(Math.max(1e-12 * truth, 0.1 * Math.abs(coarse - truth))));
      assertThat(Math.abs(fine - truth)).isLessThan(0.3 * Math.abs(coarse - truth));
    }
  }

  private static double mean(TaperCurve stem, TaperCurve proxy, int n) {
    List<StemReading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      readings.add(read(stem, StemSamples.height(proxy, metres(0.3), metres(16), (i + 0.5) / n)));
    }
    return in(StemSamples.importance(readings, proxy, metres(0.3), metres(16)), CUBIC_METRE);
  }

  @Test
  void antitheticPairsSpreadLessThanTwoHeightsOfTheirOwn() {
    TaperCurve stem = solid(1);
    double truth = in(stem.volume(), CUBIC_METRE);
    double single = 0;
    double pair = 0;
    for (int i = 0; i < 500; i++) {
      double u = (i + 0.5) / 500;
      double one =
          in(
              StemSamples.importance(List.of(read(stem, StemSamples.height(HEIGHT, u))), HEIGHT),
              CUBIC_METRE);
      List<StemReading> both = new ArrayList<>();
      StemSamples.antitheticHeights(HEIGHT, u).forEach(h -> both.add(read(stem, h)));
      double mean = in(StemSamples.importance(both, HEIGHT), CUBIC_METRE);
      single += (one - truth) * (one - truth) / 2;
      pair += (mean - truth) * (mean - truth);
    }
    assertThat(pair).isLessThan(0.2 * single);
  }

  @Test
  void theCentroidIsExactForParaboloidAndNeiloidOnly() {
    Quantity<Length> at = StemSamples.centroidHeight(HEIGHT);
    assertThat(in(at, METRE)).isCloseTo(20 * (1 - Math.sqrt(0.5)), within(1e-13));
    double[] ratios = {1, 1.0606601717798212, 1};
    for (int i = 0; i < 3; i++) {
      TaperCurve stem = solid(0.5 + i / 2.0);
      double ratio =
          in(StemSamples.centroid(stem.diameterAt(at), HEIGHT), CUBIC_METRE)
              / in(stem.volume(), CUBIC_METRE);
      assertThat(ratio).isCloseTo(ratios[i], within(1e-13));
    }
  }

  @Test
  void threePTotals() {
    assertThat(StemSamples.threePTotal(12000, 1.0625)).isEqualTo(12750);
    assertThat(StemSamples.threePUnadjusted(new double[] {1.25, 0.75, 1}, 600)).isEqualTo(1800);
  }

  @Test
  void noReadingAndNoRandomNumberAreRefused() {
    assertThatThrownBy(() -> StemSamples.importance(List.of(), HEIGHT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no reading");
    assertThatThrownBy(() -> StemSamples.height(HEIGHT, 1)).hasMessageContaining("u = 1");
    assertThatThrownBy(() -> StemSamples.antitheticHeights(HEIGHT, 0)).hasMessageContaining("u =");
  }
}
