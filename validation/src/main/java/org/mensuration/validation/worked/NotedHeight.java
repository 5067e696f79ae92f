package org.mensuration.validation.worked;

/**
 * The height of a counted tree. Immutable and thread-safe.
 *
 * @param metres the height
 * @param predicted whether a height curve gave it
 */
record NotedHeight(double metres, boolean predicted) {}
