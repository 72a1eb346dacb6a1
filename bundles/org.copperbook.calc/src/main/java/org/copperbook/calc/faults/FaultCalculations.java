package org.copperbook.calc.faults;

import static org.copperbook.calc.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** The fault finder by name. */
public final class FaultCalculations implements CalculationSource {

    @Override
    public List<Calculation> calculations() {
        String known = FaultKnowledge.standard().tests().stream().map(FaultTest::id).collect(Collectors.joining(", "));
        return List.of(Calculation.named("faults", "fault-finder")
                .title("Which part of a brushless alternator is likeliest at fault, and the next test that tells most"
                        + " for least work")
                .source("Bayes' rule; Shannon entropy; likelihoods are common practice, no source")
                .formula("P(part | findings); expected bits over minutes of work")
                .text("findings", "complaint=no-output; frequency=right", "",
                "findings so far, test=outcome separated by semicolons; tests: " + known)
                .givesWord("first", "likeliest part")
                .gives("first-probability", RATIO, "%", "its probability")
                .givesWord("ranking", "all parts by falling probability")
                .givesWord("next-test", "next best test")
                .givesWord("question", "what it asks")
                .givesWord("caution", "caution to be shown before it")
                .gives("next-bits", RATIO, "", "information it is expected to give, in bits")
                .by(FaultCalculations::find));
    }

    private static void find(Arguments in, Results out) {
        List<Finding> findings = new ArrayList<>();
        for (String part : (in.has("findings") ? in.text("findings") : "").split(";")) {
            if (!part.isBlank()) {
                String[] sides = part.trim().split("=");
                if (sides.length != 2) {
                    throw new OutOfRange("finding", '"' + part.trim() + '"', "the form test=outcome",
                            "a finding names its outcome");
                }
                findings.add(new Finding(sides[0].trim(), sides[1].trim()));
            }
        }
        Diagnosis diagnosis = new FaultFinder(FaultKnowledge.standard()).diagnose(findings);
        out.put("first", diagnosis.suspects().get(0).suspect().inWords())
                .put("first-probability", diagnosis.suspects().get(0).probability())
                .put("ranking", diagnosis.suspects().stream()
                .map(r -> String.format(Locale.ROOT, "%s %.1f %%", r.suspect().inWords(),
                        100 * r.probability())).collect(Collectors.joining(", ")));
        if (!diagnosis.nextTests().isEmpty()) {
            Diagnosis.NextTest next = diagnosis.nextTests().get(0);
            out.put("next-test", next.test().id()).put("question", next.test().question())
                    .put("caution", next.test().caution().isEmpty() ? "none" : next.test().caution())
                    .put("next-bits", next.bits());
        }
    }
}
