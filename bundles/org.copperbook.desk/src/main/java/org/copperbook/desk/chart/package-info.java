/** Charts in the window. */
package org.copperbook.desk.chart;
