package org.copperbook.jobs.winding.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.MachineType;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.StockedWire;
import org.copperbook.calc.wire.Substitute;
import org.copperbook.calc.wire.Substitution;
import org.copperbook.calc.wire.SubstitutionWish;
import org.copperbook.calc.wire.WireSize;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.InsulatedWire;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.jobs.winding.WireInHand;
import org.copperbook.jobs.winding.stock.WireProposal.Need;
import org.copperbook.jobs.winding.stock.WireProposal.Warning;

/** Proposals from the shop's shelf for the wire in hand of a winding, best first; turns and circuits stay as they are. */
public final class WireProposals {

    /** Share added to the copper of the winding for ends, connections and waste; common practice, no source. */
    public static final double ALLOWANCE = 0.05;
    private static final double AREA_OFF = 0.03;
    private static final double NOTHING = 1e-9;
    private static final int GRADE_2 = 2;

    private final WindingData original;
    private final List<StockedWire> shelf = new ArrayList<>();
    private final Map<StockedWire, String> names = new HashMap<>();
    private final ConductorBundle bundle;
    private final Optional<Double> room;
    private final Optional<Double> fill;
    private final double metres;

    private WireProposals(WindingData original, WireStock stock) throws NotSubstitutable {
        this.original = original;
        checkRound(original);
        stock(stock);
        bundle = new WindingModel(original).conductor().orElseThrow(() -> new NotSubstitutable(Why.NO_WIRE, ""));
        room = InsulatedWire.squareSum(original.wire());
        fill = room.flatMap(r -> InsulatedWire.slotArea(original).map(a -> r * wiresInFullestSlot() / a))
                .filter(f -> f > 0);
        metres = strandMetres();
    }

    /**
     * The proposals for a winding.
     *
     * @param original the winding whose wire is to be replaced
     * @param stock    the shelf
     * @param wish     what a proposal has to keep to
     * @param wanted   how many, 1 to 1000
     * @return the original itself first where the shelf has it, then the best first; empty when nothing fits
     * @throws NotSubstitutable when the wire in hand is not one that can be replaced size for size
     * @throws OutOfRange       when the wish cannot be
     */
    public static List<WireProposal> of(WindingData original, WireStock stock, WireWish wish, int wanted)
            throws NotSubstitutable {
        return new WireProposals(original, stock).best(wish, wanted);
    }

    /** Why a wire cannot be replaced here. */
    public enum Why {
        /** No wire in hand is recorded. */
        NO_WIRE,
        /** A strip, or a size that is not understood. */
        NOT_ROUND,
        /** A group has a wire of its own. */
        GROUP_WIRE
    }

    /** The wire in hand is not one that can be replaced size for size. */
    public static final class NotSubstitutable extends Exception {
        private static final long serialVersionUID = 1L;

        private final Why why;
        private final String which;

        NotSubstitutable(Why why, String which) {
            super(why + " " + which);
            this.why = why;
            this.which = which;
        }

        public Why why() {
            return why;
        }

        /** The size or the group meant; empty when there is none. */
        public String which() {
            return which;
        }
    }

    private static void checkRound(WindingData w) throws NotSubstitutable {
        if (w.wire().isEmpty()) {
            throw new NotSubstitutable(Why.NO_WIRE, "");
        }
        for (WireInHand wire : w.wire()) {
            if (InsulatedWire.round(wire.size()).isEmpty()) {
                throw new NotSubstitutable(Why.NOT_ROUND, wire.size());
            }
        }
        for (CoilGroup g : w.groups()) {
            if (!g.wire().isEmpty()) {
                throw new NotSubstitutable(Why.GROUP_WIRE, String.valueOf(g.number()));
            }
        }
    }

    /** Spools of one size and grade count together; strips and sizes that are not understood stay out. */
    private void stock(WireStock stock) {
        Map<WireSize, Map<InsulationGrade, Double>> kilograms = new LinkedHashMap<>();
        Map<WireSize, String> called = new HashMap<>();
        for (WireStock.Spool s : stock.spools()) {
            Optional<WireSize> size = InsulatedWire.round(s.size());
            Optional<InsulationGrade> grade = InsulatedWire.grade(s.grade());
            if (size.isPresent() && grade.isPresent() && s.onHandKg() != null && s.onHandKg() > 0) {
                kilograms.computeIfAbsent(size.get(), k -> new LinkedHashMap<>())
                        .merge(grade.get(), s.onHandKg(), Double::sum);
                called.putIfAbsent(size.get(), s.size());
            }
        }
        kilograms.forEach((size, byGrade) -> byGrade.forEach((grade, kg) -> {
            StockedWire wire = new StockedWire(size, grade, kg);
            shelf.add(wire);
            names.put(wire, called.get(size));
        }));
    }

    /** Length of each strand for the whole winding with the allowance, m; 0 while turns or mean turn are missing. */
    private double strandMetres() {
        double turns = 0;
        for (CoilGroup g : original.groups()) {
            int here = WindingModel.turns(g);
            if (here == 0) {
                return 0;
            }
            turns += here;
        }
        if (turns == 0 && original.coilCount() != null && original.turnsPerCoil() != null) {
            turns = (double) original.coilCount() * original.turnsPerCoil();
        }
        return original.meanTurnM() == null ? 0 : turns * original.meanTurnM() * (1 + ALLOWANCE);
    }

