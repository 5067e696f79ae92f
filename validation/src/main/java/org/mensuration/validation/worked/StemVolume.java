package org.mensuration.validation.worked;

import java.util.List;

/**
 * A stem in its pieces. Immutable and thread-safe.
 *
 * @param stem the stem
 * @param pieces from the ground up
 * @param volume cubic metres of the pieces that count
 * @param gaps why the volume is not the whole stem; empty if it is
 * @param profile the same stem as a profile; not in the volume
 */
record StemVolume(
    Stem stem, List<Piece> pieces, double volume, List<String> gaps, List<Piece> profile) {}
