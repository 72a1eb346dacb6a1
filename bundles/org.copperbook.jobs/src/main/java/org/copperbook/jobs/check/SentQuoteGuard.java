package org.copperbook.jobs.check;

import java.util.Objects;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;

/**
 * Keeps an offer as it went out, or as the customer agreed to it: it is answered and revised, but not changed, and what is
 * noted as sent is what is kept.
 */
public final class SentQuoteGuard {

    private SentQuoteGuard() {
    }

    /** Whether an offer is the customer's, so that only the answer to it is still written. */
    public static boolean isClosed(Quote quote) {
        return quote.sent() != null || quote.approval() != null && Boolean.TRUE.equals(quote.approval().agreed());
    }

    /**
     * Whether a save would change an offer that went out or was agreed to, or note something else as sent than what is kept.
     *
     * @param number number of the job
     * @param before the quote as kept, or null
     * @param next   the quote to be kept instead
     */
    public static boolean changesWhatWentOut(String number, Quote before, Quote next) {
        if (before != null && isClosed(before) && next.revision() <= before.revision()) {
            boolean otherNote = before.sent() != null && !Objects.equals(before.sent(), next.sent());
            if (otherNote || !QuoteSeal.of(number, before).equals(QuoteSeal.of(number, next))) {
                return true;
            }
        }
        if (before != null && before.sent() != null && before.sent().equals(next.sent())
                && next.revision() <= before.revision()) {
            return false;
        }
        return next.sent() != null && !QuoteSeal.of(number, next).equals(next.sent().fingerprint());
    }
}
