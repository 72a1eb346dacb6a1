package org.copperbook.calc.runup;

import static org.copperbook.calc.quantity.Dimension.DURATION;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY_PER_POWER;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.Optional;

import org.copperbook.calc.Require;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Classes of generating sets, droop, and bearings run to a steady temperature. */
public final class GeneratingSetCalculations implements CalculationSource {

    private static final String AREA = "run-up";

    @Override
    public List<Calculation> calculations() {
        return List.of(droop(), ceiling(), set(), transientClass(), bearing());
    }

    private static Calculation droop() {
        return Calculation.named(AREA, "frequency-droop")
                .title("Speed regulation and droop of a set")
                .source("C. I. Hubert, Electric Machines, example 9.2")
                .formula("(f0 - fr)/fr; (f0 - fr)/P")
                .number("f-no-load", FREQUENCY, "Hz", "frequency without load")
                .number("f-rated", FREQUENCY, "Hz", "frequency at rated power")
                .number("p", POWER, "kW", "rated power")
                .gives("regulation", RATIO, "%", "speed regulation")
                .gives("droop", FREQUENCY_PER_POWER, "Hz/kW", "droop")
                .by((in, out) -> {
                    FrequencyDroop d = FrequencyDroop.of(in.number("f-no-load"), in.number("f-rated"), in.number("p"));
                    out.put("regulation", d.regulation()).put("droop", d.hertzPerWatt());
                });
    }

    private static Calculation ceiling() {
        return Calculation.named(AREA, "no-load-frequency-ceiling")
                .title("Highest no-load frequency for a droop")
                .source("ISO 8528-5; DGUV Information 203-032, annex 5")
                .formula("f (1 + droop)")
                .number("f", FREQUENCY, "Hz", "50", "rated frequency")
                .number("droop", RATIO, "%", "droop allowed")
                .gives("f-max", FREQUENCY, "Hz", "highest no-load frequency")
                .by((in, out) -> out.put("f-max", FrequencyDroop.noLoadCeiling(in.number("f"), in.number("droop"))));
    }

    private static Calculation set() {
        return Calculation.named(AREA, "generating-set-class")
                .title("Limits of a generating-set performance class")
                .source("ISO 8528-5:2005, table 4 (from memory); DGUV Information 203-032, annex 5 (steady voltage)")
                .formula("table")
                .choice("class", GeneratingSetClass.class, null, "performance class; G4 is by agreement")
                .number("p", POWER, "kW", "100", "rated power; G1 is wider up to 10 kW")
                .number("u", VOLTAGE, "V", "230", "rated voltage")
                .number("f", FREQUENCY, "Hz", "50", "rated frequency")
                .gives("u-max", VOLTAGE, "V", "highest steady voltage")
                .gives("u-min", VOLTAGE, "V", "lowest steady voltage")
                .gives("steady-voltage", RATIO, "%", "steady-state voltage deviation")
                .gives("rise", RATIO, "%", "transient rise, load removed")
                .gives("dip", RATIO, "%", "transient dip, load applied")
                .gives("voltage-recovery", DURATION, "s", "voltage recovery time")
                .gives("droop", RATIO, "%", "frequency droop")
                .gives("f-no-load-max", FREQUENCY, "Hz", "highest no-load frequency")
                .gives("frequency-band", RATIO, "%", "steady-state frequency band")
                .gives("frequency-recovery", DURATION, "s", "frequency recovery time")
                .gives("unbalance", RATIO, "%", "voltage unbalance")
                .by(GeneratingSetCalculations::computeSet);
    }

    private static void computeSet(Arguments in, Results out) {
        GeneratingSetClass c = in.choice("class", GeneratingSetClass.class);
        double steady = c.steadyVoltage(in.number("p"));
        double u = Require.positive("rated voltage", in.number("u"), "V");
        out.put("u-max", u * (1 + steady)).put("u-min", u * (1 - steady)).put("steady-voltage", steady)
                .put("rise", c.rise()).put("dip", c.dip()).put("voltage-recovery", c.voltageRecovery())
                .put("droop", c.droop()).put("f-no-load-max", FrequencyDroop.noLoadCeiling(in.number("f"), c.droop()))
                .put("frequency-band", c.frequencyBand()).put("frequency-recovery", c.frequencyRecovery())
                .put("unbalance", c.unbalance());
    }

    private static Calculation transientClass() {
        return Calculation.named(AREA, "transient-class")
                .title("Strictest generating-set class that a voltage transient meets")
                .source("ISO 8528-5:2005, table 4 (from memory)")
                .formula("dip, rise and both recovery times within the class")
                .number("dip", RATIO, "%", "voltage dip when load is applied, positive")
                .number("dip-recovery", DURATION, "s", "its recovery time")
                .number("rise", RATIO, "%", "voltage rise when load is removed, positive")
                .number("rise-recovery", DURATION, "s", "its recovery time")
                .givesWord("class", "g3, g2, g1 or none")
                .by((in, out) -> {
                    Optional<GeneratingSetClass> c = GeneratingSetClass.strictest(new GeneratingSetClass.Transient(
                            in.number("dip"), in.number("dip-recovery"), in.number("rise"),
                            in.number("rise-recovery")));
                    if (c.isPresent()) {
                        out.put("class", c.get());
                    } else {
                        out.put("class", "none");
                    }
                });
    }

    private static Calculation bearing() {
        return Calculation.named(AREA, "bearing-temperature")
                .title("Bearing temperature: steady, and within caution")
                .source("ANSI/EASA AR100 (run until steady); IEC 60034-1 (2 K per hour); caution levels are common practice")
                .formula("change over the last half hour")
                .points("readings", DURATION, "h", TEMPERATURE, "°C", null, "time : bearing temperature, in order")
                .number("ambient", TEMPERATURE, "°C", "ambient temperature")
                .givesWord("steady", "yes or no")
                .gives("change-per-hour", TEMPERATURE_RISE, "K", "change per hour over the last half hour")
                .gives("last", TEMPERATURE, "°C", "last temperature")
                .gives("rise", TEMPERATURE_RISE, "K", "last temperature over ambient")
                .by((in, out) -> {
                    double[][] p = in.points("readings");
                    for (double[] x : p) {
                        x[0] /= 3600;
                    }
                    BearingTemperature b = BearingTemperature.of(p, in.number("ambient"));
                    out.put("steady", b.steady() ? "yes" : "no").put("last", b.last()).put("rise", b.rise());
                    if (!Double.isNaN(b.changePerHour())) {
                        out.put("change-per-hour", b.changePerHour());
                    }
                    if (b.caution()) {
                        out.warn("above 90 °C or 40 K over ambient: find the cause before going on");
                    }
                });
    }
}
