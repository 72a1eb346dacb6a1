package org.copperbook.calc.uncertainty;

import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;

import java.util.ArrayList;
import java.util.List;

import org.copperbook.calc.Require;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Decision;
import org.copperbook.calc.verdict.GuardedDecision;

/** Uncertainty and guarded decisions. Numbers without unit stand for any unit, the same throughout. */
public final class UncertaintyCalculations implements CalculationSource {

    private static final String AREA = "uncertainty";

    @Override
    public List<Calculation> calculations() {
        return List.of(reading(), halfWidth(), budget(), mean(), comparison(), decision(), difference());
    }

    private static Calculation reading() {
        return Calculation.named(AREA, "reading-uncertainty")
                .title("Standard uncertainty of a meter reading")
                .source("JCGM 100:2008, 4.3.7")
                .formula("u = (a % of reading + b digits x resolution)/sqrt(3)")
                .number("reading", RATIO, "", "reading, any unit")
                .number("percent", RATIO, "%", "0", "per cent of reading")
                .number("digits", RATIO, "", "0", "digits")
                .number("resolution", RATIO, "", "0", "one digit on the range, unit of the reading")
                .gives("u", RATIO, "", "standard uncertainty, unit of the reading")
                .gives("u-relative", RATIO, "%", "the same over the reading")
                .by((in, out) -> {
                    Uncertain x = new InstrumentAccuracy(100 * in.number("percent"), in.number("digits"),
                            in.number("resolution")).of(in.number("reading"));
                    out.put("u", x.u()).put("u-relative", x.relative());
                });
    }

    private static Calculation halfWidth() {
        return Calculation.named(AREA, "standard-uncertainty")
                .title("Standard uncertainty from a half-width")
                .source("JCGM 100:2008, 4.3.7 to 4.3.9")
                .formula("half-width / sqrt(3), sqrt(6), sqrt(2), 2 or 1")
                .number("half-width", RATIO, "", "half-width, any unit")
                .choice("shape", Budget.Shape.class, "rectangular", "shape of the distribution")
                .gives("u", RATIO, "", "standard uncertainty")
                .by((in, out) -> out.put("u", in.choice("shape", Budget.Shape.class).standard(in.number("half-width"))));
    }

    private static Calculation budget() {
        return Calculation.named(AREA, "combined-uncertainty")
                .title("Combined uncertainty of a budget")
                .source("JCGM 100:2008, 5.1.2, 5.2.2 and G.4.1")
                .formula("u = sqrt(sum of squares), or |sum| when fully correlated; freedom by Welch-Satterthwaite")
                .points("lines", RATIO, "", RATIO, "", null,
                        "contribution : degrees of freedom; 1e9 for a stated limit")
                .flag("correlated", "no", "whether all contributions have one cause")
                .number("level", RATIO, "%", "95.45", "level of confidence")
                .gives("u", RATIO, "", "combined standard uncertainty")
                .gives("freedom", RATIO, "", "effective degrees of freedom")
                .gives("coverage", RATIO, "", "coverage factor at that level")
                .gives("expanded", RATIO, "", "expanded uncertainty")
                .by((in, out) -> {
                    List<Budget.Line> lines = new ArrayList<>();
                    for (double[] p : in.points("lines")) {
                        lines.add(new Budget.Line(p[0], p[1]));
                    }
                    double u = in.flag("correlated") ? Budget.correlated(lines) : Budget.independent(lines);
                    double freedom = Budget.effectiveFreedom(lines);
                    // the guide truncates to a whole number before looking the factor up (G.4.1, note 1)
                    double k = StudentT.coverage(in.number("level"), Math.max(1, Math.floor(freedom)));
                    out.put("u", u).put("freedom", freedom).put("coverage", k).put("expanded", k * u);
                });
    }

    private static Calculation mean() {
        return Calculation.named(AREA, "mean-of-readings")
                .title("Mean of repeated readings")
                .source("JCGM 100:2008, 4.2.3")
                .formula("u = s / sqrt(n)")
                .numbers("readings", RATIO, "", null, "readings, any unit")
                .gives("mean", RATIO, "", "mean")
                .gives("u", RATIO, "", "its standard uncertainty")
                .by((in, out) -> {
                    Uncertain m = Budget.mean(in.numbers("readings"));
                    out.put("mean", m.value()).put("u", m.u());
                });
    }