    private double wiresInFullestSlot() {
        Map<Integer, Integer> turns = new HashMap<>();
        for (CoilGroup g : original.groups()) {
            for (CapturedCoil c : g.coils()) {
                if (c.turns() == null || c.goSlot() == null || c.returnSlot() == null) {
                    return 0;
                }
                turns.merge(c.goSlot(), c.turns(), Integer::sum);
                turns.merge(c.returnSlot(), c.turns(), Integer::sum);
            }
        }
        return turns.isEmpty() ? 0 : Collections.max(turns.values());
    }

    private List<WireProposal> best(WireWish wish, int wanted) {
        SubstitutionWish search = SubstitutionWish.of(bundle.area(), wish.mostStrands())
                .withBand(wish.lowest(), wish.highest()).withSizes(wish.mostSizes());
        if (wish.stockOnly() && metres > 0) {
            search = search.withLength(metres);
        }
        if (wish.fillKept() && room.isPresent()) {
            search = search.withSquareSum(largestRoom());
        }
        List<WireProposal> all = new ArrayList<>();
        same(wish).map(this::proposal).ifPresent(all::add);
        Substitution.best(shelf, search, wanted).stream().map(this::proposal)
                .filter(p -> all.isEmpty() || !p.wires().equals(all.get(0).wires())).forEach(all::add);
        return List.copyOf(all.subList(0, Math.min(wanted, all.size())));
    }

    /** The original itself, when the shelf holds every size of it; it comes first whatever the wish. */
    private Optional<Substitute> same(WireWish wish) {
        List<Substitute.Part> parts = new ArrayList<>();
        double squares = 0;
        double least = Double.POSITIVE_INFINITY;
        for (WireInHand w : original.wire()) {
            Optional<StockedWire> held = shelf.stream().filter(s -> s.size().equals(InsulatedWire.round(w.size()).orElseThrow()))
                    .filter(s -> w.grade() == null || InsulatedWire.grade(w.grade()).equals(Optional.of(s.grade())))
                    .findFirst();
            if (held.isEmpty()) {
                return Optional.empty();
            }
            double kilograms = w.strands() * held.get().size().kilogramsPerMetre() * metres;
            double overall = held.get().size().overallDiameter(held.get().grade()).maximum();
            squares += w.strands() * overall * overall;
            least = Math.min(least, held.get().kilograms() - kilograms);
            parts.add(new Substitute.Part(w.strands(), held.get(), kilograms));
        }
        return wish.stockOnly() && least < 0 ? Optional.empty()
                : Optional.of(new Substitute(parts, bundle.count(), 0, squares, least));
    }

    /** The original at its largest diameters: what was measured on one strand must not rule out the same wire new. */
    private double largestRoom() {
        Optional<Double> byTable = InsulatedWire.squareSum(original.wire().stream()
                .map(w -> new WireInHand(w.size(), w.strands(), w.grade() == null ? GRADE_2 : w.grade(), null, null,
                        w.more())).toList());
        return Math.max(room.orElse(0.0), byTable.orElse(0.0));
    }

    private WireProposal proposal(Substitute s) {
        List<WireInHand> wires = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        List<String> label = new ArrayList<>();
        double area = 0;
        for (Substitute.Part p : s.parts()) {
            String name = names.get(p.wire());
            wires.add(new WireInHand(name, p.count(), p.wire().grade() == InsulationGrade.GRADE_1 ? 1 : 2, null, null,
                    Map.of()));
            label.add(p.count() + " \u00d7 " + name);
            area += p.count() * p.wire().size().area();
            Double need = metres > 0 ? (Double) (p.count() * p.wire().size().kilogramsPerMetre() * metres) : null;
            needs.add(new Need(name, need, p.wire().kilograms()));
        }
        Double roomChange = room.map(r -> s.squareSum() / largestRoom() - 1).orElse(null);
        Double newFill = fill.map(f -> f * s.squareSum() / room.orElseThrow()).orElse(null);
        return new WireProposal(wires, String.join(" + ", label), s.strands(), area, s.areaError(),
                1 / (1 + s.areaError()) - 1, roomChange, newFill, needs, warnings(s, wires, needs, roomChange, newFill));
    }

    private List<Warning> warnings(Substitute s, List<WireInHand> wires, List<Need> needs, Double roomChange,
            Double newFill) {
        Set<Warning> all = EnumSet.noneOf(Warning.class);
        double highest = UsualRange.of(MachineType.SALIENT_POLE, DesignQuantity.SQUARE_CELL_FILL).high();
        add(all, s.underOriginal(), Warning.LESS_COPPER);
        add(all, Math.abs(s.areaError()) > AREA_OFF + NOTHING, Warning.AREA_OFF);
        add(all, s.strands() > bundle.count(), Warning.MORE_STRANDS);
        add(all, roomChange != null && roomChange > NOTHING, Warning.TIGHTER);
        add(all, newFill != null && newFill > highest, Warning.FILL_HIGH);
        add(all, needs.stream().anyMatch(n -> n.leftKg() != null && n.leftKg() < -NOTHING), Warning.STOCK_SHORT);
        add(all, needs.stream().anyMatch(n -> n.needKg() == null), Warning.NEED_UNKNOWN);
        add(all, wires.stream().anyMatch(w -> original.wire().stream()
                .anyMatch(o -> o.grade() != null && !o.grade().equals(w.grade()))), Warning.OTHER_GRADE);
        add(all, wires.size() > 1, Warning.MIXED_SIZES);
        return List.copyOf(all);
    }

    private static void add(Set<Warning> all, boolean holds, Warning warning) {
        if (holds) {
            all.add(warning);
        }
    }
}
