/** The worked stand: from field notes to basal area and volume with their errors. */
package org.mensuration.validation.worked;
