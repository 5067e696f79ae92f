/** Scale rules of countries: readings, their rounding as data, and the formula that they enter. */
package org.mensuration.internal.convention;
