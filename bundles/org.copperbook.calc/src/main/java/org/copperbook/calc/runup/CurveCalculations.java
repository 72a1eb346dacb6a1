package org.copperbook.calc.runup;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.REACTANCE;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.ROTATIONAL_SPEED;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Open- and short-circuit characteristics, synchronous reactance, short-circuit ratio, efficiency. */
public final class CurveCalculations implements CalculationSource {

    private static final String AREA = "run-up";

    @Override
    public List<Calculation> calculations() {
        return List.of(lookUp(), openCircuit(), reactance(), fromImpedance(), fromLoss(), perUnit(), fromFields(),
                proportion(), efficiency(), compare());
    }

    private static Calculation lookUp() {
        return Calculation.named(AREA, "curve-look-up")
                .title("Voltage on an open-circuit curve")
                .source("IEC 60034-4-1; straight lines, or the monotone cubic of Fritsch and Carlson")
                .formula("interpolation; volts in proportion to speed")
                .points("curve", CURRENT, "A", VOLTAGE, "V", null, "field current : voltage")
                .number("i-field", CURRENT, "A", "", "field current")
                .number("u", VOLTAGE, "V", "", "voltage for which the field current is wanted")
                .number("curve-speed", ROTATIONAL_SPEED, "r/min", "1500", "speed of the curve")
                .number("speed", ROTATIONAL_SPEED, "r/min", "", "speed wanted; that of the curve if absent")
                .choice("reading", List.of("straight", "smooth"), "straight", "how to read between points")
                .gives("u-found", VOLTAGE, "V", "voltage")
                .gives("i-found", CURRENT, "A", "field current")
                .by((in, out) -> {
                    OpenCircuitCurve c = OpenCircuitCurve.of(in.points("curve")).atSpeed(in.number("curve-speed"),
                            in.number("speed", in.number("curve-speed")));
                    if (in.firstGiven("i-field", "u").equals("i-field")) {
                        double i = in.number("i-field");
                        out.put("u-found", in.text("reading").equals("smooth") ? c.smooth(i) : c.linear(i));
                    }
                    if (in.has("u")) {
                        out.put("i-found", c.fieldFor(in.number("u")));
                    }
                });
    }

    private static Calculation openCircuit() {
        return Calculation.named(AREA, "open-circuit-short-circuit")
                .title("Open-circuit and short-circuit curves together")
                .source("IEC 60034-4-1; A. E. Fitzgerald and others, Electric Machinery, section 5.3")
                .formula("air-gap line by least squares; Zs = U/(sqrt(3) I); SCR = If(Un)/If(In)")
                .points("open", CURRENT, "A", VOLTAGE, "V", null, "field current : open-circuit line voltage")
                .points("short", CURRENT, "A", CURRENT, "A", null, "field current : short-circuit current")
                .number("u", VOLTAGE, "V", "rated line voltage")
                .number("i", CURRENT, "A", "rated current")
                .number("lower-part", RATIO, "%", "50", "part of the curve, by voltage, that carries the air-gap line")
                .gives("air-gap-slope", RATIO, "", "slope of the air-gap line, line V per A")
                .gives("if-rated-voltage", CURRENT, "A", "field current for rated voltage")
                .gives("if-rated-current", CURRENT, "A", "field current for rated current, short circuit")
                .gives("isc-rated-voltage", CURRENT, "A", "short-circuit current at the field of rated voltage")
                .gives("scr", RATIO, "", "short-circuit ratio by field currents")
                .gives("scr-reactance", RATIO, "", "short-circuit ratio as reciprocal saturated reactance")
                .gives("zs-unsaturated", REACTANCE, "Ω", "unsaturated impedance per phase of a star")
                .gives("zs-saturated", REACTANCE, "Ω", "saturated impedance per phase of a star")
                .gives("saturation-factor", RATIO, "", "field for rated voltage over field on the air-gap line")
                .by(CurveCalculations::computeCurves);
    }

