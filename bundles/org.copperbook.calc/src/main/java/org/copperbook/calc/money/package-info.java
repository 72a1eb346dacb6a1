/** Money of a quote: decimal arithmetic, stated rounding rules, taxes, discount, mark-up and margin. */
package org.copperbook.calc.money;
