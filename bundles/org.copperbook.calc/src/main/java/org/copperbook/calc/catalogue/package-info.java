/**
 * Every calculation under a name, with its inputs, units, source and formula, for the command line, the calculator view
 * and the reference checks alike. Packages contribute through {@link org.copperbook.calc.catalogue.CalculationSource};
 * the list of contributors is {@link org.copperbook.calc.catalogue.StandardSources}.
 */
package org.copperbook.calc.catalogue;
