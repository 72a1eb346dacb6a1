package org.copperbook.calc.runup;

import java.util.Optional;

import org.copperbook.calc.Require;

/**
 * Performance classes of generating sets; fractions and seconds. Source: ISO 8528-5:2005, table 4 (transient, recovery and
 * band figures from memory of the table); steady voltage bands of G1 as quoted in DGUV Information 203-032, annex 5. Class
 * G4 is by agreement and has no figures.
 */
public enum GeneratingSetClass {
    G1(0.08, 0.025, 10, 0.05, 0.35, 0.25, 10), G2(0.05, 0.015, 5, 0.025, 0.25, 0.20, 6),
    G3(0.03, 0.005, 3, 0.01, 0.20, 0.15, 4);

    private final double droop;
    private final double frequencyBand;
    private final double frequencyRecovery;
    private final double steadyVoltage;
    private final double rise;
    private final double dip;
    private final double voltageRecovery;

    GeneratingSetClass(double droop, double frequencyBand, double frequencyRecovery, double steadyVoltage, double rise,
            double dip, double voltageRecovery) {
        this.droop = droop;
        this.frequencyBand = frequencyBand;
        this.frequencyRecovery = frequencyRecovery;
        this.steadyVoltage = steadyVoltage;
        this.rise = rise;
        this.dip = dip;
        this.voltageRecovery = voltageRecovery;
    }

    /** Greatest frequency droop. */
    public double droop() {
        return droop;
    }

    /** Steady-state frequency band. */
    public double frequencyBand() {
        return frequencyBand;
    }

    /** Frequency recovery time, s. */
    public double frequencyRecovery() {
        return frequencyRecovery;
    }

    /** Steady-state voltage deviation either way; class G1 allows twice as much up to 10 kW. */
    public double steadyVoltage(double ratedWatts) {
        Require.positive("rated power", ratedWatts, "W");
        return this == G1 && ratedWatts <= 10e3 ? 2 * steadyVoltage : steadyVoltage;
    }

    /** Greatest transient rise when load is removed. */
    public double rise() {
        return rise;
    }

    /** Greatest transient dip when load is applied. */
    public double dip() {
        return dip;
    }

    /** Voltage recovery time, s. */
    public double voltageRecovery() {
        return voltageRecovery;
    }

    /** Greatest voltage unbalance, all classes. */
    public double unbalance() {
        return 0.01;
    }

    /**
     * A transient as measured.
     *
     * @param dip voltage dip on load, a fraction of rated, positive
     * @param dipRecovery its recovery time, s
     * @param rise voltage rise on load removal, a fraction of rated, positive
     * @param riseRecovery its recovery time, s
     */
    public record Transient(double dip, double dipRecovery, double rise, double riseRecovery) {

        public Transient {
            Require.between("voltage dip", dip, 0, 1, "", "it is a share of the rated voltage");
            Require.between("voltage rise", rise, 0, 2, "", "it is a share of the rated voltage");
            Require.notNegative("recovery time", dipRecovery, "s");
            Require.notNegative("recovery time", riseRecovery, "s");
        }
    }

    /** Whether a transient stays within the class. */
    public boolean allows(Transient t) {
        return t.dip() <= dip && t.rise() <= rise && t.dipRecovery() <= voltageRecovery
                && t.riseRecovery() <= voltageRecovery;
    }

    /** The strictest class that allows the transient; empty when not even G1 does. */
    public static Optional<GeneratingSetClass> strictest(Transient t) {
        GeneratingSetClass found = null;
        for (GeneratingSetClass c : values()) {
            if (c.allows(t)) {
                found = c;
            }
        }
        return Optional.ofNullable(found);
    }
}
