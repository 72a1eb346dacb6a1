package org.copperbook.office.quote;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.money.Pricing;
import org.copperbook.desk.document.Draft;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteFigures;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.quote.UnpriceableQuoteException;
import org.copperbook.jobs.quote.WireNamed;
import org.copperbook.jobs.report.AgreedQuote;

/** What the alternatives of the quote on the page come to, added up once for every state of the draft. */
final class QuoteSums {

    private static final int PERCENT_DIGITS = 2;

    /** What one alternative comes to, or why it cannot be added up. */
    private record Sum(QuoteFigures figures, String problem) {
    }

    private final PageSite site;
    private final Words words;
    private final TypedSlips slips;
    private Draft added;
    private QuotePrices prices;
    private List<Sum> sums = List.of();

    QuoteSums(PageSite site, Words words) {
        this.site = site;
        this.words = words;
        slips = new TypedSlips(site, words);
    }

    /** The quote as it stands on the page. */
    Optional<Quote> quote() {
        return site.document().part(site.key(), Quote.class);
    }

    /** How many alternatives there are, with those that a new quote begins with. */
    int alternatives() {
        return site.document().rows(site.key(), SideBySide.LIST).size();
    }

    /** An amount of an alternative in the quote's currency; empty while it cannot be added up. */
    String amount(int alternative, Function<QuoteFigures, BigDecimal> of) {
        return figures(alternative).map(f -> money(of.apply(f))).orElse("");
    }

    /** A share of an alternative in percent; empty while it cannot be added up. */
    String percent(int alternative, Function<QuoteFigures, Optional<BigDecimal>> of) {
        return figures(alternative).flatMap(of).map(QuoteSums::plain).orElse("");
    }

    /** Hours, kilograms: a plain number of an alternative; it needs no price. */
    String number(int alternative, Function<Quote.Alternative, BigDecimal> of) {
        return alternative(alternative).map(of).filter(n -> n.signum() != 0).map(QuoteSums::plain).orElse("");
    }

    /** Net and total of an alternative, or why it cannot be added up. */
    String total(int alternative) {
        if (alternative(alternative).map(a -> a.lines().isEmpty()).orElse(true)) {
            return "";
        }
        Sum sum = sum(alternative);
        return sum.figures() == null ? sum.problem() : words.text("alternative.sum", money(sum.figures().totals().net()),
                money(sum.figures().totals().gross()), prices.currency().code()) + untaxed(alternative(alternative).orElseThrow());
    }

    /** Lines without a tax beside tax kinds are easily forgotten, so they are said. */
    private String untaxed(Quote.Alternative a) {
        long without = a.lines().stream().filter(l -> l.tax() == null || l.tax().isBlank()).count();
        return without == 0 || quote().orElseThrow().taxes().isEmpty() ? ""
                : ". " + words.text("alternative.untaxed", without, a.lines().size());
    }

    /** Why the offer cannot be added up as it stands; empty when it can. */
    Optional<String> problem() {
        Quote quote = quote().orElse(null);
        if (quote == null || quote.alternatives().stream().allMatch(a -> a.lines().isEmpty())) {
            return Optional.of(words.text("quote.noLines"));
        }
        for (int i = 0; i < quote.alternatives().size(); i++) {
            if (quote.alternatives().get(i).lines().isEmpty()) {
                return Optional.of(words.text("quote.emptyAlternative", i + 1));
            }
            if (sum(i).figures() == null) {
                return Optional.of(sum(i).problem());
            }
        }
        return Optional.empty();
    }

    /** What the customer's answer lacks or goes against, in words; empty when it is whole. */
    String answer() {
        Quote quote = quote().orElse(null);
        if (quote == null || quote.approval() == null || quote.approval().agreed() == null) {
            return "";
        }
        List<String> said = new ArrayList<>();
        AgreedQuote.lack(quote).ifPresent(lack -> said.add(words.text(switch (lack) {
            case NONE_NAMED -> "approval.noneNamed";
            case UNKNOWN -> "approval.unknown";
            case SEVERAL -> "approval.several";
        })));
        overLimit(quote).ifPresent(said::add);
        Quote.Approval a = quote.approval();
        if (a.at() == null || isEmpty(a.by()) || isEmpty(a.how())) {
            said.add(words.text("approval.whoHowWhen"));
        }
        return String.join(" ", said);
    }

