package org.copperbook.jobs.check;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;

/** Tells what the workshop earns on a quote from the rest of it. */
public final class MarkUpGuard {

    private MarkUpGuard() {
    }

    /**
     * Whether a save sets what the workshop earns: another mark-up, margin or discount of an alternative, or a discount of
     * a line that was not there. A copy of an alternative with the same figures sets nothing.
     *
     * @param now  the quote as kept, or null
     * @param next the quote to be kept instead
     */
    public static boolean sets(Quote now, Quote next) {
        Map<String, Set<List<BigDecimal>>> named = new HashMap<>();
        Set<List<BigDecimal>> all = new HashSet<>();
        if (now != null) {
            now.alternatives().forEach(a -> {
                named.computeIfAbsent(String.valueOf(a.name()), n -> new HashSet<>()).add(figures(a));
                all.add(figures(a));
            });
        }
        all.add(List.of(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
        boolean alternatives = next.alternatives().stream()
                .anyMatch(a -> !named.getOrDefault(String.valueOf(a.name()), all).contains(figures(a)));
        return alternatives || !discounts(now).containsAll(discounts(next));
    }

    private static List<BigDecimal> figures(Quote.Alternative a) {
        return List.of(plain(a.markUpPercent()), plain(a.marginPercent()), plain(a.discountPercent()));
    }

    private static Set<BigDecimal> discounts(Quote quote) {
        return quote == null ? Set.of() : quote.alternatives().stream().flatMap(a -> a.lines().stream())
                .map(QuoteLine::discountPercent).filter(d -> d != null && d.signum() != 0).map(MarkUpGuard::plain)
                .collect(Collectors.toSet());
    }

    /** 10 and 10.0 are one percentage, and none is 0. */
    private static BigDecimal plain(BigDecimal percent) {
        return percent == null || percent.signum() == 0 ? BigDecimal.ZERO : percent.stripTrailingZeros();
    }
}
