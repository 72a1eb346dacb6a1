package org.copperbook.store;

/** What taking in a job does when the store already has its number or its key. */
public enum NumberTaken {
    /** Nothing is taken in; {@link StoreException.Kind#ALREADY_THERE} says which job is in the way. */
    REFUSE,
    /** The job gets the next free number, and a new key when its own is taken. */
    GIVE_NEW_NUMBER
}