    private Optional<String> overLimit(Quote quote) {
        Quote.Alternative agreed = AgreedQuote.alternative(quote).orElse(null);
        BigDecimal limit = agreed == null ? null : quote.approval().limit();
        return limit == null ? Optional.empty() : figures(quote.alternatives().indexOf(agreed))
                .map(f -> f.totals().gross().subtract(limit)).filter(over -> over.signum() > 0)
                .map(over -> words.text("approval.overLimit", named(limit), named(over)));
    }

    private static boolean isEmpty(String text) {
        return text == null || text.isBlank();
    }

    /** The total with tax against the limit up to which nobody has to ask; empty without a limit. */
    String againstLimit(int alternative) {
        BigDecimal limit = site.document().job().booking().map(b -> b.spendLimit()).orElse(null);
        Optional<QuoteFigures> figures = figures(alternative);
        if (limit == null || figures.isEmpty() || alternative(alternative).orElseThrow().lines().isEmpty()) {
            return "";
        }
        String shops = site.shop().workshop().currency();
        if (!shops.equals(prices.currency().code())) {
            return words.text("alternative.limitElsewhere", Money.of(limit, shops));
        }
        BigDecimal over = figures.get().totals().gross().subtract(limit);
        return over.signum() <= 0 ? words.text("alternative.underLimit", named(limit))
                : words.text("alternative.overLimit", named(limit), named(over));
    }

    /** Mark-up and margin of an alternative beside each other, since they are not the same. */
    String markUpAndMargin(int alternative) {
        Quote.Alternative a = alternative(alternative).orElse(null);
        if (a == null || a.markUpPercent() == null && a.marginPercent() == null) {
            return words.text("alternative.atCost");
        }
        if (a.markUpPercent() != null && a.marginPercent() != null) {
            return words.text("alternative.bothGiven");
        }
        try {
            BigDecimal markUp = a.markUpPercent() != null ? a.markUpPercent() : Pricing.markUpOfMargin(a.marginPercent());
            BigDecimal margin = a.marginPercent() != null ? a.marginPercent() : Pricing.marginOfMarkUp(a.markUpPercent());
            return words.text("alternative.bothPercents", plain(markUp), plain(margin));
        } catch (OutOfRange | ArithmeticException impossible) {
            return impossible.getMessage();
        }
    }

    /** The rounding rule in words; empty while the currency is not known. */
    String rule() {
        sum(0);
        return prices == null ? "" : words.text(switch (quote().orElseThrow().rounding()) {
            case LINES -> "quote.rule.lines";
            case TOTALS -> "quote.rule.totals";
        }, prices.currency().code(), prices.currency().digits());
    }

    private Optional<Quote.Alternative> alternative(int index) {
        return quote().filter(q -> index < q.alternatives().size()).map(q -> q.alternatives().get(index));
    }

    private Optional<QuoteFigures> figures(int alternative) {
        return Optional.ofNullable(sum(alternative).figures());
    }

    private Sum sum(int alternative) {
        Draft now = site.document().draft(site.key());
        if (now != added) {
            added = now;
            prices = null;
            sums = now.part() == null ? List.of() : add((Quote) now.part());
        }
        return alternative < sums.size() ? sums.get(alternative) : new Sum(null, "");
    }

    private List<Sum> add(Quote quote) {
        List<Sum> all = new ArrayList<>();
        try {
            prices = new QuotePrices(quote);
        } catch (UnpriceableQuoteException open) {
            prices = null;
            quote.alternatives().forEach(a -> all.add(new Sum(null, slips.in(all.size()).orElse(open.getMessage()))));
            return all;
        }
        WireNamed wire = wire();
        for (Quote.Alternative a : quote.alternatives()) {
            Optional<String> slip = slips.in(all.size());
            try {
                all.add(slip.isPresent() ? new Sum(null, slip.get()) : new Sum(QuoteFigures.of(prices, a, wire), null));
            } catch (UnpriceableQuoteException open) {
                all.add(new Sum(null, open.getMessage()));
            }
        }
        return all;
    }

    /** Knows the winding wire among the lines by the windings of the job as they stand. */
    WireNamed wire() {
        return new WireNamed(site.document().job());
    }

    private String money(BigDecimal amount) {
        return Money.alone(amount, prices.currency());
    }

    private String named(BigDecimal amount) {
        return Money.of(amount, prices.currency().code());
    }

    private static String plain(BigDecimal number) {
        NumberFormat format = NumberFormat.getInstance();
        format.setMaximumFractionDigits(PERCENT_DIGITS);
        return format.format(number);
    }
}
