package org.mensuration.quantity;

import javax.measure.Quantity;

/** Volume of wood on a unit of ground, such as m³/ha. */
public interface VolumePerArea extends Quantity<VolumePerArea> {}
