/** Implementations of the log rules. */
package org.mensuration.internal.log;
