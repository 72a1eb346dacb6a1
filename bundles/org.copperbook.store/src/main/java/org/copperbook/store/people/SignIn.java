package org.copperbook.store.people;

/** What came of signing in. */
public sealed interface SignIn {

    /** The person is signed in. */
    record Done(String key) implements SignIn {
    }

    /** Not signed in, and why, for people. */
    record Refused(String message) implements SignIn {
    }
}
