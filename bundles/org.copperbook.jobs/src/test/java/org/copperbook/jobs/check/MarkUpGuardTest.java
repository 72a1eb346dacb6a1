package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.Quote;
import org.junit.jupiter.api.Test;

class MarkUpGuardTest {

    private static Quote quote(String alternatives) {
        try {
            return (Quote) new PartJson().read(PartKey.quote(1),
                    "{\"schema\":1,\"revision\":1,\"alternatives\":[" + alternatives + "]}");
        } catch (BadRecordException e) {
            throw new AssertionError(e);
        }
    }

    private static String alternative(String name, String figures) {
        return "{\"name\":\"" + name + "\"" + figures + "}";
    }

    @Test
    void markUpMarginAndDiscountsAreToldFromTheRest() {
        Quote now = quote(alternative("a", ",\"markUpPercent\":20,\"lines\":[{\"text\":\"x\",\"discountPercent\":5}]"));
        assertFalse(MarkUpGuard.sets(now, quote(alternative("a", ",\"markUpPercent\":20.0,\"lines\":[{\"text\":\"x\","
                + "\"discountPercent\":5.0},{\"text\":\"y\",\"unitPrice\":7}]") + "," + alternative("copy", ",\"markUpPercent\":20"))),
                "lines, prices and a copy");
        assertFalse(MarkUpGuard.sets(null, quote(alternative("a", ""))));
        assertTrue(MarkUpGuard.sets(now, quote(alternative("a", ""))), "taken out");
        assertTrue(MarkUpGuard.sets(now, quote(alternative("a", ",\"marginPercent\":20"))));
        assertTrue(MarkUpGuard.sets(now, quote(alternative("a", ",\"markUpPercent\":20,\"discountPercent\":1"))));
        assertTrue(MarkUpGuard.sets(now, quote(alternative("b", ",\"markUpPercent\":21"))));
        assertTrue(MarkUpGuard.sets(now, quote(alternative("a", ",\"markUpPercent\":20,\"lines\":[{\"text\":\"x\","
                + "\"discountPercent\":6}]"))));
        assertTrue(MarkUpGuard.sets(null, quote(alternative("a", ",\"markUpPercent\":1"))));
    }
}
