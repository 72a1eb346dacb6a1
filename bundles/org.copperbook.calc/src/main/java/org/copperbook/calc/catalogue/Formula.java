package org.copperbook.calc.catalogue;

/** The work of a calculation: reads arguments in SI and writes results in SI. */
@FunctionalInterface
public interface Formula {

    /** Throws {@link org.copperbook.calc.OutOfRange} for what lies outside the calculation's range. */
    void apply(Arguments in, Results out);
}
