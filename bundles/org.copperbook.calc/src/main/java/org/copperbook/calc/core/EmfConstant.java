package org.copperbook.calc.core;

/** The factor between peak flux and rms volts per turn and hertz. Books round it; a record says which was used. */
public enum EmfConstant {
    /** pi times the square root of two, 4.442883. */
    EXACT(Math.PI * Math.sqrt(2)),
    /** 4.44 as books print it, 0.065 % lower. */
    BOOK(4.44);

    private final double value;

    EmfConstant(double value) {
        this.value = value;
    }

    /** Volts per weber and hertz of one turn. */
    public double value() {
        return value;
    }
}
