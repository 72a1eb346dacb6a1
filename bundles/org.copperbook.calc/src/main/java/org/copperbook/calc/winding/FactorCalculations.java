package org.copperbook.calc.winding;

import static org.copperbook.calc.quantity.Dimension.ANGLE;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Winding factors, slot tables and feasibility. */
public final class FactorCalculations implements CalculationSource {
    private static final String WINDING = "winding";
    private static final String TEXTBOOK =
            "Say, Alternating Current Machines; Pyrhonen, Jokinen and Hrabovcova, Design of Rotating Electrical"
            + " Machines, ch. 2";

    @Override
    public List<Calculation> calculations() {
        return List.of(distribution(), spread(), pitch(), sum(), factors(), table(), feasibility(), harmonics(),
                tableOfCoils());
    }

    private static Calculation distribution() {
        return Calculation.named(WINDING, "distribution-factor")
                .title("Distribution factor of evenly spaced slots")
                .source(TEXTBOOK)
                .formula("kd = sin(n h a/2)/(n sin(h a/2))")
                .whole("slots", null, "slots of the belt, n")
                .number("slot-angle", ANGLE, "°", "electrical angle from slot to slot, a")
                .whole("order", "1", "order of the harmonic, h")
                .gives("factor", RATIO, "", "signed factor")
                .gives("magnitude", RATIO, "", "its magnitude")
                .by((in, out) -> {
                    double factor = RegularFactors.distribution(in.whole("slots"), in.number("slot-angle"),
                            in.whole("order"));
                    out.put("factor", factor).put("magnitude", Math.abs(factor));
                });
    }

    private static Calculation spread() {
        return Calculation.named(WINDING, "distribution-factor-of-spread")
                .title("Distribution factor of infinitely many slots")
                .source(TEXTBOOK)
                .formula("kd = sin(s/2)/(s/2)")
                .number("spread", ANGLE, "°", "60", "electrical spread of the belt, s")
                .gives("factor", RATIO, "", "factor")
                .by((in, out) -> out.put("factor", RegularFactors.distributionOfSpread(in.number("spread"))));
    }

    private static Calculation pitch() {
        return Calculation.named(WINDING, "pitch-factor")
                .title("Pitch factor of a coil")
                .source(TEXTBOOK + "; sign by the sine form, books that use the cosine differ by (-1)^((h-1)/2)")
                .formula("kp = sin(h (span/pole pitch) 90°)")
                .number("span", RATIO, "", "coil span in slots")
                .number("pole-pitch", RATIO, "", "slots per pole")
                .whole("order", "1", "order of the harmonic, h")
                .gives("factor", RATIO, "", "signed factor")
                .gives("magnitude", RATIO, "", "its magnitude")
                .by((in, out) -> {
                    double factor = RegularFactors.pitch(in.number("span"), in.number("pole-pitch"), in.whole("order"));
                    out.put("factor", factor).put("magnitude", Math.abs(factor));
                });
    }

    private static Calculation sum() {
        return Calculation.named(WINDING, "coil-volts-in-series")
                .title("Voltage of equal coils in series, each displaced from the one before")
                .source(TEXTBOOK)
                .formula("E = n e kd")
                .whole("coils", null, "coils in series, n")
                .number("volts", VOLTAGE, "V", "voltage of one coil, e")
                .number("angle", ANGLE, "°", "electrical displacement from coil to coil")
                .gives("sum", VOLTAGE, "V", "voltage of all in series")
                .by((in, out) -> out.put("sum", in.whole("coils") * in.number("volts")
                        * Math.abs(RegularFactors.distribution(in.whole("coils"), in.number("angle"), 1))));
    }

