package org.copperbook.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.AuditReport;
import org.copperbook.store.JobStore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes the archive of a whole workshop into a store in which nothing was saved yet. */
@Command(name = "take-in-archive", mixinStandardHelpOptions = true)
final class TakeInArchiveCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", descriptionKey = "take-in-archive.file")
    private Path file;

    TakeInArchiveCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        StorePlace target = common.place(context);
        if (!Files.isRegularFile(file)) {
            throw new BadUse(BatchText.of("file.missing", file));
        }
        AuditReport report;
        try (JobStore store = target.open(context)) {
            store.takeInArchive(file);
            report = store.audit();
        }
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("file", target.toString());
            document.put("jobs", report.jobs());
            document.put("revisions", report.revisions());
            document.put("passed", report.passed());
            CommonOptions.print(context, document);
        } else {
            report.problems().forEach(p -> context.out().println(OneLine.of(BatchText.of("verify.problem", p))));
            context.out().println(BatchText.of(report.passed() ? "verify.passed" : "verify.failed", target,
                    report.jobs(), report.revisions()));
        }
        return report.passed() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }
}
