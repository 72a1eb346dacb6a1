package org.copperbook.calc.runup;

import static org.copperbook.calc.quantity.Dimension.DURATION;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.ROTATIONAL_SPEED;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;

import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.resistance.Unbalance;

/** Speed, frequency, voltage balance, rise and overspeed. */
public final class SpeedCalculations implements CalculationSource {

    private static final String AREA = "run-up";

    @Override
    public List<Calculation> calculations() {
        return List.of(synchronous(), frequency(), slip(), atSpeed(), unbalance(), heating(), load(), overspeed());
    }

    private static Calculation synchronous() {
        return Calculation.named(AREA, "synchronous-speed")
                .title("Synchronous speed")
                .source("IEC 60034-1; any textbook")
                .formula("n = 120 f / poles in r/min")
                .number("f", FREQUENCY, "Hz", "50", "frequency")
                .whole("poles", null, "number of poles, even")
                .gives("speed", ROTATIONAL_SPEED, "r/min", "synchronous speed")
                .by((in, out) -> out.put("speed", SynchronousSpeed.perSecond(in.number("f"), in.whole("poles"))));
    }

    private static Calculation frequency() {
        return Calculation.named(AREA, "frequency-from-speed")
                .title("Frequency from speed")
                .source("IEC 60034-1; any textbook")
                .formula("f = n poles / 120")
                .number("speed", ROTATIONAL_SPEED, "r/min", "speed")
                .whole("poles", null, "number of poles, even")
                .gives("f", FREQUENCY, "Hz", "frequency")
                .by((in, out) -> out.put("f", SynchronousSpeed.hertz(in.number("speed"), in.whole("poles"))));
    }

    private static Calculation slip() {
        return Calculation.named(AREA, "slip")
                .title("Slip, rotor speed and rotor frequency")
                .source("IEC 60034-1; any textbook: slip is a share of the synchronous speed")
                .formula("s = (ns - n)/ns; f rotor = s f")
                .number("f", FREQUENCY, "Hz", "50", "frequency")
                .whole("poles", null, "number of poles, even")
                .number("slip", RATIO, "%", "", "slip, or give the speed")
                .number("speed", ROTATIONAL_SPEED, "r/min", "", "rotor speed")
                .gives("slip-found", RATIO, "%", "slip")
                .gives("rotor-speed", ROTATIONAL_SPEED, "r/min", "rotor speed")
                .gives("rotor-frequency", FREQUENCY, "Hz", "rotor frequency")
                .by((in, out) -> {
                    double ns = SynchronousSpeed.perSecond(in.number("f"), in.whole("poles"));
                    double s = in.firstGiven("slip", "speed").equals("slip") ? in.number("slip")
                            : SynchronousSpeed.slip(ns, in.number("speed"));
                    out.put("slip-found", s).put("rotor-speed", ns * (1 - s)).put("rotor-frequency", s * in.number("f"));
                });
    }

    private static Calculation atSpeed() {
        return Calculation.named(AREA, "voltage-at-speed")
                .title("No-load voltage at nominal speed")
                .source("induced-voltage law; square for a fixed exciter field is common practice, no source")
                .formula("V2 = V1 (n2/n1) with constant main-field current; between first and second power with a fixed"
                        + " exciter field")
                .number("u", VOLTAGE, "V", "voltage read")
                .number("speed", ROTATIONAL_SPEED, "r/min", "speed")
                .number("nominal", ROTATIONAL_SPEED, "r/min", "nominal speed")
                .gives("linear", VOLTAGE, "V", "first power")
                .gives("square", VOLTAGE, "V", "second power")
                .by((in, out) -> {
                    VoltageAtSpeed v = VoltageAtSpeed.of(in.number("u"), in.number("speed"), in.number("nominal"));
                    out.put("linear", v.linear()).put("square", v.square());
                });
    }

