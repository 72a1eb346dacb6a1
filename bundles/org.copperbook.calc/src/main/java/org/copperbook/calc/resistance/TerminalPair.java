package org.copperbook.calc.resistance;

/** The three pairs of line terminals, in cyclic order (terminal letters of IEC 60034-8). */
public enum TerminalPair {
    UV, VW, WU
}
