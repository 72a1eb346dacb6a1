package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.PartsOnShelf;
import org.copperbook.jobs.quote.PartsOnShelf.Fit;
import org.copperbook.jobs.quote.ProposedLine;
import org.copperbook.jobs.quote.ProposedLine.Work;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.rectifier.DiodePosition.BasePolarity;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.stock.StockItem;

/**
 * Bearings and diodes of the stock for the lines of a quote: which fit, how their lines are worded, what they cost, and what is to
 * be said about it. A diode set of which each polarity is in stock has a line for each.
 */
final class PartLines {

    private static final String PIECE = "pc";

    private final PageSite site;
    private final Words words;
    private final Shelf shelf;

    /**
     * One line to be put into a quote.
     *
     * @param line  what the record proposes
     * @param fit   what fits in stock, or null
     * @param apart whether it is one polarity of a set, counted in pieces
     */
    record Offer(ProposedLine line, Fit fit, boolean apart) {

        BigDecimal quantity() {
            return apart ? BigDecimal.valueOf(fit.pieces()) : line.quantity() == null ? BigDecimal.ZERO : line.quantity();
        }

        String unit() {
            return apart ? PIECE : line.work().unit();
        }

        /** The same with another of the fitting items taken; null for the one that is. */
        Offer with(StockItem chosen) {
            return chosen == null ? this : new Offer(line, fit.with(chosen), apart);
        }
    }

    PartLines(PageSite site, Words words, Shelf shelf) {
        this.site = site;
        this.words = words;
        this.shelf = shelf;
    }

    /** Whether a proposed line is for a bearing or a diode set. */
    static boolean isPart(ProposedLine p) {
        return p.work() == Work.BEARING_DE || p.work() == Work.BEARING_NDE || p.work() == Work.DIODE_SET;
    }

    /** The lines that come of what the record proposes: one, or one for each polarity of a diode set. */
    List<Offer> offers(ProposedLine p) {
        List<Fit> fits = !isPart(p) ? List.of() : p.work() == Work.DIODE_SET ? diodes()
                : shelf.parts().flatMap(s -> s.bearing(p.about())).map(List::of).orElse(List.of());
        return fits.isEmpty() ? List.of(new Offer(p, null, false))
                : fits.stream().map(f -> new Offer(p, f, fits.size() > 1)).toList();
    }

    /** Whether a line stands already, also with another item that fits; a set may stand as a whole or by its polarities. */
    boolean isThere(Offer o, Set<String> known) {
        if (o.line().work() == Work.DIODE_SET) {
            String whole = text(new Offer(o.line(), null, false));
            List<String> same = o.apart() ? List.of(whole, text(o)) : Stream.concat(Stream.of(whole),
                    Stream.of(BasePolarity.values()).map(this::ofBase)).toList();
            return known.stream().anyMatch(k -> same.stream().anyMatch(k::startsWith));
        }
        return known.contains(text(o)) || known.contains(withoutGrade(o))
                || o.fit() != null && items(o.fit()).anyMatch(i -> known.contains(text(o, i)));
    }

    /** The words of a line. */
    String text(Offer o) {
        ProposedLine p = o.line();
        String about = p.about() == null ? "" : p.about();
        return o.apart() ? ofBase(o.fit().base()) : text(p, p.grades().size() != 1 ? about
                : words.text("proposal.graded", about, p.grades().iterator().next()));
    }

    /** As lines of wire were worded before they named a grade. */
    private String withoutGrade(Offer o) {
        return text(o.line(), o.line().about() == null ? "" : o.line().about());
    }

    private String text(ProposedLine p, String about) {
        return words.text("proposal." + p.work().name(), about, p.winding() == null ? "" : words.of(p.winding()));
    }

    /** The words of a line with the item that was chosen for it, as the stock names it; null for none. */
    String text(Offer o, StockItem chosen) {
        if (chosen == null) {
            return text(o);
        }
        String size = chosen.size() == null ? chosen.name() : chosen.size();
        return o.line().work() == Work.DIODE_SET ? words.text("proposal.diodesOf", text(o), size)
                : words.text("proposal." + o.line().work().name(), size, "");
    }

    /** The price of a line that is put in, in its unit; what is to be said about it is added. */
    Optional<BigDecimal> price(Offer o, List<String> said) {
        List<Fit> fits = o.fit() == null ? List.of() : List.of(o.apart() ? o.fit().of(1) : o.fit());
        return price(text(o), fits, o.line().work() == Work.DIODE_SET, said);
    }

