package org.copperbook.jobs.check;

import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.winding.WindingRole;

/** Finds the withstand level of a winding in the limit profile: IEC 60034-1 or AR100, whichever the profile lets decide. */
final class WithstandLevel {

    private static final double SMALL_POWER = 1000;
    private static final double SMALL_VOLTS = 100;
    private static final double HIGH_FIELD = 500;
    private static final double AR100_LOW_FIELD = 35;
    private static final double AR100_HIGH_FIELD = 350;

    private final Machine machine;
    private final LimitBook limits;

    WithstandLevel(Machine machine, LimitBook limits) {
        this.machine = machine;
        this.limits = limits;
    }

    /** Volts on which the level of a winding stands: its own, or the main field's for the exciter armature. */
    Optional<Double> volts(WindingRole role) {
        return role == WindingRole.EXCITER_ROTOR ? machine.mainFieldVolts() : machine.ratedVolts(role);
    }

    /** The level of a new winding, V ac rms, by the rule that decides. */
    LimitBook.Applied ofNew(WindingRole role) {
        LimitBook.Applied iec = find(iec(role), role);
        LimitBook.Applied other = find(ar100(role), role);
        return !iec.decides() && other.decides() ? other : iec;
    }

    /** The other rule, for comparison. */
    LimitBook.Applied comparison(WindingRole role) {
        LimitBook.Applied iec = find(iec(role), role);
        LimitBook.Applied other = find(ar100(role), role);
        return !iec.decides() && other.decides() ? iec : other;
    }

    /** The level after an overhaul. */
    LimitBook.Applied ofOverhauled(WindingRole role) {
        boolean low = volts(role).map(v -> v < SMALL_VOLTS).orElse(false);
        return find(low ? "withstand.overhaul-low" : "withstand.overhaul", role);
    }

    private LimitBook.Applied find(String id, WindingRole role) {
        return limits.find(id, volts(role).map(v -> Map.of("U", v)).orElse(Map.of()));
    }

    private String iec(WindingRole role) {
        double u = volts(role).orElse(0.0);
        return switch (role) {
            case EXCITER_STATOR -> "withstand.iec.separate-field";
            case MAIN_ROTOR -> u > HIGH_FIELD ? "withstand.iec.synchronous-field-high"
                    : "withstand.iec.synchronous-field";
            case EXCITER_ROTOR -> u > HIGH_FIELD ? "withstand.iec.exciter-armature-high"
                    : "withstand.iec.exciter-armature";
            default -> {
                boolean small = u > 0 && u < SMALL_VOLTS
                        && machine.ratedPower().map(p -> p < SMALL_POWER).orElse(false);
                yield small ? "withstand.iec.armature-small" : "withstand.iec.armature";
            }
        };
    }

    private String ar100(WindingRole role) {
        if (!role.isField() && role != WindingRole.EXCITER_ROTOR) {
            return "withstand.ar100.armature";
        }
        double u = volts(role).orElse(0.0);
        if (u > 0 && u <= AR100_LOW_FIELD) {
            return "withstand.ar100.field-low";
        }
        return u > AR100_HIGH_FIELD ? "withstand.ar100.field-high" : "withstand.ar100.field";
    }
}
