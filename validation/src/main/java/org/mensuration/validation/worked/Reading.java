package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * A diameter of a stem at its height. Immutable and thread-safe.
 *
 * @param row where it was noted
 * @param height metres above ground
 * @param diameter centimetres
 * @param length metres of the section around it, if stated
 * @param how by hand, or the divisions and station
 */
record Reading(Row row, double height, double diameter, OptionalDouble length, String how) {}
