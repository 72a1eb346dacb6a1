package org.copperbook.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;

/** Writes the workbooks of jobs into a folder. */
final class JobWorkbooks {

    private final Path folder;

    JobWorkbooks(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Writes the job record and every quote of a job, each whole or not at all, and names the files. */
    List<Path> write(Judged judged) {
        makeFolder();
        List<Path> written = new ArrayList<>();
        String name = judged.job().number().replaceAll("[^\\p{L}\\p{N}.-]", "_");
        try {
            for (PartKey key : judged.job().keys(PartKind.QUOTE)) {
                Quote quote = (Quote) judged.job().part(key).orElseThrow();
                Path file = folder.resolve(name + "-quote-" + key.name() + ".xlsx");
                new QuoteWorkbook().write(judged.job(), quote, judged.shop(), file);
                written.add(file);
            }
            Path file = folder.resolve(name + "-record.xlsx");
            new JobRecordWorkbook().write(judged.job(), judged.verdicts(), judged.points(), judged.shop(), file);
            written.add(file);
        } catch (WorkbookNotWrittenException e) {
            throw new BadUse(BatchText.of("workbooks.not-written", judged.job().number(), e.getMessage()));
        }
        return written;
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