    private static void computeCurves(Arguments in, Results out) {
        OpenCircuitCurve open = smoothed(in.points("open"), out);
        ShortCircuitLine line = ShortCircuitLine.through(in.points("short"));
        double u = in.number("u");
        double slope = open.airGapSlope(in.number("lower-part"));
        double forVolts = open.fieldFor(u);
        double forAmperes = line.fieldFor(in.number("i"));
        double isc = line.amperes(forVolts);
        out.put("air-gap-slope", slope).put("if-rated-voltage", forVolts).put("if-rated-current", forAmperes)
                .put("isc-rated-voltage", isc).put("scr", ShortCircuitRatio.byFieldCurrents(forVolts, forAmperes))
                .put("scr-reactance", isc / in.number("i"))
                .put("zs-unsaturated", SynchronousImpedance.star(slope * forAmperes, in.number("i")))
                .put("zs-saturated", SynchronousImpedance.star(u, isc))
                .put("saturation-factor", open.saturationFactor(u, slope));
    }

    private static Calculation reactance() {
        return Calculation.named(AREA, "synchronous-impedance")
                .title("Synchronous impedance from one open- and one short-circuit reading")
                .source("C. I. Hubert, Electric Machines, example 9.11; I. L. Kosow, examples 6-4 and 6-5")
                .formula("Zs = U/(sqrt(3) I) in a star, 3 times that in a delta; Xs = sqrt(Zs² - Ra²)")
                .choice("connection", List.of("star", "delta", "single-phase"), "star", "how the phases are joined")
                .number("u-open", VOLTAGE, "V", "open-circuit voltage, line to line")
                .number("i-short", CURRENT, "A", "short-circuit line current at the same field")
                .number("ra", RESISTANCE, "Ω", "", "armature resistance per phase, alternating current")
                .number("u-direct", VOLTAGE, "V", "", "direct voltage of a line-to-line resistance test")
                .number("i-direct", CURRENT, "A", "", "its direct current")
                .number("ac-over-dc", RATIO, "", "1", "alternating over direct-current resistance")
                .number("u", VOLTAGE, "V", "", "rated line voltage, for per unit")
                .number("s", APPARENT_POWER, "kVA", "", "rated power, for per unit")
                .gives("ra-used", RESISTANCE, "Ω", "armature resistance per phase")
                .gives("zs", REACTANCE, "Ω", "synchronous impedance per phase")
                .gives("xs", REACTANCE, "Ω", "synchronous reactance per phase")
                .gives("xs-pu", RATIO, "", "the same in per unit")
                .gives("scr-reactance", RATIO, "", "short-circuit ratio as 1/Xs in per unit")
                .gives("scr-impedance", RATIO, "", "short-circuit ratio as 1/Zs in per unit")
                .by(CurveCalculations::computeReactance);
    }

    private static void computeReactance(Arguments in, Results out) {
        String connection = in.text("connection");
        double z = switch (connection) {
            case "star" -> SynchronousImpedance.star(in.number("u-open"), in.number("i-short"));
            case "delta" -> SynchronousImpedance.delta(in.number("u-open"), in.number("i-short"));
            default -> SynchronousImpedance.singlePhase(in.number("u-open"), in.number("i-short"));
        };
        double ra = in.number("ra", 0);
        if (in.has("u-direct")) {
            double line = in.number("u-direct") / in.number("i-direct");
            double phase = connection.equals("star") ? line / 2 : connection.equals("delta") ? 1.5 * line : line;
            ra = phase * in.number("ac-over-dc");
        }
        double x = SynchronousImpedance.reactance(z, ra);
        out.put("ra-used", ra).put("zs", z).put("xs", x);
        if (in.has("u") && in.has("s")) {
            // the base belongs to a star; a delta's phase impedance is three times its star equivalent
            double base = SynchronousImpedance.base(in.number("u"), in.number("s"))
                    * (connection.equals("delta") ? 3 : 1);
            out.put("xs-pu", x / base).put("scr-reactance", base / x).put("scr-impedance", base / z);
        }
    }

