package org.copperbook.calc.resistance;

import static org.copperbook.calc.quantity.Dimension.DURATION;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_COEFFICIENT;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;

import java.util.Arrays;
import java.util.List;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.StraightLine;

/** Winding temperature from resistance, and the cooling curve after a heat run. */
public final class HeatRunCalculations implements CalculationSource {

    private static final String AREA = "resistance";

    @Override
    public List<Calculation> calculations() {
        return List.of(temperature(), threeReadings(), coolingCurve(), method());
    }

    private static Calculation temperature() {
        return Calculation.named(AREA, "winding-temperature")
                .title("Mean winding temperature and rise from cold and hot resistance")
                .source("IEC 60034-1, 8.6.2.3; IEEE 112 for 234.5")
                .formula("t2 = R2/R1 (k + t1) - k; rise = t2 - coolant")
                .number("r-cold", RESISTANCE, "Ω", "cold resistance")
                .number("t-cold", TEMPERATURE, "°C", "cold temperature")
                .number("r-hot", RESISTANCE, "Ω", "hot resistance")
                .number("coolant", TEMPERATURE, "°C", "", "coolant temperature at the end; the cold temperature if absent")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .number("alpha", TEMPERATURE_COEFFICIENT, "1/K", "", "coefficient to use in place of the constant")
                .number("base", TEMPERATURE, "°C", "20", "base temperature of the coefficient")
                .gives("t-hot", TEMPERATURE, "°C", "hot temperature")
                .gives("rise", TEMPERATURE_RISE, "K", "rise over the coolant")
                .by((in, out) -> {
                    double k = in.choice("conductor", Conductor.class).inferredZero();
                    if (in.has("alpha")) {
                        TemperatureCoefficient a = new TemperatureCoefficient(in.number("alpha"), in.number("base"));
                        k = a.inferredZero();
                        if (a.looksMisplaced()) {
                            out.warn("this coefficient is usually quoted at another base temperature: check the pair");
                        }
                    }
                    double t = TemperatureByResistance.celsius(in.number("r-cold"), in.number("t-cold"),
                            in.number("r-hot"), k);
                    out.put("t-hot", t).put("rise", t - in.number("coolant", in.number("t-cold")));
                });
    }

    private static Calculation threeReadings() {
        return Calculation.named(AREA, "winding-temperature-by-two-references")
                .title("Winding temperature on the line through two known readings")
                .source("J. B. Gupta, Electrical Engineering Materials, example 2.19")
                .formula("t = t1 + (R - R1)(t2 - t1)/(R2 - R1)")
                .number("r1", RESISTANCE, "Ω", "first known reading")
                .number("t1", TEMPERATURE, "°C", "its temperature")
                .number("r2", RESISTANCE, "Ω", "second known reading")
                .number("t2", TEMPERATURE, "°C", "its temperature")
                .number("r", RESISTANCE, "Ω", "reading at the temperature sought")
                .number("coolant", TEMPERATURE, "°C", "0", "coolant temperature")
                .gives("t", TEMPERATURE, "°C", "temperature")
                .gives("rise", TEMPERATURE_RISE, "K", "rise over the coolant")
                .by((in, out) -> {
                    TemperatureCoefficient a = TemperatureCoefficient.fromReadings(in.number("r1"), in.number("t1"),
                            in.number("r2"), in.number("t2"), in.number("t1"));
                    double t = in.number("t1") + (in.number("r") / in.number("r1") - 1) / a.perKelvin();
                    out.put("t", TemperatureCorrection.celsius(t)).put("rise", t - in.number("coolant"));
                });
    }

