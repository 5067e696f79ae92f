/** Printed tables that are themselves the rule: reading, look-up, refusal, interpolation. */
package org.mensuration.internal.table;
