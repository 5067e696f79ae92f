/**
 * What is said about a formula, its values, and the error of a value outside its domain.
 *
 * <p>Start from a {@link org.mensuration.formula.Catalogue}; ask it for a {@link
 * org.mensuration.formula.Formula} by its identifier.
 */
package org.mensuration.formula;
