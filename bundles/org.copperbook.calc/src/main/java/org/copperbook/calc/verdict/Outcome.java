package org.copperbook.calc.verdict;

/** The five answers that a judgement can give. */
public enum Outcome {
    /** The whole coverage interval lies inside the limit. */
    MEETS,
    /** The coverage interval straddles the limit. */
    DOUBTFUL,
    /** The whole coverage interval lies outside the limit. */
    FAILS,
    /** A limit exists, but nothing was measured. */
    NOT_MEASURED,
    /** No limit is set, so nothing can be decided. */
    NO_LIMIT_SET
}
