/** Verdict arithmetic: limits as intervals and guarded decisions (JCGM 106:2012). */
package org.copperbook.calc.verdict;
