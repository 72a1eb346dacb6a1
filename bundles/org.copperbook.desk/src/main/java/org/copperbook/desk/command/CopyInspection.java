package org.copperbook.desk.command;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.shell.Judge;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.CopyCheck;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.copy.Alterations;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.copy.QuoteCopyCheck;
import org.copperbook.sheets.copy.RecordCopy;
import org.copperbook.sheets.copy.UnreadableCopy;
import org.copperbook.store.JobStore;
import org.copperbook.store.QuoteRevisions;

/**
 * What holding a record or quote workbook against the store has shown.
 *
 * @param genuine whether it says what was written and the release stands
 * @param words   the answer, with the altered places below it
 */
record CopyInspection(boolean genuine, String words) {

    private static final int SHOWN = 8;

    /** Inspects a file. Not for the window's thread. */
    static CopyInspection of(JobStore store, Path file) {
        Optional<QuoteCopy> quote = QuoteCopy.read(file);
        if (quote.isPresent()) {
            return ofQuote(store, quote.get());
        }
        RecordCopy copy;
        try {
            copy = RecordCopy.read(file);
        } catch (UnreadableCopy e) {
            return new CopyInspection(false, e.getMessage());
        }
        Optional<String> id = store.idOf(copy.marks().job());
        if (id.isEmpty()) {
            return new CopyInspection(false, DeskWords.text("copy.noJob", copy.marks().job()));
        }
        Job job = store.load(id.get());
        Shop shop = store.shop();
        CopyCheck check = CopyCheck.of(job, shop, copy.marks().fingerprint(), copy.digest());
        String words = check.words();
        if (check.result() == CopyCheck.Result.ALTERED) {
            Judgement now = Judge.of(job, shop);
            words += altered(Alterations.of(new JobRecordWorkbook().since(store.earlierOf(job).orElse(null)), job,
                    now.verdicts(), now.holdPoints(), shop, copy));
        }
        return new CopyInspection(check.result() == CopyCheck.Result.GENUINE, words);
    }

    private static CopyInspection ofQuote(JobStore store, QuoteCopy copy) {
        Optional<String> id = store.idOf(copy.job());
        if (id.isEmpty()) {
            return new CopyInspection(false, DeskWords.text("copy.noJob", copy.job()));
        }
        QuoteCopyCheck check = QuoteCopyCheck.of(store.load(id.get()), store.shop(), QuoteRevisions.of(store, id.get(), copy.quote()),
                copy);
        return new CopyInspection(check.result() == QuoteCopyCheck.Result.GENUINE,
                check.words() + altered(check.differences()));
    }

    private static String altered(Map<String, RecordCopy.Difference> places) {
        String lines = places.entrySet().stream().limit(SHOWN).map(p -> "\n\n" + DeskWords.text("copy.place", p.getKey(),
                p.getValue().here(), p.getValue().there())).collect(Collectors.joining());
        return lines + (places.size() <= SHOWN ? "" : "\n\n" + DeskWords.text("copy.more", places.size() - SHOWN));
    }
}
