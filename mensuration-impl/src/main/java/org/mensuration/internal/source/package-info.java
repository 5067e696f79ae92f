/** The works that formulas cite. */
package org.mensuration.internal.source;
