package org.copperbook.jobs.quote;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.jobs.quote.PartsOnShelf.Fit;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.stock.StockItem;

/**
 * Finds the diodes for a complete set among the stock: the maker's part by its number, else a diode of at least the current and
 * voltage of the record; for each base polarity that the set needs an item of its own, where the stock says which is which.
 */
final class DiodesOnShelf {

    private static final Pattern AMPERES = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*A\\b");
    private static final Pattern VOLTS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*V\\b");
    /** A maker's numbers for both polarities stand in one field: "40-6 K / 40-6 A". */
    private static final Pattern BETWEEN_PARTS = Pattern.compile("\\s*[/,;+&]\\s*");
    private static final int WORD = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS;
    /** The electrode on the stud as names of items say it, in languages written with Latin letters. */
    private static final Pattern CATHODE = Pattern.compile("\\b[ck][a\u00e1]th?od", WORD);
    private static final Pattern ANODE = Pattern.compile("\\b[a\u00e1]nod", WORD);

    private final PartsOnShelf stock;

    DiodesOnShelf(PartsOnShelf stock) {
        this.stock = stock;
    }

    /**
     * What fits a set.
     *
     * @return one for each polarity, cathode first, when both are needed and each has an item; one for all of the set when only
     *         one polarity is needed, or when no item is known for one of them; none when nothing fits or the record does not say
     *         what the set is
     */
    List<Fit> of(RectifierSet set) {
        if (set.circuit() == null || set.fitted() == null) {
            return List.of();
        }
        Map<BasePolarity, Integer> needed = set.needed();
        if (needed.size() == 1) {
            BasePolarity only = needed.keySet().iterator().next();
            return fit(set, only, needed.get(only)).map(List::of).orElse(List.of());
        }
        if (needed.size() == 2) {
            List<Fit> each = needed.entrySet().stream().flatMap(n -> fit(set, n.getKey(), n.getValue()).stream()).toList();
            if (each.size() == 2 && each.stream().anyMatch(f -> base(f.taken()).isPresent())
                    && !each.get(0).taken().equals(each.get(1).taken())) {
                return each;
            }
        }
        return fit(set, null, set.circuit().diodes()).map(List::of).orElse(List.of());
    }

    /** The electrode that a text puts on the stud; nothing when it names none or both. */
    static Optional<BasePolarity> base(String text) {
        boolean cathode = text != null && CATHODE.matcher(text).find();
        boolean anode = text != null && ANODE.matcher(text).find();
        return cathode == anode ? Optional.empty() : Optional.of(cathode ? BasePolarity.CATHODE_BASE : BasePolarity.ANODE_BASE);
    }

    private static Optional<BasePolarity> base(StockItem item) {
        return base(item.name() + " " + item.size());
    }

    private Optional<Fit> fit(RectifierSet set, BasePolarity base, int pieces) {
        List<List<String>> parts = set.fitted().makersPart() == null ? List.of()
                : Arrays.stream(BETWEEN_PARTS.split(set.fitted().makersPart())).map(PartsOnShelf::words).filter(w -> !w.isEmpty()).toList();
        Optional<Fit> byPart = fit(base, pieces, i -> parts.contains(PartsOnShelf.words(i.code()))
                || parts.contains(PartsOnShelf.words(i.size())) || parts.contains(PartsOnShelf.words(i.name())),
                Comparator.comparing(StockItem::code));
        return byPart.or(() -> byRating(set, base, pieces));
    }

    private Optional<Fit> byRating(RectifierSet set, BasePolarity base, int pieces) {
        Double amperes = set.fitted().averageA();
        Double volts = set.fitted().repetitivePeakV();
        return amperes == null || volts == null ? Optional.empty()
                : fit(base, pieces, i -> figure(AMPERES, i.size()).filter(a -> a >= amperes).isPresent()
                        && figure(VOLTS, i.size()).filter(v -> v >= volts).isPresent(),
                        Comparator.comparing(i -> figure(AMPERES, i.size()).orElse(0.0) + figure(VOLTS, i.size()).orElse(0.0)));
    }

    /** Of a polarity, or of any: an item that says it goes before one that does not say, and one that says the other never fits. */
    private Optional<Fit> fit(BasePolarity base, int pieces, Predicate<StockItem> fits, Comparator<StockItem> nearest) {
        if (base == null) {
            return stock.fit(StockItem.Kind.DIODE, pieces, fits, nearest);
        }
        Comparator<StockItem> saidFirst = Comparator.comparing(i -> base(i).isEmpty());
        return stock.fit(StockItem.Kind.DIODE, pieces, i -> fits.test(i) && base(i).orElse(base) == base, saidFirst.thenComparing(nearest))
                .map(f -> new Fit(base, f.taken(), f.pieces(), f.others()));
    }

    private static Optional<Double> figure(Pattern unit, String size) {
        if (size == null) {
            return Optional.empty();
        }
        Matcher found = unit.matcher(size);
        return found.find() ? Optional.of(Double.valueOf(found.group(1))) : Optional.empty();
    }
}
