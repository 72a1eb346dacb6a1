package org.copperbook.jobs.nameplate;

import java.time.Clock;
import java.time.Year;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.nameplate.Nameplate.Rating;

/**
 * Compares the figures of a rating plate with each other, each of its ratings by itself and the ratings among each
 * other: S = &radic;3 U I, P = S cos &phi; (a generator's output), P &le; &radic;3 U I cos &phi; (a motor's shaft), n = 120 f / p, an even
 * number of poles, the same volts per hertz, and the ratio of voltages that a change of connection makes. Plates are
 * rounded, so a figure counts as contradicted only beyond {@value #TOLERANCE_PERCENT} %. A figure that cannot be is named and
 * takes only those comparisons with it that would use it. A contradiction is shown and never refused: the plate says what it
 * says.
 */
public final class PlateCrossCheck {

    /** Rounding and the plate's own tolerance together; common practice, no source. */
    static final double TOLERANCE_PERCENT = 3;
    /** Plates for two frequencies seldom keep volts per hertz exactly; common practice, no source. */
    static final double FLUX_TOLERANCE_PERCENT = 15;
    /** Below it a motor's plate was more likely misread than the motor built so; common practice, no source. */
    static final double LEAST_EFFICIENCY = 0.3;
    /** A loaded induction motor seldom slips more; common practice, no source. */
    static final double MOST_SLIP = 0.15;

    /** Before it no machine of the kinds repaired here was built (from memory, no source). */
    public static final int FIRST_YEAR = 1880;

    static final double KILO = 1000;
    private static final double SQRT_3 = Math.sqrt(3);

    private final Clock clock;

    public PlateCrossCheck() {
        this(Clock.systemDefaultZone());
    }

    /** @param clock says which year it is: no machine was made after it */
    PlateCrossCheck(Clock clock) {
        this.clock = clock;
    }

    /**
     * A contradiction.
     *
     * @param what      what does not agree
     * @param rating    0 for the plate's first rating, 1 for the first of the others ...
     * @param arguments figures for its sentence: computed and stated, or as {@link What} says
     */
    public record Contradiction(What what, int rating, List<Object> arguments) {
    }

    /** What can contradict what. */
    public enum What {
        /** kVA computed from volts and amps, and stated. */
        APPARENT_POWER,
        /** kW computed from kVA and power factor, and stated. */
        POWER,
        /** Power factor that kW and kVA give, where the plate states another that cannot be. */
        POWER_FACTOR,
        /** Efficiency in percent that a motor's kW, volts, amps and power factor give. */
        EFFICIENCY,
        /** r/min computed from frequency and poles, and stated. */
        SPEED,
        /** Poles stated, which are odd. */
        ODD_POLES,
        /** Frequency and speed stated, which no even number of poles gives. */
        NO_POLES,
        /** Volts per hertz of the first rating and of this one. */
        VOLTS_PER_HERTZ,
        /** Volts that the change of connection gives at this frequency, and stated. */
        RECONNECTED_VOLTS,
        /** A {@link Figure} that is not above zero, and its value. */
        NOT_ABOVE_ZERO,
        /** A power in GW or GVA that no machine was built for. */
        BEYOND_MACHINES,
        /** Words that name no thermal class. */
        THERMAL_CLASS,
        /** Words that name neither a thermal class nor a rise in kelvin. */
        RISE_LIMIT,
        /** Lower limit of the ambient, and the rated ambient, which is not above it. */
        AMBIENT,
        /** Words that name no duty. */
        DUTY,
        /** Year stated, first and last that can be; as text. */
        YEAR,
        /** Overspeed stated, and the rated speed above it. */
        OVERSPEED,
        /** kW that the exciter field takes, and percent of the rating. */
        EXCITER_POWER,
        /** kW that the main field takes, and percent of the rating. */
        MAIN_FIELD_POWER,
        /** kW that the exciter field takes, and the main field, which takes no more. */
        EXCITER_ABOVE_MAIN_FIELD
    }

    /** Figures of a plate that are above zero on every machine. */
    public enum Figure {
        APPARENT_POWER, POWER, VOLTS, AMPS, HERTZ, SPEED, POLES, PHASES, EXCITER_VOLTS, EXCITER_AMPS, MAIN_FIELD_VOLTS,
        MAIN_FIELD_AMPS, ROTOR_VOLTS, ROTOR_AMPS, OVERSPEED, MASS, SHAFT_HEIGHT, INERTIA
    }

    /** A figure without which power, volts and amps cannot be compared. */
    public enum Missing { POWER, VOLTS, AMPS, PHASES }

