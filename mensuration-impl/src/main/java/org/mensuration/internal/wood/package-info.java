/** Published factors between measures of wood. */
package org.mensuration.internal.wood;
