package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.PartsOnShelf;
import org.copperbook.jobs.quote.PartsOnShelf.Fit;
import org.copperbook.jobs.quote.ProposedLine;
import org.copperbook.jobs.quote.ProposedLines;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.stock.StockItem;

/**
 * Puts what the job's record and the shop's prices propose into the marked alternative as lines, and prices into lines
 * that have none; each one undo step. What is missing is said.
 */
final class Proposals {

    private final PageSite site;
    private final Words words;
    private final IntSupplier marked;
    private final Shelf shelf;
    private PartChoices choices;
    private Consumer<Supplier<String>> later;

    /** @param marked the alternative that the cursor is on, or -1 */
    Proposals(PageSite site, Words words, IntSupplier marked, Shelf shelf) {
        this.shelf = shelf;
        this.site = site;
        this.words = words;
        this.marked = marked;
    }

    /**
     * Where to ask which of several fitting items is to be taken.
     *
     * @param whenChosen does what was asked for once it is chosen, and says what came of it
     */
    void ask(PartChoices where, Consumer<Supplier<String>> whenChosen) {
        choices = where;
        later = whenChosen;
    }

    /** Adds the lines that are not there yet and says how many, and what is missing; asks first where several items fit. */
    String lines() {
        Set<String> known = known();
        Map<String, Fit> open = new LinkedHashMap<>();
        if (isShopsCurrency()) {
            lines(job()).stream().filter(p -> p.price() == null && !isThere(p, known)).forEach(p -> offer(open, text(p), fit(p)));
        }
        return asked(open, this::put);
    }

    /** Puts rates and prices of the shelf into lines without a price, and says how many are still without; asks as above. */
    String prices() {
        if (!isShopsCurrency()) {
            return words.text("proposal.otherCurrency", site.shop().workshop().currency());
        }
        Map<String, Fit> open = new LinkedHashMap<>();
        into().path("lines").forEach(line -> {
            if (!line.hasNonNull("unitPrice") && !line.hasNonNull("wire")) {
                offer(open, line.path("text").asText(), fit(line));
            }
        });
        return asked(open, this::price);
    }

    private static void offer(Map<String, Fit> open, String line, Optional<Fit> fit) {
        fit.filter(f -> !f.others().isEmpty()).ifPresent(f -> open.put(line, f));
    }

    private String asked(Map<String, Fit> open, Function<Map<String, StockItem>, String> then) {
        if (open.isEmpty()) {
            choices.close();
            return then.apply(Map.of());
        }
        choices.ask(open, chosen -> later.accept(() -> then.apply(chosen)), () -> later.accept(() -> words.text("proposal.left")));
        return words.text("proposal.asked", open.size());
    }

    /** The alternative that lines go into; empty while there is none. */
    private JsonNode into() {
        return site.document().rows(site.key(), SideBySide.LIST).path(Math.max(0, marked.getAsInt()));
    }

    private Set<String> known() {
        Set<String> known = new HashSet<>();
        into().path("lines").forEach(l -> known.add(l.path("text").asText()));
        return known;
    }

    /** Whether a line stands already, also with another item that fits. */
    private boolean isThere(ProposedLine p, Set<String> known) {
        return known.contains(text(p)) || fit(p).stream().flatMap(f -> Stream.concat(Stream.of(f.taken()), f.others().stream()))
                .anyMatch(i -> known.contains(text(p, i)));
    }

    private String put(Map<String, StockItem> chosen) {
        List<ProposedLine> proposed = lines(job());
        List<String> lacking = new ArrayList<>();
        List<String> fromShelf = new ArrayList<>();
        boolean priced = isShopsCurrency();
        int[] counts = new int[2];
        String refused = change(lines -> {
            counts[0] = 0;
            counts[1] = 0;
            lacking.clear();
            fromShelf.clear();
            Set<String> known = new HashSet<>();
            lines.forEach(l -> known.add(l.path("text").asText()));
            for (ProposedLine p : proposed) {
                if (p.lacking() != null && p.work() == ProposedLine.Work.WIRE) {
                    lacking.add(words.text("proposal.noMass", words.of(p.winding()), words.of(p.lacking())));
                } else if (!isThere(p, known)) {
                    StockItem item = chosen.get(text(p));
                    BigDecimal price = priced ? price(p, item, fromShelf) : null;
                    String text = item == null ? text(p) : text(p, item);
                    known.add(text);
                    add(lines, p, text, price);
                    counts[0]++;
                    counts[1] += price != null ? 0 : 1;
                }
            }
        });
        if (refused != null) {
            return refused;
        }
        StringBuilder said = new StringBuilder(words.text("proposal.added", counts[0], counts[1]));
        if (proposed.stream().noneMatch(p -> p.work() == ProposedLine.Work.LABOUR)) {
            said.append(' ').append(words.text("proposal.noRates"));
        } else if (counts[0] > 0) {
            said.append(' ').append(words.text("proposal.hours"));
        }
        lacking.forEach(l -> said.append(' ').append(l));
        fromShelf.forEach(l -> said.append(' ').append(l));
        if (!priced) {
            said.append(' ').append(words.text("proposal.otherCurrency", site.shop().workshop().currency()));
        }
        return said.toString();
    }

