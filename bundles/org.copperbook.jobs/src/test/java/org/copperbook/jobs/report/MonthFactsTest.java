package org.copperbook.jobs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.junit.jupiter.api.Test;

class MonthFactsTest {

    private static final Instant CHANGED = Instant.parse("2026-12-05T08:00:00Z");
    private static final String QUOTE = "{\"schema\":1,\"revision\":1,\"date\":\"2026-09-30\",\"currency\":\"EUR\","
            + "\"alternatives\":[{\"name\":\"rewind\",\"lines\":[{\"kind\":\"LABOUR\",\"trade\":\"winder\","
            + "\"quantity\":7.5,\"unit\":\"h\",\"unitPrice\":40},{\"kind\":\"MATERIAL\",\"unitPrice\":100.25}]},"
            + "{\"name\":\"repair\",\"lines\":[{\"kind\":\"MATERIAL\",\"unitPrice\":50}]}]";
    private static final String SENT = ",\"sent\":{\"at\":\"2026-09-30T09:00:00Z\",\"by\":\"p06\"}";

    private static Job job(String... parts) throws Exception {
        Map<PartKey, Part> of = new TreeMap<>();
        for (int i = 0; i < parts.length; i += 2) {
            PartKey key = PartKey.parse(parts[i]);
            of.put(key, new PartJson().read(key, parts[i + 1]));
        }
        return new Job("id", "1", of);
    }

    private static List<MonthFact> facts(Job job) {
        return MonthFacts.of(job, CHANGED, ZoneOffset.UTC);
    }

    private static MonthFact fact(String month, Kind kind, String what, long thousandths) {
        return new MonthFact(YearMonth.parse(month), kind, what, thousandths);
    }

    private static String signed(String more) {
        return "{\"schema\":1,\"signatures\":[{\"point\":\"RELEASE\",\"by\":\"p1\",\"role\":\"FOREMAN\","
                + "\"at\":\"2026-11-02T08:00:00Z\"}]" + more + "}";
    }

    @Test
    void aJobReleasedAfterTheDayPromisedCountsInTheMonthsItBelongsTo() throws Exception {
        Job late = job("booking", "{\"schema\":1,\"bookedAt\":\"2026-09-30T22:30:00Z\",\"promised\":\"2026-10-20\","
                + "\"earlierJob\":\"2025-0007\"}", "sign-offs", signed(""));
        assertEquals(List.of(fact("2026-09", Kind.BOOKED, "", 0), fact("2026-09", Kind.RETURNED, "", 0),
                fact("2026-11", Kind.RELEASED, "", 0), fact("2026-11", Kind.LATE, "", 0)), facts(late));
        assertEquals(YearMonth.of(2026, 10), MonthFacts.of(late, CHANGED, ZoneId.of("Europe/Athens")).get(0).month(),
                "the workshop's clock decides the month");
    }

    @Test
    void hoursWorkedCountInTheMonthOfTheirDayByTrade() throws Exception {
        assertEquals(List.of(fact("2026-10", Kind.WORKED, "", 500), fact("2026-10", Kind.WORKED, "winder", 5_250),
                fact("2026-11", Kind.WORKED, "winder", -1_000)), facts(job("hours", "{\"schema\":1,\"entries\":["
                + "{\"trade\":\"winder\",\"date\":\"2026-10-30\",\"hours\":3},{\"trade\":\"winder \",\"date\":\"2026-10-31\",\"hours\":2.25},"
                + "{\"date\":\"2026-10-31\",\"hours\":0.5},{\"trade\":\"winder\",\"date\":\"2026-11-01\",\"hours\":-1},"
                + "{\"trade\":\"winder\",\"hours\":9},{\"trade\":\"winder\",\"date\":\"2026-11-01\"}]}")));
    }

    @Test
    void aReleaseTakenBackIsNone() throws Exception {
        Job open = job("booking", "{\"schema\":1,\"promised\":\"2026-10-20\"}", "sign-offs", signed(
                ",\"reopenings\":[{\"point\":\"RELEASE\",\"because\":\"x\",\"at\":\"2026-11-03T08:00:00Z\"}]"));
        assertEquals(List.of(fact("2026-10", Kind.OPEN, "", 0)), facts(open));
    }

    @Test
    void ofQuotesThatNobodyAgreedToOnlyTheNewestCountsAndWithItWhatWasAgreedTo() throws Exception {
        Job quoted = job("quote/2", QUOTE + "}", "quote/10", QUOTE + ",\"approval\":{\"agreed\":true,"
                + "\"alternative\":\"rewind\",\"at\":\"2026-10-01T08:00:00Z\"}}");
        // 7.5 h x 40 + 100.25 = 400.25
        assertEquals(List.of(fact("2026-09", Kind.QUOTED, "EUR", 400_250), fact("2026-10", Kind.APPROVED, "EUR", 400_250),
                fact("2026-10", Kind.HOURS, "winder", 7_500)), facts(quoted));
    }

    @Test
    void aQuoteDeclinedOrWithoutPricesAddsNothingAgreed() throws Exception {
        assertEquals(List.of(fact("2026-09", Kind.QUOTED, "EUR", 400_250)), facts(job("quote/1",
                QUOTE + ",\"approval\":{\"agreed\":false,\"at\":\"2026-10-01T08:00:00Z\"}}")));
        assertEquals(List.of(), facts(job("quote/1", QUOTE.replace("\"unitPrice\":40", "\"text\":\"later\"") + SENT + "}")));
    }

    @Test
    void aQuoteThatIsStillWrittenCountsNothingAndLeavesTheOneThatWentOut() throws Exception {
        assertEquals(List.of(), facts(job("quote/1", QUOTE + "}")));
        assertEquals(List.of(fact("2026-09", Kind.QUOTED, "EUR", 400_250)), facts(job("quote/1", QUOTE + SENT + "}")));
        assertEquals(List.of(fact("2026-09", Kind.QUOTED, "EUR", 400_250)), facts(job("quote/1", QUOTE + SENT + "}",
                "quote/2", QUOTE.replace("2026-09-30", "2026-10-12") + "}")));
    }

    @Test
    void failedTestsOfTheRunUpCountByTheirKind() throws Exception {
        assertEquals(List.of(fact("2026-10", Kind.FAILED, "withstand", 0), fact("2026-12", Kind.FAILED, "phase-sequence",
                0)), facts(job("run-up", "{\"schema\":1,\"sequenceRight\":false,\"withstands\":[{\"held\":true},"
                + "{\"held\":false,\"at\":\"2026-10-09T08:00:00Z\"}]}")));
    }

    @Test
    void aVoidJobAddsNothing() throws Exception {
        assertEquals(List.of(), facts(job("booking", "{\"schema\":1,\"bookedAt\":\"2026-09-30T08:00:00Z\"}", "standing",
                "{\"schema\":1,\"closure\":{\"how\":\"CANCELLED\",\"reason\":\"twice\"}}")));
    }
}