    private static Calculation fromImpedance() {
        return Calculation.named(AREA, "impedance-per-phase")
                .title("Impedance per phase of a star, in ohm and per unit")
                .source("A. E. Fitzgerald and others, Electric Machinery, example 5.4")
                .formula("Zs = U/(sqrt(3) I); Zbase = Un²/S")
                .number("u-open", VOLTAGE, "V", "open-circuit (or air-gap line) voltage, line to line")
                .number("i-short", CURRENT, "A", "short-circuit current at the same field")
                .number("u", VOLTAGE, "V", "rated line voltage")
                .number("s", APPARENT_POWER, "kVA", "rated power")
                .gives("z", REACTANCE, "Ω", "impedance per phase")
                .gives("z-base", REACTANCE, "Ω", "base impedance")
                .gives("z-pu", RATIO, "", "per unit of the base")
                .gives("i-rated", CURRENT, "A", "rated current")
                .gives("scr-current", RATIO, "", "short-circuit over rated current: 1/Zs in per unit at rated voltage")
                .gives("z-pu-by-volts", RATIO, "", "open-circuit over rated voltage, at rated short-circuit current")
                .by((in, out) -> {
                    double z = SynchronousImpedance.star(in.number("u-open"), in.number("i-short"));
                    double base = SynchronousImpedance.base(in.number("u"), in.number("s"));
                    double rated = SynchronousImpedance.ratedAmperes(in.number("u"), in.number("s"));
                    out.put("z", z).put("z-base", base).put("z-pu", z / base).put("i-rated", rated)
                            .put("scr-current", in.number("i-short") / rated)
                            .put("z-pu-by-volts", in.number("u-open") / in.number("u"));
                });
    }

    private static Calculation fromLoss() {
        return Calculation.named(AREA, "resistance-from-short-circuit-loss")
                .title("Effective armature resistance from the short-circuit load loss")
                .source("A. E. Fitzgerald and others, Electric Machinery, example 5.5")
                .formula("Ra = P/(3 I²)")
                .number("p", POWER, "W", "short-circuit load loss, three phases")
                .number("i", CURRENT, "A", "short-circuit current")
                .number("s", APPARENT_POWER, "kVA", "", "rated power, for per unit")
                .gives("ra", RESISTANCE, "Ω", "resistance per phase of a star")
                .gives("ra-pu", RATIO, "", "per unit at rated current")
                .by((in, out) -> {
                    out.put("ra", SynchronousImpedance.resistanceFromLoss(in.number("p"), in.number("i")));
                    if (in.has("s")) {
                        out.put("ra-pu", in.number("p") / in.number("s"));
                    }
                });
    }

    private static Calculation perUnit() {
        return Calculation.named(AREA, "per-unit-impedance")
                .title("Impedance in per unit")
                .source("C. I. Hubert, Electric Machines, example 9.8")
                .formula("Zbase = U²/S")
                .number("r", RESISTANCE, "Ω", "resistance per phase of a star")
                .number("x", REACTANCE, "Ω", "reactance per phase of a star")
                .number("u", VOLTAGE, "V", "rated line voltage")
                .number("s", APPARENT_POWER, "kVA", "rated power")
                .gives("z-base", REACTANCE, "Ω", "base impedance")
                .gives("r-pu", RATIO, "", "resistance, per unit")
                .gives("x-pu", RATIO, "", "reactance, per unit")
                .by((in, out) -> {
                    double base = SynchronousImpedance.base(in.number("u"), in.number("s"));
                    out.put("z-base", base).put("r-pu", in.number("r") / base).put("x-pu", in.number("x") / base);
                });
    }

    private static Calculation fromFields() {
        return Calculation.named(AREA, "short-circuit-ratio")
                .title("Short-circuit ratio and saturated reactance from two field currents")
                .source("IEC 60034-4-1; A. E. Fitzgerald and others, Electric Machinery, section 5.3")
                .formula("SCR = If(Un)/If(In); Xs = 1/SCR in per unit")
                .number("if-voltage", CURRENT, "A", "field current for rated open-circuit voltage")
                .number("if-current", CURRENT, "A", "field current for rated short-circuit current")
                .number("u", VOLTAGE, "V", "", "rated line voltage")
                .number("s", APPARENT_POWER, "kVA", "", "rated power")
                .gives("scr", RATIO, "", "short-circuit ratio")
                .gives("xs-pu", RATIO, "", "saturated reactance, per unit (not ohm)")
                .gives("xs", REACTANCE, "Ω", "saturated reactance per phase of a star")
                .by((in, out) -> {
                    double scr = ShortCircuitRatio.byFieldCurrents(in.number("if-voltage"), in.number("if-current"));
                    out.put("scr", scr).put("xs-pu", 1 / scr);
                    if (in.has("u") && in.has("s")) {
                        out.put("xs", SynchronousImpedance.base(in.number("u"), in.number("s")) / scr);
                    }
                });
    }

