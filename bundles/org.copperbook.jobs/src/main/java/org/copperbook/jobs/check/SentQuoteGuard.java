package org.copperbook.jobs.check;

import java.util.Objects;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.seal.QuoteSeal;

/** Keeps an offer as it went out: it is answered and revised, but not changed, and what is noted as sent is what is kept. */
public final class SentQuoteGuard {

    private SentQuoteGuard() {
    }

    /**
     * Whether a save would change an offer that went out, or note something else as sent than what is kept.
     *
     * @param number number of the job
     * @param before the quote as kept, or null
     * @param next   the quote to be kept instead
     */
    public static boolean changesWhatWentOut(String number, Quote before, Quote next) {
        boolean wentOut = before != null && before.sent() != null;
        if (wentOut && next.revision() <= before.revision()) {
            return !Objects.equals(before.sent(), next.sent())
                    || !QuoteSeal.of(number, before).equals(QuoteSeal.of(number, next));
        }
        return next.sent() != null && !QuoteSeal.of(number, next).equals(next.sent().fingerprint());
    }
}
