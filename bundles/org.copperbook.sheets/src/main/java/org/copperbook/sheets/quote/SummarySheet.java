package org.copperbook.sheets.quote;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.page.Words;

/** The first sheet: for whom, for which machine, the alternatives side by side, terms and the customer's answer. */
public final class SummarySheet {

    private static final int LABEL_WIDTH = 34;
    private static final int PAGE_WIDTH = 62;
    private static final int NARROWEST = 15;

    /** Rows of the customer's answer, to be given and given. */
    private static final int BLANKS = 8;
    private static final int ANSWERED = 6;

    private final QuoteContext context;
    private final Words words;
    private final SheetPage page;

    public SummarySheet(QuoteContext context, Book book) {
        this.context = context;
        this.words = context.words();
        int n = Math.max(1, context.quote().alternatives().size());
        int[] widths = new int[1 + Math.max(2, n)];
        widths[0] = LABEL_WIDTH;
        for (int i = 1; i < widths.length; i++) {
            widths[i] = Math.max(NARROWEST, PAGE_WIDTH / (widths.length - 1));
        }
        String name = words.get("summary.sheet");
        this.page = n > 4 ? book.landscape(name, widths) : book.portrait(name, widths);
    }

    /** @param sheets the sheets of the alternatives, already written */
    public void write(List<AlternativeSheet> sheets) {
        head();
        parties();
        page.heading(words.get("summary.alternatives"));
        sideBySide(sheets);
        spendLimit(sheets);
        texts();
        answer();
    }

    private void head() {
        Workshop workshop = context.shop().workshop();
        page.row(Look.STRONG, Entry.text(workshop.name()).over(page.columns()));
        page.paragraph(workshop.address());
        page.gap();
        page.title(context.title());
        if (context.demo()) {
            page.warning(words.get("demo.long"));
        }
        if (context.costing()) {
            page.warning(words.get("costing.copy"));
        }
    }

    private void parties() {
        Quote quote = context.quote();
        page.pair(1, words.get("summary.date"), Entry.day(quote.date()));
        page.pair(1, words.get("summary.validUntil"), Entry.day(quote.validUntil()));
        context.job().booking().ifPresent(this::booking);
        context.job().nameplate().ifPresent(p -> page.pair(1, words.get("summary.plate"), plate(context, p)));
        page.pair(1, words.get("summary.currency"), words.get("summary.currencyDigits",
                context.prices().currency().code(), Integer.toString(context.digits())));
        page.pair(1, words.get("summary.fingerprint"), Seal.shown(context.fingerprint()));
    }

    private void booking(Booking booking) {
        page.pair(1, words.get("summary.customer"), booking.customer());
        page.pair(1, words.get("summary.contact"), booking.contactName(context.shop()::nameOf));
        page.pair(1, words.get("summary.order"), booking.orderNo());
        page.pair(1, words.get("summary.machine"), booking.machine());
    }

    /** The rating plate in one line. */
    public static String plate(QuoteContext context, Nameplate p) {
        Words words = context.words();
        return Stream.of(p.maker(), p.type(), p.serial() == null ? null : words.get("plate.serial", p.serial()),
                number(words, p.apparentPowerVA(), 1000, "kVA"), number(words, p.powerW(), 1000, "kW"),
                number(words, p.voltageV(), 1, "V"), number(words, p.frequencyHz(), 1, "Hz"),
                number(words, p.speedRpm(), 1, "r/min"))
                .filter(s -> s != null && !s.isBlank()).collect(Collectors.joining(", "));
    }

    private static String number(Words words, Double value, double per, String unit) {
        return value == null ? null : words.get("plain.number", value / per) + " " + unit;
    }

    private void sideBySide(List<AlternativeSheet> sheets) {
        List<Entry> heads = new ArrayList<>(List.of(Entry.text(words.get("summary.amounts",
                context.prices().currency().code()))));
        sheets.forEach(s -> heads.add(Entry.text(s.label()).right()));
        page.row(Look.TABLE_HEAD, heads);
        for (QuoteLine.Kind kind : QuoteLine.Kind.values()) {
            if (sheets.stream().anyMatch(s -> s.subtotalRow(kind) != null)) {
                amounts(Look.TABLE_CELL, words.of(kind), sheets, s -> s.subtotalRow(kind));
            }
        }
        amounts(Look.TABLE_STRONG, words.get("total.before"), sheets, s -> s.totals().beforeRow());
        amounts(Look.TABLE_CELL, words.get("total.discount"), sheets, s -> s.totals().discountRow());
        amounts(Look.TABLE_STRONG, words.get("total.net"), sheets, s -> s.totals().netRow());
        for (Map.Entry<String, String> tax : context.taxWords().entrySet()) {
            if (!tax.getKey().isEmpty()) {
                amounts(Look.TABLE_CELL, taxLabel(tax), sheets, s -> s.totals().taxRow(tax.getKey()));
            }
        }
        amounts(Look.TOTAL, words.get("total.gross", context.prices().currency().code()), sheets,
                s -> s.totals().grossRow());
        page.note(words.get(context.quote().rounding() == RoundingRule.LINES ? "rule.lines" : "rule.totals",
                context.prices().currency().code(), Integer.toString(context.digits())));
    }

