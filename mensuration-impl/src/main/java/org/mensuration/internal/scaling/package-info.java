/** Scaling under a convention, and the conventions that are published. */
package org.mensuration.internal.scaling;
