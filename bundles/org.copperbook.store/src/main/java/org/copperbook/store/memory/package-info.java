/** The windings a workshop has had: those of its jobs and those on cards from before. */
package org.copperbook.store.memory;