    private String price(Map<String, StockItem> chosen) {
        ProposedLines job = job();
        List<String> fromShelf = new ArrayList<>();
        int[] counts = new int[2];
        String refused = change(lines -> {
            counts[0] = 0;
            counts[1] = 0;
            fromShelf.clear();
            for (JsonNode line : lines) {
                if (!line.hasNonNull("unitPrice")) {
                    Optional<BigDecimal> price = line.hasNonNull("wire") ? job.perKilogram(line.path("wire").asText())
                            : QuoteLine.Kind.LABOUR.name().equals(line.path("kind").asText())
                                    ? site.shop().rates().perHour(line.path("trade").asText(), day()) : part(line, chosen, fromShelf);
                    price.ifPresent(p -> ((ObjectNode) line).put("unitPrice", p));
                    counts[price.isPresent() ? 0 : 1]++;
                }
            }
        });
        return refused != null ? refused
                : (words.text("proposal.priced", counts[0], counts[1]) + " " + String.join(" ", fromShelf)).strip();
    }

    /** The price of a proposed line: that of the record's prices, else of the stock's item that fits, which is said. */
    private BigDecimal price(ProposedLine p, StockItem chosen, List<String> said) {
        return p.price() != null ? p.price() : switch (p.work()) {
            case BEARING_DE, BEARING_NDE, DIODE_SET -> shelf(text(p), fit(p), chosen, said).orElse(null);
            case WIRE, LABOUR, BALANCING -> null;
        };
    }

    private Optional<Fit> fit(ProposedLine p) {
        return switch (p.work()) {
            case BEARING_DE, BEARING_NDE -> shelf.parts().flatMap(s -> s.bearing(p.about()));
            case DIODE_SET -> shelf.parts().flatMap(this::diodes);
            case WIRE, LABOUR, BALANCING -> Optional.empty();
        };
    }

    /** The price of a bearing or a diode set that stands in a line already. */
    private Optional<BigDecimal> part(JsonNode line, Map<String, StockItem> chosen, List<String> said) {
        String text = line.path("text").asText();
        return isPart(line) ? shelf(text, fit(line), chosen.get(text), said) : Optional.empty();
    }

    private static boolean isPart(JsonNode line) {
        String kind = line.path("kind").asText();
        return QuoteLine.Kind.BEARING.name().equals(kind) || QuoteLine.Kind.DIODE_SET.name().equals(kind);
    }

    private Optional<Fit> fit(JsonNode line) {
        if (!isPart(line)) {
            return Optional.empty();
        }
        return QuoteLine.Kind.BEARING.name().equals(line.path("kind").asText())
                ? shelf.parts().flatMap(s -> s.bearingNamed(line.path("text").asText())) : shelf.parts().flatMap(this::diodes);
    }

    private Optional<Fit> diodes(PartsOnShelf stock) {
        return site.document().part(PartKey.of(PartKind.RECTIFIER), RectifierSet.class).flatMap(stock::diodes);
    }

    private Optional<BigDecimal> shelf(String line, Optional<Fit> fits, StockItem chosen, List<String> said) {
        Optional<Fit> fit = chosen == null ? fits : fits.map(f -> f.with(chosen));
        if (fit.isEmpty()) {
            said.add(words.text(shelf.parts().isEmpty() ? "proposal.stockNotRead" : "proposal.notInStock", line));
        } else {
            said.add(words.text("proposal.fromStock", line, named(fit.get().taken()), fit.get().pieces()));
            if (fit.get().taken().kind() == StockItem.Kind.DIODE && fit.get().pieces() > 1) {
                said.add(words.text("proposal.polarities"));
            }
        }
        return fit.map(Fit::price);
    }

    private String named(StockItem item) {
        return words.text("proposal.item", item.code(), item.size() == null ? item.name() : item.size(), item.price());
    }

    private ProposedLines job() {
        return new ProposedLines(site.document().job(), site.shop().stock(), site.shop().rates());
    }

    private List<ProposedLine> lines(ProposedLines of) {
        return of.of(day(), site.verdicts());
    }

    private LocalDate day() {
        return quote().map(Quote::date).orElseGet(LocalDate::now);
    }

    private Optional<Quote> quote() {
        return site.document().part(site.key(), Quote.class);
    }

    private boolean isShopsCurrency() {
        String quoted = site.document().value(site.key(), "/currency").asText("").strip();
        return quoted.isEmpty() || quoted.equalsIgnoreCase(site.shop().workshop().currency());
    }

    private String change(Consumer<ArrayNode> lines) {
        int to = Math.max(0, marked.getAsInt());
        return site.document().change(site.key(), SideBySide.LIST + "/" + to + "/lines", tree -> {
            ArrayNode alternatives = tree.withArray("alternatives");
            ObjectNode into = alternatives.isEmpty() ? alternatives.addObject() : (ObjectNode) alternatives.get(to);
            lines.accept(into.withArray("lines"));
            return tree;
        }).orElse(null);
    }

    private void add(ArrayNode lines, ProposedLine p, String text, BigDecimal price) {
        ObjectNode line = lines.addObject().put("kind", p.work().kind().name()).put("text", text)
                .put("quantity", p.quantity() == null ? BigDecimal.ZERO : p.quantity()).put("unit", p.work().unit());
        if (price != null) {
            line.put("unitPrice", price);
        }
        if (p.work() == ProposedLine.Work.LABOUR) {
            line.put("trade", p.about());
        }
        if (p.work() == ProposedLine.Work.WIRE) {
            line.put("wire", p.about());
        }
        quote().flatMap(q -> q.taxes().stream().findFirst()).ifPresent(t -> line.put("tax", t.code()));
    }

    /** The text with the item that was chosen for it, as the stock names it. */
    private String text(ProposedLine p, StockItem item) {
        String size = item.size() == null ? item.name() : item.size();
        return p.work() == ProposedLine.Work.DIODE_SET ? words.text("proposal.diodesOf", text(p), size)
                : words.text("proposal." + p.work().name(), size, "");
    }

    private String text(ProposedLine p) {
        return words.text("proposal." + p.work().name(), p.about() == null ? "" : p.about(),
                p.winding() == null ? "" : words.of(p.winding()));
    }
}
