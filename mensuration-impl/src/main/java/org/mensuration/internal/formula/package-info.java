/** Binds a kernel to what is said about its formula, and checks inputs. */
package org.mensuration.internal.formula;