    private static Calculation proportion() {
        return Calculation.named(AREA, "short-circuit-line")
                .title("Short-circuit current at a field current")
                .source("IEC 60034-4-1: the short-circuit curve is a straight line through the origin")
                .formula("I = slope x If")
                .points("short", CURRENT, "A", CURRENT, "A", null, "field current : short-circuit current")
                .number("i-field", CURRENT, "A", "field current")
                .gives("isc", CURRENT, "A", "short-circuit current")
                .by((in, out) -> out.put("isc",
                        ShortCircuitLine.through(in.points("short")).amperes(in.number("i-field"))));
    }

    private static Calculation efficiency() {
        return Calculation.named(AREA, "efficiency-from-losses")
                .title("Efficiency from segregated losses")
                .source("IEC 60034-2-1, 5.1")
                .formula("output/(output + sum of losses)")
                .number("output", POWER, "kW", "output")
                .numbers("losses", POWER, "W", null, "losses: friction, iron, armature, field, exciter, stray")
                .gives("efficiency", RATIO, "%", "efficiency")
                .gives("loss", POWER, "W", "sum of the losses")
                .by((in, out) -> {
                    List<Double> losses = new ArrayList<>();
                    double sum = 0;
                    for (double l : in.numbers("losses")) {
                        losses.add(l);
                        sum += l;
                    }
                    out.put("efficiency", Efficiency.fromLosses(in.number("output"), losses)).put("loss", sum);
                });
    }

    private static Calculation compare() {
        return Calculation.named(AREA, "open-circuit-curve")
                .title("Open-circuit curve: air-gap line, saturation, and comparison with a stored one")
                .source("IEC 60034-4-1; isotonic least squares and monotone cubic (Fritsch and Carlson)")
                .formula("air-gap line by least squares; saturation = If(U) x slope / U; greatest relative deviation")
                .points("open", CURRENT, "A", VOLTAGE, "V", null, "field current : voltage, up and down")
                .number("u", VOLTAGE, "V", "voltage at which saturation is wanted, usually rated")
                .points("stored", CURRENT, "A", VOLTAGE, "V", "", "stored or as-found curve at the same speed")
                .number("lower-part", RATIO, "%", "50", "part of the curve, by voltage, that carries the air-gap line")
                .gives("air-gap-slope", RATIO, "", "slope of the air-gap line, V per A")
                .gives("i-field", CURRENT, "A", "field current for that voltage")
                .gives("saturation-factor", RATIO, "", "field current over field current on the air-gap line")
                .gives("greatest-deviation", RATIO, "%", "greatest deviation from the stored curve, signed")
                .by((in, out) -> {
                    OpenCircuitCurve open = smoothed(in.points("open"), out);
                    double slope = open.airGapSlope(in.number("lower-part"));
                    out.put("air-gap-slope", slope).put("i-field", open.fieldFor(in.number("u")))
                            .put("saturation-factor", open.saturationFactor(in.number("u"), slope));
                    if (in.has("stored")) {
                        out.put("greatest-deviation",
                                open.greatestDeviationFrom(smoothed(in.points("stored"), out)));
                    }
                });
    }

    private static OpenCircuitCurve smoothed(double[][] points, Results out) {
        double[][] rising = points.length < 3 ? points : MonotoneSmoothing.of(points);
        if (rising.length < points.length) {
            out.warn("readings at one field current, or falling with it, were averaged");
        }
        return OpenCircuitCurve.of(rising);
    }
}
