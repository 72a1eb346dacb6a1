package org.copperbook.calc.core;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.AREA;
import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.CURRENT_DENSITY;
import static org.copperbook.calc.quantity.Dimension.DENSITY;
import static org.copperbook.calc.quantity.Dimension.FIELD_STRENGTH;
import static org.copperbook.calc.quantity.Dimension.FLUX_DENSITY;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MAGNETOMOTIVE_FORCE;
import static org.copperbook.calc.quantity.Dimension.MASS;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.SPECIFIC_LOSS;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Decision;

/** The core loop test. */
public final class CoreCalculations implements CalculationSource {

    private static final String GROUP = "core";

    @Override
    public List<Calculation> calculations() {
        return List.of(plan(), turns(), density(), magnetomotiveForce(), loss(), hotSpot());
    }

    private static Calculation plan() {
        return Calculation.named(GROUP, "core-loop-plan")
                .title("Core loop test: turns, current, supply and cable")
                .source("IEEE 432-1992 and ANSI/EASA AR100 describe the test; transformer equation; Ampere's law")
                .formula("V per turn = c f B A; I = H pi (OD - back iron)/N")
                .number("od", LENGTH, "mm", "outside diameter of the core")
                .number("back-iron", LENGTH, "mm", "", "iron behind the slots, or give bore and slot depth")
                .number("bore", LENGTH, "mm", "", "bore")
                .number("slot-depth", LENGTH, "mm", "", "slot depth")
                .number("length", LENGTH, "mm", "core length")
                .whole("ducts", "0", "ventilating ducts")
                .number("duct-width", LENGTH, "mm", "0", "width of a duct")
                .number("stacking", RATIO, "", "0.95", "stacking factor, 0.8 to 1")
                .number("b", FLUX_DENSITY, "T", "1.32", "target density; 1.0 to 1.5 T is usual")
                .number("f", FREQUENCY, "Hz", "50", "supply frequency")
                .number("u", VOLTAGE, "V", "supply voltage")
                .number("h", FIELD_STRENGTH, "A/m", "field strength at the target, from the steel's curve or a trial")
                .number("steel-density", DENSITY, "kg/m³", "7650", "density of the steel")
                .number("cable-density", CURRENT_DENSITY, "A/mm²", "4", "current density allowed in the cable")
                .choice("constant", EmfConstant.class, "exact", "exact pi sqrt 2, or 4.44 as books have it")
                .gives("back-iron-depth", LENGTH, "mm", "iron behind the slots")
                .gives("net-length", LENGTH, "mm", "core length without ducts, times the stacking factor")
                .gives("area", AREA, "m²", "iron area")
                .gives("volts-per-turn", VOLTAGE, "V", "volts per turn at the target")
                .gives("exact-turns", RATIO, "", "turns that give the target exactly")
                .gives("turns", RATIO, "", "whole turns")
                .gives("b-turns", FLUX_DENSITY, "T", "density with the whole turns")
                .gives("mean-diameter", LENGTH, "m", "mean diameter of the flux path")
                .gives("path", LENGTH, "m", "length of the flux path")
                .gives("ampere-turns", MAGNETOMOTIVE_FORCE, "A", "ampere turns, rms")
                .gives("current", CURRENT, "A", "current, rms")
                .gives("supply", APPARENT_POWER, "VA", "supply needed")
                .gives("cable", AREA, "mm²", "copper area of the cable")
                .gives("mass", MASS, "kg", "mass of the back iron, without teeth")
                .by(CoreCalculations::computePlan);
    }

    private static void computePlan(Arguments in, Results out) {
        LoopCore core;
        if (in.firstGiven("back-iron", "bore").equals("back-iron")) {
            core = new LoopCore(in.number("od"), in.number("back-iron"),
                    in.number("length") - in.whole("ducts") * in.number("duct-width"), in.number("stacking"));
        } else {
            core = LoopCore.fromBore(in.number("od"), in.number("bore"), in.number("slot-depth", 0),
                    in.number("length"), in.whole("ducts"), in.number("duct-width"), in.number("stacking"));
        }
        LoopPlan plan = LoopPlan.of(core, new LoopPlan.Target(in.number("b"), in.number("f"), in.number("u"),
                in.number("h"), in.number("cable-density")), in.choice("constant", EmfConstant.class));
        out.put("back-iron-depth", core.backIron()).put("net-length", core.length() * core.stacking())
                .put("area", core.area()).put("volts-per-turn", plan.voltsPerTurn())
                .put("exact-turns", plan.exactTurns()).put("turns", plan.turns()).put("b-turns", plan.fluxDensity())
                .put("mean-diameter", core.path() / Math.PI).put("path", core.path())
                .put("ampere-turns", plan.ampereTurns()).put("current", plan.amperes())
                .put("supply", plan.voltAmperes()).put("cable", plan.cableArea())
                .put("mass", core.mass(in.number("steel-density")));
        double b = in.number("b");
        if (b < LoopPlan.LEAST_USUAL_DENSITY || b > LoopPlan.GREATEST_USUAL_DENSITY) {
            out.warn("the usual density of the test is 1.0 to 1.5 T");
        }
    }

