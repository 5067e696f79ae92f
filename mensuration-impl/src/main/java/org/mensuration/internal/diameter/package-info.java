/** Sections that are not circles, and sections fitted to points. */
package org.mensuration.internal.diameter;