    private String taxLabel(Map.Entry<String, String> tax) {
        Quote.Tax kind = context.quote().taxes().stream().filter(t -> t.code().equals(tax.getKey())).findFirst()
                .orElseThrow();
        String name = kind.name() == null || kind.name().isBlank() ? kind.code() : kind.name();
        return words.get("summary.tax", name, kind.ratePercent().stripTrailingZeros());
    }

    private void amounts(Look look, String label, List<AlternativeSheet> sheets, Function<AlternativeSheet, Integer> row) {
        List<Entry> entries = new ArrayList<>(List.of(Entry.text(label)));
        for (AlternativeSheet sheet : sheets) {
            Integer at = row.apply(sheet);
            entries.add(at == null ? Entry.text("–").right()
                    : Entry.formula(Book.reference(sheet.page(), at, AlternativeSheet.AMOUNT), context.digits()));
        }
        page.row(look, entries);
    }

    private void spendLimit(List<AlternativeSheet> sheets) {
        BigDecimal limit = context.job().booking().map(Booking::spendLimit).orElse(null);
        if (limit == null) {
            return;
        }
        String code = context.shop().workshop().currency();
        page.gap();
        if (!code.equals(context.prices().currency().code())) {
            page.pair(1, words.get("summary.spendLimit"), words.get("summary.spendLimitOther", limit, code));
            return;
        }
        int row = page.row(Look.TEXT, Entry.text(words.get("summary.spendLimit")).looks(Look.LABEL),
                Entry.number(limit, context.digits()));
        List<Entry> entries = new ArrayList<>(List.of(Entry.text(words.get("summary.againstLimit"))));
        for (AlternativeSheet sheet : sheets) {
            String total = Book.reference(sheet.page(), sheet.totals().grossRow(), AlternativeSheet.AMOUNT);
            entries.add(Entry.textFormula("IF(" + total + ">" + AlternativeSheet.absolute(1, row) + ",\""
                    + words.get("summary.above").replace("\"", "\"\"") + "\",\""
                    + words.get("summary.within").replace("\"", "\"\"") + "\")").right());
        }
        page.row(Look.STRONG, entries);
    }

    private void texts() {
        section("summary.terms", context.quote().terms());
        section("summary.exclusions", context.quote().exclusions());
    }

    private void section(String heading, String text) {
        if (text != null && !text.isBlank()) {
            page.heading(words.get(heading));
            page.paragraph(text);
        }
    }

    private void answer() {
                Quote.Approval approval = context.quote().approval();
        page.keepTogether(approval == null ? BLANKS : ANSWERED);
        page.heading(words.get("answer.heading"));
        if (approval == null || approval.agreed() == null) {
            for (String blank : List.of("answer.alternative", "answer.name", "answer.date", "answer.signature")) {
                page.gap();
                page.row(Look.WRITE_HERE, Entry.text(words.get(blank)).looks(Look.LABEL),
                        Entry.text(" ").over(page.columns() - 1));
            }
            return;
        }
        page.pair(1, words.get("answer.said"), words.get(approval.agreed() ? "answer.agreed" : "answer.declined"));
        page.pair(1, words.get("answer.alternative"), approval.alternative());
        page.pair(1, words.get("answer.name"), context.shop().nameOf(approval.by()));
        page.pair(1, words.get("answer.how"), approval.how());
        if (approval.at() != null) {
            page.pair(1, words.get("answer.date"), DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm VV")
                    .format(approval.at().atZone(ZoneId.systemDefault())));
        }
        page.pair(1, words.get("answer.limit"), approval.limit() == null ? Entry.blank()
                : Entry.number(approval.limit(), context.digits()));
        page.pair(1, words.get("answer.note"), approval.note());
    }
}
