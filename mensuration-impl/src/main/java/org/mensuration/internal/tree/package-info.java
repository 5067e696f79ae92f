/** Walks the printed equations in any arithmetic of the mathematics library. */
package org.mensuration.internal.tree;
