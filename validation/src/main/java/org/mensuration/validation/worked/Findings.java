package org.mensuration.validation.worked;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the print needs. Immutable and thread-safe.
 *
 * @param strata as noted, at least one
 * @param stations as noted
 * @param points sums a point
 * @param checked trees whose distance was compared with their limit
 * @param heights heights noted and the curves through them
 * @param stems every measured stem in its pieces
 * @param ratios ratios of the measured trees
 * @param groups estimates of the strata
 * @param stand estimate of the stand; null if the strata cannot be put together
 * @param measured volumes from what was measured beside the count
 * @param plots estimates from plots of fixed size
 * @param lines estimates from lines
 * @param cautions what changes figures
 * @param unused columns that were not read
 */
record Findings(
    List<Stratum> strata,
    List<Station> stations,
    List<PointSum> points,
    long checked,
    HeightNotes heights,
    List<StemVolume> stems,
    Ratios ratios,
    List<Group> groups,
    @Nullable Group stand,
    List<MeasuredVolume> measured,
    List<PlotEstimate> plots,
    List<LineEstimate> lines,
    List<String> cautions,
    List<String> unused) {}
