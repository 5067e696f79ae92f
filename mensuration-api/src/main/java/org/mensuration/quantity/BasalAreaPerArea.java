package org.mensuration.quantity;

import javax.measure.Quantity;

/** Basal area of the stems on a unit of ground, such as m²/ha. */
public interface BasalAreaPerArea extends Quantity<BasalAreaPerArea> {}