    /** What fits a line that stands already: nothing, one item, or one for each polarity of a set. */
    List<Fit> fits(JsonNode line) {
        String text = line.path("text").asText();
        if (QuoteLine.Kind.BEARING.name().equals(line.path("kind").asText())) {
            return shelf.parts().flatMap(s -> s.bearingNamed(text)).map(List::of).orElse(List.of());
        }
        if (!QuoteLine.Kind.DIODE_SET.name().equals(line.path("kind").asText())) {
            return List.of();
        }
        boolean pieces = PIECE.equalsIgnoreCase(line.path("unit").asText("").strip());
        Map<BasePolarity, Integer> needed = set().map(RectifierSet::needed).orElse(Map.of());
        Optional<BasePolarity> base = base(text);
        return diodes().stream().filter(f -> base.isEmpty() || f.base() == null || f.base() == base.get())
                .map(f -> pieces ? f.of(1) : base.isEmpty() ? f : f.of(needed.getOrDefault(base.get(), f.pieces()))).toList();
    }

    /** What a question about one of the items that fit a line is about. */
    String asked(String line, List<Fit> fits, Fit fit) {
        return fits.size() == 1 ? line : words.text("proposal.diodesOf", line, words.of(fit.base()));
    }

    /** The price of a line that stands already, in its unit; what is to be said about it is added. */
    Optional<BigDecimal> price(JsonNode line, Map<String, StockItem> chosen, List<String> said) {
        String kind = line.path("kind").asText();
        boolean diodes = QuoteLine.Kind.DIODE_SET.name().equals(kind);
        if (!diodes && !QuoteLine.Kind.BEARING.name().equals(kind)) {
            return Optional.empty();
        }
        String text = line.path("text").asText();
        List<Fit> fits = fits(line);
        return price(text, fits.stream().map(f -> {
            StockItem item = chosen.get(asked(text, fits, f));
            return item == null ? f : f.with(item);
        }).toList(), diodes, said);
    }

    private Optional<BigDecimal> price(String line, List<Fit> fits, boolean diodes, List<String> said) {
        if (fits.isEmpty()) {
            said.add(words.text(shelf.parts().isEmpty() ? "proposal.stockNotRead" : "proposal.notInStock", line));
            return Optional.empty();
        }
        BigDecimal first = fits.get(0).price();
        if (fits.size() > 1 && fits.get(0).pieces() == 1 && first.compareTo(fits.get(1).price()) != 0) {
            said.add(words.text("proposal.twoPrices", line, named(fits.get(0)), named(fits.get(1))));
            return Optional.empty();
        }
        said.add(fits.size() == 1 ? words.text("proposal.fromStock", line, named(fits.get(0)), fits.get(0).pieces())
                : words.text("proposal.fromStockBoth", line, named(fits.get(0)), fits.get(0).pieces(), named(fits.get(1)),
                        fits.get(1).pieces()));
        if (diodes) {
            fits.forEach(f -> polarity(f, said));
        }
        return Optional.of(fits.size() > 1 && fits.get(0).pieces() > 1 ? first.add(fits.get(1).price()) : first);
    }

    /** Says which polarity was not found, or not named by the stock: the wrong one burns out the set. */
    private void polarity(Fit f, List<String> said) {
        Map<BasePolarity, Integer> needed = set().map(RectifierSet::needed).orElse(Map.of());
        if (f.base() == null && needed.size() > 1) {
            said.add(words.text("proposal.onePolarity", needed.get(BasePolarity.CATHODE_BASE), needed.get(BasePolarity.ANODE_BASE),
                    f.taken().code()));
        } else if (f.base() != null && base(f.taken().name() + " " + f.taken().size()).isEmpty()) {
            said.add(words.text("proposal.baseNotSaid", f.taken().code(), words.of(f.base())));
        }
    }

    private List<Fit> diodes() {
        return shelf.parts().flatMap(s -> set().map(s::diodes)).orElse(List.of());
    }

    private Optional<RectifierSet> set() {
        return site.document().part(PartKey.of(PartKind.RECTIFIER), RectifierSet.class);
    }

    private String ofBase(BasePolarity base) {
        return words.text("proposal.diodesOfBase", words.of(base));
    }

    /** The polarity that a text names in the words of this window, or in those of the trade. */
    private Optional<BasePolarity> base(String text) {
        return Stream.of(BasePolarity.values()).filter(b -> text.contains(words.of(b))).findFirst().or(() -> PartsOnShelf.base(text));
    }

    private static Stream<StockItem> items(Fit f) {
        return Stream.concat(Stream.of(f.taken()), f.others().stream());
    }

    private String named(Fit f) {
        StockItem item = f.taken();
        return words.text("proposal.item", item.code(), item.size() == null ? item.name() : item.size(),
                Money.of(item.price(), site.shop().workshop().currency()));
    }
}
