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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.quote.PartsOnShelf.Fit;
import org.copperbook.jobs.quote.ProposedLine;
import org.copperbook.jobs.quote.ProposedLines;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.quote.QuoteLine;
import org.copperbook.jobs.quote.WireGrades;
import org.copperbook.jobs.quote.WirePrice;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.office.quote.PartLines.Offer;

/**
 * Puts what the job's record and the shop's prices propose into the marked alternative as lines, and prices into lines
 * that have none; each one undo step. What is missing is said.
 */
final class Proposals {

    private final PageSite site;
    private final Words words;
    private final IntSupplier marked;
    private final PartLines parts;
    private PartChoices choices;
    private Consumer<Supplier<String>> later;

    /** @param marked the alternative that the cursor is on, or -1 */
    Proposals(PageSite site, Words words, IntSupplier marked, Shelf shelf) {
        this.parts = new PartLines(site, words, shelf);
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
            offers(lines(job())).filter(o -> o.fit() != null && !parts.isThere(o, known))
                    .forEach(o -> ask(open, parts.text(o), o.fit()));
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
                List<Fit> fits = parts.fits(line);
                fits.forEach(f -> ask(open, parts.asked(line.path("text").asText(), fits, f), f));
            }
        });
        return asked(open, this::price);
    }

    private Stream<Offer> offers(List<ProposedLine> proposed) {
        return proposed.stream().flatMap(p -> parts.offers(p).stream());
    }

    private static void ask(Map<String, Fit> open, String line, Fit fit) {
        if (!fit.others().isEmpty()) {
            open.put(line, fit);
        }
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
            Set<String> before = new HashSet<>();
            lines.forEach(l -> before.add(l.path("text").asText()));
            for (ProposedLine p : proposed) {
                if (p.lacking() != null && p.work() == ProposedLine.Work.WIRE) {
                    lacking.add(words.text("proposal.noMass", words.of(p.winding()), words.of(p.lacking())));
                } else {
                    for (Offer o : parts.offers(p)) {
                        if (!parts.isThere(o, before)) {
                            StockItem item = o.fit() == null ? null : chosen.get(parts.text(o));
                            BigDecimal price = priced ? price(o.with(item), fromShelf) : null;
                            String text = parts.text(o, item);
                            before.add(text);
                            add(lines, o, text, price);
                            counts[0]++;
                            counts[1] += price != null ? 0 : 1;
                        }
                    }
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
                    Optional<BigDecimal> price = price(job, line, chosen, fromShelf);
                    price.ifPresent(p -> ((ObjectNode) line).put("unitPrice", p));
                    counts[price.isPresent() ? 0 : 1]++;
                }
            }
        });
        return refused != null ? refused
                : (words.text("proposal.priced", counts[0], counts[1]) + " " + String.join(" ", fromShelf)).strip();
    }

    private Optional<BigDecimal> price(ProposedLines job, JsonNode line, Map<String, StockItem> chosen, List<String> said) {
        return line.hasNonNull("wire") ? wire(job, line, said)
                : QuoteLine.Kind.LABOUR.name().equals(line.path("kind").asText())
                        ? site.shop().rates().perHour(line.path("trade").asText(), day()) : parts.price(line, chosen, said);
    }

    /**
     * Says that lines of some alternatives have the shop's own prices though the quote is in another currency; empty where none
     * has. Nothing is converted, since no rate of exchange is known.
     *
     * @param from  the first alternative looked at, from 0
     * @param until the one behind the last
     */
    String notConverted(int from, int until) {
        if (isShopsCurrency()) {
            return "";
        }
        ProposedLines job = job();
        JsonNode all = site.document().rows(site.key(), SideBySide.LIST);
        int lines = 0;
        for (int i = from; i < until; i++) {
            for (JsonNode line : all.path(i).path("lines")) {
                lines += line.path("unitPrice").isNumber() && isShops(job, line) ? 1 : 0;
            }
        }
        return lines == 0 ? "" : words.text("proposal.notConverted", lines, site.shop().workshop().currency(), currency());
    }

    /** Whether a line has the price that the shop has for it now. */
    private boolean isShops(ProposedLines job, JsonNode line) {
        BigDecimal price = line.path("unitPrice").decimalValue();
        List<Fit> fits = line.hasNonNull("wire") ? List.of() : parts.fits(line);
        return price(job, line, Map.of(), new ArrayList<>()).filter(p -> p.compareTo(price) == 0).isPresent()
                || fits.size() == 1 && fits.get(0).others().stream().anyMatch(o -> fits.get(0).with(o).price().compareTo(price) == 0);
    }

    /** The price of a line of wire by its size and the grade that the windings name for it; what is in the way of that is said. */
    private Optional<BigDecimal> wire(ProposedLines job, JsonNode line, List<String> said) {
        String size = line.path("wire").asText();
        return wire(job, line.path("text").asText(), size, WireGrades.of(site.document().job(), size), said);
    }

    private Optional<BigDecimal> wire(ProposedLines job, String line, String size, Set<Integer> grades, List<String> said) {
        Optional<WirePrice> found = job.wire(size, grades);
        String named = grades.stream().map(String::valueOf).collect(Collectors.joining(" / "));
        found.filter(w -> w.fit() != WirePrice.Fit.RIGHT).ifPresent(w -> said.add(w.fit() == WirePrice.Fit.OTHER
                ? words.text("proposal.otherGrade", line, named, w.grade(),
                        Money.of(w.perKilogram(), site.shop().workshop().currency()))
                : words.text("proposal.gradeNotSaid", line, named)));
        return found.filter(WirePrice::counts).map(WirePrice::perKilogram);
    }

    /** The price of a proposed line: that of the record's prices, else of the stock's item that fits, which is said. */
    private BigDecimal price(Offer o, List<String> said) {
        ProposedLine p = o.line();
        return PartLines.isPart(p) ? parts.price(o, said).orElse(null)
                : p.work() == ProposedLine.Work.WIRE ? wire(job(), parts.text(o), p.about(), p.grades(), said).orElse(null) : p.price();
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

    private String currency() {
        return site.document().value(site.key(), "/currency").asText("").strip();
    }

    /** Whether the shop's prices are in the currency of the quote. */
    boolean isShopsCurrency() {
        String quoted = currency();
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

    private void add(ArrayNode lines, Offer o, String text, BigDecimal price) {
        ProposedLine p = o.line();
        ObjectNode line = lines.addObject().put("kind", p.work().kind().name()).put("text", text)
                .put("quantity", o.quantity()).put("unit", o.unit());
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
}
