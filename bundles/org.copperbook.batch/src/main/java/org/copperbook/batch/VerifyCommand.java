package org.copperbook.batch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobStore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Audits the store: whether every revision still is what was saved. */
@Command(name = "verify", mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    VerifyCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        AuditReport report = common.withStore(context, JobStore::audit);
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("passed", report.passed());
            document.put("file", common.place(context).toString());
            document.put("jobs", report.jobs());
            document.put("revisions", report.revisions());
            report.bad().ifPresent(b -> document.put("bad", b));
            document.put("problems", report.problems());
            document.put("notes", report.notes());
            CommonOptions.print(context, document);
        } else {
            report.bad().ifPresent(b -> context.out().println(OneLine.of(BatchText.of("verify.bad-link", b.message()))));
            report.problems().forEach(p -> context.out().println(OneLine.of(BatchText.of("verify.problem", p))));
            report.notes().forEach(n -> context.out().println(OneLine.of(BatchText.of("verify.note", n))));
            context.out().println(BatchText.of(report.passed() ? "verify.passed" : "verify.failed",
                    common.place(context), report.jobs(), report.revisions()));
        }
        return report.passed() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }
}
