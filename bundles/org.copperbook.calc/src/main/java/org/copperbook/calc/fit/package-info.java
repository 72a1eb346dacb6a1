/** Bearing seats: tolerance zones of shafts and housings, and runout of shaft extensions. */
package org.copperbook.calc.fit;
