package org.mensuration.scaling;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.mensuration.log.Log;

/**
 * A log with its defects. Immutable and thread-safe.
 *
 * @param log the log as measured, trim included
 * @param defects its defects, each in its segment
 */
public record LogToScale(Log log, List<LocatedDefect> defects) {
  /**
   * Copies the defects.
   *
   * @param log the log as measured, trim included
   * @param defects its defects, each in its segment
   */
  public LogToScale {
    Objects.requireNonNull(log, "log");
    defects = List.copyOf(defects);
  }

  /**
   * A log with defects in its first segment, which is the whole log if it is not split.
   *
   * @param log the log as measured
   * @param defects its defects, perhaps none
   * @return the log to scale
   */
  public static LogToScale of(Log log, Defect... defects) {
    return new LogToScale(
        log, Arrays.stream(defects).map(LocatedDefect::of).collect(Collectors.toList()));
  }
}
