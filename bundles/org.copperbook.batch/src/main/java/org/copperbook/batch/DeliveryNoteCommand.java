package org.copperbook.batch;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.sheets.ShippedLanguages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the delivery note of a job. */
@Command(name = "delivery-note", mixinStandardHelpOptions = true)
final class DeliveryNoteCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "", descriptionKey = "workbooks.out")
    private Path out;

    @Option(names = "--language", paramLabel = "TAG", descriptionKey = "delivery-note.language")
    private String language;

    DeliveryNoteCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Locale wanted = language == null ? null : Locale.forLanguageTag(language);
        if (wanted != null && !ShippedLanguages.has(wanted)) {
            throw new BadUse(BatchText.of("delivery-note.unknown-language", language));
        }
        String written = common.withStore(context, store -> new JobWorkbooks(store, out)
                .deliveryNote(store.load(CommonOptions.jobId(store, number)), wanted).toString());
        if (common.json()) {
            CommonOptions.print(context, Map.of("number", number, "workbook", written));
        } else {
            context.out().println(written);
        }
        return ExitCode.DONE;
    }
}
