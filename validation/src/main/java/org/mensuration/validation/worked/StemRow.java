package org.mensuration.validation.worked;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A row of stems.csv, its cells read but not yet put together. Immutable and thread-safe.
 *
 * @param row where it stands
 * @param stem name of the stem
 * @param tree the counted tree it belongs to, if any
 * @param chosen how the stem was chosen
 * @param station where it was sighted from, if it was
 * @param kind base, reading, break or tip
 * @param height metres above ground, if measured so
 * @param angle degrees of the sight
 * @param divisions divisions that cover the stem
 * @param diameter centimetres measured by hand
 * @param bark over, under or empty
 * @param length metres of the section around it, for Huber's rule
 */
record StemRow(
    Row row,
    String stem,
    @Nullable TreeKey tree,
    String chosen,
    @Nullable Station station,
    String kind,
    OptionalDouble height,
    OptionalDouble angle,
    OptionalDouble divisions,
    OptionalDouble diameter,
    String bark,
    OptionalDouble length) {

  boolean is(String wanted) {
    return kind.equals(wanted);
  }

  boolean hasDiameter() {
    return divisions.isPresent() || diameter.isPresent();
  }
}
