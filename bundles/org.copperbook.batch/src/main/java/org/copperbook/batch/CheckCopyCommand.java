package org.copperbook.batch;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.copperbook.jobs.check.CopyCheck;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.copy.Alterations;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.copy.QuoteCopyCheck;
import org.copperbook.sheets.copy.RecordCopy;
import org.copperbook.sheets.copy.UnreadableCopy;
import org.copperbook.store.JobStore;
import org.copperbook.store.QuoteRevisions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells whether a release or quote workbook still says what was written, from the file alone. */
@Command(name = "check-copy", mixinStandardHelpOptions = true)
final class CheckCopyCommand implements Callable<Integer> {

    private static final int SHOWN = 20;

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", descriptionKey = "check-copy.file")
    private Path file;

    CheckCopyCommand(BatchContext context) {
        this.context = context;
    }

    /**
     * What was found.
     *
     * @param check       the answer
     * @param differences places that were altered; empty when genuine, or when the record cannot be written as it was
     */
    private record Found(CopyCheck check, Map<String, RecordCopy.Difference> differences) {
    }

    private int quote(QuoteCopy copy) {
        QuoteCopyCheck check = common.withStore(context, store -> {
            String id = CommonOptions.jobId(store, copy.job());
            return QuoteCopyCheck.of(store.load(id), store.shop(), QuoteRevisions.of(store, id, copy.quote()), copy);
        });
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("job", copy.job());
            document.put("quote", copy.quote());
            document.put("fingerprint", copy.fingerprint());
            document.put("result", check.result());
            document.put("words", check.words());
            document.put("differences", check.differences());
            CommonOptions.print(context, document);
        } else {
            context.out().println(OneLine.of(check.words()));
            print(check.differences());
        }
        return check.result() == QuoteCopyCheck.Result.GENUINE ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }

    @Override
    public Integer call() {
        Optional<QuoteCopy> quote = QuoteCopy.read(file.toAbsolutePath().normalize());
        if (quote.isPresent()) {
            return quote(quote.get());
        }
        RecordCopy copy;
        try {
            copy = RecordCopy.read(file.toAbsolutePath().normalize());
        } catch (UnreadableCopy e) {
            throw new BadUse(e.getMessage());
        }
        Found found = common.withStore(context, store -> find(store, copy));
        print(copy, found);
        return found.check().result() == CopyCheck.Result.GENUINE ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }

    private static Found find(JobStore store, RecordCopy copy) {
        Judged judged = Judged.of(store, copy.marks().job());
        CopyCheck check = CopyCheck.of(judged.job(), judged.shop(), copy.marks().fingerprint(), copy.digest());
        return new Found(check, check.result() == CopyCheck.Result.ALTERED ? Alterations.of(
                new JobRecordWorkbook().since(store.earlierOf(judged.job()).orElse(null)), judged.job(), judged.verdicts(), judged.points(), judged.shop(), copy) : Map.of());
    }

    private void print(RecordCopy copy, Found found) {
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("job", copy.marks().job());
            document.put("fingerprint", copy.marks().fingerprint());
            document.put("digest", copy.digest());
            document.put("result", found.check().result());
            document.put("words", found.check().words());
            document.put("differences", found.differences());
            CommonOptions.print(context, document);
            return;
        }
        context.out().println(OneLine.of(found.check().words()));
        print(found.differences());
    }

    private void print(Map<String, RecordCopy.Difference> differences) {
        differences.entrySet().stream().limit(SHOWN).forEach(d -> context.out().println("  "
                + OneLine.of(BatchText.of("check-copy.difference", d.getKey(), d.getValue().here(), d.getValue().there()))));
        if (differences.size() > SHOWN) {
            context.out().println("  " + BatchText.of("check-copy.more", differences.size() - SHOWN));
        }
    }
}
