package org.mensuration.stem;

/** Rules for the volume of a stem in sections, on the readings themselves. */
public enum SectionRule {
  /** Each reading is the middle of its section; sections follow each other from the base up. */
  HUBER,
  /** Each two neighbouring readings are the ends of a section. */
  SMALIAN,
  /** Each three readings are lower end, middle and upper end of a section. */
  NEWTON
}
