package org.mensuration.validation.worked;

import java.util.OptionalDouble;

/**
 * A place from which a tree was sighted. Immutable and thread-safe.
 *
 * @param name name of the station
 * @param tree the tree its scale was calibrated on, empty if not said
 * @param axisDistance horizontal metres to the axis of the stem
 * @param distanceFromFace whether the distance was measured to the face and half a diameter added
 * @param compensated whether the scale corrects itself for the slope of the sight
 * @param calibrationDiameter centimetres
 * @param calibrationHeight metres above ground
 * @param calibrationDivisions divisions that cover the calibration diameter
 * @param calibrationAngle degrees of the sight at the calibration
 * @param divisionWidth centimetres on the stem that one division covers
 */
record Station(
    String name,
    String tree,
    OptionalDouble axisDistance,
    boolean distanceFromFace,
    boolean compensated,
    OptionalDouble calibrationDiameter,
    OptionalDouble calibrationHeight,
    OptionalDouble calibrationDivisions,
    OptionalDouble calibrationAngle,
    OptionalDouble divisionWidth) {}
