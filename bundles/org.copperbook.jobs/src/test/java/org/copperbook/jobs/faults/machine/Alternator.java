package org.copperbook.jobs.faults.machine;

import java.util.Random;

/**
 * A brushless alternator with at most one fault, in per unit of no load: exciter field, exciter armature behind its own
 * drop, rotating bridge, main field, saturated main voltage, regulator with a ceiling, and the prime mover. Saturation, field
 * at load, drops of diodes and of the exciter's armature are drawn from {@link PublishedMachines}; residual voltages, the
 * regulator's margin and start, and how bad a fault is, from usual ranges (common practice, no source). It knows nothing of
 * likelihoods.
 */
final class Alternator {

    /** What is wrong with it. */
    enum Fault {
        STATOR_SHORT("main-stator"), STATOR_OPEN("main-stator"), STATOR_EARTH("main-stator"),
        ROTOR_SHORT("main-rotor"), ROTOR_OPEN("main-rotor"), ROTOR_EARTH_AND_SHORT("main-rotor"),
        EXCITER_FIELD_SHORT("exciter-stator"), EXCITER_FIELD_OPEN("exciter-stator"),
        EXCITER_FIELD_EARTH_AND_SHORT("exciter-stator"),
        EXCITER_ROTOR_OPEN("exciter-rotor"), EXCITER_ROTOR_SHORT("exciter-rotor"),
        DIODE_SHORT("rectifier"), DIODE_OPEN("rectifier"), TWO_DIODES_OPEN("rectifier"),
        SUPPRESSOR_SHORT("suppressor"), SUPPRESSOR_LEAKS("suppressor"),
        REGULATOR_DEAD("regulator"), REGULATOR_WEAK("regulator"), REGULATOR_FULL_ON("regulator"),
        REGULATOR_HUNTS("regulator"), REGULATOR_FUSE("regulator"),
        RESIDUAL_LOST("residual-field"),
        FIELD_LEAD_OPEN("wiring"), SENSING_OPEN("wiring"), LEAD_LOOSE("wiring"), SUPPLY_LEAD_OPEN("wiring"),
        SPEED_LOW("speed"), SPEED_HIGH("speed"), SPEED_HUNTS("speed");

        final String suspect;

        Fault(String suspect) {
            this.suspect = suspect;
        }
    }

    final Fault fault;
    final double speed;
    final boolean selfExcited;
    final double severity;
    final double startThreshold;
    private final double saturation;
    private final double residualMain;
    private final double residualExciter;
    private final double diodeDrop;
    private final double sourceDrop;
    private final double ceiling;
    private final double fullLoadField;
    private final double chain;
    private final double leak;
    private final boolean protectsSensing;
    private final int poles;
    private final double coupling;
    final double[] phases = {1, 1, 1};

    Alternator(Fault fault, PublishedMachines published, Random r) {
        this.fault = fault;
        selfExcited = fault == Fault.RESIDUAL_LOST || r.nextDouble() < 0.6;
        saturation = published.saturation(r);
        double residual = fault == Fault.RESIDUAL_LOST ? in(r, 0, 0.15) : 1;
        residualMain = residual * in(r, 0.006, 0.02);
        residualExciter = residual * in(r, 0.03, 0.1);
        sourceDrop = published.sourceDrop(r);
        fullLoadField = published.fullLoadField(r);
        ceiling = fullLoadField * in(r, 1.1, 1.5);
        diodeDrop = published.diodeDrop(r, ceiling);
        startThreshold = in(r, 0.008, 0.018);
        protectsSensing = r.nextBoolean();
        severity = switch (fault) {
            case STATOR_SHORT -> in(r, 0.02, 0.3);
            case ROTOR_SHORT, ROTOR_EARTH_AND_SHORT -> in(r, 0.05, 0.5);
            case EXCITER_FIELD_SHORT, EXCITER_FIELD_EARTH_AND_SHORT -> in(r, 0.08, 0.6);
            case EXCITER_ROTOR_SHORT -> in(r, 0.05, 0.5);
            case REGULATOR_WEAK -> in(r, 0.4, 1.5);
            case SPEED_LOW -> in(r, 0.75, 0.94);
            case SPEED_HIGH -> in(r, 1.06, 1.15);
            case SPEED_HUNTS -> in(r, 0.02, 0.08);
            case SUPPRESSOR_LEAKS -> in(r, 0.1, 1.0);
            default -> 1;
        };
        poles = r.nextDouble() < 0.7 ? 4 : r.nextBoolean() ? 2 : 6;
        coupling = in(r, 0.5, 0.95);
        speed = fault == Fault.SPEED_LOW || fault == Fault.SPEED_HIGH ? severity : in(r, 0.985, 1.015);
        leak = fault == Fault.SUPPRESSOR_SHORT ? 0.005 : fault == Fault.SUPPRESSOR_LEAKS ? severity : 1e9;
        chain = chain(r);
        for (int p = 0; p < 3; p++) {
            phases[p] = 1 + 0.0015 * r.nextGaussian();
        }
        if (fault == Fault.STATOR_SHORT) {
            phases[r.nextInt(3)] *= 1 - severity;
        } else if (fault == Fault.STATOR_OPEN) {
            phases[r.nextInt(3)] = in(r, 0, 0.3);
        }
    }

    static double in(Random r, double low, double high) {
        return low + (high - low) * r.nextDouble();
    }

