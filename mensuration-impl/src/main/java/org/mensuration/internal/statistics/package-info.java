/** Results found by search or quantile, on the statistics libraries. */
package org.mensuration.internal.statistics;
