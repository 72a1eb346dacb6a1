/** The customers of the shop: who they are, which of them may be one and the same, and putting them together. */
package org.copperbook.jobs.customer;
