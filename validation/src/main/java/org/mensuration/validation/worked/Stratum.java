package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * A part of the stand that was sampled by itself. Immutable and thread-safe.
 *
 * @param stand name of the stand
 * @param name name of the stratum
 * @param area hectares, if known
 * @param factor m²/ha a counted tree stands for
 * @param breastHeight metres
 * @param tieIsIn whether a tree exactly at its limiting distance is counted
 * @param minimumDbh centimetres, if the count has a lower limit
 * @param stumpHeight metres, if a stump is to be set apart
 * @param choices how points were chosen, dead trees, edges, heights and classes
 */
record Stratum(
    String stand,
    String name,
    OptionalDouble area,
    double factor,
    double breastHeight,
    boolean tieIsIn,
    OptionalDouble minimumDbh,
    OptionalDouble stumpHeight,
    StratumChoices choices) {}
