/** Height curves fitted by least squares. */
package org.mensuration.internal.height;
