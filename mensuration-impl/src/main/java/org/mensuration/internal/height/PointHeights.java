package org.mensuration.internal.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.gauge.CountPoint;
import org.mensuration.gauge.CountedTree;
import org.mensuration.gauge.TreeDetail;
import org.mensuration.height.HeightCurve;
import org.mensuration.height.HeightCurveSet;
import org.mensuration.height.HeightSample;

/** Heights of the trees of sample points. Stateless and thread-safe. */
public final class PointHeights {
  private PointHeights() {}

  /**
   * The living trees with a diameter; predicted heights count as missing.
   *
   * @param points the points
   * @return one sample a tree
   */
  public static List<HeightSample> samples(Iterable<CountPoint> points) {
    List<HeightSample> samples = new ArrayList<>();
    for (CountPoint point : points) {
      for (CountedTree tree : point.trees()) {
        TreeDetail detail = tree.detail();
        if (tree.diameter().isPresent() && !detail.dead()) {
          Optional<Quantity<Length>> measured =
              detail.heightPredicted() ? Optional.empty() : detail.height();
          samples.add(new HeightSample(detail.species(), tree.diameter().get(), measured));
        }
      }
    }
    return samples;
  }

  /**
   * The points with missing heights filled where there is a curve.
   *
   * @param points the points
   * @param curves the curves
   * @return new points
   */
  public static List<CountPoint> fill(Iterable<CountPoint> points, HeightCurveSet curves) {
    List<CountPoint> filled = new ArrayList<>();
    for (CountPoint point : points) {
      List<CountedTree> trees = new ArrayList<>();
      for (CountedTree tree : point.trees()) {
        HeightCurve curve = curves.curves().get(tree.detail().species());
        boolean wanted = tree.diameter().isPresent() && !tree.detail().height().isPresent();
        trees.add(
            curve == null || !wanted
                ? tree
                : tree.withPredictedHeight(curve.height(tree.diameter().get()).value()));
      }
      filled.add(point.withTrees(trees));
    }
    return filled;
  }
}
