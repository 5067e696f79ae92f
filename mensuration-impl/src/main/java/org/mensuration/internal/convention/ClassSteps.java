package org.mensuration.internal.convention;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.EquationText;
import org.mensuration.kernel.ClassRounding;

/**
 * A rounding as data: a way and its step, perhaps another step from a limit on. Immutable and
 * thread-safe.
 */
public final class ClassSteps {
  /** Leaves values as they are. */
  public static final ClassSteps NONE = new ClassSteps(Way.NEAREST, List.of());

  /** How a value goes to its class. */
  private enum Way {
    DOWN("down to "),
    NEAREST("to the nearest "),
    MIDDLE("to the middle of its class of ");

    private final String words;

    Way(String words) {
      this.words = words;
    }
  }

  private final Way way;
  private final List<Band> bands;

  private ClassSteps(Way way, List<Band> bands) {
    this.way = way;
    this.bands = List.copyOf(bands);
  }

  /** A step and the value from which it holds. */
  private record Band(double from, int width, int parts) {
    String words(String unit) {
      return EquationText.number((double) width / parts) + " " + unit;
    }
  }

  /**
   * Down to a multiple of a step.
   *
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the rounding
   */
  public static ClassSteps down(int width, int parts) {
    return new ClassSteps(Way.DOWN, List.of(new Band(0, width, parts)));
  }

  /**
   * To the nearest multiple of a step, a half up.
   *
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the rounding
   */
  public static ClassSteps nearest(int width, int parts) {
    return new ClassSteps(Way.NEAREST, List.of(new Band(0, width, parts)));
  }

  /**
   * To the middle of a class.
   *
   * @param width numerator of the width
   * @param parts denominator of the width
   * @return the rounding
   */
  public static ClassSteps middle(int width, int parts) {
    return new ClassSteps(Way.MIDDLE, List.of(new Band(0, width, parts)));
  }

  /**
   * The same rounding with another step for larger values.
   *
   * @param limit from this value on
   * @param width numerator of the step
   * @param parts denominator of the step
   * @return the rounding
   */
  public ClassSteps from(double limit, int width, int parts) {
    List<Band> more = new ArrayList<>(bands);
    more.add(new Band(limit, width, parts));
    return new ClassSteps(way, more);
  }

  boolean isNone() {
    return bands.isEmpty();
  }

  double apply(double value) {
    if (bands.isEmpty()) {
      return value;
    }
    Band band = bands.get(0);
    for (Band next : bands) {
      if (value >= next.from()) {
        band = next;
      }
    }
    return switch (way) {
      case DOWN -> ClassRounding.down(value, band.width(), band.parts());
      case NEAREST -> ClassRounding.halfUp(value, band.width(), band.parts());
      case MIDDLE -> ClassRounding.middle(value, band.width(), band.parts());
    };
  }

  /** The rounding in words; empty for none. */
  String words(String unit) {
    StringBuilder words = new StringBuilder();
    for (Band band : bands) {
      words.append(
          words.length() == 0
              ? way.words
              : ", from " + EquationText.number(band.from()) + " " + unit + " to ");
      words.append(band.words(unit));
    }
    return words.toString();
  }
}
