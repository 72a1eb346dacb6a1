package org.copperbook.store.memory;

/** What became of a card offered to the memory. */
public enum CardTaken {
    /** It is new and is in now. */
    NEW,
    /** The same card with the same content was in before. */
    KNOWN,
    /** It is in now as a newer revision of a card of the same number. */
    REVISED,
    /** A card of the same number with other content is in; this one was left out. */
    CONTRADICTS
}