    /**
     * The contradictions; empty when the figures given agree or too few are given to say.
     *
     * @param kind what the machine was booked in as; null when nobody has said, and a plate without kVA is then a motor's
     */
    public List<Contradiction> findings(Nameplate plate, MachineKind kind) {
        List<Contradiction> found = new ArrayList<>();
        List<Rating> stated = ratings(plate);
        boolean motor = motor(plate, kind);
        PossibleFigures ofPlate = new PossibleFigures(0, found);
        Optional<Integer> phases = phases(plate, kind).map(p -> ofPlate.aboveZero(Figure.PHASES, p));
        Integer poles = ofPlate.aboveZero(Figure.POLES, plate.poles());
        List<Rating> possible = new ArrayList<>();
        for (int i = 0; i < stated.size(); i++) {
            possible.add(new PossibleFigures(i, found).of(stated.get(i)));
        }
        new WholePlate(plate, possible, ofPlate, found).look(Year.now(clock).getValue());
        for (int i = 0; i < possible.size(); i++) {
            OneRating one = new OneRating(possible.get(i), i, poles, phases, motor, found);
            one.apparentPower();
            one.power();
            one.speed();
            if (i > 0) {
                one.against(possible.get(0));
            }
        }
        return found;
    }

    /**
     * What keeps power, volts and amps of a rating from being compared.
     *
     * @param rating 0 for the plate's first rating, 1 for the first of the others ...
     * @return empty when they are compared, or when not even two of them are given
     */
    public Set<Missing> missing(Nameplate plate, MachineKind kind, int rating) {
        Rating r = ratings(plate).get(rating);
        Set<Missing> missing = EnumSet.noneOf(Missing.class);
        if (r.apparentPowerVA() == null && r.powerW() == null) {
            missing.add(Missing.POWER);
        }
        if (r.voltageV() == null) {
            missing.add(Missing.VOLTS);
        }
        if (r.currentA() == null) {
            missing.add(Missing.AMPS);
        }
        if (missing.size() > 1) {
            return Set.of();
        }
        if (phases(plate, kind).isEmpty()) {
            missing.add(Missing.PHASES);
        }
        return missing;
    }

    /** Whether any two figures of a rating say something of each other. */
    public boolean compares(Nameplate plate, MachineKind kind, int rating) {
        Rating r = ratings(plate).get(rating);
        boolean powers = r.apparentPowerVA() != null || r.powerW() != null;
        return powers && r.voltageV() != null && r.currentA() != null && phases(plate, kind).isPresent()
                || r.apparentPowerVA() != null && r.powerW() != null || r.frequencyHz() != null && r.speedRpm() != null
                || rating > 0 && r.voltageV() != null && r.frequencyHz() != null && plate.voltageV() != null
                && plate.frequencyHz() != null;
    }

    private static List<Rating> ratings(Nameplate plate) {
        List<Rating> all = new ArrayList<>();
        all.add(new Rating(plate.apparentPowerVA(), plate.powerW(), plate.voltageV(), plate.connection(),
                plate.currentA(), plate.frequencyHz(), plate.speedRpm(), plate.powerFactor(), null));
        all.addAll(plate.otherRatings());
        return all;
    }

    private static boolean motor(Nameplate plate, MachineKind kind) {
        return kind != null ? kind != MachineKind.BRUSHLESS_ALTERNATOR
                : ratings(plate).stream().allMatch(r -> r.apparentPowerVA() == null);
    }

    /** As the plate says, else three where a connection or slip rings say so; a kind of machine that is built both ways does not. */
    private static Optional<Integer> phases(Nameplate plate, MachineKind kind) {
        if (plate.phases() != null) {
            return Optional.of(plate.phases());
        }
        boolean three = kind == MachineKind.INDUCTION_MOTOR_WOUND_ROTOR || plate.rotorV() != null
                || ratings(plate).stream().map(Rating::connection).filter(Objects::nonNull)
                        .map(w -> w.toLowerCase(Locale.ROOT)).anyMatch(w -> w.contains("star") || w.contains("wye")
                                || w.contains("delta"));
        return three ? Optional.of(3) : Optional.empty();
    }

    private static boolean apart(double stated, double computed, double percent) {
        return Math.abs(stated - computed) > percent / 100 * Math.abs(computed);
    }

    /** The ratio of line voltage to that in star, for connections whose words say it. */
    private static Optional<Double> relativeVolts(String connection) {
        if (connection == null) {
            return Optional.empty();
        }
        String words = connection.toLowerCase(Locale.ROOT);
        boolean star = words.contains("star") || words.contains("wye");
        if (star == words.contains("delta") || words.contains("zig")) {
            return Optional.empty();
        }
        double ratio = star ? 1 : 1 / SQRT_3;
        return Optional.of(words.contains("parallel") ? ratio / 2 : ratio);
    }

    private static boolean saysParallelOrSeries(String connection) {
        String words = connection.toLowerCase(Locale.ROOT);
        return words.contains("parallel") || words.contains("series");
    }

