package org.mensuration.quantity;

import javax.measure.Quantity;

/** Number of stems on a unit of ground, such as 1/ha. */
public interface StemsPerArea extends Quantity<StemsPerArea> {}
