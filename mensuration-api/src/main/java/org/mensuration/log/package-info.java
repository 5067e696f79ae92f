/** Logs and stem sections as measured, and the rules that turn them into volume or scale. */
package org.mensuration.log;
