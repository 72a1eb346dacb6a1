package org.copperbook.jobs.faults;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.Finding;
import org.copperbook.jobs.faults.FaultTables.OutcomeRow;
import org.copperbook.jobs.faults.FaultTables.SuspectRow;
import org.copperbook.jobs.faults.FaultTables.TableRow;
import org.copperbook.jobs.faults.FaultTables.TestRow;

/** Looks a workshop's tables through, and says every slip with its place. */
final class FaultTablesCheck {

    private final FaultTables tables;
    private final Map<String, Set<String>> outcomes;
    private final Set<String> suspects;
    private final List<String> problems = new ArrayList<>();

    private FaultTablesCheck(FaultTables tables) {
        this.tables = tables;
        suspects = tables.suspects().stream().map(s -> text(s.id())).collect(Collectors.toSet());
        outcomes = tables.tests().stream().collect(Collectors.toMap(t -> text(t.id()),
                t -> t.outcomes().stream().map(o -> text(o.id())).collect(Collectors.toSet()), (a, b) -> a));
    }

    static List<String> problems(FaultTables tables) {
        FaultTablesCheck check = new FaultTablesCheck(tables);
        check.head();
        check.suspects();
        check.tests();
        tables.practice().forEach(check::practice);
        return List.copyOf(check.problems);
    }

    private static String text(String s) {
        return s == null ? "" : s;
    }

    private void head() {
        if (text(tables.origin()).isBlank()) {
            say("origin");
        }
        if (tables.settledAt() == null || tables.settledAt() <= 0.5 || tables.settledAt() > 1) {
            say("settled", String.valueOf(tables.settledAt()));
        }
        if (tables.suspects().isEmpty() || tables.tests().isEmpty()) {
            say("empty");
        }
    }

    private void suspects() {
        Set<String> seen = new HashSet<>();
        double sum = 0;
        for (SuspectRow s : tables.suspects()) {
            if (text(s.id()).isBlank() || text(s.inWords()).isBlank()) {
                say("suspect-unnamed", text(s.id()));
            } else if (!seen.add(s.id())) {
                say("suspect-twice", s.id());
            }
            if (s.share() == null || s.share() <= 0 || s.share() >= 1) {
                say("share", text(s.id()), String.valueOf(s.share()));
            } else {
                sum += s.share();
            }
        }
        if (!tables.suspects().isEmpty() && Math.abs(sum - 1) > FaultKnowledge.ROUNDING) {
            say("shares", figure(sum));
        }
    }

    private void tests() {
        Set<String> seen = new HashSet<>();
        for (TestRow t : tables.tests()) {
            if (text(t.id()).isBlank() || text(t.question()).isBlank()) {
                say("test-unnamed", text(t.id()));
            } else if (!seen.add(t.id())) {
                say("test-twice", t.id());
            }
            if (t.minutes() == null || t.minutes() <= 0) {
                say("minutes", text(t.id()), String.valueOf(t.minutes()));
            }
            if (t.outcomes().size() < 2) {
                say("outcomes-few", text(t.id()));
            } else {
                outcomes(t);
            }
        }
    }

    private void outcomes(TestRow t) {
        Set<String> seen = new HashSet<>();
        boolean whole = true;
        for (OutcomeRow o : t.outcomes()) {
            if (text(o.id()).isBlank() || text(o.inWords()).isBlank()) {
                say("outcome-unnamed", t.id(), text(o.id()));
            } else if (!seen.add(o.id())) {
                say("outcome-twice", t.id(), o.id());
            }
            Set<String> unknown = new TreeSet<>(o.likelihoods().keySet());
            unknown.removeAll(suspects);
            unknown.forEach(u -> say("likelihood-unknown", t.id(), text(o.id()), u));
            for (String s : new TreeSet<>(suspects)) {
                Double p = o.likelihoods().get(s);
                if (p == null) {
                    say("likelihood-missing", t.id(), text(o.id()), s);
                    whole = false;
                } else if (!(p >= 0 && p <= 1)) {
                    say("likelihood-range", t.id(), text(o.id()), s, String.valueOf(p));
                    whole = false;
                }
            }
        }
        if (whole) {
            sums(t);
        }
    }

    private void sums(TestRow t) {
        for (String s : new TreeSet<>(suspects)) {
            double sum = t.outcomes().stream().mapToDouble(o -> o.likelihoods().get(s)).sum();
            if (Math.abs(sum - 1) > FaultKnowledge.ROUNDING) {
                say("likelihood-sum", t.id(), s, figure(sum));
            }
        }
    }

    private void practice(TableRow r) {
        known(new Finding(text(r.test()), text(r.outcome())));
        r.unless().forEach(u -> known(FaultTablesReading.finding(u)));
        if (text(r.says()).isBlank()) {
            say("practice-silent", text(r.test()), text(r.outcome()));
        }
        List<String> named = new ArrayList<>(r.sound());
        named.addAll(r.suspects());
        named.stream().filter(s -> !suspects.contains(s))
                .forEach(s -> say("practice-suspect", text(r.test()), text(r.outcome()), s));
        r.checks().stream().filter(c -> !outcomes.containsKey(c))
                .forEach(c -> say("practice-check", text(r.test()), text(r.outcome()), c));
    }

    private void known(Finding f) {
        if (!outcomes.getOrDefault(f.test(), Set.of()).contains(f.outcome())) {
            say("practice-finding", f.test(), f.outcome());
        }
    }

    private static String figure(double x) {
        return Double.toString(Math.rint(x * 1e6) / 1e6);
    }

    private void say(String key, Object... args) {
        problems.add(FaultText.say("fault-tables." + key, args));
    }
}
