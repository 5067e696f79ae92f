package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A stem with its readings in order of height. Immutable and thread-safe.
 *
 * @param row where it was first noted
 * @param name name of the stem
 * @param tree the counted tree it belongs to, if any
 * @param chosen how it was chosen, empty if not said
 * @param bark over or under, empty without any diameter
 * @param start metres above ground where the stem starts, if a base was noted
 * @param readings diameters, lowest first
 * @param end break, tip, or empty if none was noted
 * @param top metres above ground where it ends, if measured
 */
record Stem(
    Row row,
    String name,
    @Nullable TreeKey tree,
    String chosen,
    String bark,
    OptionalDouble start,
    List<Reading> readings,
    String end,
    OptionalDouble top) {}