    private static Calculation factors() {
        return Calculation.named(WINDING, "winding-factors")
                .title("Winding factors of a regular winding, by vector sum over its coils")
                .source(TEXTBOOK)
                .formula("kw = |sum of w (e^(j go) - e^(j return))/2|/sum of w;"
                        + " kp = sin(h (span/pole pitch) 90°); kd = kw/kp")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("phases", "3", "phases")
                .whole("span", null, "coil span in slots (1-8 is 7)")
                .choice("layers", List.of("1", "2"), "2", "coil sides per slot")
                .whole("order", "1", "order of the harmonic")
                .gives("q", RATIO, "", "slots per pole and phase")
                .gives("kw", RATIO, "", "winding factor of this order")
                .gives("kp", RATIO, "", "pitch factor of this order, magnitude")
                .gives("kd", RATIO, "", "distribution factor of this order, magnitude")
                .gives("groups", RATIO, "", "coil groups")
                .givesWord("group-sizes", "coils per group in order, repeating")
                .givesWord("balanced", "yes or no")
                .by((in, out) -> {
                    Winding winding = winding(in);
                    double kw = new WindingFactors(winding).factor(1, in.whole("order"));
                    double kp = Math.abs(RegularFactors.pitch(in.whole("span"), winding.polePitch(),
                            in.whole("order")));
                    boolean balanced = PhaseSymmetry.of(winding).balanced();
                    out.put("q", winding.slotsPerPoleAndPhase()).put("kw", kw).put("kp", kp);
                    if (kp > 1e-9) {
                        out.put("kd", kw / kp);
                    }
                    out.put("groups", winding.groups().size()).put("group-sizes", pattern(winding))
                            .put("balanced", balanced ? "yes" : "no");
                    if (!balanced) {
                        out.warn("the phases are not balanced");
                    }
                });
    }

    /** Sizes of the groups in order, cut to the shortest repetition. */
    private static String pattern(Winding winding) {
        List<Integer> sizes = winding.groups().stream().map(group -> winding.coilsOfGroup(group).size()).toList();
        int length = 1;
        while (!repeats(sizes, length)) {
            length++;
        }
        return sizes.subList(0, length).stream().map(String::valueOf).collect(Collectors.joining("-"));
    }

    private static boolean repeats(List<Integer> sizes, int length) {
        for (int i = length; i < sizes.size(); i++) {
            if (!sizes.get(i).equals(sizes.get(i - length))) {
                return false;
            }
        }
        return true;
    }

    private static Winding winding(Arguments in) {
        if (in.text("layers").equals("2")) {
            return WindingGenerator.generate(WindingPlan.doubleLayerLap(in.whole("slots"), in.whole("poles"),
                    in.whole("phases"),
                    in.whole("span"), 1));
        }
        return WindingGenerator.generate(WindingPlan.singleLayer(in.whole("slots"), in.whole("poles"),
                in.whole("phases"), CoilLayout.LAP,
                Grouping.GROUP_PER_POLE, List.of(in.whole("span")), 1));
    }

    private static Calculation table() {
        return Calculation.named(WINDING, "slot-table")
                .title("Coil list of a regular lap winding: go and return slots by phase, reversed coils in brackets")
                .source(TEXTBOOK + "; belts in the order U, -W, V, -U, W, -V")
                .formula("each slot joins the belt its phasor falls in")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("phases", "3", "phases, 1 to 3")
                .whole("span", null, "coil span in slots")
                .choice("layers", List.of("1", "2"), "2", "coil sides per slot")
                .givesWord("u", "first phase")
                .givesWord("v", "second phase")
                .givesWord("w", "third phase")
                .gives("angle-v", ANGLE, "°", "angle from the first phase to the second, 0 to 360 degrees")
                .gives("angle-w", ANGLE, "°", "angle from the first phase to the third")
                .by((in, out) -> describe(winding(in), out));
    }

    private static void describe(Winding winding, Results out) {
        PhaseSymmetry symmetry = PhaseSymmetry.of(winding);
        for (int phase = 1; phase <= Math.min(3, winding.phases()); phase++) {
            String name = List.of("u", "v", "w").get(phase - 1);
            out.put(name, winding.coilsOf(phase).stream().map(FactorCalculations::written)
                    .collect(Collectors.joining(", ")));
            if (phase > 1) {
                out.put("angle-" + name, Math.toRadians(symmetry.degrees().get(phase - 1)));
            }
        }
    }

    private static String written(Coil coil) {
        String slots = coil.goSlot() + ">" + coil.returnSlot();
        return coil.sense() > 0 ? slots : "(" + slots + ")";
    }

    private static Calculation feasibility() {
        return Calculation.named(WINDING, "winding-feasibility")
                .title("What a number of slots, poles and phases allows")
                .source("Srivastava, Ex. 5.2 (32 slots in 4 poles refused); " + TEXTBOOK)
                .formula("q = Q/(2p m) = a/b; balanced when Q divides by m and b has no factor in common with m;"
                        + " circuits divide 2p/b")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("phases", "3", "phases")
                .choice("layers", List.of("1", "2"), "2", "coil sides per slot")
                .gives("q", RATIO, "", "slots per pole and phase")
                .gives("coils-per-phase", RATIO, "", "coils per phase")
                .givesWord("balanced", "yes or no")
                .givesWord("circuits", "possible parallel circuits")
                .givesWord("group-sizes", "coils per group in order, repeating")
                .givesWord("reason", "why")
                .by((in, out) -> {
                    Feasibility found = Feasibility.of(in.whole("slots"), in.whole("poles"), in.whole("phases"),
                            Integer.parseInt(in.text("layers")));
                    out.put("q", found.slotsPerPoleAndPhase()).put("coils-per-phase", found.coilsPerPhase())
                            .put("balanced", found.balanced() ? "yes" : "no")
                            .put("circuits", joined(found.circuits(), ", "))
                            .put("group-sizes", joined(found.groupPattern(), "-")).put("reason", found.reason());
                    if (!found.balanced()) {
                        out.warn("no balanced winding: " + found.reason());
                    }
                });
    }

