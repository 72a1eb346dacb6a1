/** The windings the workshop has had: found again, taken over as a proposal, and taken in from old cards. */
package org.copperbook.winding.memory;
