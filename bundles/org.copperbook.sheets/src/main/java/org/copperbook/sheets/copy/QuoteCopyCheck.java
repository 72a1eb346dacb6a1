package org.copperbook.sheets.copy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.page.Words;

/**
 * What holding a quote workbook against the stored revisions of its quote has shown. The revision that it carries the
 * fingerprint of is written anew and compared cell by cell. What the summary tells of the job (customer, plate, spend
 * limit) is compared as it stands now and may have changed since; the places are named, so that people see which it is.
 *
 * @param result      the answer
 * @param words       the same in words
 * @param differences places at which the file says something else
 */
public record QuoteCopyCheck(Result result, String words, Map<String, RecordCopy.Difference> differences) {

    /** Possible answers. */
    public enum Result {
        /** It says what the store's newest revision says. */
        GENUINE,
        /** It says what an earlier revision says; the offer was revised since. */
        SUPERSEDED,
        /** It carries the fingerprint of a stored revision and says something else. */
        DIFFERS,
        /** It was made from a template and carries the fingerprint of a stored revision; its cells cannot be compared. */
        MARKED,
        /** No stored revision has its fingerprint. */
        UNKNOWN
    }

    /**
     * Holds a file against the store.
     *
     * @param job       the job that the file names
     * @param revisions every revision of the quote that it names, the newest first
     */
    public static QuoteCopyCheck of(Job job, Shop shop, List<Quote> revisions, QuoteCopy copy) {
        List<Quote> same = revisions.stream().filter(q -> QuoteSeal.of(job.number(), q).equals(copy.fingerprint())).toList();
        if (same.isEmpty()) {
            return told(Result.UNKNOWN, job, null, copy, Map.of());
        }
        boolean newest = QuoteSeal.of(job.number(), revisions.get(0)).equals(copy.fingerprint());
        if (copy.template()) {
            return told(Result.MARKED, job, same.get(0), copy, Map.of());
        }
        PartKey key = new PartKey(PartKind.QUOTE, copy.quote());
        Map<String, RecordCopy.Difference> fewest = null;
        for (Quote revision : same) {
            for (QuoteWorkbook.Copy kind : QuoteWorkbook.Copy.values()) {
                Optional<QuoteCopy> fresh = written(job.with(key, revision), revision, shop, kind);
                Map<String, RecordCopy.Difference> found = fresh
                        .map(f -> CopyContents.differences(f.cells(), copy.cells())).orElse(null);
                if (found != null && found.isEmpty()) {
                    return told(newest ? Result.GENUINE : Result.SUPERSEDED, job, revision, copy, Map.of());
                }
                if (found != null && (fewest == null || found.size() < fewest.size())) {
                    fewest = found;
                }
            }
        }
        return told(Result.DIFFERS, job, same.get(0), copy, fewest == null ? Map.of() : fewest);
    }

    private static QuoteCopyCheck told(Result result, Job job, Quote revision, QuoteCopy copy,
            Map<String, RecordCopy.Difference> differences) {
        Words words = new Words(QuoteWorkbook.class, "quote", Locale.ENGLISH);
        return new QuoteCopyCheck(result, words.get("copy." + result, job.number(), copy.quote(),
                revision == null ? "" : Integer.toString(revision.revision()), Seal.shown(copy.fingerprint())), differences);
    }

    private static Optional<QuoteCopy> written(Job job, Quote revision, Shop shop, QuoteWorkbook.Copy kind) {
        try {
            Path fresh = Files.createTempFile("quote", ".xlsx");
            try {
                new QuoteWorkbook().write(job, revision, shop, kind, fresh);
                return QuoteCopy.read(fresh);
            } finally {
                Files.deleteIfExists(fresh);
            }
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
