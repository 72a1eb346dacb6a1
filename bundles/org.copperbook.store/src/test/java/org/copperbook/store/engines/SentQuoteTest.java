package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.store.JobHandle;
import org.copperbook.store.Sample;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreException.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Ways round the lock of an offer that the customer has, though nobody has a secret yet. */
@ParameterizedClass
@EnumSource(Engine.class)
class SentQuoteTest extends OnEachEngine {

    private static final PartKey QUOTE = PartKey.quote(1);
    private static final String AGREED = ",\"approval\":{\"agreed\":true,\"how\":\"by telephone\"}";

    private JobHandle job;

    @BeforeEach
    void aJob() {
        job = store.create(Sample.booking("Harbour Ice", "set"), "o");
    }

    private static Quote quote(int revision, String price, String more) {
        return Sample.part("quote/1", "{\"schema\":1,\"revision\":" + revision + ",\"alternatives\":[{\"name\":\"a\",\"lines\":"
                + "[{\"kind\":\"LABOUR\",\"text\":\"wind\",\"quantity\":10,\"unitPrice\":" + price + "}]}]" + more + "}", Quote.class);
    }

    private Quote sent(int revision, String price) {
        return quote(revision, price, ",\"sent\":{\"by\":\"o\",\"fingerprint\":\""
                + QuoteSeal.of(job.number(), quote(revision, price, "")) + "\"}");
    }

    private void save(Quote quote, int basedOn) {
        store.save(job.id(), QUOTE, quote, basedOn, "o", "");
    }

    private void refused(Quote quote, int basedOn) {
        StoreException e = assertThrows(StoreException.class, () -> save(quote, basedOn));
        assertEquals(Kind.NOT_ALLOWED, e.kind());
        assertTrue(e.getMessage().contains("revise the quote"), e.getMessage());
        assertEquals(basedOn, store.current(job.id(), QUOTE).orElseThrow().number(), "nothing was kept");
    }

    @Test
    void anotherOfferDoesNotTakeTheNumberOfOneThatWentOut() {
        save(sent(1, "55"), 0);
        save(quote(2, "60", ""), 1);
        refused(quote(1, "70", ""), 2);
        refused(sent(1, "70"), 2);
        refused(quote(1, "55", ""), 2);
        save(sent(1, "55"), 2);
        save(quote(3, "70", ""), 3);
    }

    @Test
    void theNumberOfAnOfferThatWentOutIsNotFreeAgainAfterAnOlderOneWasTakenBack() {
        save(sent(1, "55"), 0);
        save(sent(2, "60"), 1);
        save(quote(3, "70", ""), 2);
        save(sent(1, "55"), 3);
        refused(quote(2, "80", ""), 4);
        refused(sent(2, "80"), 4);
        save(quote(4, "80", ""), 4);
    }

    @Test
    void theNumberOfAnOfferThatWasAgreedToIsNotFreeAgain() {
        save(quote(1, "55", AGREED), 0);
        save(quote(2, "60", ""), 1);
        refused(quote(1, "70", ""), 2);
    }

    @Test
    void anOfferThatWasAgreedToWithoutBeingSentIsNotChanged() {
        save(quote(1, "55", AGREED), 0);
        refused(quote(1, "60", AGREED), 1);
        refused(quote(1, "60", ""), 1);
        save(quote(1, "55.00", ""), 1);
        save(quote(1, "55", AGREED), 2);
        save(quote(2, "60", ""), 3);
    }
}
