/** Who brings a machine, as the shop's register of customers knows it. */
package org.copperbook.inspection.customer;