    private record OneRating(Rating r, int at, Integer poles, Optional<Integer> phases, boolean motor,
            List<Contradiction> found) {

        private void add(What what, Object... arguments) {
            found.add(new Contradiction(what, at, List.of(arguments)));
        }

        private Optional<Double> voltAmperes() {
            return r.voltageV() == null || r.currentA() == null ? Optional.empty()
                    : phases.map(p -> (p == 3 ? SQRT_3 : p) * r.voltageV() * r.currentA());
        }

        private void apparentPower() {
            voltAmperes().filter(s -> r.apparentPowerVA() != null && apart(r.apparentPowerVA(), s, TOLERANCE_PERCENT))
                    .ifPresent(s -> add(What.APPARENT_POWER, s / KILO, r.apparentPowerVA() / KILO));
        }

        private void power() {
            if (motor) {
                efficiency();
            } else if (r.apparentPowerVA() != null && r.powerW() != null) {
                if (r.powerFactor() == null && r.powerW() > r.apparentPowerVA() * (1 + TOLERANCE_PERCENT / 100)) {
                    add(What.POWER_FACTOR, r.powerW() / r.apparentPowerVA());
                } else if (r.powerFactor() != null
                        && apart(r.powerW(), r.apparentPowerVA() * r.powerFactor(), TOLERANCE_PERCENT)) {
                    add(What.POWER, r.apparentPowerVA() * r.powerFactor() / KILO, r.powerW() / KILO);
                }
            } else if (r.powerW() != null) {
                voltAmperes().ifPresent(this::output);
            }
        }

        /** A generator of which only kW is stated: what goes out is the volt-amperes times the power factor. */
        private void output(double voltAmperes) {
            if (r.powerFactor() == null && r.powerW() > voltAmperes * (1 + TOLERANCE_PERCENT / 100)) {
                add(What.POWER_FACTOR, r.powerW() / voltAmperes);
            } else if (r.powerFactor() != null && apart(r.powerW(), voltAmperes * r.powerFactor(), TOLERANCE_PERCENT)) {
                add(What.POWER, voltAmperes * r.powerFactor() / KILO, r.powerW() / KILO);
            }
        }

        /** More out at the shaft than goes in, or so little that a figure was misread. */
        private void efficiency() {
            if (r.powerW() == null) {
                return;
            }
            double powerFactor = r.powerFactor() == null ? 1 : r.powerFactor();
            voltAmperes().map(s -> r.powerW() / (s * powerFactor))
                    .filter(e -> e > 1 + TOLERANCE_PERCENT / 100 || r.powerFactor() != null && e < LEAST_EFFICIENCY)
                    .ifPresent(e -> add(What.EFFICIENCY, 100 * e));
        }

        private void speed() {
            if (r.frequencyHz() == null || r.speedRpm() == null) {
                return;
            }
            if (poles == null) {
                if (!someEvenPolesFit()) {
                    add(What.NO_POLES, r.frequencyHz(), r.speedRpm());
                }
                return;
            }
            double computed = 120 * r.frequencyHz() / poles;
            if (!fits(computed)) {
                add(What.SPEED, computed, r.speedRpm());
            }
        }

        private boolean someEvenPolesFit() {
            for (int poles = 2; 120 * r.frequencyHz() / poles >= r.speedRpm() * (1 - TOLERANCE_PERCENT / 100); poles += 2) {
                if (fits(120 * r.frequencyHz() / poles)) {
                    return true;
                }
            }
            return false;
        }

        private boolean fits(double synchronous) {
            boolean slips = motor && r.speedRpm() < synchronous && r.speedRpm() > (1 - MOST_SLIP) * synchronous;
            return slips || !apart(r.speedRpm(), synchronous, TOLERANCE_PERCENT);
        }

        private void against(Rating first) {
            if (first.voltageV() == null || r.voltageV() == null || first.frequencyHz() == null
                    || r.frequencyHz() == null) {
                return;
            }
            Optional<Double> was = relativeVolts(first.connection());
            Optional<Double> is = relativeVolts(r.connection());
            boolean sameWords = first.connection() == null ? r.connection() == null
                    : first.connection().equalsIgnoreCase(r.connection());
            if (sameWords) {
                double then = first.voltageV() / first.frequencyHz();
                double now = r.voltageV() / r.frequencyHz();
                if (apart(now, then, FLUX_TOLERANCE_PERCENT)) {
                    add(What.VOLTS_PER_HERTZ, then, now);
                }
            } else if (was.isPresent() && is.isPresent()
                    && saysParallelOrSeries(first.connection()) == saysParallelOrSeries(r.connection())) {
                double computed = first.voltageV() * is.get() / was.get() * r.frequencyHz() / first.frequencyHz();
                if (apart(r.voltageV(), computed, FLUX_TOLERANCE_PERCENT)) {
                    add(What.RECONNECTED_VOLTS, computed, r.voltageV());
                }
            }
        }
    }
}
