package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.stock.StockItem;

/**
 * Finds the bearings and diodes of a job among the stock. An item fits by what its size says; nothing is taken to fit that
 * is less than what the record names. Prices are the stock's, in the shop's currency.
 */
public final class PartsOnShelf {

    private static final Pattern SEPARATORS = Pattern.compile("[\\s/,;()-]+");
    private static final Pattern DESIGNATION = Pattern.compile("[A-Z]{0,4}\\d{3,}[A-Z0-9.]*");
    /** Clearance (ISO 5753-1, from memory), seals, shields, cages and snap rings as makers write them: common practice, no source. */
    private static final Pattern SUFFIX = Pattern.compile("C[2-5]|\\d?(?:RS|RZ|LS)[A-Z0-9]?|\\d?Z|ZZ|DDU|LLU|M|J|NR?|TN9?|P[56]");

    private final List<StockItem> items;

    /**
     * What fits.
     *
     * @param base   which of the diodes of a set it is for; null for all of them, and for what is no diode
     * @param taken  the item whose price is taken
     * @param pieces how many of it are one unit of the line
     * @param others what fits as well, the likeliest first
     */
    public record Fit(BasePolarity base, StockItem taken, int pieces, List<StockItem> others) {

        Fit(StockItem taken, int pieces, List<StockItem> others) {
            this(null, taken, pieces, others);
        }

        /** The same with another of the fitting items taken. */
        public Fit with(StockItem chosen) {
            List<StockItem> left = new ArrayList<>(others);
            if (!chosen.equals(taken)) {
                left.remove(chosen);
                left.add(0, taken);
            }
            return new Fit(base, chosen, pieces, List.copyOf(left));
        }

        /** The same for a line whose unit is so many pieces. */
        public Fit of(int number) {
            return new Fit(base, taken, number, others);
        }

        /** Price of one unit of the line. */
        public BigDecimal price() {
            return taken.price().multiply(BigDecimal.valueOf(pieces));
        }
    }

    /** @param items the stock; what is retired or has no price is left out */
    public PartsOnShelf(Collection<StockItem> items) {
        this.items = items.stream().filter(i -> !Boolean.TRUE.equals(i.retired()) && i.price() != null).toList();
    }

    /**
     * The bearing with a designation. Suffixes that are asked for (clearance, seals) have to be there; an item may have more.
     *
     * @param designation as on the plate, "6314 C3"
     */
    public Optional<Fit> bearing(String designation) {
        List<String> asked = words(designation);
        return asked.isEmpty() ? Optional.empty() : fit(StockItem.Kind.BEARING, 1, i -> {
            List<String> has = words(i.size());
            return !has.isEmpty() && has.get(0).equals(asked.get(0)) && new HashSet<>(has).containsAll(asked);
        }, Comparator.comparingInt(i -> words(i.size()).size()));
    }

    /** The bearing that a text of a line names, with the suffixes behind its number, when it names one only. */
    public Optional<Fit> bearingNamed(String text) {
        List<String> words = words(text);
        Set<String> named = new HashSet<>();
        for (int i = 0; i < words.size(); i++) {
            if (DESIGNATION.matcher(words.get(i)).matches()) {
                int end = i + 1;
                while (end < words.size() && SUFFIX.matcher(words.get(end)).matches()) {
                    end++;
                }
                named.add(String.join(" ", words.subList(i, end)));
            }
        }
        return named.size() == 1 ? bearing(named.iterator().next()) : Optional.empty();
    }

    /**
     * The diodes for a complete set like the one in the record: the maker's part by its number, else a diode of at least its
     * current and voltage.
     *
     * @return one fit for each base polarity, cathode first, where the set needs both and the stock has an item for each; one for
     *         the whole set otherwise; none when nothing fits or the record does not say what the set is
     */
    public List<Fit> diodes(RectifierSet set) {
        return new DiodesOnShelf(this).of(set);
    }

    /** The electrode on the stud that a text names; nothing when it names none or both. */
    public static Optional<BasePolarity> base(String text) {
        return DiodesOnShelf.base(text);
    }

    /** The nearest first; of equally near ones what is on the shelf, then the dearer, so that no quote is too low by it. */
    Optional<Fit> fit(StockItem.Kind kind, int pieces, Predicate<StockItem> fits, Comparator<StockItem> nearest) {
        List<StockItem> all = items.stream().filter(i -> i.kind() == kind).filter(fits)
                .sorted(nearest.thenComparing(i -> i.free().signum() > 0 ? 0 : 1)
                        .thenComparing(StockItem::price, Comparator.reverseOrder()).thenComparing(StockItem::code))
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(new Fit(all.get(0), pieces, all.subList(1, all.size())));
    }

    static List<String> words(String text) {
        return text == null ? List.of() : Arrays.stream(SEPARATORS.split(text.strip().toUpperCase(Locale.ROOT)))
                .filter(w -> !w.isEmpty()).toList();
    }
}
