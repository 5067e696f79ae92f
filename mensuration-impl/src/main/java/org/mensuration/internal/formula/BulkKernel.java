package org.mensuration.internal.formula;

/** A kernel for many rows at once; it gives the bits of the kernel for one row. */
@FunctionalInterface
public interface BulkKernel {
  /**
   * Fills in the results, unchecked and without allocation.
   *
   * @param columns one array an input, all at least as long as {@code results}
   * @param results filled with the values
   */
  void fill(double[][] columns, double[] results);
}
