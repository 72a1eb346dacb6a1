package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.copy.QuoteCopyCheck;
import org.copperbook.sheets.copy.QuoteCopyCheck.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuoteCopyCheckTest {

    @TempDir
    Path folder;

    private final Quote first = SampleQuote.rich("en");

    private static Quote with(Quote q, String terms, Quote.Approval approval) {
        return new Quote(q.schema(), q.revision(), q.date(), q.validUntil(), q.currency(), q.rounding(), q.language(),
                q.alternatives(), q.taxes(), terms, q.exclusions(), approval, q.more());
    }

    private QuoteCopy written(Job job, Quote quote) throws Exception {
        Path file = folder.resolve("quote.xlsx");
        Files.deleteIfExists(file);
        new QuoteWorkbook().write(job, quote, SampleShop.shop(), file);
        return QuoteCopy.read(file).orElseThrow();
    }

    @Test
    void aWorkbookIsKnownByTheRevisionThatItWasWrittenFrom() throws Exception {
        Job job = SampleQuote.job(first);
        QuoteCopy copy = written(job, first);
        assertEquals("1", copy.quote());
        assertEquals(QuoteSeal.of(job.number(), first), copy.fingerprint());
        assertEquals(Result.GENUINE, QuoteCopyCheck.of(job, SampleShop.shop(), List.of(first), copy).result());
        Quote revised = with(first, "other terms", null);
        Job later = job.with(PartKey.quote(1), revised);
        QuoteCopyCheck old = QuoteCopyCheck.of(later, SampleShop.shop(), List.of(revised, first), copy);
        assertEquals(Result.SUPERSEDED, old.result(), old.differences().toString());
        assertEquals(Result.UNKNOWN, QuoteCopyCheck.of(later, SampleShop.shop(), List.of(revised), copy).result());
    }

    @Test
    void theAnswerChangesNoOffer() throws Exception {
        Quote answered = with(first, first.terms(), new Quote.Approval(true, "Full rewind", "station foreman", "order",
                Instant.parse("2026-03-10T09:00:00Z"), new BigDecimal("3500"), null, Map.of()));
        Job job = SampleQuote.job(answered);
        assertEquals(QuoteSeal.of(job.number(), first), QuoteSeal.of(job.number(), answered));
        assertNotEquals(QuoteSeal.of("2026-0043", first), QuoteSeal.of(job.number(), first), "another job is another offer");
        QuoteCopy sent = written(SampleQuote.job(first), first);
        assertEquals(Result.GENUINE, QuoteCopyCheck.of(job, SampleShop.shop(), List.of(answered, first), sent).result());
    }

    @Test
    void aChangedCellIsNamedAlsoWhereTheMarksAreGenuine() throws Exception {
        Job job = SampleQuote.job(first);
        QuoteCopy copy = written(job, first);
        String place = copy.cells().entrySet().stream().filter(e -> e.getValue().contains("Strip down")).findFirst()
                .orElseThrow().getKey();
        Map<String, String> cells = new java.util.TreeMap<>(copy.cells());
        cells.put(place, "something else");
        QuoteCopyCheck check = QuoteCopyCheck.of(job, SampleShop.shop(), List.of(first),
                new QuoteCopy(copy.job(), copy.quote(), copy.fingerprint(), false, cells));
        assertEquals(Result.DIFFERS, check.result());
        assertEquals(List.of(place), List.copyOf(check.differences().keySet()));
        assertTrue(check.differences().get(place).here().contains("Strip down"));
    }
}
