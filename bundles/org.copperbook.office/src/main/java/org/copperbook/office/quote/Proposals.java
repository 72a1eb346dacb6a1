package org.copperbook.office.quote;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.PartsOnShelf;
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

    /** @param marked the alternative that the cursor is on, or -1 */
    Proposals(PageSite site, Words words, IntSupplier marked, Shelf shelf) {
        this.shelf = shelf;
        this.site = site;
        this.words = words;
        this.marked = marked;
    }

    /** Adds the lines that are not there yet and says how many, and what is missing. */
    String lines() {
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
                } else if (known.add(text(p))) {
                    BigDecimal price = priced ? price(p, fromShelf) : null;
                    add(lines, p, price);
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

    /** Puts rates and prices of the shelf into lines without a price, and says how many are still without. */
    String prices() {
        if (!isShopsCurrency()) {
            return words.text("proposal.otherCurrency", site.shop().workshop().currency());
        }
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
                                    ? site.shop().rates().perHour(line.path("trade").asText(), day()) : part(line, fromShelf);
                    price.ifPresent(p -> ((ObjectNode) line).put("unitPrice", p));
                    counts[price.isPresent() ? 0 : 1]++;
                }
            }
        });
        return refused != null ? refused
                : (words.text("proposal.priced", counts[0], counts[1]) + " " + String.join(" ", fromShelf)).strip();
    }

    /** The price of a proposed line: that of the record's prices, else of the stock's item that fits, which is said. */
    private BigDecimal price(ProposedLine p, List<String> said) {
        return p.price() != null ? p.price() : switch (p.work()) {
            case BEARING_DE, BEARING_NDE -> shelf(text(p), said, s -> s.bearing(p.about())).orElse(null);
            case DIODE_SET -> shelf(text(p), said, this::diodes).orElse(null);
            case WIRE, LABOUR, BALANCING -> null;
        };
    }

    /** The price of a bearing or a diode set that stands in a line already. */
    private Optional<BigDecimal> part(JsonNode line, List<String> said) {
        String kind = line.path("kind").asText();
        String text = line.path("text").asText();
        if (QuoteLine.Kind.BEARING.name().equals(kind)) {
            return shelf(text, said, s -> s.bearingNamed(text));
        }
        return QuoteLine.Kind.DIODE_SET.name().equals(kind) ? shelf(text, said, this::diodes) : Optional.empty();
    }

    private Optional<PartsOnShelf.Fit> diodes(PartsOnShelf stock) {
        return site.document().part(PartKey.of(PartKind.RECTIFIER), RectifierSet.class).flatMap(stock::diodes);
    }

    private Optional<BigDecimal> shelf(String line, List<String> said, Function<PartsOnShelf, Optional<PartsOnShelf.Fit>> find) {
        Optional<PartsOnShelf> stock = shelf.parts();
        Optional<PartsOnShelf.Fit> fit = stock.flatMap(find);
        if (fit.isEmpty()) {
            said.add(words.text(stock.isEmpty() ? "proposal.stockNotRead" : "proposal.notInStock", line));
        } else {
            String taken = named(fit.get().taken());
            List<StockItem> others = fit.get().others();
            said.add(others.isEmpty() ? words.text("proposal.fromStock", line, taken, fit.get().pieces())
                    : words.text("proposal.fromStockOfMore", line, taken, fit.get().pieces(),
                            others.stream().map(this::named).collect(Collectors.joining("; "))));
        }
        return fit.map(PartsOnShelf.Fit::price);
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

    private String change(java.util.function.Consumer<ArrayNode> lines) {
        int to = Math.max(0, marked.getAsInt());
        return site.document().change(site.key(), SideBySide.LIST + "/" + to + "/lines", tree -> {
            ArrayNode alternatives = tree.withArray("alternatives");
            ObjectNode into = alternatives.isEmpty() ? alternatives.addObject() : (ObjectNode) alternatives.get(to);
            lines.accept(into.withArray("lines"));
            return tree;
        }).orElse(null);
    }

    private void add(ArrayNode lines, ProposedLine p, BigDecimal price) {
        ObjectNode line = lines.addObject().put("kind", p.work().kind().name()).put("text", text(p))
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

    private String text(ProposedLine p) {
        return words.text("proposal." + p.work().name(), p.about() == null ? "" : p.about(),
                p.winding() == null ? "" : words.of(p.winding()));
    }
}
