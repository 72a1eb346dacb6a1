package org.copperbook.jobs.faults;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.faults.Diagnosis;
import org.copperbook.calc.faults.FaultFinder;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.FaultTest;
import org.copperbook.calc.faults.Finding;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Shop;

/**
 * Where the fault of a job lies, as far as the record tells: suspects ranked with the evidence for and against each, and
 * the next step with its cautions.
 *
 * @param origin   where the likelihoods come from
 * @param notes    what the reader must know first (tables that cannot be used, doubtful readings left out)
 * @param taken    what was taken into account, with where it comes from
 * @param suspects suspects by falling probability
 * @param practice what the decision table says; empty where it does not speak
 * @param next     next step; empty when no test tells anything more
 * @param verdict  one sentence when the first suspect is likely enough to open up; empty otherwise
 */
public record FaultReport(String origin, List<String> notes, List<Taken> taken, List<SuspectLine> suspects,
        String practice, Optional<NextStep> next, String verdict) {

    public FaultReport {
        notes = List.copyOf(notes);
        taken = List.copyOf(taken);
        suspects = List.copyOf(suspects);
    }

    /**
     * A finding taken into account.
     *
     * @param test    test by name
     * @param outcome outcome by name
     * @param inWords question and outcome in words
     * @param from    reading it was picked from; empty when it was answered by hand
     * @param cautions cautions that go with the test; empty for what was told
     */
    public record Taken(String test, String outcome, String inWords, String from, List<String> cautions) {
        public Taken {
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * A suspect.
     *
     * @param id             name in files
     * @param inWords        in the trade's words
     * @param probability    0 to 1
     * @param speaksFor      sentences for it, the heaviest first
     * @param speaksAgainst  sentences against it, the heaviest first
     */
    public record SuspectLine(String id, String inWords, double probability, List<String> speaksFor,
            List<String> speaksAgainst) {
    }

    /**
     * The next step.
     *
     * @param test     test by name
     * @param question what is asked, with the time it takes
     * @param why      why this one
     * @param minutes  working time, min
     * @param cautions cautions to be shown before it
     */
    public record NextStep(String test, String question, String why, double minutes, List<String> cautions) {
    }

    /** The report on a job as it stands. */
    public static FaultReport of(Job job, Shop shop, List<Verdict> verdicts) {
        FaultFinding told = job.part(PartKind.FAULT_FINDING, FaultFinding.class).orElse(FaultFinding.none());
        return of(told, PickedReadings.of(job, verdicts), shop.faultTables());
    }

    static FaultReport of(FaultFinding told, PickedReadings picked, FaultTables own) {
        List<String> notes = new ArrayList<>();
        List<String> problems = own.problems();
        if (!problems.isEmpty()) {
            notes.add(FaultText.say("report.own-tables"));
            notes.addAll(problems);
        }
        FaultTables tables = DefaultFaultTables.unlessSound(own, new PartJson());
        FaultKnowledge knowledge = tables.knowledge();
        notes.addAll(picked.notes());
        Map<Finding, String> from = findings(told, picked, knowledge, notes);
        Diagnosis d = new FaultFinder(knowledge).diagnose(List.copyOf(from.keySet()));
        List<Taken> taken = new ArrayList<>();
        from.forEach((f, where) -> taken.add(new Taken(f.test(), f.outcome(), inWords(knowledge, f), where,
                cautions(tables.test(f.test())))));
        return new FaultReport(tables.origin(), notes, taken,
                d.suspects().stream().map(r -> line(r, knowledge)).toList(),
                d.practice().map(p -> p.says()).orElse(""), next(d, tables),
                d.settled() ? FaultText.say("report.settled", d.first().suspect().inWords()) : "");
    }

    /** What a person answered goes before what was picked from a reading. */
    private static Map<Finding, String> findings(FaultFinding told, PickedReadings picked, FaultKnowledge knowledge,
            List<String> notes) {
        Map<Finding, String> all = new LinkedHashMap<>();
        for (String symptom : new LinkedHashSet<>(told.symptoms())) {
            take(new Finding(FaultFinding.SYMPTOMS, symptom), "", knowledge, all, notes);
        }
        told.answers().forEach((test, outcome) -> take(new Finding(test, outcome), "", knowledge, all, notes));
        Set<String> answered = told.answers().keySet();
        picked.byTest().forEach((test, p) -> {
            if (!answered.contains(test)) {
                take(new Finding(test, p.outcome()), p.from(), knowledge, all, notes);
            }
        });
        return all;
    }

    private static void take(Finding f, String from, FaultKnowledge knowledge, Map<Finding, String> all,
            List<String> notes) {
        boolean known = knowledge.tests().stream().filter(t -> t.id().equals(f.test()))
                .flatMap(t -> t.outcomes().stream()).anyMatch(o -> o.id().equals(f.outcome()));
        if (known) {
            all.put(f, from);
        } else {
            notes.add(FaultText.say("report.unknown-answer", f.test(), f.outcome()));
        }
    }

    private static String inWords(FaultKnowledge knowledge, Finding f) {
        FaultTest test = knowledge.test(f.test());
        return FaultText.say("report.finding", test.question(), test.outcome(f.outcome()).inWords());
    }

    private static SuspectLine line(Diagnosis.Ranked r, FaultKnowledge knowledge) {
        List<String> speaksFor = new ArrayList<>();
        List<String> against = new ArrayList<>();
        for (Diagnosis.Evidence e : r.evidence()) {
            Weight.of(e.bits()).ifPresent(w -> {
                FaultTest test = knowledge.test(e.finding().test());
                (e.bits() > 0 ? speaksFor : against).add(FaultText.say("report.evidence",
                        test.question().replaceFirst("\\?$", ""), test.outcome(e.finding().outcome()).inWords(),
                        FaultText.say("report." + (e.bits() > 0 ? "for." : "against.") + w)));
            });
        }
        return new SuspectLine(r.suspect().id(), r.suspect().inWords(), r.probability(), List.copyOf(speaksFor),
                List.copyOf(against));
    }

    private static Optional<NextStep> next(Diagnosis d, FaultTables tables) {
        return d.nextTests().stream().findFirst().map(n -> {
            FaultTables.TestRow row = tables.test(n.test().id());
            return new NextStep(row.id(), FaultText.say("report.next", row.question(), row.minutes()),
                    n.byPractice() ? FaultText.say("report.next-practice")
                            : FaultText.say("report.next-information", n.bits()),
                    row.minutes(), cautions(row));
        });
    }

    /** What to mind before a test, its own cautions first. */
    public static List<String> cautions(FaultTables.TestRow row) {
        Set<String> cautions = new LinkedHashSet<>(row.cautions());
        for (Hazardous h : row.hazards()) {
            cautions.addAll(Cautions.requiredFor(h));
        }
        return List.copyOf(cautions);
    }

    /** How heavily a finding weighs, by its weight of evidence in bits: a factor of 8, of 2.8, of 1.4. */
    private enum Weight {
        STRONG(3), PLAIN(1.5), SLIGHT(0.5);

        private final double bits;

        Weight(double bits) {
            this.bits = bits;
        }

        static Optional<String> of(double bits) {
            for (Weight w : values()) {
                if (Math.abs(bits) >= w.bits) {
                    return Optional.of(w.name().toLowerCase(java.util.Locale.ROOT));
                }
            }
            return Optional.empty();
        }
    }
}
