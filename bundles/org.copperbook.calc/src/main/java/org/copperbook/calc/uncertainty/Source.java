package org.copperbook.calc.uncertainty;

/**
 * One independent cause of uncertainty: a meter's gain, a pair of leads, one thermometer, one reading's
 * last digit. Two values that name the same object are correlated through it; two objects are
 * independent of each other even when their names agree.
 */
public final class Source {

    private final String name;

    private Source(String name) {
        this.name = name;
    }

    /** A new cause, independent of every other. */
    public static Source named(String name) {
        return new Source(name);
    }

    /** What it is called in a budget. */
    public String name() {
        return name;
    }

    @Override
    public String toString() {
        return name;
    }
}
