package org.copperbook.calc.catalogue;

/** An evaluation that could not begin: a name not known, an input missing or not readable. */
public final class InputProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final String input;

    /** What can be wrong. */
    public enum Kind {
        UNKNOWN_CALCULATION, UNKNOWN_INPUT, MISSING, NOT_READABLE, AMBIGUOUS
    }

    /** A problem with one input, or with the calculation's name. */
    public InputProblem(Kind kind, String input, String message) {
        super(message);
        this.kind = kind;
        this.input = input;
    }

    /** What is wrong. */
    public Kind kind() {
        return kind;
    }

    /** The input, or the calculation, concerned. */
    public String input() {
        return input;
    }
}
