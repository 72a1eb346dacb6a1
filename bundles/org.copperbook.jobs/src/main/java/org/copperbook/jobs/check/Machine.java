package org.copperbook.jobs.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.resistance.Conductor;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/** What the checks need to know of the machine: plate, windings, and what follows from them. Never guesses. */
final class Machine {

    private static final double LOW_VOLTAGE = 1000;
    private static final int OLD_INSULATION = 1970;

    private final Job job;
    private final Shop shop;
    private final Nameplate plate;

    Machine(Job job, Shop shop) {
        this.job = job;
        this.shop = shop;
        plate = job.nameplate().orElse(null);
    }

    /** Temperature to which resistances are brought, degrees Celsius. */
    double reference() {
        return shop.workshop().referenceCelsius();
    }

    /** The constant of the temperature correction that the workshop has chosen. */
    Conductor conductor() {
        return shop.workshop().copperConstant() == Conductor.COPPER_IEEE.inferredZero()
                ? Conductor.COPPER_IEEE : Conductor.COPPER_IEC;
    }

    /** Standard uncertainty of a winding temperature, kelvin. */
    double kelvinU(Double stated) {
        return stated == null ? shop.workshop().temperatureU() : stated;
    }

    Optional<MachineKind> kind() {
        return job.booking().map(b -> b.machineKind());
    }

    /** Whether the machine has a rotating rectifier: by its kind, or because one is recorded. */
    boolean hasRectifier() {
        return kind().map(MachineKind::hasRectifier).orElse(job.rectifier().isPresent());
    }

    /** Windings that have a part of their own, in the order of the roles. */
    Set<WindingRole> recordedWindings() {
        Set<WindingRole> roles = EnumSet.noneOf(WindingRole.class);
        job.keys(PartKind.WINDING).forEach(k -> roles.add(((WindingData) job.part(k).orElseThrow()).role()));
        return roles;
    }

    /** Windings that are wound anew on this job. */
    Set<WindingRole> rewound() {
        Set<WindingRole> roles = EnumSet.noneOf(WindingRole.class);
        for (WindingRole role : WindingRole.values()) {
            if (job.windingAsWound(role).isPresent()) {
                roles.add(role);
            }
        }
        return roles;
    }

    /** Windings whose old turns have been counted, or that are wound anew: those that a capture belongs to. */
    Set<WindingRole> captured() {
        Set<WindingRole> roles = rewound();
        for (WindingRole role : WindingRole.values()) {
            boolean begun = job.windingAsFound(role).map(w -> !w.counts().isEmpty()).orElse(false);
            if (begun) {
                roles.add(role);
            }
        }
        return roles;
    }

    /** Windings that the release has to see measured: the main one, those recorded or rewound, those read as found. */
    Set<WindingRole> toBeProved(ReadingLog log) {
        Set<WindingRole> roles = recordedWindings();
        roles.add(mainWinding());
        log.all().forEach(l -> {
            if (l.reading().place() != null && l.reading().place().winding() != null) {
                roles.add(l.reading().place().winding());
            }
        });
        return roles;
    }

    /** The winding whose voltage stands on the plate. */
    WindingRole mainWinding() {
        boolean motor = kind().map(k -> k != MachineKind.BRUSHLESS_ALTERNATOR)
                .orElse(recordedWindings().contains(WindingRole.MOTOR_STATOR));
        return motor ? WindingRole.MOTOR_STATOR : WindingRole.MAIN_STATOR;
    }

    /** The winding data that holds as left: the new winding where there is one, else the one found. */
    Optional<WindingData> windingAsLeft(WindingRole role) {
        return job.windingAsWound(role).or(() -> job.windingAsFound(role));
    }

    Optional<WindingData> windingAsFound(WindingRole role) {
        return job.windingAsFound(role);
    }

    /** Rated speed, or the synchronous speed of the plate's frequency and poles for a machine that is not a motor; r/min. */
    Optional<Double> nominalSpeed() {
        if (plate == null) {
            return Optional.empty();
        }
        if (plate.speedRpm() != null && plate.speedRpm() > 0) {
            return Optional.of(plate.speedRpm());
        }
        boolean synchronous = kind().orElse(null) == MachineKind.BRUSHLESS_ALTERNATOR;
        if (synchronous && plate.frequencyHz() != null && plate.poles() != null && plate.poles() > 0) {
            return Optional.of(120 * plate.frequencyHz() / plate.poles());
        }
        return Optional.empty();
    }

    Optional<Double> ratedLineVolts() {
        return plate == null ? Optional.empty() : positive(plate.voltageV());
    }

