package org.mensuration.validation.worked;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A small sound set of notes that a test changes in one place. Not thread-safe. */
final class Folder {
  private final Path path;
  private final Map<String, String> files = new LinkedHashMap<>();

  Folder(Path path) {
    this.path = path;
    files.put(
        "stand.csv",
        """
        stand,stratum,area_ha,gauge_factor_m2_per_ha,breast_height_m,tie_rule,minimum_dbh_cm,stump_height_m
        Small,all,10,4,1.3,in,7,0.3
        """);
    files.put(
        "stations.csv",
        """
        station,tree,distance_m,distance_to,compensated,calibration_diameter_cm,calibration_height_m,calibration_divisions,calibration_sight_angle_deg
        flat,1,20,axis,yes,40,1.3,10,
        steep,1,20,face,no,40,1.3,10,0
        """);
    files.put(
        "stems.csv",
        """
        stem,point,tree,chosen,station,kind,height_m,sight_angle_deg,divisions,diameter_cm,bark
        A,P1,1,gauge,,base,,,,,
        A,P1,1,gauge,,reading,0.3,,,44,over
        A,P1,1,gauge,,reading,1.3,,,40,over
        A,P1,1,gauge,flat,reading,11.3,,5,,over
        A,P1,1,gauge,,tip,21.3,,,,
        """);
    files.put(
        "points.csv",
        """
        point,stratum,status,tree,dbh_cm,weight,edge_weight,distance_m,distance_to,slope_deg
        P1,all,taken,1,40,,,,,
        P1,all,taken,2,30,,,,,
        P2,all,taken,,,,,,,
        P3,all,taken,1,20,,,,,
        """);
  }

  Folder swap(String file, String old, String with) {
    String text = files.getOrDefault(file, "");
    if (!text.contains(old)) {
      throw new IllegalArgumentException(file + " has no " + old);
    }
    files.put(file, text.replace(old, with));
    return this;
  }

  Folder put(String file, String text) {
    files.put(file, text);
    return this;
  }

  Folder drop(String file) {
    files.remove(file);
    return this;
  }

  /** The file as it stands. */
  String text(String file) {
    return files.getOrDefault(file, "");
  }

  Outcome run(String... more) {
    for (Map.Entry<String, String> file : files.entrySet()) {
      try {
        Files.writeString(path.resolve(file.getKey()), file.getValue());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    List<String> args = new ArrayList<>(List.of("--notes", path.toString()));
    args.addAll(List.of(more));
    return run(args);
  }

  static Outcome run(List<String> args) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    int status = Main.run(args, out, err);
    return new Outcome(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /**
   * What the command gave. Immutable and thread-safe.
   *
   * @param status exit status
   * @param out the print
   * @param err the complaints
   */
  record Outcome(int status, String out, String err) {

    /** Lines of the print with single blanks, so that tests need not count columns. */
    List<String> words() {
      return out.lines().map(line -> line.strip().replaceAll(" +", " ")).toList();
    }

    /** The print with lines joined, where it may break inside a sentence. */
    String flat() {
      return out.replaceAll("\\s+", " ");
    }
  }
}
