package org.copperbook.desk.tests.look;

/**
 * Something on the screen that a person cannot read, reach or hear.
 *
 * @param where the control, by its name in the record or its class, and what it says
 * @param what  what is wrong with it, with the figures measured
 */
record Flaw(String where, String what) {

    @Override
    public String toString() {
        return where + ": " + what;
    }
}
