/**
 * Reference tables: printed or computed values with the place they were read at, kept as CSV files
 * whose heads say everything that is needed to compare them with a formula.
 *
 * <p>A head names source, place, formula and standing, and describes every column:
 *
 * <pre>
 * # source: chase1913
 * # locator: table on page 11
 * # formula: board/doyle
 * # standing: published-table
 * # column small_diameter [in] exact
 * # column length [ft] exact
 * # column scale [bf] result step=1 rounding=nearest
 * small_diameter,length,scale
 * 8,12,12
 * </pre>
 *
 * <p>An input column is {@code exact} or {@code rounded step=S}. A result column is {@code result
 * step=S rounding=MODE}, {@code result ulp=N} or {@code result absolute=X}, each with {@code
 * formula=ID} where several formulas share the inputs; {@code step=cell} stands for one unit of the
 * last digit that the cell itself prints. An empty result cell was not printed. A list of readings
 * is written with blanks between. {@code lists: FILE} names a file in the same folder, not ending
 * in {@code .csv}, whose columns are lists that every row takes, such as the trees of a map. Below
 * a {@code procedure:} in the head, a result column may name another by {@code procedure=ID}. The
 * columns {@code case} and {@code note} need no description.
 */
package org.mensuration.validation.table;
