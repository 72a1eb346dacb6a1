package org.copperbook.calc.winding.design;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.FLUX_DENSITY;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MAGNETIC_FLUX;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationBuilder;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingFactors;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;

/** Electromotive force and flux. */
public final class EmfCalculations implements CalculationSource {
    private static final String WINDING = "winding";
    private static final String TEXTBOOK =
            "any textbook on a.c. machines, for instance Say or Theraja; 4.44 is the rounded constant of books";

    @Override
    public List<Calculation> calculations() {
        return List.of(induced(), flux(), ofWinding(), harmonics(), fluxPerPole(), gapField());
    }

    private static double constant(Arguments in) {
        return in.text("constant").equals("book") ? Emf.BOOK : Emf.EXACT;
    }

    private static CalculationBuilder constant(CalculationBuilder builder) {
        return builder.choice("constant", List.of("exact", "book"), "exact", "exact is sqrt(2) pi, book is 4.44");
    }

    private static Calculation induced() {
        return constant(Calculation.named(WINDING, "induced-voltage")
                .title("Voltage that a flux induces in a phase")
                .source(TEXTBOOK)
                .formula("E = sqrt(2) pi f N kw Phi")
                .number("f", FREQUENCY, "Hz", "frequency")
                .number("turns", RATIO, "", "turns in series per phase")
                .number("kw", RATIO, "", "1", "winding factor")
                .number("flux", MAGNETIC_FLUX, "Wb", "flux per pole"))
                .gives("phase", VOLTAGE, "V", "per phase, r.m.s.")
                .gives("line", VOLTAGE, "V", "between lines in star")
                .by((in, out) -> {
                    double volts = Emf.phase(constant(in), in.number("f"), in.number("turns"), in.number("kw"),
                            in.number("flux"));
                    out.put("phase", volts).put("line", Math.sqrt(3) * volts);
                });
    }

    private static Calculation flux() {
        return constant(Calculation.named(WINDING, "flux-for-voltage")
                .title("Flux per pole that a phase voltage needs")
                .source(TEXTBOOK)
                .formula("Phi = E/(sqrt(2) pi f N kw)")
                .number("phase", VOLTAGE, "V", "phase voltage")
                .number("f", FREQUENCY, "Hz", "frequency")
                .number("turns", RATIO, "", "turns in series per phase")
                .number("kw", RATIO, "", "1", "winding factor"))
                .gives("flux", MAGNETIC_FLUX, "mWb", "flux per pole")
                .by((in, out) -> out.put("flux",
                Emf.flux(constant(in), in.number("phase"), in.number("f"), in.number("turns"),
                        in.number("kw"))));
    }

    private static CalculationBuilder windingInputs(CalculationBuilder builder) {
        return constant(builder.whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("phases", "3", "phases")
                .whole("span", null, "coil span in slots")
                .number("conductors-per-slot", RATIO, "", "conductors in a slot")
                .whole("circuits", "1", "parallel circuits per phase")
                .number("f", FREQUENCY, "Hz", "frequency"));
    }

    private static double seriesTurns(Arguments in) {
        return in.whole("slots") * in.number("conductors-per-slot") / 2 / in.whole("phases") / in.whole("circuits");
    }

    private static Winding winding(Arguments in) {
        return WindingGenerator.generate(WindingPlan.doubleLayerLap(in.whole("slots"), in.whole("poles"),
                in.whole("phases"),
                in.whole("span"), 1));
    }

    private static Calculation ofWinding() {
        return windingInputs(Calculation.named(WINDING, "induced-voltage-of-winding")
                .title("Voltage of a regular winding from conductor to line")
                .source(TEXTBOOK)
                .formula("conductor c f Phi/2, turn c f Phi, coil w c f Phi, phase c f N kw Phi"))
                .number("flux", MAGNETIC_FLUX, "Wb", "flux per pole")
                .number("current", CURRENT, "A", "", "line current for the rating")
                .gives("turns", RATIO, "", "turns in series per phase")
                .gives("kw", RATIO, "", "winding factor")
                .gives("conductor", VOLTAGE, "V", "one conductor")
                .gives("turn", VOLTAGE, "V", "one full-pitch turn")
                .gives("coil", VOLTAGE, "V", "one full-pitch coil of the two-layer winding")
                .gives("phase", VOLTAGE, "V", "per phase, r.m.s.")
                .gives("line", VOLTAGE, "V", "between lines in star, three phases")
                .gives("rating", APPARENT_POWER, "kVA", "at the current, three phases in star")
                .by(EmfCalculations::ofWinding);
    }