    private static Calculation comparison() {
        return Calculation.named(AREA, "resistance-by-comparison")
                .title("Resistor measured against a standard")
                .source("EA-4/02, supplement S3")
                .formula("RX = (RS + drift + dTS) x corrections x mean ratio - dTX")
                .number("standard", RESISTANCE, "Ω", "value of the standard on its certificate")
                .number("u-standard", RESISTANCE, "Ω", "its standard uncertainty")
                .number("drift", RESISTANCE, "Ω", "0", "estimated drift since then")
                .number("drift-limit", RESISTANCE, "Ω", "0", "half-width of the drift, rectangular")
                .number("ts-limit", RESISTANCE, "Ω", "0", "half-width of the standard's temperature term, rectangular")
                .number("tx-limit", RESISTANCE, "Ω", "0", "half-width of the unknown's temperature term, rectangular")
                .number("rc-limit", RATIO, "", "0", "half-width of the comparator's correction, triangular")
                .numbers("ratios", RATIO, "", null, "readings of the ratio unknown to standard")
                .gives("r", RESISTANCE, "Ω", "unknown resistance")
                .gives("u", RESISTANCE, "Ω", "its standard uncertainty")
                .by((in, out) -> {
                    Uncertain ratio = Budget.mean(in.numbers("ratios"));
                    Traced standard = Traced.of(in.number("standard"), Source.named("certificate"),
                            in.number("u-standard"));
                    Traced drift = Traced.of(in.number("drift"), Source.named("drift"),
                            Budget.Shape.RECTANGULAR.standard(in.number("drift-limit")));
                    Traced ts = Traced.of(0, Source.named("temperature of the standard"),
                            Budget.Shape.RECTANGULAR.standard(in.number("ts-limit")));
                    Traced tx = Traced.of(0, Source.named("temperature of the unknown"),
                            Budget.Shape.RECTANGULAR.standard(in.number("tx-limit")));
                    Traced rc = Traced.of(1, Source.named("comparator"),
                            Budget.Shape.TRIANGULAR.standard(in.number("rc-limit")));
                    Traced x = standard.plus(drift).plus(ts).times(rc).times(Traced.independent(ratio, "scatter"))
                            .minus(tx);
                    out.put("r", x.value()).put("u", x.u());
                });
    }

    private static Calculation decision() {
        return Calculation.named(AREA, "guarded-decision")
                .title("Verdict on a value with its uncertainty")
                .source("JCGM 106:2012, 8.3")
                .formula("meets when value ± k u lies inside the limits, fails when wholly outside, else doubtful")
                .number("value", RATIO, "", "value, any unit")
                .number("u", RATIO, "", "standard uncertainty")
                .number("lower", RATIO, "", "", "lower limit")
                .number("upper", RATIO, "", "", "upper limit")
                .number("k", RATIO, "", "2", "coverage factor")
                .givesWord("outcome", "meets, doubtful, fails or no limit set")
                .gives("conformity", RATIO, "%", "probability of conformity")
                .by((in, out) -> {
                    Decision d = GuardedDecision.decide(new Uncertain(in.number("value"), in.number("u")),
                            new Bounds(in.has("lower") ? in.number("lower") : null,
                                    in.has("upper") ? in.number("upper") : null),
                            in.number("k"));
                    out.put("outcome", d.outcome());
                    if (!Double.isNaN(d.probabilityOfConformity())) {
                        out.put("conformity", d.probabilityOfConformity());
                    }
                });
    }

    private static Calculation difference() {
        return Calculation.named(AREA, "relative-difference")
                .title("Difference of a value from a reference")
                .source("arithmetic")
                .formula("value/reference - 1")
                .number("value", RATIO, "", "value, any unit")
                .number("reference", RATIO, "", "reference, the same unit")
                .gives("difference", RATIO, "%", "relative difference")
                .by((in, out) -> out.put("difference", in.number("value")
                        / Require.positive("size of the reference", Math.abs(in.number("reference")), "")
                        * Math.signum(in.number("reference")) - 1));
    }
}
