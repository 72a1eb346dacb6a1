package org.copperbook.batch;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.jobs.report.MonthWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints a month in figures. */
@Command(name = "month-report", mixinStandardHelpOptions = true)
final class MonthReportCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "YYYY-MM", descriptionKey = "month-report.month")
    private String month;

    MonthReportCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        YearMonth wanted = wanted();
        MonthReport report = common.withStore(context, s -> s.monthReport(wanted));
        if (common.json()) {
            CommonOptions.print(context, report);
            return ExitCode.DONE;
        }
        TextTable table = new TextTable(wanted.toString(), BatchText.of("head.of"), BatchText.of("head.count"),
                BatchText.of("head.amount"));
        for (Kind kind : Kind.values()) {
            String words = MonthWords.of(kind);
            if (report.lines().stream().noneMatch(l -> l.kind() == kind)) {
                table.row(words, "", 0, "");
            }
            report.lines().stream().filter(l -> l.kind() == kind).forEach(l -> table.row(words, l.what(), l.count(),
                    kind.adds() ? l.amount().toPlainString() : ""));
        }
        table.print(context.out());
        return ExitCode.DONE;
    }

    private YearMonth wanted() {
        try {
            return YearMonth.parse(month);
        } catch (DateTimeException e) {
            throw new BadUse(BatchText.of("month.bad", month));
        }
    }
}
