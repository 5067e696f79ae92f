package org.mensuration.units;

/** Kinds of quantity; conversion stays within one. */
enum Kind {
  LENGTH,
  AREA,
  VOLUME,
  ANGLE,
  BASAL_AREA_PER_AREA,
  STEMS_PER_AREA,
  VOLUME_PER_AREA
}
