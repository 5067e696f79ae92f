/** Stacked, loose and other customary measures of wood, and the published factors between them. */
package org.mensuration.wood;
