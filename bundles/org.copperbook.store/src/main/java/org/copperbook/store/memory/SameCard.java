package org.copperbook.store.memory;

/** What to do with a card whose number is already in but which says something else. */
public enum SameCard {
    /** Leave the one that is in, and report the other. */
    REFUSE,
    /** Keep it as the newer revision of the card; the older one stays in the history. */
    NEW_REVISION
}
