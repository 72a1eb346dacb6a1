package org.copperbook.calc.winding.capture;

import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MASS;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.winding.BundleText;
import org.copperbook.calc.winding.CircuitPlan;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.calc.wire.ConductorMaterial;

/** The capture check by name, for a regular two-layer winding. */
public final class CaptureCalculations implements CalculationSource {

    @Override
    public List<Calculation> calculations() {
        return List.of(Calculation.named("winding", "capture-check")
                .title("A captured two-layer winding against its readings: which single slip would account"
                        + " for a difference")
                .source("Bayes' rule; common terms as in JCGM 100 cl. 5.2; prior shares are common practice")
                .formula("log(R/R predicted) normal with mean turn, wire, temperature and meter in common")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("span", null, "coil span in slots")
                .number("turns", RATIO, "", "turns per coil as counted")
                .text("strands", "3x1.0mm", null, "strands in hand as counted")
                .whole("circuits", "1", "parallel circuits as traced")
                .number("mean-turn", LENGTH, "m", "mean length of turn")
                .number("temperature", TEMPERATURE, "°C", "winding temperature at the readings")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .numbers("groups", RESISTANCE, "Ω", "", "resistance of each coil group in order; may be left out")
                .numbers("phases", RESISTANCE, "Ω", "", "resistance of each phase; may be left out")
                .number("mass", MASS, "kg", "", "copper taken out; may be left out")
                .number("u-reading", RATIO, "%", "0.3", "relative standard uncertainty of one resistance reading")
                .number("u-mass", RATIO, "%", "1.5", "relative standard uncertainty of the mass")
                .gives("clean", RATIO, "%", "probability that the capture has no slip")
                .givesWord("questioned", "yes or no")
                .givesWord("first", "likeliest slip, with those the readings cannot tell from it")
                .gives("first-probability", RATIO, "%", "its probability")
                .givesWord("sentence", "the outcome in plain words")
                .by(CaptureCalculations::check));
    }

    private static void check(Arguments in, Results out) {
        Winding winding = WindingGenerator.generate(WindingPlan.doubleLayerLap(in.whole("slots"), in.whole("poles"), 3,
                in.whole("span"), in.number("turns")));
        CapturedWinding captured = new CapturedWinding(winding, CircuitPlan.equal(winding, in.whole("circuits")),
                BundleText.read(in.text("strands"), in.choice("material", ConductorMaterial.class)),
                in.number("mean-turn"),
                in.number("temperature"));
        CaptureReport report = CaptureCheck.check(captured, readings(in), CaptureUncertainty.usual());
        out.put("clean", report.cleanProbability()).put("questioned", report.questioned() ? "yes" : "no")
                .put("sentence", report.sentence());
        if (!report.explanations().isEmpty()) {
            Explanation first = report.explanations().get(0);
            out.put("first", first.slips().stream().map(Slip::inWords).collect(Collectors.joining(", or ")))
                    .put("first-probability", first.probability());
        }
        if (report.questioned()) {
            out.warn(report.sentence());
        }
    }

    private static List<CaptureReading> readings(Arguments in) {
        List<CaptureReading> readings = new ArrayList<>();
        if (in.has("groups")) {
            double[] ohms = in.numbers("groups");
            for (int i = 0; i < ohms.length; i++) {
                readings.add(new CaptureReading.OfGroup(i + 1, ohms[i], in.number("u-reading")));
            }
        }
        if (in.has("phases")) {
            double[] ohms = in.numbers("phases");
            for (int i = 0; i < ohms.length; i++) {
                readings.add(new CaptureReading.OfPhase(i + 1, ohms[i], in.number("u-reading")));
            }
        }
        if (in.has("mass")) {
            readings.add(new CaptureReading.OfMass(in.number("mass"), in.number("u-mass")));
        }
        return readings;
    }
}
