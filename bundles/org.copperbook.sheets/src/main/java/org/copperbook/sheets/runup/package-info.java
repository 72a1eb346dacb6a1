/** Charts of a run-up, made from its records. */
package org.copperbook.sheets.runup;
