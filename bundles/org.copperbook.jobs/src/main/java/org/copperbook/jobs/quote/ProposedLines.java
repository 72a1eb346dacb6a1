package org.copperbook.jobs.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.quote.ProposedLine.Lacking;
import org.copperbook.jobs.quote.ProposedLine.Work;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;

/**
 * What a quote for rewinding needs, as far as the record of the job says it: wire by the mass that turns, mean turn and
 * wire of each captured winding imply, an hour of each trade at its rate, the diode set where a diode fails, both
 * bearings of the nameplate, balancing where a rotor is wound. Nothing is guessed: what the record does not say is named.
 */
public final class ProposedLines {

    /** Added to the bare mass for ends and waste. Common practice (5 to 10 %), no source. */
    public static final BigDecimal ALLOWANCE = new BigDecimal("0.05");
    private static final int GRAM = 3;

    private final Job job;
    private final WireStock stock;
    private final LabourRates rates;

    /**
     * Looks at a job with the shop's shelf and rates.
     *
     * @param stock wire with its price now, in the shop's currency
     */
    public ProposedLines(Job job, WireStock stock, LabourRates rates) {
        this.job = job;
        this.stock = stock;
        this.rates = rates;
    }

    /**
     * The lines, in the order of a quote.
     *
     * @param day      day whose rates count
     * @param verdicts the verdicts of the job
     */
    public List<ProposedLine> of(LocalDate day, List<Verdict> verdicts) {
        List<ProposedLine> lines = new ArrayList<>();
        trades(rates).forEach(t -> lines.add(new ProposedLine(Work.LABOUR, null, t, null, rates.perHour(t, day).orElse(null),
                Lacking.HOURS)));
        boolean rotor = false;
        for (WindingRole role : WindingRole.values()) {
            Optional<WindingData> winding = job.windingAsWound(role).filter(w -> !w.wire().isEmpty())
                    .or(() -> job.windingAsFound(role));
            winding.ifPresent(w -> wire(role, w, lines));
            rotor |= winding.isPresent() && role.isRotor();
        }
        if (verdicts.stream().anyMatch(v -> v.current() && v.part().kind() == PartKind.RECTIFIER && v.outcome() == Outcome.FAILS)) {
            lines.add(new ProposedLine(Work.DIODE_SET, null, null, BigDecimal.ONE, null, null));
        }
        job.nameplate().ifPresent(n -> {
            bearing(Work.BEARING_DE, n.bearingDE()).ifPresent(lines::add);
            bearing(Work.BEARING_NDE, n.bearingNDE()).ifPresent(lines::add);
        });
        if (rotor) {
            lines.add(new ProposedLine(Work.BALANCING, null, null, BigDecimal.ONE, null, null));
        }
        return lines;
    }

    /**
     * The price of a kilogram of wire now.
     *
     * @param size   size as the trade writes it
     * @param grades grades of enamel that will do; empty when any will
     * @return nothing when the shelf has no wire of the size with a price
     */
    public Optional<WirePrice> wire(String size, Set<Integer> grades) {
        return WirePrice.find(stock.spools(), size, grades);
    }

    /** The trades that the shop has rates for, each once. */
    static TreeSet<String> trades(LabourRates rates) {
        TreeSet<String> trades = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        rates.rates().stream().map(LabourRates.Rate::trade).filter(t -> t != null && !t.isBlank()).map(String::strip)
                .forEach(trades::add);
        return trades;
    }

    private void wire(WindingRole role, WindingData winding, List<ProposedLine> lines) {
        try {
            Optional<Map<String, Double>> bySize = new WindingModel(winding).copperKgBySize();
            if (bySize.isEmpty()) {
                lines.add(new ProposedLine(Work.WIRE, role, null, null, null, lacking(winding)));
                return;
            }
            bySize.get().forEach((size, kg) -> {
                Set<Integer> grades = WireGrades.of(winding, size);
                lines.add(new ProposedLine(Work.WIRE, role, size, grades, BigDecimal.valueOf(kg)
                        .multiply(BigDecimal.ONE.add(ALLOWANCE)).setScale(GRAM, RoundingMode.HALF_UP).stripTrailingZeros(),
                        wire(size, grades).filter(WirePrice::counts).map(WirePrice::perKilogram).orElse(null), null));
            });
        } catch (OutOfRange notUnderstood) {
            lines.add(new ProposedLine(Work.WIRE, role, null, null, null, Lacking.SIZE));
        }
    }

    private static Lacking lacking(WindingData w) {
        boolean sized = Stream.concat(w.wire().stream(), w.groups().stream().flatMap(g -> g.wire().stream()))
                .map(WireInHand::size).anyMatch(s -> s != null);
        return !sized ? Lacking.WIRE : w.meanTurnM() == null ? Lacking.MEAN_TURN : Lacking.TURNS;
    }

    private static Optional<ProposedLine> bearing(Work which, String type) {
        return type == null || type.isBlank() ? Optional.empty()
                : Optional.of(new ProposedLine(which, null, type.strip(), BigDecimal.ONE, null, null));
    }
}
