/** The final run-up: speed, voltage, characteristic curves, reactances, regulation, losses, mechanical limits. */
package org.copperbook.calc.runup;