    private static String joined(List<Integer> numbers, String between) {
        return numbers.isEmpty() ? "none" : numbers.stream().map(String::valueOf).collect(Collectors.joining(between));
    }

    private static Calculation harmonics() {
        return Calculation.named(WINDING, "mmf-harmonic")
                .title("A harmonic of the magnetomotive force of balanced phase currents, over the working wave")
                .source(TEXTBOOK)
                .formula("vector sums of the phases over the pole pairs of the wave")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .whole("phases", "3", "phases")
                .whole("span", null, "coil span in slots")
                .choice("layers", List.of("1", "2"), "2", "coil sides per slot")
                .whole("pole-pairs", null, "pole pairs of the wave, at least 1")
                .gives("forward", RATIO, "%", "wave running with the working wave")
                .gives("backward", RATIO, "%", "wave running against it")
                .by((in, out) -> {
                    Winding winding = winding(in);
                    int pairs = in.whole("pole-pairs");
                    if (pairs < 1) {
                        throw new OutOfRange("pole pairs of the wave", Integer.toString(pairs), "values from 1",
                                "a wave has poles");
                    }
                    MmfHarmonics.Wave wave = MmfHarmonics.of(winding, Math.max(pairs, winding.polePairs()))
                            .get(pairs - 1);
                    out.put("forward", wave.forward()).put("backward", wave.backward());
                });
    }

    private static Calculation tableOfCoils() {
        return Calculation.named(WINDING, "captured-coils")
                .title("Factors and balance of a coil list as captured")
                .source(TEXTBOOK)
                .formula("vector sum over the coils written down")
                .whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .choice("layers", List.of("1", "2"), "2", "coil sides per slot")
                .text("u", "1-6x10, -7-12x10", null,
                "coils of the first phase: go-return x turns, a minus before a reversed coil")
                .text("v", "5-10x10, -11-16x10", "", "coils of the second phase")
                .text("w", "9-14x10, -15-20x10", "", "coils of the third phase")
                .whole("order", "1", "order of the harmonic")
                .gives("kw-u", RATIO, "", "winding factor of the first phase")
                .gives("kw-v", RATIO, "", "winding factor of the second phase")
                .gives("kw-w", RATIO, "", "winding factor of the third phase")
                .gives("magnitude-deviation", RATIO, "%", "largest deviation of a phase from the mean voltage")
                .gives("angle-deviation", ANGLE, "°", "largest deviation of an angle between phases")
                .givesWord("findings", "what does not fit the slots")
                .by(FactorCalculations::captured);
    }

    private static void captured(Arguments in, Results out) {
        List<String> names = Stream.of("u", "v", "w").filter(in::has).toList();
        List<Coil> coils = CoilText.read(names.stream().map(in::text).toList());
        Winding winding = new Winding(in.whole("slots"), in.whole("poles"), names.size(),
                Integer.parseInt(in.text("layers")), coils);
        WindingFactors factors = new WindingFactors(winding);
        for (int phase = 1; phase <= names.size(); phase++) {
            out.put("kw-" + names.get(phase - 1), factors.factor(phase, in.whole("order")));
        }
        PhaseSymmetry symmetry = PhaseSymmetry.of(winding);
        List<String> findings = winding.findings();
        out.put("magnitude-deviation", symmetry.largestMagnitudeDeviation())
                .put("angle-deviation", Math.toRadians(symmetry.largestAngleDeviation()))
                .put("findings", findings.isEmpty() ? "none" : String.join("; ", findings));
        if (!symmetry.balanced()) {
            out.warn(String.format(Locale.ROOT, "the phases are not balanced: %.2f %% and %.2f degrees",
                    100 * symmetry.largestMagnitudeDeviation(), symmetry.largestAngleDeviation()));
        }
    }
}
