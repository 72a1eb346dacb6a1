/** The core loop test: plan, flux density, losses and hot spots before and after burn-out. */
package org.copperbook.calc.core;
