package org.copperbook.calc.excitation;

import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.ROTATIONAL_SPEED;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.stream.Collectors;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationBuilder;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.InstrumentAccuracy;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;

/** The separate-excitation run. */
public final class SeparateExcitationCalculations implements CalculationSource {

    @Override
    public List<Calculation> calculations() {
        return List.of(Calculation.named("rectifier", "separate-excitation-run")
                .title("Separate-excitation run: what the output says")
                .source("common practice, no source; balance by NEMA MG 1, 14.36")
                .formula("output over expected at nominal speed, first and second power of speed; unbalance")
                .number("uv", VOLTAGE, "V", "line U to V")
                .number("vw", VOLTAGE, "V", "line V to W")
                .number("wu", VOLTAGE, "V", "line W to U")
                .number("speed", ROTATIONAL_SPEED, "r/min", "speed")
                .number("nominal-speed", ROTATIONAL_SPEED, "r/min", "nominal speed")
                .number("expected", VOLTAGE, "V", "", "stored excitation point at the exciter amperes measured")
                .number("nominal", VOLTAGE, "V", "", "nominal voltage, where this battery is known to reach it")
                .number("percent", RATIO, "%", "0", "accuracy of the voltmeter, per cent of reading")
                .number("digits", RATIO, "", "0", "accuracy of the voltmeter, digits")
                .number("resolution", VOLTAGE, "V", "0", "one digit on the range")
                .number("u-speed", ROTATIONAL_SPEED, "r/min", "0", "standard uncertainty of the speed")
                .number("u-expected", VOLTAGE, "V", "0", "standard uncertainty of the stored point")
                .givesWord("row", "most likely row of the table")
                .givesWord("output", "verdict on the output")
                .givesWord("balance", "verdict on the balance")
                .givesWord("doubts", "why it is doubtful")
                .givesWord("suspects", "what to look at, in order of ease")
                .gives("output-linear", RATIO, "%", "output over expected, first power of speed")
                .gives("output-square", RATIO, "%", "output over expected, second power of speed")
                .gives("unbalance", RATIO, "%", "unbalance of the line voltages")
                .by(SeparateExcitationCalculations::compute));
    }

    private static void compute(Arguments in, Results out) {
        InstrumentAccuracy meter = new InstrumentAccuracy(100 * in.number("percent"), in.number("digits"),
                in.number("resolution"));
        ExpectedOutput expected = new ExpectedOutput.Unknown(null);
        if (in.has("expected")) {
            expected = new ExpectedOutput.StoredPoint(new Uncertain(in.number("expected"), in.number("u-expected")));
        } else if (in.has("nominal")) {
            expected = new ExpectedOutput.Nominal(in.number("nominal"));
        }
        SeparateExcitationRun.Interpretation i = SeparateExcitationRun.interpret(
                new SeparateExcitationRun.Measured(meter.of(in.number("uv")), meter.of(in.number("vw")),
                        meter.of(in.number("wu")), new Uncertain(in.number("speed"), in.number("u-speed")),
                        in.number("nominal-speed"), SharedTerms.meter(meter)), expected);
        out.put("row", i.row()).put("output", i.output().outcome()).put("balance", i.balance().outcome())
                .put("doubts", i.doubts().isEmpty() ? "none"
                        : i.doubts().stream().map(CalculationBuilder::word).collect(Collectors.joining(", ")))
                .put("suspects", i.suspects().stream().map(CalculationBuilder::word).collect(Collectors.joining(", ")));
        if (i.unbalance() != null) {
            out.put("unbalance", i.unbalance().value());
        }
        if (i.outputLinear() != null) {
            out.put("output-linear", i.outputLinear().value()).put("output-square", i.outputSquare().value());
        }
        out.warn("regulator off and isolated; a second competent person able to stop the prime mover stands by");
    }
}
