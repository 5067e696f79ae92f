/** Single stems: readings along them, their profile, form and volume. */
package org.mensuration.stem;
