package org.copperbook.calc.runup;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.REACTANCE;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.Arrays;
import java.util.List;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationBuilder;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Voltage regulation by the methods of the books. */
public final class RegulationCalculations implements CalculationSource {

    private static final String AREA = "run-up";
    private static final double ROOT_3 = Math.sqrt(3);

    @Override
    public List<Calculation> calculations() {
        return List.of(impedance(), fromVolts(), fromCurves());
    }

    private static CalculationBuilder load(CalculationBuilder b) {
        return b.choice("connection", List.of("star", "delta", "single-phase"), "star", "how the phases are joined")
                .number("u", VOLTAGE, "V", "rated voltage, line to line")
                .number("s", APPARENT_POWER, "kVA", "", "load, or give its active power or the line current")
                .number("p", POWER, "kW", "", "active power of the load")
                .number("i", CURRENT, "A", "", "line current")
                .number("pf", RATIO, "", "1", "power factor")
                .choice("side", Regulation.Side.class, "lag", "lagging or leading");
    }

    private static Calculation impedance() {
        return load(Calculation.named(AREA, "regulation")
                .title("Voltage regulation by synchronous impedance")
                .source("I. L. Kosow, Electric Machinery and Transformers, examples 6-1 to 6-5")
                .formula("E = |U + I (R + jX)|; regulation = E/U - 1"))
                .number("r", RESISTANCE, "Ω", "resistance per phase")
                .number("x", REACTANCE, "Ω", "synchronous reactance per phase")
                .number("x-leakage", REACTANCE, "Ω", "", "leakage part of the reactance, to show the voltage behind it")
                .gives("i-phase", CURRENT, "A", "phase current")
                .gives("e-phase", VOLTAGE, "V", "no-load voltage, phase")
                .gives("e-line", VOLTAGE, "V", "no-load voltage, line to line")
                .gives("e-leakage-line", VOLTAGE, "V", "voltage behind the leakage reactance, line to line")
                .gives("regulation", RATIO, "%", "regulation")
                .by((in, out) -> {
                    Regulation.Load l = phaseLoad(in);
                    double e = Regulation.voltsBehind(l, in.number("r"), in.number("x"));
                    double line = in.number("u") / l.phaseVolts();
                    out.put("i-phase", l.amperes()).put("e-phase", e).put("e-line", e * line)
                            .put("regulation", Regulation.bySynchronousImpedance(l, in.number("r"), in.number("x")));
                    if (in.has("x-leakage")) {
                        out.put("e-leakage-line", line * Regulation.voltsBehind(l, in.number("r"),
                                in.number("x-leakage")));
                    }
                });
    }

    private static Calculation fromVolts() {
        return Calculation.named(AREA, "regulation-from-volts")
                .title("Voltage regulation from no-load and full-load volts")
                .source("U. A. Bakshi and M. V. Bakshi, DC Machines and Synchronous Machines, example 5.3")
                .formula("(no load - full load)/full load")
                .number("u-no-load", VOLTAGE, "V", "no-load voltage")
                .number("u-full-load", VOLTAGE, "V", "full-load voltage")
                .gives("regulation", RATIO, "%", "regulation")
                .by((in, out) -> out.put("regulation",
                        Regulation.fromVolts(in.number("u-no-load"), in.number("u-full-load"))));
    }

    private static Calculation fromCurves() {
        return load(Calculation.named(AREA, "regulation-from-curves")
                .title("Voltage regulation from characteristic curves, by four methods")
                .source("A. S. Langsdorf, Theory of Alternating-Current Machinery, chapter 10; IEEE 115")
                .formula("synchronous impedance, ampere turns, zero power factor (Potier), ASA"))
                .number("r", RESISTANCE, "Ω", "0", "resistance per phase")
                .number("x", REACTANCE, "Ω", "", "synchronous reactance per phase, for the first method")
                .points("open", CURRENT, "A", VOLTAGE, "V", null, "field current : open-circuit line voltage")
                .number("if-short", CURRENT, "A", "field current that drives the load current into a short circuit")
                .number("if-zero-pf", CURRENT, "A", "",
                        "field current at rated voltage, rated current, zero power factor lagging")
                .number("lower-part", RATIO, "%", "50", "part of the curve, by voltage, that carries the air-gap line")
                .gives("impedance", RATIO, "%", "by synchronous impedance: reads high")
                .gives("ampere-turns", RATIO, "%", "by ampere turns: reads low")
                .gives("e-ampere-turns", VOLTAGE, "V", "no-load phase voltage by ampere turns")
                .gives("potier", RATIO, "%", "by zero power factor")
                .gives("e-potier", VOLTAGE, "V", "no-load phase voltage by zero power factor")
                .gives("asa", RATIO, "%", "by the ASA method")
                .gives("x-potier", REACTANCE, "Ω", "leakage reactance of the triangle")
                .by(RegulationCalculations::computeCurves);
    }

    private static void computeCurves(Arguments in, Results out) {
        Regulation.Load l = phaseLoad(in);
        double toPhase = l.phaseVolts() / in.number("u");
        double[][] points = Arrays.stream(in.points("open"))
                .map(p -> new double[] {p[0], p[1] * toPhase}).toArray(double[][]::new);
        OpenCircuitCurve curve = OpenCircuitCurve.of(points);
        double r = in.number("r");
        double ifShort = in.number("if-short");
        if (in.has("x")) {
            out.put("impedance", Regulation.bySynchronousImpedance(l, r, in.number("x")));
        }
        double e = Regulation.voltsByAmpereTurns(l, r, curve, ifShort);
        out.put("ampere-turns", e / l.phaseVolts() - 1).put("e-ampere-turns", e);
        if (in.has("if-zero-pf")) {
            double slope = curve.airGapSlope(in.number("lower-part"));
            Regulation.PotierTriangle t = Regulation.potier(curve, in.number("if-zero-pf"), ifShort, slope,
                    l.phaseVolts(), l.amperes());
            double potier = Regulation.voltsByPotier(l, r, curve, t);
            double asa = Regulation.voltsByAsa(l, r, curve, slope, ifShort, t);
            out.put("potier", potier / l.phaseVolts() - 1).put("e-potier", potier)
                    .put("asa", asa / l.phaseVolts() - 1).put("x-potier", t.leakageReactance());
        }
    }

    private static Regulation.Load phaseLoad(Arguments in) {
        String connection = in.text("connection");
        double u = in.number("u");
        double phases = connection.equals("single-phase") ? 1 : ROOT_3;
        double lineCurrent = switch (in.firstGiven("i", "s", "p")) {
            case "i" -> in.number("i");
            case "s" -> in.number("s") / (phases * u);
            default -> in.number("p") / (phases * u * in.number("pf"));
        };
        double phaseVolts = connection.equals("star") ? u / ROOT_3 : u;
        double phaseCurrent = connection.equals("delta") ? lineCurrent / ROOT_3 : lineCurrent;
        return new Regulation.Load(phaseVolts, phaseCurrent, in.number("pf"),
                in.choice("side", Regulation.Side.class));
    }
}