    /** Direct volts of the bridge at one exciter flux over those of the sound one; a short also loads the armature. */
    private double chain(Random r) {
        Bridge b = new Bridge();
        return switch (fault) {
            case DIODE_SHORT -> {
                b.shortUpper(0);
                yield b.mean() * in(r, 0.35, 0.65);
            }
            case DIODE_OPEN -> {
                b.openUpper(0);
                yield b.mean();
            }
            case TWO_DIODES_OPEN -> {
                b.openUpper(0);
                b.openUpper(1);
                yield b.mean();
            }
            case EXCITER_ROTOR_OPEN -> {
                b.openPhase(0);
                yield b.mean();
            }
            case EXCITER_ROTOR_SHORT -> {
                b.amplitude(0, 1 - severity);
                yield b.mean() * in(r, 0.4, 0.8);
            }
            default -> 1;
        };
    }

    private boolean exciterFieldShort() {
        return fault == Fault.EXCITER_FIELD_SHORT || fault == Fault.EXCITER_FIELD_EARTH_AND_SHORT;
    }

    private boolean rotorShort() {
        return fault == Fault.ROTOR_SHORT || fault == Fault.ROTOR_EARTH_AND_SHORT;
    }

    /** Main-field ampere turns for an exciter current, both over no load. */
    private double mainField(double exciterAmps) {
        double turns = exciterFieldShort() ? 1 - severity : fault == Fault.EXCITER_FIELD_OPEN ? 0 : 1;
        double field = turns * exciterAmps * (1 + diodeDrop) + residualExciter;
        double volts = Math.max(0, speed * field * chain - diodeDrop);
        if (fault == Fault.ROTOR_OPEN) {
            return 0;
        }
        double left = rotorShort() ? 1 - severity : 1;
        double resistance = (1 - sourceDrop) * left;
        double parallel = leak * (1 - sourceDrop);
        double joined = resistance * parallel / (resistance + parallel);
        double through = volts / (sourceDrop + joined) * parallel / (resistance + parallel);
        return through * left;
    }

    /** Mean line voltage of a sound stator for an exciter current. */
    double volts(double exciterAmps) {
        double x = mainField(exciterAmps);
        return speed * ((1 + saturation) * x / (1 + saturation * x) + residualMain);
    }

    /** The three line voltages for an exciter current. */
    double[] lines(double exciterAmps) {
        double v = volts(exciterAmps);
        double[] out = new double[3];
        for (int p = 0; p < 3; p++) {
            double a = phases[p];
            double b = phases[(p + 1) % 3];
            out[p] = v * Math.sqrt((a * a + b * b + a * b) / 3);
        }
        return out;
    }

    private double mean(double exciterAmps) {
        double[] l = lines(exciterAmps);
        return (l[0] + l[1] + l[2]) / 3;
    }

    /** Where the regulated machine settles, started from a voltage; its own regulator or a sound one. */
    double settles(double from, boolean soundRegulator) {
        double v = Math.max(from, mean(0));
        for (int i = 0; i < 60; i++) {
            v = mean(regulated(v, soundRegulator));
        }
        return v;
    }

    private double regulated(double v, boolean soundRegulator) {
        boolean fed = fault != Fault.FIELD_LEAD_OPEN && fault != Fault.SUPPLY_LEAD_OPEN && fault != Fault.REGULATOR_FUSE
                && (!selfExcited || v >= startThreshold);
        if (!fed || !soundRegulator && fault == Fault.REGULATOR_DEAD
                || fault == Fault.SENSING_OPEN && protectsSensing) {
            return 0;
        }
        double most = selfExcited ? ceiling * Math.min(1, 4 * v) : ceiling;
        if (!soundRegulator && fault == Fault.REGULATOR_WEAK) {
            most = Math.min(most, severity);
        }
        if (fault == Fault.SENSING_OPEN || !soundRegulator && fault == Fault.REGULATOR_FULL_ON) {
            return most;
        }
        double wanted = Math.min(1, speed / 0.96);
        if (mean(most) <= wanted) {
            return most;
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (mean(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Whether the exciter field at its ceiling still drives the main field that full load needs. */
    boolean carriesLoad(boolean soundRegulator) {
        double most = !soundRegulator && fault == Fault.REGULATOR_WEAK ? Math.min(ceiling, severity) : ceiling;
        return mainField(most) >= 0.95 * fullLoadField * Math.min(1, speed / 0.96);
    }

    /** Unbalance of the line voltages at no load, largest deviation from the mean over the mean. */
    double unbalance() {
        double[] l = lines(1);
        double m = (l[0] + l[1] + l[2]) / 3;
        return m < 0.02 ? 0 : Math.max(Math.abs(l[0] - m), Math.max(Math.abs(l[1] - m), Math.abs(l[2] - m))) / m;
    }

    /** Resistance of the exciter field over that of the card; infinite when open. */
    double exciterFieldOhms() {
        return fault == Fault.EXCITER_FIELD_OPEN ? Double.POSITIVE_INFINITY : exciterFieldShort() ? 1 - severity : 1;
    }

    /** Resistance of the main rotor over that of the card; infinite when open. */
    double rotorOhms() {
        return fault == Fault.ROTOR_OPEN ? Double.POSITIVE_INFINITY : rotorShort() ? 1 - severity : 1;
    }

    /**
     * Alternating volts across each pole in series, over those of a sound one; all zero when no current flows. Shorted
     * turns are the closed secondary of a transformer: whatever their number, they leave 1 - k² of the pole's reactance. A
     * short of more than one pole's turns goes through several poles.
     */
    double[] poleDrops() {
        double[] drops = new double[poles];
        int shorted = rotorShort() ? (int) Math.ceil(severity * poles) : 0;
        for (int p = 0; p < poles; p++) {
            drops[p] = fault == Fault.ROTOR_OPEN ? 0 : p < shorted ? 1 - coupling * coupling : 1;
        }
        return drops;
    }
}
