package org.mensuration.log;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.quantity.LogScale;
import org.mensuration.quantity.Physical;

/**
 * A log by many rules: what each gives, or why it does not apply. The figures do not add: each is
 * that of its own rule. Immutable and thread-safe.
 *
 * @param log the log as measured
 * @param lines one line a rule
 */
public record RuleComparison(Log log, List<Line> lines) {
  /**
   * Copies the lines.
   *
   * @param log the log as measured
   * @param lines one line a rule
   */
  public RuleComparison {
    Objects.requireNonNull(log, "log");
    lines = List.copyOf(lines);
  }

  /** What one rule says. All kinds are immutable and thread-safe. */
  public sealed interface Line {
    /**
     * Identifier of the rule.
     *
     * @return for example {@code board/doyle}
     */
    String id();

    /**
     * Name of the rule.
     *
     * @return for example {@code Doyle}
     */
    String title();
  }

  /**
   * A solid volume.
   *
   * @param id identifier of the rule
   * @param title name of the rule
   * @param measured the volume, its bark basis and its warnings
   */
  public record Solid(String id, String title, MeasuredVolume measured) implements Line {
    /**
     * Checks that nothing is null.
     *
     * @param id identifier of the rule
     * @param title name of the rule
     * @param measured the volume, its bark basis and its warnings
     */
    public Solid {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(measured, "measured");
    }

    @Override
    public String toString() {
      String odd =
          measured.warnings().stream().map(warning -> "; " + warning).collect(Collectors.joining());
      Quantity<Volume> volume = measured.volume();
      return title
          + ": "
          + Physical.shown(volume.getValue().doubleValue())
          + " "
          + volume.getUnit()
          + odd;
    }
  }

  /**
   * An amount in the unit of a rule of its own.
   *
   * @param id identifier of the rule
   * @param title name of the rule
   * @param scale the amount
   */
  public record Scaled(String id, String title, LogScale scale) implements Line {
    /**
     * Checks that nothing is null.
     *
     * @param id identifier of the rule
     * @param title name of the rule
     * @param scale the amount
     */
    public Scaled {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(scale, "scale");
    }

    @Override
    public String toString() {
      return title + ": " + Physical.shown(scale.amount()) + " " + scale.unit();
    }
  }

  /**
   * A rule that does not apply to the log.
   *
   * @param id identifier of the rule
   * @param title name of the rule
   * @param why what is missing, or which value is outside what
   */
  public record NotApplicable(String id, String title, String why) implements Line {
    /**
     * Checks that nothing is null.
     *
     * @param id identifier of the rule
     * @param title name of the rule
     * @param why what is missing, or which value is outside what
     */
    public NotApplicable {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(why, "why");
    }

    @Override
    public String toString() {
      return title + ": does not apply, " + why;
    }
  }

  /**
   * The solid volumes.
   *
   * @return in order
   */
  public List<Solid> solids() {
    return only(Solid.class);
  }

  /**
   * The amounts by rules with units of their own.
   *
   * @return in order
   */
  public List<Scaled> scales() {
    return only(Scaled.class);
  }

  /**
   * The rules that do not apply, and why.
   *
   * @return in order
   */
  public List<NotApplicable> notApplicable() {
    return only(NotApplicable.class);
  }

  private <T> List<T> only(Class<T> kind) {
    return lines.stream().filter(kind::isInstance).map(kind::cast).collect(Collectors.toList());
  }

  /**
   * One rule a line, in words.
   *
   * @return text for a report
   */
  @Override
  public String toString() {
    return lines.stream().map(Line::toString).collect(Collectors.joining("\n"));
  }
}
