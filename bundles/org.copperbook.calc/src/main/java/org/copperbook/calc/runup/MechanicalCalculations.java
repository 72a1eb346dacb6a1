package org.copperbook.calc.runup;

import static org.copperbook.calc.quantity.Dimension.ACCELERATION;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MASS;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESIDUAL_UNBALANCE;
import static org.copperbook.calc.quantity.Dimension.ROTATIONAL_SPEED;
import static org.copperbook.calc.quantity.Dimension.VELOCITY;

import java.util.List;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;

/** Vibration and balance. */
public final class MechanicalCalculations implements CalculationSource {

    private static final String AREA = "run-up";

    @Override
    public List<Calculation> calculations() {
        return List.of(limits(), shop(), conversion(), zone(), balance());
    }

    private static Calculation limits() {
        return Calculation.named(AREA, "vibration-limits")
                .title("Vibration limits by grade, mounting and shaft height")
                .source("IEC 60034-14:2003, table 1 (the 2018 edition revises it)")
                .formula("table, rms")
                .choice("grade", VibrationLimits.Grade.class, "a", "vibration grade")
                .choice("mounting", VibrationLimits.Mounting.class, "free", "free suspension or rigid")
                .number("shaft-height", LENGTH, "mm", "shaft height, from 56 mm")
                .gives("displacement", LENGTH, "mm", "displacement, rms")
                .gives("velocity", VELOCITY, "mm/s", "velocity, rms")
                .gives("acceleration", ACCELERATION, "m/s²", "acceleration, rms")
                .by((in, out) -> {
                    VibrationLimits v = VibrationLimits.of(in.choice("grade", VibrationLimits.Grade.class),
                            in.choice("mounting", VibrationLimits.Mounting.class), in.number("shaft-height"))
                            .orElseThrow(() -> new OutOfRange("shaft height",
                                    in.number("shaft-height") * 1000 + " mm", "heights above 132 mm",
                                    "the table sets no limit for grade B on a rigid mounting there"));
                    out.put("displacement", v.displacement()).put("velocity", v.velocity())
                            .put("acceleration", v.acceleration());
                });
    }

    private static Calculation shop() {
        return Calculation.named(AREA, "vibration-shop-limit")
                .title("Vibration limit of a repair shop")
                .source("ANSI/EASA AR100, vibration clause")
                .formula("0.15 in/s peak above 1200 r/min, 0.0025 in peak to peak below; rigid 0.8 of it")
                .number("speed", ROTATIONAL_SPEED, "r/min", "running speed")
                .flag("rigid", "no", "rigid mounting")
                .gives("velocity", VELOCITY, "mm/s", "velocity, rms")
                .by((in, out) -> out.put("velocity",
                        ShopVibration.velocityRms(in.number("speed"), in.flag("rigid"))));
    }

    private static Calculation conversion() {
        return Calculation.named(AREA, "vibration-conversion")
                .title("Vibration of a sine: displacement, velocity, acceleration")
                .source("sinusoid identities")
                .formula("v = 2 pi f d; a = 2 pi f v; rms = peak/sqrt(2)")
                .number("speed", ROTATIONAL_SPEED, "r/min", "frequency as r/min")
                .number("peak-to-peak", LENGTH, "mm", "", "displacement, peak to peak")
                .number("displacement", LENGTH, "mm", "", "displacement, rms")
                .number("velocity-peak", VELOCITY, "mm/s", "", "velocity, peak")
                .number("velocity", VELOCITY, "mm/s", "", "velocity, rms")
                .gives("v-peak", VELOCITY, "mm/s", "velocity, peak")
                .gives("v-rms", VELOCITY, "mm/s", "velocity, rms")
                .gives("d-rms", LENGTH, "mm", "displacement, rms")
                .gives("a-rms", ACCELERATION, "m/s²", "acceleration, rms")
                .by((in, out) -> {
                    double omega = 2 * Math.PI * in.number("speed");
                    double rms = switch (in.firstGiven("peak-to-peak", "displacement", "velocity-peak", "velocity")) {
                        case "peak-to-peak" -> ShopVibration.velocityPeak(in.number("peak-to-peak"),
                                in.number("speed")) / Math.sqrt(2);
                        case "displacement" -> omega * in.number("displacement");
                        case "velocity-peak" -> in.number("velocity-peak") / Math.sqrt(2);
                        default -> in.number("velocity");
                    };
                    out.put("v-peak", rms * Math.sqrt(2)).put("v-rms", rms).put("d-rms", rms / omega)
                            .put("a-rms", rms * omega);
                });
    }

    private static Calculation zone() {
        return Calculation.named(AREA, "vibration-zone")
                .title("Evaluation zone of a vibration velocity")
                .source("ISO 10816-1:1995, annex B (guidance in ISO 20816-1)")
                .formula("zone edges by machine class")
                .choice("class", VibrationZone.MachineClass.class, null, "machine class")
                .number("velocity", VELOCITY, "mm/s", "velocity, rms")
                .givesWord("zone", "A, B, C or D")
                .by((in, out) -> out.put("zone", VibrationZone.of(in.choice("class", VibrationZone.MachineClass.class),
                        in.number("velocity")).name()));
    }

    private static Calculation balance() {
        return Calculation.named(AREA, "residual-unbalance")
                .title("Permissible residual unbalance")
                .source("ISO 21940-11, 6.2 (formula from memory); grades of ANSI/EASA AR100")
                .formula("e = G/(2 pi n); U = e m")
                .number("grade", RATIO, "", "", "balance grade in mm/s; the shop's grade if absent")
                .number("speed", ROTATIONAL_SPEED, "r/min", "highest service speed")
                .number("mass", MASS, "kg", "rotor mass")
                .gives("unbalance", RESIDUAL_UNBALANCE, "g·mm", "residual unbalance of the whole rotor")
                .gives("displacement", LENGTH, "mm", "specific unbalance")
                .gives("grade-used", RATIO, "", "grade, mm/s")
                .by((in, out) -> {
                    double n = in.number("speed");
                    double grade = in.number("grade", Balance.shopGrade(n));
                    out.put("unbalance", Balance.residual(grade, n, in.number("mass")))
                            .put("displacement", Balance.displacement(grade, n)).put("grade-used", grade);
                });
    }
}
