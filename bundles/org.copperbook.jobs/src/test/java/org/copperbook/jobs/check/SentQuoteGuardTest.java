package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentQuoteGuardTest {

    private static final String NUMBER = "2026-0042";
    private static final PartKey KEY = PartKey.parse("quote/1");
    private final PartJson json = new PartJson();
    private final Quote draft = quote("{\"schema\":1,\"revision\":1,\"currency\":\"EUR\",\"terms\":\"30 days\",\"alternatives\":"
            + "[{\"name\":\"full rewind\",\"lines\":[{\"kind\":\"LABOUR\",\"text\":\"wind\",\"quantity\":10,\"unitPrice\":52}]}]}");

    private Quote quote(String text) {
        try {
            return (Quote) json.read(KEY, text);
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    private Quote with(Quote quote, Consumer<ObjectNode> change) {
        ObjectNode tree = json.tree(quote);
        change.accept(tree);
        return quote(tree.toString());
    }

    private Quote sent(Quote quote) {
        String fingerprint = QuoteSeal.of(NUMBER, quote);
        return with(quote, t -> t.putObject("sent").put("at", "2026-05-04T09:00:00Z").put("by", "ada")
                .put("fingerprint", fingerprint));
    }

    private boolean refused(Quote before, Quote next) {
        return SentQuoteGuard.changesWhatWentOut(NUMBER, before, next);
    }

    @Test
    void aDraftIsChangedAndSent() {
        assertFalse(refused(null, draft));
        assertFalse(refused(draft, with(draft, t -> t.put("terms", "60 days"))));
        assertFalse(refused(draft, sent(draft)));
        assertFalse(refused(null, sent(draft)));
    }

    @Test
    void whatWentOutIsAnsweredAndRevised() {
        Quote out = sent(draft);
        assertFalse(refused(out, out));
        Quote answered = with(out, t -> t.putObject("approval").put("agreed", true).put("by", "station foreman"));
        assertFalse(refused(out, answered));
        Quote next = with(draft, t -> t.put("revision", 2).put("terms", "60 days"));
        assertFalse(refused(answered, next));
        assertFalse(refused(answered, sent(next)));
    }

    @ParameterizedTest
    @CsvSource({"terms", "exclusions", "currency", "validUntil", "fieldOfANewerVersion"})
    void whatWentOutIsNotChanged(String field) {
        Quote out = sent(draft);
        String value = field.equals("validUntil") ? "2026-06-01" : field.equals("currency") ? "USD" : "other";
        Quote changed = with(out, t -> t.put(field, value));
        assertTrue(refused(out, changed));
        assertTrue(refused(out, with(changed, t -> t.remove("sent"))), "nor by taking the note of it away");
        assertTrue(refused(out, sent(with(changed, t -> t.remove("sent")))), "nor by noting it anew");
    }

    @Test
    void aPriceThatWentOutIsNotChangedNorIsTheNoteTakenAway() {
        Quote out = sent(draft);
        assertTrue(refused(out, with(out, t -> ((ObjectNode) t.at("/alternatives/0/lines/0")).put("unitPrice", 49))));
        assertTrue(refused(out, draft));
        assertEquals(1, out.revision());
        assertTrue(refused(out, with(draft, t -> t.put("revision", 0))));
    }

    @Test
    void whatIsNotedAsSentMustBeWhatIsKept() {
        Quote out = sent(draft);
        assertTrue(refused(draft, with(out, t -> t.put("terms", "60 days"))));
        assertTrue(refused(null, with(out, t -> t.put("terms", "60 days"))));
        assertTrue(SentQuoteGuard.changesWhatWentOut("2026-0043", draft, out), "another job's");
    }

    @Test
    void whatWasAgreedToWithoutBeingSentIsNotChangedEither() {
        Quote agreed = with(draft, t -> t.putObject("approval").put("agreed", true));
        Quote cheaper = with(agreed, t -> ((ObjectNode) t.at("/alternatives/0/lines/0")).put("unitPrice", 49));
        assertTrue(refused(agreed, cheaper));
        assertTrue(refused(agreed, with(cheaper, t -> t.remove("approval"))), "nor by taking the answer away with it");
        assertFalse(refused(agreed, draft), "the answer itself can be taken back");
        assertFalse(refused(agreed, with(sent(draft), t -> t.putObject("approval").put("agreed", true))), "or it goes out");
        assertFalse(refused(agreed, with(cheaper, t -> t.put("revision", 2))));
        Quote declined = with(draft, t -> t.putObject("approval").put("agreed", false));
        assertFalse(refused(declined, with(declined, t -> t.put("terms", "60 days"))));
    }
}
