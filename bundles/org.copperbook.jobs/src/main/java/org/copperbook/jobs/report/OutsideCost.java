package org.copperbook.jobs.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.quote.QuoteLine;

/**
 * What outside work was to cost and what it did cost, before mark-up. Work belongs to the line of the quote that it names,
 * else to the one of the same text, else to the only one there is; what belongs to none stands by itself.
 *
 * @param planned  cost by text of the quote's line
 * @param paid     cost by the same text, or by the name of work that belongs to no line
 * @param unpriced names of work that went out and has no cost yet
 */
record OutsideCost(Map<String, BigDecimal> planned, Map<String, BigDecimal> paid, List<String> unpriced) {

    static OutsideCost of(Job job, List<QuoteLine> agreed) {
        Map<String, BigDecimal> planned = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (QuoteLine l : agreed) {
            if (l.kind() == QuoteLine.Kind.OUTSIDE_WORK && l.quantity() != null && l.unitPrice() != null) {
                planned.merge(text(l.text()), l.quantity().multiply(l.unitPrice()), BigDecimal::add);
            }
        }
        Map<String, BigDecimal> paid = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        List<String> unpriced = new ArrayList<>();
        List<HandBack.OutsideWork> sent = job.part(PartKind.HAND_BACK, HandBack.class).map(HandBack::outside)
                .orElse(List.of());
        for (HandBack.OutsideWork w : sent) {
            if (w.cost() != null) {
                paid.merge(line(w, planned), w.cost(), BigDecimal::add);
            } else if (w.out() != null || w.back() != null) {
                unpriced.add(text(w.what()));
            }
        }
        return new OutsideCost(planned, paid, List.copyOf(unpriced));
    }

    private static String line(HandBack.OutsideWork work, Map<String, BigDecimal> planned) {
        String named = text(work.quoteLine());
        if (!named.isEmpty()) {
            return same(named, planned).orElse(named);
        }
        return same(text(work.what()), planned)
                .orElseGet(() -> planned.size() == 1 ? planned.keySet().iterator().next() : text(work.what()));
    }

    private static Optional<String> same(String text, Map<String, BigDecimal> planned) {
        return planned.keySet().stream().filter(p -> p.equalsIgnoreCase(text)).findFirst();
    }

    private static String text(String text) {
        return text == null ? "" : text.strip();
    }
}
