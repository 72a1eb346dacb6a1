package org.copperbook.sheets;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.calc.money.RoundingRule;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.Quote.Alternative;
import org.copperbook.jobs.quote.Quote.Tax;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.QuoteLine.Kind;

/** Invented quotes. */
final class SampleQuote {

    private SampleQuote() {
    }

    static QuoteLine line(Kind kind, String text, String trade, String quantity, String unit, String price,
            String discount, String tax) {
        return new QuoteLine(kind, text, trade, new BigDecimal(quantity), unit, new BigDecimal(price), percent(discount),
                tax, Map.of());
    }

    static Alternative alternative(String name, String markUp, String discount, String note, List<QuoteLine> lines) {
        return new Alternative(name, lines, percent(markUp), percent(discount), note, Map.of());
    }

    static Quote quote(String currency, RoundingRule rounding, String language, Alternative... alternatives) {
        return new Quote(1, 2, LocalDate.of(2026, 3, 9), LocalDate.of(2026, 4, 8), currency, rounding, language,
                List.of(alternatives),
                List.of(new Tax("V19", "Value added tax", new BigDecimal("19"), Map.of()),
                        new Tax("V7", "Value added tax, reduced", new BigDecimal("7"), Map.of())),
                "Payment within 30 days of the invoice date.\nPrices hold when the machine is dry and complete as booked in."
                        + "\nWork starts when this quote has come back signed.",
                "Transport, foundation work, alignment on site, and any damage found after stripping.", null, Map.of());
    }

    static Quote rich(String language) {
        return quote("EUR", RoundingRule.LINES, language,
                alternative("Clean and dry", "15", null, "Winding kept. Only sensible when the insulation recovers.", List.of(
                        line(Kind.LABOUR, "Strip down, wash, dry in the oven over night", "fitter", "6.5", "h", "54.00", null, "V19"),
                        line(Kind.MATERIAL, "Air-drying varnish", null, "1.25", "kg", "38.40", null, "V19"),
                        line(Kind.BEARING, "Bearing 6312, drive end", null, "1", "pc", "61.75", "5", "V19"))),
                alternative("Full rewind", "15", "3", "New main stator winding in thermal class H, copper as found.", List.of(
                        line(Kind.LABOUR, "Capture, strip and burn out the old winding", "winder", "9", "h", "58.50", null, "V19"),
                        line(Kind.LABOUR, "Wind, insert and connect 48 coils, double layer, 4 strands in hand, including"
                                + " phase separators, slot liners and lacing of both overhangs", "winder", "31.5", "h", "58.50", null, "V19"),
                        line(Kind.LABOUR, "Run-up, tests and record", "tester", "5", "h", "63.00", null, "V19"),
                        line(Kind.MATERIAL, "Winding wire 1.25 mm grade 2", null, "23.48", "kg", "14.2350", null, "V19"),
                        line(Kind.MATERIAL, "Slot and phase insulation, class H", null, "1", "set", "142.90", "2.5", "V19"),
                        line(Kind.MATERIAL, "Technical books left with the customer", null, "2", "pc", "18.95", null, "V7"),
                        line(Kind.DIODE_SET, "Diode set, six pieces, with suppressor", null, "1", "set", "86.00", null, "V19"),
                        line(Kind.OUTSIDE_WORK, "Dynamic balancing of the rotor", null, "1", "job", "185.00", null, "V19"),
                        line(Kind.OTHER, "Deposit for the returned crate", null, "-1", "pc", "45.00", null, null))),
                alternative("Replace", "8", null, "New machine of the same frame; delivery eleven weeks.", List.of(
                        line(Kind.OUTSIDE_WORK, "Brushless alternator 60 kVA, 400 V, 1500 r/min", null, "1", "pc", "6480.00", null, "V19"),
                        line(Kind.LABOUR, "Change over and run-up", "fitter", "8", "h", "54.00", null, "V19"))));
    }

    static Job job(Quote quote) {
        Map<PartKey, Part> parts = new TreeMap<>();
        parts.put(PartKey.of(PartKind.BOOKING), new Booking(1, Instant.parse("2026-03-02T08:15:00Z"), "ida",
                MachineKind.BRUSHLESS_ALTERNATOR, "Standby set, ice store 2", "Northquay Ice Works", "c-jo", "PO 7731",
                LocalDate.of(2026, 4, 17), Booking.Priority.URGENT, new BigDecimal("3500"), "lorry", null, null,
                "No output since Tuesday", null, null, 410.0, null, null, "T-118", Map.of()));
        parts.put(PartKey.quote(1), quote);
        return new Job("5f0c", "2026-0042", parts);
    }

    private static BigDecimal percent(String text) {
        return text == null ? null : new BigDecimal(text);
    }
}