    private static Calculation unbalance() {
        return Calculation.named(AREA, "voltage-unbalance")
                .title("Voltage unbalance by three definitions")
                .source("NEMA MG 1, 14.36; IEC 61000-4-30, 5.7.1; US Army TM 9-6115-464-34")
                .formula("largest deviation from the mean/mean; negative over positive sequence; (max - min)/rated")
                .number("uv", VOLTAGE, "V", "line U to V")
                .number("vw", VOLTAGE, "V", "line V to W")
                .number("wu", VOLTAGE, "V", "line W to U")
                .number("rated", VOLTAGE, "V", "", "rated voltage, for the spread")
                .gives("mean", VOLTAGE, "V", "mean")
                .gives("largest-deviation", VOLTAGE, "V", "largest deviation from the mean")
                .gives("unbalance", RATIO, "%", "largest deviation over the mean")
                .gives("negative-sequence", RATIO, "%", "negative over positive sequence")
                .gives("spread", RATIO, "%", "spread over rated")
                .by((in, out) -> {
                    double[] v = {in.number("uv"), in.number("vw"), in.number("wu")};
                    double mean = (v[0] + v[1] + v[2]) / 3;
                    double x = Unbalance.ofMean(v);
                    out.put("mean", mean).put("largest-deviation", x * mean).put("unbalance", x)
                            .put("negative-sequence", Unbalance.negativeSequence(v[0], v[1], v[2]));
                    if (in.has("rated")) {
                        out.put("spread", Unbalance.spreadOfRated(in.number("rated"), v));
                    }
                });
    }

    private static Calculation heating() {
        return Calculation.named(AREA, "unbalance-heating")
                .title("Rise of an induction motor on unbalanced volts")
                .source("C. I. Hubert, Electric Machines, example 5.14")
                .formula("rise = balanced rise (1 + 2 u²/100), u in per cent")
                .number("rise", TEMPERATURE_RISE, "K", "rise on balanced volts")
                .number("unbalance", RATIO, "%", "unbalance")
                .number("life", DURATION, "a", "", "life on balanced volts")
                .number("step", TEMPERATURE_RISE, "K", "10", "kelvin that halve the life")
                .gives("rise-unbalanced", TEMPERATURE_RISE, "K", "rise on unbalanced volts")
                .gives("life-unbalanced", DURATION, "a", "life on unbalanced volts")
                .by((in, out) -> {
                    double rise = UnbalanceHeating.rise(in.number("rise"), in.number("unbalance"));
                    out.put("rise-unbalanced", rise);
                    if (in.has("life")) {
                        out.put("life-unbalanced", in.number("life")
                                * Math.pow(2, -(rise - in.number("rise")) / in.number("step")));
                    }
                });
    }

    private static Calculation load() {
        return Calculation.named(AREA, "rise-at-load")
                .title("Winding rise at another load, and load at a rise allowed")
                .source("I. L. Kosow, Electric Machinery and Transformers, examples 13-4 and 13-5 (linear rule)")
                .formula("linear: rise x load ratio; square: rise x load ratio squared")
                .choice("rule", LoadTemperature.class, "linear", "rule; the result names it")
                .number("rise-ref", TEMPERATURE_RISE, "K", "rise at the reference load")
                .number("load-ref", POWER, "kW", "reference load")
                .number("load", POWER, "kW", "", "load at which the rise is wanted")
                .number("rise-allowed", TEMPERATURE_RISE, "K", "", "rise at which the load is wanted")
                .number("ambient", TEMPERATURE_RISE, "K", "40", "ambient temperature, for the total")
                .gives("rise", TEMPERATURE_RISE, "K", "rise at that load")
                .gives("total", TEMPERATURE_RISE, "K", "rise and ambient")
                .gives("load-allowed", POWER, "kW", "load at that rise")
                .givesWord("rule-used", "the rule")
                .by((in, out) -> {
                    LoadTemperature rule = in.choice("rule", LoadTemperature.class);
                    String given = in.firstGiven("load", "rise-allowed");
                    if (given.equals("load")) {
                        double rise = rule.rise(in.number("rise-ref"), in.number("load-ref"), in.number("load"));
                        out.put("rise", rise).put("total", rise + in.number("ambient"));
                    }
                    if (in.has("rise-allowed")) {
                        out.put("load-allowed", rule.load(in.number("rise-ref"), in.number("load-ref"),
                                in.number("rise-allowed")));
                    }
                    out.put("rule-used", rule);
                });
    }

    private static Calculation overspeed() {
        return Calculation.named(AREA, "overspeed")
                .title("Overspeed test")
                .source("IEC 60034-1, 9.7 (from memory)")
                .formula("1.2 x highest rated speed, two minutes")
                .number("speed", ROTATIONAL_SPEED, "r/min", "highest rated speed")
                .gives("test", ROTATIONAL_SPEED, "r/min", "test speed")
                .gives("duration", DURATION, "s", "duration")
                .by((in, out) -> {
                    out.put("test", Overspeed.speed(in.number("speed"))).put("duration", Overspeed.SECONDS);
                    out.warn("only inside a guarded pit or cell, everyone out of the plane of rotation");
                });
    }
}
