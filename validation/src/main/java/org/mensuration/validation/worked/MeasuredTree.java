package org.mensuration.validation.worked;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A tree with all its measured stems. Immutable and thread-safe.
 *
 * @param name name of the tree
 * @param stems its stems; more than one if it forks
 * @param dbh centimetres, if known
 * @param volume cubic metres of all its stems
 * @param ratio cubic metres a square metre of basal area, where it can be used
 * @param whyNot why it is not used, empty if it is
 */
record MeasuredTree(
    String name,
    List<StemVolume> stems,
    OptionalDouble dbh,
    double volume,
    OptionalDouble ratio,
    String whyNot) {}
