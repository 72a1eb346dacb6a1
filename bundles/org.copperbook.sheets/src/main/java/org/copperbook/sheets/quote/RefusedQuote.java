package org.copperbook.sheets.quote;

import java.util.Locale;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.UnpriceableQuoteException;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.WorkbookNotWrittenException.Reason;
import org.copperbook.sheets.page.Words;

/** Why a quote is not written as a workbook, in words. */
public final class RefusedQuote {

    private RefusedQuote() {
    }

    /**
     * Refuses a quote that offers nothing.
     *
     * @throws WorkbookNotWrittenException when it has no alternative
     */
    public static void ifEmpty(Job job, Quote quote) throws WorkbookNotWrittenException {
        if (quote.alternatives().isEmpty()) {
            throw refused("refused.noAlternative", null, job.number());
        }
    }

    /** What cannot be added up. */
    public static WorkbookNotWrittenException of(Job job, UnpriceableQuoteException why) {
        return refused("refused.notAddedUp", why, job.number(), why.getMessage());
    }

    private static WorkbookNotWrittenException refused(String key, Throwable cause, Object... about) {
        return new WorkbookNotWrittenException(Reason.CONTENT,
                new Words(QuoteWorkbook.class, "quote", Locale.ENGLISH).get(key, about), cause);
    }
}
