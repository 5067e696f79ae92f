/**
 * Compares reference tables with the formulas of a catalogue.
 *
 * <p>How close a value must come is never chosen by hand. It follows from the printed step and its
 * rounding, widened by what rounded inputs leave open and by a few units in the last place.
 */
package org.mensuration.validation.check;
