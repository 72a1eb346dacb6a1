package org.copperbook.jobs.faults.machine;

import java.util.Optional;
import java.util.Random;
import org.copperbook.jobs.faults.machine.Alternator.Fault;

/** A workshop that tests the simulated machine: every test reads a physical figure with noise and classes it as people do. */
final class Bench {

    private static final double SLIP = 0.02;
    private final Alternator m;
    private final Random r;

    Bench(Alternator machine, Random random) {
        m = machine;
        r = random;
    }

    /** What the customer tells; empty when the machine shows nothing that anybody would complain of. */
    Optional<String> complaint() {
        double v = m.settles(0, false);
        if (m.fault == Fault.REGULATOR_HUNTS || m.fault == Fault.LEAD_LOOSE
                || m.fault == Fault.SPEED_HUNTS && m.severity > 0.03) {
            return Optional.of("unsteady");
        }
        if (m.fault == Fault.STATOR_EARTH || m.fault == Fault.STATOR_SHORT && m.severity > 0.1 && r.nextDouble() < 0.4) {
            return Optional.of("trips");
        }
        if (v < 0.08) {
            return Optional.of("no-output");
        }
        if (m.unbalance() > 0.02) {
            return Optional.of("unbalanced");
        }
        if (v < 0.93) {
            return Optional.of("low-output");
        }
        if (v > 1.07) {
            return Optional.of("high-output");
        }
        if (m.fault == Fault.SPEED_HIGH) {
            return Optional.of(r.nextBoolean() ? "high-output" : "unsteady");
        }
        return m.carriesLoad(false) ? Optional.empty() : Optional.of("drops-on-load");
    }

    /** The outcome of a test by its name in the files. */
    String make(String test) {
        return switch (test) {
            case "frequency" -> frequency();
            case "separate-excitation" -> run();
            case "regulator-supply" -> supply();
            case "residual-voltage" -> slip("present", "absent", residual() < 0.007);
            case "flash-field" -> flash();
            case "diodes-isolated" -> diodes();
            case "suppressor-lifted" -> slip("open", "conducts", m.fault == Fault.SUPPRESSOR_SHORT
                    || m.fault == Fault.SUPPRESSOR_LEAKS && r.nextDouble() < 0.9);
            case "exciter-stator-resistance" -> ohms(m.fault == Fault.FIELD_LEAD_OPEN && r.nextDouble() < 0.4
                    ? Double.POSITIVE_INFINITY : m.exciterFieldOhms());
            case "main-rotor-resistance" -> ohms(m.rotorOhms());
            case "main-rotor-pole-drop" -> poleDrop();
            case "exciter-rotor-resistance" -> phases(m.fault == Fault.EXCITER_ROTOR_OPEN,
                    m.fault == Fault.EXCITER_ROTOR_SHORT ? m.severity : 0);
            case "main-stator-resistance" -> phases(m.fault == Fault.STATOR_OPEN,
                    m.fault == Fault.STATOR_SHORT ? m.severity : 0);
            case "main-stator-insulation" -> insulation(m.fault == Fault.STATOR_EARTH
                    || m.fault == Fault.STATOR_SHORT && r.nextDouble() < 0.4);
            case "main-rotor-insulation" -> insulation(m.fault == Fault.ROTOR_EARTH_AND_SHORT);
            case "exciter-stator-insulation" -> insulation(m.fault == Fault.EXCITER_FIELD_EARTH_AND_SHORT);
            case "wiring-check" -> slip("right", "fault", m.fault.suspect.equals("wiring") && r.nextDouble() < 0.95);
            case "other-regulator" -> cured() ? "cured" : "unchanged";
            default -> throw new IllegalArgumentException("no such test on this bench: " + test);
        };
    }

    private String slip(String usual, String fault, boolean faulty) {
        return faulty != r.nextDouble() < SLIP ? fault : usual;
    }

    private String frequency() {
        double swing = m.fault == Fault.SPEED_HUNTS ? m.severity * (r.nextBoolean() ? 1 : -1) : 0;
        double f = (m.speed + swing) * (1 + 0.003 * r.nextGaussian());
        return f < 0.96 ? "low" : f > 1.04 ? "high" : "right";
    }

    private String run() {
        if (m.fault == Fault.FIELD_LEAD_OPEN && r.nextBoolean()) {
            return "none";
        }
        double[] l = m.lines(1);
        double v = (l[0] + l[1] + l[2]) / 3 * (1 + 0.025 * r.nextGaussian());
        double unbalance = m.unbalance() + Math.abs(0.001 * r.nextGaussian());
        if (m.fault == Fault.LEAD_LOOSE && r.nextDouble() < 0.3) {
            unbalance += Alternator.in(r, 0.01, 0.2);
        }
        if (v < 0.08) {
            return "none";
        }
        if (v > 1.1) {
            return "high";
        }
        return (v < 0.9 ? "low-" : "normal-") + (unbalance > 0.01 ? "unbalanced" : "balanced");
    }

    private String supply() {
        boolean missing = m.fault == Fault.REGULATOR_FUSE || m.fault == Fault.SUPPLY_LEAD_OPEN
                || m.selfExcited && m.settles(0, false) < 0.08 && r.nextDouble() < 0.25;
        return slip("present", "missing", missing);
    }

    private double residual() {
        return m.volts(0) * (1 + 0.05 * r.nextGaussian());
    }

    private String flash() {
        if (m.fault == Fault.FIELD_LEAD_OPEN || m.volts(1) < 0.3) {
            return "nothing";
        }
        return m.settles(0.5, false) > 0.85 ? "stays" : "falls-back";
    }

    private String diodes() {
        if (r.nextDouble() < SLIP) {
            return m.fault.suspect.equals("rectifier") ? "all-good" : r.nextBoolean() ? "one-shorted" : "one-open";
        }
        return switch (m.fault) {
            case DIODE_SHORT -> "one-shorted";
            case DIODE_OPEN, TWO_DIODES_OPEN -> "one-open";
            default -> "all-good";
        };
    }

    private String ohms(double overCard) {
        double read = overCard * (1 + 0.025 * r.nextGaussian());
        return read < 0.9 ? "low" : read > 1.1 ? "high-or-open" : "agrees";
    }

    /** The lowest pole over the mean of all; people class what is 10 % off. */
    private String poleDrop() {
        double[] drops = m.poleDrops();
        double sum = 0;
        double lowest = Double.MAX_VALUE;
        for (double d : drops) {
            double read = d * (1 + 0.02 * r.nextGaussian());
            sum += read;
            lowest = Math.min(lowest, read);
        }
        return sum == 0 ? "open" : slip("equal", "unequal", lowest < 0.9 * sum / drops.length);
    }

    private String phases(boolean open, double shorted) {
        return open ? "open" : shorted + Math.abs(0.006 * r.nextGaussian()) > 0.02 ? "unequal" : "equal";
    }

    private String insulation(boolean low) {
        return low || r.nextDouble() < 0.04 ? "low" : "sound";
    }

    private boolean cured() {
        boolean steady = m.fault != Fault.LEAD_LOOSE && m.fault != Fault.SPEED_HUNTS;
        double v = m.settles(0, true);
        return steady && v > 0.95 && v < 1.05 && m.unbalance() < 0.02 && m.carriesLoad(true)
                && m.fault != Fault.STATOR_EARTH && m.fault != Fault.SPEED_HIGH;
    }
}
