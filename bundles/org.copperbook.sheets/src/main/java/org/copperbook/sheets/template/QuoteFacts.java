package org.copperbook.sheets.template;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.copperbook.calc.money.QuoteTotals;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuotePrices;
import org.copperbook.jobs.seal.Seal;
import org.copperbook.sheets.quote.QuoteContext;
import org.copperbook.sheets.quote.SummarySheet;

/** What a quote says, by the names that templates use. */
final class QuoteFacts {

    private QuoteFacts() {
    }

    static Map<String, Object> of(QuoteContext context) {
        Quote quote = context.quote();
        Map<String, Object> values = new HashMap<>();
        Booking booking = context.job().booking().orElse(null);
        values.put("customer", booking == null ? null : booking.customer());
        values.put("contact", booking == null ? null : booking.contactName(context.shop()::nameOf));
        values.put("order_number", booking == null ? null : booking.orderNo());
        values.put("machine", booking == null ? null : booking.machine());
        values.put("rating_plate", context.job().nameplate().map(p -> SummarySheet.plate(context, p)).orElse(null));
        values.put("job_number", context.job().number());
        values.put("quote_number", context.name());
        values.put("revision", quote.revision());
        values.put("date", quote.date());
        values.put("valid_until", quote.validUntil());
        values.put("currency", quote.currency());
        values.put("terms", quote.terms());
        values.put("exclusions", quote.exclusions());
        values.put("workshop", context.demo() ? context.shop().workshop().name() + " - " + context.words().get("demo.short")
                : context.shop().workshop().name());
        values.put("workshop_address", context.shop().workshop().address());
        values.put("fingerprint", Seal.shown(context.fingerprint()));
        return values;
    }

    static void ofAlternative(Quote.Alternative alternative, QuoteTotals totals, String behind, Map<String, Object> values) {
        values.put("alternative" + behind, alternative.name());
        values.put("note" + behind, alternative.note());
        values.put("total_before_discount" + behind, totals.netBeforeDiscount());
        values.put("total_discount" + behind, totals.discount());
        values.put("total_net" + behind, totals.net());
        values.put("total_tax" + behind, totals.gross().subtract(totals.net()));
        values.put("total_gross" + behind, totals.gross());
    }

    static Map<String, Object> ofLine(QuoteContext context, Quote.Alternative alternative, QuoteLine line, int number,
            BigDecimal amount) {
        Map<String, Object> values = new HashMap<>();
        values.put("line_number", number);
        values.put("line_kind", context.words().of(line.kind() == null ? QuoteLine.Kind.OTHER : line.kind()));
        values.put("line_text", line.text());
        values.put("line_trade", line.trade());
        values.put("line_quantity", QuotePrices.quantity(line));
        values.put("line_unit", line.unit());
        values.put("line_price", context.prices().unitPrice(alternative, line));
        values.put("line_discount", line.discountPercent());
        values.put("line_tax", line.tax());
        values.put("line_amount", amount);
        return values;
    }
}