    /** Rated volts of a winding: line volts of the armature, dc volts of a field; empty when no plate says them. */
    Optional<Double> ratedVolts(WindingRole role) {
        if (plate == null) {
            return Optional.empty();
        }
        return switch (role) {
            case MAIN_STATOR, MOTOR_STATOR -> positive(plate.voltageV());
            case MAIN_ROTOR -> positive(plate.mainFieldV());
            case EXCITER_STATOR -> positive(plate.excitationV());
            case EXCITER_ROTOR, PILOT_STATOR, MOTOR_ROTOR -> Optional.empty();
        };
    }

    /** Rated main-field volts, on which the exciter armature's test level stands. */
    Optional<Double> mainFieldVolts() {
        return plate == null ? Optional.empty() : positive(plate.mainFieldV());
    }

    Optional<Double> shaftHeightMm() {
        return plate == null ? Optional.empty() : positive(plate.shaftHeightMm());
    }

    /** Rated power in W or VA, whichever the plate says; for the rule about small machines. */
    Optional<Double> ratedPower() {
        if (plate == null) {
            return Optional.empty();
        }
        return positive(plate.powerW()).or(() -> positive(plate.apparentPowerVA()));
    }

    /** Whether the winding is form-wound: rectangular wire. Empty when the conductor is not recorded. */
    Optional<Boolean> formWound(WindingRole role) {
        return windingAsLeft(role).map(WindingData::conductor).map(c -> c == WindingData.Conductor.RECTANGULAR);
    }

    boolean below1kV(WindingRole role) {
        return ratedVolts(role).map(v -> v < LOW_VOLTAGE).orElse(role != mainWinding());
    }

    /** Whether this insulation is from before about 1970: an old machine whose winding was not made anew. */
    boolean beforeAbout1970(WindingRole role, boolean asLeft) {
        boolean renewed = asLeft && job.windingAsWound(role).isPresent();
        return !renewed && plate != null && plate.year() != null && plate.year() < OLD_INSULATION;
    }

    /** Thermal class letter or number of a winding as recorded, upper case; empty when nothing says it. */
    Optional<String> thermalClass(WindingRole role, boolean asLeft) {
        Optional<WindingData> data = asLeft ? windingAsLeft(role) : windingAsFound(role);
        return data.map(WindingData::thermalClass)
                .or(() -> Optional.ofNullable(plate).map(Nameplate::thermalClass))
                .map(t -> t.strip().toUpperCase(Locale.ROOT)).filter(t -> !t.isEmpty());
    }

    /** Whether the phases are joined in star (true) or delta (false); empty when not recorded or neither. */
    Optional<Boolean> star(WindingRole role, boolean asLeft) {
        Optional<WindingData> data = asLeft ? windingAsLeft(role) : windingAsFound(role);
        Optional<Boolean> captured = data.map(WindingData::connection).flatMap(Machine::star);
        if (captured.isPresent() || role != mainWinding() || plate == null || plate.connection() == null) {
            return captured;
        }
        String words = plate.connection().toLowerCase(Locale.ROOT);
        if (words.contains("delta")) {
            return Optional.of(false);
        }
        return words.contains("star") || words.contains("wye") || words.contains("zig") ? Optional.of(true)
                : Optional.empty();
    }

    private static Optional<Boolean> star(WindingData.Connection c) {
        return switch (c) {
            case STAR, SERIES_STAR, PARALLEL_STAR, ZIG_ZAG -> Optional.of(true);
            case DELTA, SERIES_DELTA, PARALLEL_DELTA -> Optional.of(false);
            case OPEN_PHASES, SINGLE_PHASE, SERIES_POLES, PARALLEL_POLES -> Optional.empty();
        };
    }

    /** Whether turns, wire, circuits and connection of the new winding are those of the old. Empty when not captured. */
    Optional<Boolean> woundLikeFound(WindingRole role) {
        Optional<WindingData> was = job.windingAsFound(role);
        Optional<WindingData> is = job.windingAsWound(role);
        if (is.isEmpty()) {
            return Optional.of(true);
        }
        if (was.isEmpty()) {
            return Optional.empty();
        }
        WindingData a = was.get();
        WindingData b = is.get();
        return Optional.of(same(a.turnsPerCoil(), b.turnsPerCoil()) && same(a.circuits(), b.circuits())
                && same(a.connection(), b.connection()) && same(a.coilCount(), b.coilCount())
                && same(sizes(a), sizes(b)));
    }

    private static List<String> sizes(WindingData w) {
        return w.wire().stream().map(x -> x.strands() + " x " + x.size()).sorted().toList();
    }

    /** Two captured values agree, or one of them was not captured. */
    private static boolean same(Object a, Object b) {
        boolean unknown = a == null || b == null || a.equals(List.of()) || b.equals(List.of());
        return unknown || a.equals(b);
    }

    private static Optional<Double> positive(Double d) {
        return d == null || !(d > 0) ? Optional.empty() : Optional.of(d);
    }
}
