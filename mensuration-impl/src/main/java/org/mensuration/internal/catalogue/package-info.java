/** The formula constants, one class a topic, and the list of each topic. */
package org.mensuration.internal.catalogue;