    private static Calculation turns() {
        return Calculation.named(GROUP, "turns-for-voltage")
                .title("Turns for a voltage at a flux density")
                .source("transformer equation; J. Bird, Electrical and Electronic Principles and Technology, 21.11")
                .formula("N = V/(c f B A)")
                .number("u", VOLTAGE, "V", "voltage, rms")
                .number("f", FREQUENCY, "Hz", "50", "frequency")
                .number("b", FLUX_DENSITY, "T", "peak flux density")
                .number("area", AREA, "cm²", "iron area")
                .choice("constant", EmfConstant.class, "exact", "exact pi sqrt 2, or 4.44 as books have it")
                .gives("turns", RATIO, "", "turns")
                .gives("volts-per-turn", VOLTAGE, "V", "volts per turn")
                .by((in, out) -> {
                    double n = LoopPlan.turns(in.number("u"), in.number("f"), in.number("b"), in.number("area"),
                            in.choice("constant", EmfConstant.class));
                    out.put("turns", n).put("volts-per-turn", in.number("u") / n);
                });
    }

    private static Calculation density() {
        return Calculation.named(GROUP, "density-from-turn")
                .title("Flux density from the volts of a search turn")
                .source("transformer equation")
                .formula("B = V/(c f A)")
                .number("volts-per-turn", VOLTAGE, "V", "volts of one turn, rms")
                .number("f", FREQUENCY, "Hz", "50", "frequency")
                .number("area", AREA, "cm²", "iron area")
                .choice("constant", EmfConstant.class, "exact", "exact pi sqrt 2, or 4.44 as books have it")
                .gives("b", FLUX_DENSITY, "T", "peak flux density")
                .by((in, out) -> out.put("b", LoopPlan.density(in.number("volts-per-turn"), in.number("f"),
                        in.number("area"), in.choice("constant", EmfConstant.class))));
    }

    private static Calculation magnetomotiveForce() {
        return Calculation.named(GROUP, "magnetomotive-force")
                .title("Magnetomotive force of a closed path")
                .source("Ampere's law; J. Bird, Electrical and Electronic Principles and Technology, 7.8")
                .formula("F = H l")
                .number("h", FIELD_STRENGTH, "A/m", "field strength")
                .number("path", LENGTH, "m", "length of the path")
                .gives("force", MAGNETOMOTIVE_FORCE, "A", "magnetomotive force")
                .by((in, out) -> out.put("force", in.number("h") * in.number("path")));
    }

    private static Calculation loss() {
        return Calculation.named(GROUP, "core-loss-change")
                .title("Specific core loss before and after stripping")
                .source("EASA/AEMT rewind study (20 % rule); 4 W/lb trade guide")
                .formula("change = after/before - 1")
                .number("before", SPECIFIC_LOSS, "W/kg", "specific loss before burn-out")
                .number("after", SPECIFIC_LOSS, "W/kg", "specific loss after stripping, same density")
                .number("u-relative", RATIO, "%", "0", "relative standard uncertainty of each reading")
                .number("u-shared", RATIO, "%", "0", "the part of it that both readings share")
                .number("limit", RATIO, "%", "20", "greatest rise")
                .gives("change", RATIO, "%", "change of the specific loss")
                .gives("before-kg", SPECIFIC_LOSS, "W/kg", "before, per kilogram")
                .gives("after-kg", SPECIFIC_LOSS, "W/kg", "after, per kilogram")
                .givesWord("outcome", "verdict on the change")
                .by((in, out) -> {
                    double before = in.number("before");
                    double after = in.number("after");
                    double u = in.number("u-relative");
                    Decision d = CoreVerdict.lossChange(new Uncertain(before, before * u),
                            new Uncertain(after, after * u), in.number("u-shared"), in.number("limit"));
                    out.put("change", CoreVerdict.lossChange(before, after)).put("before-kg", before)
                            .put("after-kg", after).put("outcome", d.outcome());
                    if (after > CoreVerdict.USUAL_SPECIFIC_LOSS) {
                        out.warn("specific loss is above the 4 W/lb at which shops look closer");
                    }
                });
    }

    private static Calculation hotSpot() {
        return Calculation.named(GROUP, "core-hot-spot")
                .title("Hottest spot of the loop test")
                .source("IEEE 1068 (10 K, as quoted in trade articles); 15 K is common practice, no source")
                .formula("hottest - mean against the limit")
                .number("hottest", TEMPERATURE, "°C", "hottest spot")
                .number("mean", TEMPERATURE, "°C", "mean temperature of the core")
                .number("u", TEMPERATURE_RISE, "K", "0", "standard uncertainty of each temperature")
                .number("limit", TEMPERATURE_RISE, "K", "10", "greatest difference")
                .gives("difference", TEMPERATURE_RISE, "K", "hottest over mean")
                .givesWord("outcome", "verdict")
                .by((in, out) -> {
                    double u = in.number("u");
                    out.put("difference", in.number("hottest") - in.number("mean"))
                            .put("outcome", CoreVerdict.hotSpot(new Uncertain(in.number("hottest"), u),
                                    new Uncertain(in.number("mean"), u), in.number("limit")).outcome());
                });
    }
}
