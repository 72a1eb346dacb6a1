package org.copperbook.sheets.quote;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.page.Words;

/**
 * What all sheets of one quote share.
 *
 * @param costing true when cost and mark-up stand in the workbook
 */
public record QuoteContext(Job job, Quote quote, Shop shop, QuotePrices prices, boolean costing, Words words) {

    public boolean demo() {
        return Boolean.TRUE.equals(shop.workshop().demo());
    }

    public int digits() {
        return prices.currency().digits();
    }

    /** Which quote of the job it is: the name of its part, "1". */
    public String name() {
        return job.keys(PartKind.QUOTE).stream().filter(k -> quote.equals(job.part(k).orElse(null))).map(PartKey::name)
                .findFirst().orElse("");
    }

    /** Fingerprint of the offer. */
    public String fingerprint() {
        return QuoteSeal.of(job.number(), quote);
    }

    /** "Quote 2026-0042, revision 1". */
    public String title() {
        return words.get("title", job.number(), Integer.toString(quote.revision()));
    }

    /**
     * The word by which lines and the tax table name each tax, by tax code ("" for lines without tax). Sums are picked
     * by this word, so it must not be read as a pattern or comparison, and no two may be alike.
     */
    Map<String, String> taxWords() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Quote.Tax tax : quote.taxes()) {
            words.put(tax.code(), unused(words, tax.code()));
        }
        boolean untaxed = quote.alternatives().stream().flatMap(a -> a.lines().stream())
                .anyMatch(l -> l.tax() == null || l.tax().isBlank());
        if (untaxed) {
            words.put("", unused(words, this.words.get("tax.none.short")));
        }
        return words;
    }

    private static String unused(Map<String, String> taken, String wish) {
        boolean plain = wish.matches("\\p{L}[\\p{L}\\p{N} ._-]{0,11}");
        String word = plain ? wish : "T" + (taken.size() + 1);
        String free = word;
        for (int i = 2; isTaken(taken, free); i++) {
            free = word + "-" + i;
        }
        return free;
    }

    private static boolean isTaken(Map<String, String> taken, String word) {
        return taken.values().stream().anyMatch(w -> w.toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT)));
    }
}
