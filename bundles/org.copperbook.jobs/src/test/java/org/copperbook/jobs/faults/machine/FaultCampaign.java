package org.copperbook.jobs.faults.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.copperbook.calc.faults.Diagnosis;
import org.copperbook.calc.faults.FaultFinder;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.FaultTest;
import org.copperbook.calc.faults.Finding;

/** Every single fault many times over: the finder chooses its tests, and the same finder follows the fixed order. */
public final class FaultCampaign {

    private final FaultKnowledge knowledge;
    private final FaultFinder finder;
    private final PublishedMachines published = new PublishedMachines();
    private final Map<String, Row> rows = new TreeMap<>();
    private final Row all = new Row();

    public FaultCampaign(FaultKnowledge knowledge) {
        this.knowledge = knowledge;
        finder = new FaultFinder(knowledge);
    }

    /** What came out for one suspect. */
    public static final class Row {
        private int machines;
        private int first;
        private int firstFixed;
        private long tests;
        private long testsFixed;
        private double minutes;
        private double minutesFixed;

        public double firstShare() {
            return first / (double) machines;
        }

        public double fixedShare() {
            return firstFixed / (double) machines;
        }

        public double meanTests() {
            return tests / (double) machines;
        }

        public double meanFixed() {
            return testsFixed / (double) machines;
        }

        private void add(String truth, End chosen, End fixed) {
            machines++;
            first += chosen.suspect.equals(truth) ? 1 : 0;
            firstFixed += fixed.suspect.equals(truth) ? 1 : 0;
            tests += chosen.tests;
            testsFixed += fixed.tests;
            minutes += chosen.minutes;
            minutesFixed += fixed.minutes;
        }

        private String line(String name) {
            return String.format(Locale.ROOT, "| %s | %d | %.1f | %.1f | %.2f | %.2f | %.0f | %.0f |", name, machines,
                    100 * firstShare(), 100 * fixedShare(), meanTests(), meanFixed(), minutes / machines,
                    minutesFixed / machines);
        }
    }

    private record End(String suspect, int tests, double minutes) {
    }

    /** Simulates each fault the number of times given; each suspect counts by its kinds of fault. */
    public FaultCampaign run(int each, long seed) {
        Random r = new Random(seed);
        for (Alternator.Fault fault : Alternator.Fault.values()) {
            int made = 0;
            for (int tries = 0; made < each && tries < 200 * each; tries++) {
                Alternator machine = new Alternator(fault, published, r);
                String complaint = new Bench(machine, r).complaint().orElse(null);
                if (complaint != null) {
                    made++;
                    long noise = r.nextLong();
                    String told = r.nextDouble() < 0.05 ? any(r) : complaint;
                    End chosen = chosen(told, new Bench(machine, new Random(noise)));
                    End fixed = fixed(told, new Bench(machine, new Random(noise)));
                    rows.computeIfAbsent(fault.suspect, s -> new Row()).add(fault.suspect, chosen, fixed);
                    all.add(fault.suspect, chosen, fixed);
                }
            }
        }
        return this;
    }

    private String any(Random r) {
        List<FaultTest.Outcome> told = knowledge.test("complaint").outcomes();
        return told.get(r.nextInt(told.size())).id();
    }

    private End chosen(String complaint, Bench bench) {
        List<Finding> findings = new ArrayList<>(List.of(new Finding("complaint", complaint)));
        double minutes = 0;
        Diagnosis d = finder.diagnose(findings);
        while (!d.settled() && !d.nextTests().isEmpty()) {
            FaultTest next = d.nextTests().get(0).test();
            findings.add(new Finding(next.id(), bench.make(next.id())));
            minutes += next.minutes();
            d = finder.diagnose(findings);
        }
        return new End(d.first().suspect().id(), findings.size() - 1, minutes);
    }

    private End fixed(String complaint, Bench bench) {
        List<Finding> findings = new ArrayList<>(List.of(new Finding("complaint", complaint)));
        double minutes = 0;
        Diagnosis d = finder.diagnose(findings);
        for (FaultTest test : knowledge.tests()) {
            if (d.settled()) {
                break;
            }
            if (!test.several()) {
                findings.add(new Finding(test.id(), bench.make(test.id())));
                minutes += test.minutes();
                d = finder.diagnose(findings);
            }
        }
        return new End(d.first().suspect().id(), findings.size() - 1, minutes);
    }

    public Row all() {
        return all;
    }

    public Map<String, Row> bySuspect() {
        return Map.copyOf(rows);
    }

    /** The table as it is published. */
    public String table() {
        StringBuilder b = new StringBuilder("| true fault | machines | first, % | first in fixed order, % | tests"
                + " | tests in fixed order | min | min in fixed order |\n|---|---|---|---|---|---|---|---|\n");
        rows.forEach((s, row) -> b.append(row.line(s)).append('\n'));
        return b.append(all.line("all")).append('\n').toString();
    }
}
