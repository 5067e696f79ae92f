/** Kinds of quantity that the trade needs and the units standard lacks. */
package org.mensuration.quantity;
