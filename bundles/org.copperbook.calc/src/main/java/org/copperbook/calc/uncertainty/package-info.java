/** Measurement uncertainty: values with a width, instrument accuracy, correlated propagation (JCGM 100:2008). */
package org.copperbook.calc.uncertainty;
