package org.copperbook.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.sheets.DeliveryNoteWorkbook;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.copy.RecordCopy;
import org.copperbook.sheets.copy.UnreadableCopy;
import org.copperbook.sheets.template.QuoteTemplate;
import org.copperbook.sheets.template.UnusableTemplate;
import org.copperbook.store.JobStore;
import org.copperbook.store.KeptTemplate;
import org.copperbook.store.Saved;

/** Writes the workbooks of jobs into a folder. */
final class JobWorkbooks {

    /** Who writes what this application adds by itself. */
    private static final String WHO = "batch";

    private final JobStore store;
    private final Path folder;
    private final Path template;

    JobWorkbooks(JobStore store, Path folder) {
        this(store, folder, null);
    }

    /** @param template the workbook for quotes in place of the one that the store keeps; null for the store's */
    JobWorkbooks(JobStore store, Path folder, Path template) {
        this.template = template;
        this.store = store;
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Writes the job record and every quote of a job, each whole or not at all, and names the files. */
    List<Path> write(Judged judged) {
        makeFolder();
        List<Path> written = new ArrayList<>();
        String name = name(judged.job());
        try {
            Optional<QuoteTemplate> own = template();
            for (PartKey key : judged.job().keys(PartKind.QUOTE)) {
                Quote quote = (Quote) judged.job().part(key).orElseThrow();
                Path file = folder.resolve(name + "-quote-" + key.name() + ".xlsx");
                if (own.isPresent()) {
                    own.get().write(judged.job(), quote, judged.shop(), file);
                } else {
                    new QuoteWorkbook().write(judged.job(), quote, judged.shop(), file);
                }
                written.add(file);
            }
            Path file = folder.resolve(name + "-record.xlsx");
            new JobRecordWorkbook().since(store.earlierOf(judged.job()).orElse(null)).write(judged.job(), judged.verdicts(), judged.points(), judged.shop(), file);
            written.add(file);
            if (judged.released()) {
                issued(judged.job(), file);
            }
        } catch (WorkbookNotWrittenException e) {
            throw new BadUse(BatchText.of("workbooks.not-written", judged.job().number(), e.getMessage()));
        }
        return written;
    }

    private Optional<QuoteTemplate> template() throws UnusableTemplate {
        return template != null ? Optional.of(QuoteTemplate.of(template))
                : KeptTemplate.of(store).map(t -> new QuoteTemplate(t.name(), t.bytes()));
    }

    /**
     * Writes the delivery note of a job, whole or not at all.
     *
     * @param language language of the note; null for the one written down, else the customer's
     */
    Path deliveryNote(Job job, Locale language) {
        HandBack back = DeliveryNoteWorkbook.of(job);
        if (!DeliveryNoteWorkbook.isReady(back)) {
            throw new BadUse(BatchText.of("delivery-note.nothing-back", job.number()));
        }
        makeFolder();
        Path file = folder.resolve(name(job) + "-delivery-note.xlsx");
        try {
            new DeliveryNoteWorkbook().write(job, back, store.shop(), language != null ? language
                    : DeliveryNoteWorkbook.language(back, store.customerOf(job)), file);
        } catch (WorkbookNotWrittenException e) {
            throw new BadUse(BatchText.of("workbooks.not-written", job.number(), e.getMessage()));
        }
        return file;
    }

    private static String name(Job job) {
        return job.number().replaceAll("[^\\p{L}\\p{N}.-]", "_");
    }

    /** Keeps in the store what the release workbook says, so that it can be told from an altered one. */
    private void issued(Job job, Path file) {
        PartKey key = PartKey.of(PartKind.ISSUED_COPIES);
        try {
            RecordCopy.read(file).addedTo(job, file.getFileName().toString(), Instant.now().truncatedTo(ChronoUnit.SECONDS))
                    .ifPresent(copies -> store.save(job.id(), key, copies,
                            store.current(job.id(), key).map(Saved::number).orElse(0), WHO, BatchText.of("copy.why")));
        } catch (UnreadableCopy e) {
            throw new BadUse(BatchText.of("workbooks.not-written", job.number(), e.getMessage()));
        }
    }

    private void makeFolder() {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new BadUse(BatchText.of("out.no-folder", folder));
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new BadUse(BatchText.of("out.not-written", folder, e.getMessage()));
        }
    }
}
