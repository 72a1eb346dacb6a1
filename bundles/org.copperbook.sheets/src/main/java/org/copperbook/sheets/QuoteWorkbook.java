package org.copperbook.sheets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.quote.UnpriceableQuoteException;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.copy.QuoteCopy;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Letterhead;
import org.copperbook.sheets.page.Words;
import org.copperbook.sheets.quote.AlternativeSheet;
import org.copperbook.sheets.quote.QuoteContext;
import org.copperbook.sheets.quote.RefusedQuote;
import org.copperbook.sheets.quote.SummarySheet;
import org.copperbook.sheets.quote.TotalsProof;

/**
 * The quote as a workbook: a summary with the alternatives side by side, then one sheet each with live formulas. The
 * language is the quote's (English or German; English for any other), the numbers follow the reader's settings.
 */
public final class QuoteWorkbook {

    /** Who gets the workbook. */
    public enum Copy {
        /** Selling prices only; cost and mark-up are nowhere in the file. */
        CUSTOMER,
        /** Selling prices computed from cost and mark-up, which stand beside the printed area. */
        WORKSHOP
    }

    /** Writes the customer's copy. */
    public void write(Job job, Quote quote, Shop shop, Path target) throws WorkbookNotWrittenException {
        write(job, quote, shop, Copy.CUSTOMER, target);
    }

    /**
     * Writes a quote over the target, as a whole or not at all.
     *
     * @throws WorkbookNotWrittenException when the quote has no alternative or cannot be added up, or the target cannot be replaced
     */
    public void write(Job job, Quote quote, Shop shop, Copy copy, Path target) throws WorkbookNotWrittenException {
        RefusedQuote.ifEmpty(job, quote);
        Words words = new Words(QuoteWorkbook.class, "quote", locale(quote));
        try {
            QuotePrices prices = new QuotePrices(quote);
            List<QuoteTotals> expected = new ArrayList<>();
            for (Quote.Alternative alternative : quote.alternatives()) {
                expected.add(prices.totals(alternative));
            }
            QuoteContext context = new QuoteContext(job, quote, shop, prices, copy == Copy.WORKSHOP, words);
            try (Book book = new Book(head(context), context.title())) {
                SummarySheet summary = new SummarySheet(context, book);
                List<AlternativeSheet> sheets = new ArrayList<>();
                for (int i = 0; i < quote.alternatives().size(); i++) {
                    sheets.add(new AlternativeSheet(context, book, i + 1, quote.alternatives().get(i)));
                }
                sheets.forEach(AlternativeSheet::write);
                summary.write(sheets);
                book.evaluate();
                new TotalsProof(book.workbook(), prices.currency()).agree(expected);
                QuoteCopy.mark(book.workbook(), job.number(), context.name(), context.fingerprint());
                book.writeTo(target);
            }
        } catch (UnpriceableQuoteException e) {
            throw RefusedQuote.of(job, e);
        }
    }

    private static Letterhead head(QuoteContext context) {
        String mark = context.words().get("foot.fingerprint", Seal.shown(context.fingerprint()));
        String foot = context.demo() ? context.words().get("demo.short") + "   " + mark : mark;
        return new Letterhead(context.shop().workshop().name(), context.title(), context.words().raw("page.of"), foot);
    }

    /** The language of a quote; English when none is stated. */
    public static Locale locale(Quote quote) {
        Locale wanted = quote.language() == null ? Locale.ENGLISH : Locale.forLanguageTag(quote.language().strip());
        return wanted.getLanguage().isEmpty() ? Locale.ENGLISH : wanted;
    }
}
