import org.jspecify.annotations.NullMarked;

/** Contracts, value records and formula metadata of the mensuration library. */
@NullMarked
module org.mensuration.api {
  requires transitive java.measure;
  requires static org.jspecify;

  exports org.mensuration.diameter;
  exports org.mensuration.edge;
  exports org.mensuration.formula;
  exports org.mensuration.gauge;
  exports org.mensuration.height;
  exports org.mensuration.log;
  exports org.mensuration.optics;
  exports org.mensuration.quantity;
  exports org.mensuration.scaling;
  exports org.mensuration.source;
  exports org.mensuration.stand;
  exports org.mensuration.stem;
  exports org.mensuration.uncertainty;
  exports org.mensuration.wood;
}
