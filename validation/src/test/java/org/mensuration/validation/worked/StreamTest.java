package org.mensuration.validation.worked;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;

/**
 * Many trees. Here 200,000 keep the test quick; the whole million was run in a heap of 128 MiB by
 * giving the command a folder with such a file.
 */
class StreamTest {
  private static final int TREES = 200_000;
  private static final int POINTS = 40;

  @Test
  void treesAreAddedAndForgotten() {
    var stratum = StandFile.read(StreamTest::open, new Problems(), new Cautions());
    Set<TreeKey> measured = Set.of(new TreeKey("7", "7"));
    var cautions = new Cautions();
    var problems = new Problems();

    var file =
        PointFile.read(
            StreamTest::open,
            new Arithmetic(Catalogues.standard()),
            stratum,
            measured,
            PrintUnits.METRIC,
            problems,
            cautions);

    assertThat(problems.none()).isTrue();
    assertThat(file.points()).hasSize(POINTS);
    assertThat(file.points().stream().mapToLong(PointSum::trees).sum()).isEqualTo(TREES);
    assertThat(file.points().get(0).count()).isEqualTo(TREES / POINTS);
    assertThat(file.diameters().keySet()).isEqualTo(measured);
    // Each tree is dead, so there is a caution a tree: ten are kept, the others counted.
    assertThat(cautions.lines()).hasSize(1);
    assertThat(cautions.lines().get(0)).hasSizeLessThan(2000).endsWith("; and 199990 more");
  }

  private static InputStream open(String file) {
    if (file.equals("stand.csv")) {
      return bytes(
          """
          stand,stratum,gauge_factor_m2_per_ha,breast_height_m,tie_rule
          Large,all,4,1.3,in
          """);
    }
    String header =
        "point,stratum,status,tree,condition,dbh_cm,weight,edge_weight,distance_m,distance_to,"
            + "slope_deg\n";
    return new SequenceInputStream(bytes(header), new Rows());
  }

  private static String row(int i) {
    return i / (TREES / POINTS)
        + ",all,taken,"
        + i % (TREES / POINTS)
        + ",dead,"
        + (20 + i % 30)
        + ",,,,,\n";
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Makes one row at a time, so that the notes themselves take no room. */
  private static final class Rows extends InputStream {
    private int made;
    private InputStream row = InputStream.nullInputStream();

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0];
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int count = row.read(into, from, length);
      if (count < 0 && made < TREES) {
        row = bytes(row(made++));
        count = row.read(into, from, length);
      }
      return count;
    }
  }
}