    private static Calculation coolingCurve() {
        return Calculation.named(AREA, "cooling-curve")
                .title("Cooling curve back to shutdown and to the standard's time limit")
                .source("IEC 60034-1, 8.6.2.3.3; least squares on the semi-logarithmic plot")
                .formula("R(t) = Rend + A exp(-t/T), Rend = cold R (k + coolant)/(k + cold t)")
                .number("r-cold", RESISTANCE, "Ω", "cold resistance")
                .number("t-cold", TEMPERATURE, "°C", "cold temperature")
                .number("coolant", TEMPERATURE, "°C", "coolant temperature at shutdown")
                .points("readings", DURATION, "s", RESISTANCE, "Ω", null, "time after shutdown : resistance, three or more")
                .number("rated-output", POWER, "kW", "50", "rated output, which sets the time limit")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .number("confidence", RATIO, "%", "95", "level of confidence of the band")
                .gives("r-shutdown", RESISTANCE, "Ω", "resistance at shutdown")
                .gives("r-shutdown-low", RESISTANCE, "Ω", "lower end of its confidence band")
                .gives("r-shutdown-high", RESISTANCE, "Ω", "upper end of its confidence band")
                .gives("t-shutdown", TEMPERATURE, "°C", "winding temperature at shutdown")
                .gives("time-limit", DURATION, "s", "the standard's time limit")
                .gives("r-limit", RESISTANCE, "Ω", "resistance at the time limit")
                .gives("t-limit", TEMPERATURE, "°C", "winding temperature at the time limit")
                .gives("rise-limit", TEMPERATURE_RISE, "K", "rise at the time limit")
                .gives("time-constant", DURATION, "s", "time constant T")
                .gives("r-straight-line", RESISTANCE, "Ω", "a plain straight line at shutdown, for contrast: reads low")
                .givesWord("first-reading", "whether the first reading may be taken as read")
                .by(HeatRunCalculations::computeCooling);
    }

    private static void computeCooling(Arguments in, Results out) {
        Conductor c = in.choice("conductor", Conductor.class);
        double cold = in.number("r-cold");
        double coldCelsius = in.number("t-cold");
        double coolant = in.number("coolant");
        double[][] p = in.points("readings");
        double[] seconds = Arrays.stream(p).mapToDouble(x -> x[0]).toArray();
        double[] ohms = Arrays.stream(p).mapToDouble(x -> x[1]).toArray();
        CoolingCurve curve = CoolingCurve.fit(seconds, ohms,
                cold * TemperatureCorrection.factor(c, coldCelsius, coolant));
        CoolingDelay delay = CoolingDelay.forRating(in.number("rated-output"));
        CoolingCurve.Point start = curve.at(0, in.number("confidence"));
        CoolingCurve.Point limit = curve.at(delay.limitSeconds(), in.number("confidence"));
        double k = c.inferredZero();
        double hot = TemperatureByResistance.celsius(cold, coldCelsius, limit.ohms(), k);
        out.put("r-shutdown", start.ohms()).put("r-shutdown-low", start.low()).put("r-shutdown-high", start.high())
                .put("t-shutdown", TemperatureByResistance.celsius(cold, coldCelsius, start.ohms(), k))
                .put("time-limit", delay.limitSeconds()).put("r-limit", limit.ohms()).put("t-limit", hot)
                .put("rise-limit", hot - coolant).put("time-constant", curve.timeConstant())
                .put("r-straight-line", StraightLine.through(seconds, ohms).intercept())
                .put("first-reading", delay.use(Arrays.stream(seconds).min().orElseThrow()));
        if (!curve.showsItsBend()) {
            out.warn("the readings end before the curve bends: the time constant is poorly known");
        }
    }

    private static Calculation method() {
        return Calculation.named(AREA, "temperature-method")
                .title("How the winding temperature is measured, and when the first reading must come")
                .source("IEC 60034-1, 8.6 and 8.6.2.3.3 (time limits from memory)")
                .formula("by rating")
                .number("rated-output", POWER, "kW", "rated output, up to 5 MW for the time limit")
                .givesWord("method", "method")
                .gives("time-limit", DURATION, "s", "time limit of the first reading by resistance")
                .by((in, out) -> {
                    TemperatureMethod m = TemperatureMethod.forRating(in.number("rated-output"));
                    out.put("method", m);
                    if (in.number("rated-output") <= 5e6) {
                        out.put("time-limit", CoolingDelay.forRating(in.number("rated-output")).limitSeconds());
                    }
                });
    }
}
