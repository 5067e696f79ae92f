/** What counts at sample points say about a stand. */
package org.mensuration.stand;
