package org.copperbook.jobs.seal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.quote.Quote;

/**
 * Fingerprint of what a quote offers: everything in it but when it was sent and the customer's answer, which are
 * recorded later and change no offer. Two revisions with one fingerprint offer the same.
 */
public final class QuoteSeal {

    private QuoteSeal() {
    }

    /**
     * The fingerprint of a quote of a job.
     *
     * @param jobNumber number of the job
     * @return SHA-256 in lower-case hex
     */
    public static String of(String jobNumber, Quote quote) {
        ObjectNode offer = new PartJson().tree(quote).deepCopy();
        offer.remove("approval");
        offer.remove("sent");
        return Canonical.digest(jobNumber + "\n" + Canonical.digest(offer));
    }
}
