package org.copperbook.batch;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.jobs.faults.FaultReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints where the fault of a job may lie, with the evidence, and the next test with its cautions. */
@Command(name = "find-fault", mixinStandardHelpOptions = true)
final class FindFaultCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    FindFaultCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Judged judged = common.withStore(context, store -> Judged.of(store, number));
        FaultReport report = FaultReport.of(judged.job(), judged.shop(), judged.verdicts());
        if (common.json()) {
            CommonOptions.print(context, document(judged.job().number(), report));
            return ExitCode.DONE;
        }
        report.notes().forEach(n -> context.err().println(OneLine.of(n)));
        report.taken().forEach(t -> say(t.from().isEmpty() ? BatchText.of("fault.taken", t.inWords())
                : BatchText.of("fault.taken-from", t.inWords(), t.from())));
        int n = 1;
        for (FaultReport.SuspectLine s : report.suspects()) {
            say(BatchText.of("fault.line", Integer.toString(n++), s.inWords(),
                    String.format(Locale.ROOT, "%.1f", 100 * s.probability())));
            s.speaksFor().forEach(e -> under("+ " + e));
            s.speaksAgainst().forEach(e -> under("- " + e));
        }
        if (!report.practice().isEmpty()) {
            say(BatchText.of("fault.practice", report.practice()));
        }
        if (!report.verdict().isEmpty()) {
            say(report.verdict());
        }
        report.next().ifPresentOrElse(this::next, () -> say(BatchText.of("fault.exhausted")));
        say(BatchText.of("fault.origin", report.origin()));
        return ExitCode.DONE;
    }

    private static Map<String, Object> document(String number, FaultReport report) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("number", number);
        document.put("origin", report.origin());
        document.put("notes", report.notes());
        document.put("taken", report.taken());
        document.put("suspects", report.suspects());
        document.put("practice", report.practice());
        document.put("verdict", report.verdict());
        report.next().ifPresent(n -> document.put("next", n));
        return document;
    }

    private void next(FaultReport.NextStep next) {
        say(BatchText.of("fault.next", next.question(), next.why()));
        next.cautions().forEach(c -> under("! " + c));
    }

    private void under(String line) {
        context.out().println("    " + OneLine.of(line));
    }

    private void say(String line) {
        context.out().println(OneLine.of(line));
    }
}