    private static void ofWinding(Arguments in, Results out) {
        double kw = new WindingFactors(winding(in)).factor(1, 1);
        double turn = Emf.phase(constant(in), in.number("f"), 1, 1, in.number("flux"));
        double phase = Emf.phase(constant(in), in.number("f"), seriesTurns(in), kw, in.number("flux"));
        out.put("turns", seriesTurns(in)).put("kw", kw).put("conductor", turn / 2).put("turn", turn)
                .put("coil", turn * in.number("conductors-per-slot") / 2).put("phase", phase)
                .put("line", Math.sqrt(3) * phase);
        if (in.has("current")) {
            out.put("rating", 3 * phase * in.number("current"));
        }
    }

    private static Calculation harmonics() {
        return windingInputs(Calculation.named(WINDING, "induced-voltage-with-harmonics")
                .title("Phase and line voltage with harmonics of the gap field")
                .source("Bakshi, Ex. 4.12 and 4.16")
                .formula("Eh = E1 (Bh/B1) kwh/kw1; line voltage in star without orders divisible by three"))
                .number("flux", MAGNETIC_FLUX, "Wb", "flux per pole of the working field")
                .points("fields", RATIO, "", RATIO, "", null, "order:peak density over that of the working field")
                .gives("fundamental", VOLTAGE, "V", "working wave, per phase")
                .gives("first", VOLTAGE, "V", "first harmonic given, per phase")
                .gives("second", VOLTAGE, "V", "second harmonic given, per phase")
                .gives("phase", VOLTAGE, "V", "r.m.s. per phase")
                .gives("line", VOLTAGE, "V", "r.m.s. between lines in star")
                .by(EmfCalculations::withHarmonics);
    }

    private static void withHarmonics(Arguments in, Results out) {
        WindingFactors factors = new WindingFactors(winding(in));
        double kw = factors.factor(1, 1);
        double fundamental = Emf.phase(constant(in), in.number("f"), seriesTurns(in), kw, in.number("flux"));
        List<Emf.FieldHarmonic> fields = new ArrayList<>();
        for (double[] point : in.points("fields")) {
            int order = (int) Math.rint(point[0]);
            fields.add(new Emf.FieldHarmonic(order, point[1], factors.factor(1, order)));
        }
        List<Double> volts = Emf.harmonics(fundamental, kw, fields);
        double squares = fundamental * fundamental + volts.stream().mapToDouble(v -> v * v).sum();
        out.put("fundamental", fundamental).put("phase", Math.sqrt(squares))
                .put("line", Emf.starLine(fundamental, fields, volts));
        if (!volts.isEmpty()) {
            out.put("first", volts.get(0));
        }
        if (volts.size() > 1) {
            out.put("second", volts.get(1));
        }
    }

    private static Calculation fluxPerPole() {
        return Calculation.named(WINDING, "flux-per-pole")
                .title("Flux per pole of a sinusoidal gap field")
                .source("McPherson, ch. 3; " + TEXTBOOK)
                .formula("Phi = (2/pi) B tau L = B D L/p")
                .number("b", FLUX_DENSITY, "T", "peak flux density")
                .number("bore", LENGTH, "m", "bore")
                .number("length", LENGTH, "m", "core length")
                .whole("poles", null, "poles")
                .gives("flux", MAGNETIC_FLUX, "Wb", "flux per pole")
                .by((in, out) -> out.put("flux", Emf.fluxPerPole(in.number("b"), in.number("bore"), in.number("length"),
                        in.whole("poles"))));
    }

    private static Calculation gapField() {
        return Calculation.named(WINDING, "gap-field-of-rotor")
                .title("Peak of the fundamental gap field of a cylindrical field winding, iron neglected")
                .source("Fitzgerald, Kingsley and Umans, Electric Machinery, ch. 4")
                .formula("B = (4 mu0/(pi g)) (kf Nf/2p) If")
                .number("gap", LENGTH, "m", "air gap")
                .number("turns", RATIO, "", "field turns in series, all poles")
                .number("kf", RATIO, "", "1", "field winding factor")
                .whole("poles", null, "poles")
                .number("current", CURRENT, "A", "field current")
                .gives("b", FLUX_DENSITY, "T", "peak flux density")
                .by((in, out) -> out.put("b", Emf.gapFieldOf(in.number("gap"), in.number("turns"), in.number("kf"),
                in.whole("poles"),
                        in.number("current"))));
    }
}
