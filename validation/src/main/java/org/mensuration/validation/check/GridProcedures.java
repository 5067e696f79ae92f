package org.mensuration.validation.check;

import java.util.List;
import org.mensuration.formula.Catalogue;

/**
 * A grid of small plots laid together into larger ones, and plain samples. Stateless and
 * thread-safe.
 */
final class GridProcedures {
  private static final int AMOUNT = 0;
  private static final int COLUMNS = 1;
  private static final int PLOT_ROWS = 2;
  private static final int PLOT_COLUMNS = 3;
  private static final int CELL_AREA = 4;

  static final List<Procedure> ALL =
      List.of(
          grid("grid-plots", "plots", (c, plots) -> plots.length),
          grid("grid-mean", "mean", (c, plots) -> SurveyCase.mean(plots)),
          grid("grid-deviation", "deviation", (c, plots) -> deviation(plots)),
          grid("grid-error", "error", GridProcedures::error),
          grid(
              "grid-variation",
              "variation",
              (c, plots) -> 100 * deviation(plots) / SurveyCase.mean(plots)),
          Chain.of("deviation-of-readings")
              .list("reading", "1", "readings")
              .gives("deviation", "1", (c, x) -> deviation(x[0])),
          Chain.of("error-of-readings")
              .list("reading", "1", "readings")
              .gives("standard_error", "1", (c, x) -> error(c, x[0])));

  private GridProcedures() {}

  /** What is said of plots, each per unit of area. */
  private interface Statistic {
    double of(Catalogue catalogue, double[] plots);
  }

  private static Procedure grid(String id, String name, Statistic statistic) {
    return Chain.of(id)
        .list("amount", "1", "what each cell holds, row by row")
        .number("columns", "1", "cells in a row of the grid")
        .number("plot_rows", "1", "rows of a plot")
        .number("plot_columns", "1", "columns of a plot")
        .number("cell_area", "1", "area of a cell")
        .gives(name, "1", (catalogue, x) -> statistic.of(catalogue, plots(x)));
  }

  private static double[] plots(double[][] x) {
    int columns = (int) x[COLUMNS][0];
    int rows = x[AMOUNT].length / columns;
    int plotRows = (int) x[PLOT_ROWS][0];
    int plotColumns = (int) x[PLOT_COLUMNS][0];
    int across = columns / plotColumns;
    double[] plots = new double[rows / plotRows * across];
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < columns; j++) {
        plots[i / plotRows * across + j / plotColumns] += x[AMOUNT][i * columns + j];
      }
    }
    double area = plotRows * plotColumns * x[CELL_AREA][0];
    for (int i = 0; i < plots.length; i++) {
      plots[i] /= area;
    }
    return plots;
  }

  private static double deviation(double[] readings) {
    double mean = SurveyCase.mean(readings);
    double squares = 0;
    for (double reading : readings) {
      squares += (reading - mean) * (reading - mean);
    }
    return Math.sqrt(squares / (readings.length - 1));
  }

  private static double error(Catalogue catalogue, double[] readings) {
    return catalogue.formula("sampling/standard-error").apply(deviation(readings), readings.length);
  }
}
