package org.copperbook.jobs.faults;

import java.util.List;
import org.copperbook.calc.faults.FaultKnowledge;
import org.copperbook.calc.faults.FaultTest;
import org.copperbook.calc.faults.Finding;
import org.copperbook.calc.faults.PracticeRow;
import org.copperbook.calc.faults.Suspect;
import org.copperbook.jobs.faults.FaultTables.SuspectRow;
import org.copperbook.jobs.faults.FaultTables.TableRow;
import org.copperbook.jobs.faults.FaultTables.TestRow;

/** Turns checked tables into what the finder computes with. */
final class FaultTablesReading {

    private FaultTablesReading() {
    }

    static FaultKnowledge knowledge(FaultTables t) {
        List<String> ids = t.suspects().stream().map(SuspectRow::id).toList();
        return new FaultKnowledge(
                t.suspects().stream().map(s -> new Suspect(s.id(), s.share(), s.inWords())).toList(),
                t.tests().stream().map(row -> test(row, ids)).toList(),
                t.practice().stream().map(FaultTablesReading::row).toList(), t.settledAt());
    }

    private static FaultTest test(TestRow row, List<String> suspects) {
        return new FaultTest(row.id(), row.minutes(), row.question(), Boolean.TRUE.equals(row.several()),
                row.outcomes().stream().map(o -> new FaultTest.Outcome(o.id(), o.inWords(),
                        suspects.stream().map(o.likelihoods()::get).toList())).toList());
    }

    private static PracticeRow row(TableRow r) {
        return new PracticeRow(new Finding(r.test(), r.outcome()),
                r.unless().stream().map(FaultTablesReading::finding).toList(), r.says(), r.sound(), r.suspects(),
                r.checks(), Boolean.TRUE.equals(r.inOrder()));
    }

    static Finding finding(String text) {
        int at = text.indexOf('=');
        return at < 0 ? new Finding(text.strip(), "")
                : new Finding(text.substring(0, at).strip(), text.substring(at + 1).strip());
    }
}
