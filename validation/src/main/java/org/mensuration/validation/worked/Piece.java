package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * One printed line of a stem. Immutable and thread-safe.
 *
 * @param what stump, butt, section, tip
 * @param from metres above ground
 * @param to metres above ground
 * @param lower centimetres at its lower end
 * @param middle centimetres in its middle
 * @param upper centimetres at its upper end
 * @param volume cubic metres; empty if it could not be computed
 * @param counted whether it is part of the stem volume
 * @param note why, or how
 */
record Piece(
    String what,
    OptionalDouble from,
    OptionalDouble to,
    OptionalDouble lower,
    OptionalDouble middle,
    OptionalDouble upper,
    OptionalDouble volume,
    boolean counted,
    String note) {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  static Piece of(String what, double from, double to) {
    return new Piece(
        what, OptionalDouble.of(from), OptionalDouble.of(to), NONE, NONE, NONE, NONE, true, "");
  }

  boolean known() {
    return volume.isPresent();
  }

  /** A piece that could not be computed, and why. */
  static Piece missing(String what, OptionalDouble from, OptionalDouble to, String why) {
    return new Piece(what, from, to, NONE, NONE, NONE, NONE, false, why);
  }

  Piece ends(double low, double up) {
    return new Piece(
        what,
        from,
        to,
        OptionalDouble.of(low),
        middle,
        OptionalDouble.of(up),
        volume,
        counted,
        note);
  }

  Piece lower(double low) {
    return new Piece(what, from, to, OptionalDouble.of(low), middle, upper, volume, counted, note);
  }

  Piece middle(double mid) {
    return new Piece(what, from, to, lower, OptionalDouble.of(mid), upper, volume, counted, note);
  }

  Piece upper(double up) {
    return new Piece(what, from, to, lower, middle, OptionalDouble.of(up), volume, counted, note);
  }

  Piece volume(double cubicMetres) {
    return new Piece(
        what, from, to, lower, middle, upper, OptionalDouble.of(cubicMetres), counted, note);
  }

  Piece notCounted() {
    return new Piece(what, from, to, lower, middle, upper, volume, false, note);
  }

  Piece note(String words) {
    return new Piece(what, from, to, lower, middle, upper, volume, counted, words);
  }
}
