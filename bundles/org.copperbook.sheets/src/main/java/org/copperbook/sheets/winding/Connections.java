package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingData.Connection;

/**
 * How the groups of a winding hang together as far as the data say: which are in series, what is joined inside and what
 * is brought out. Terminal marks after IEC 60034-8: the letter of the phase (F for a field) with 1 and 2 at the ends,
 * 5 and 6 for a second part.
 */
final class Connections {

    /** One end of a group: its start or its finish. */
    record End(CoilGroup group, boolean start) {

        String id() {
            return "group/" + group.number() + (start ? "/start" : "/finish");
        }
    }

    /** A joint between two groups in series. */
    record Jumper(End from, End to) {

        String id() {
            return "jumper/" + from.group().number() + "-" + to.group().number();
        }
    }

    /** Ends joined in one point: a terminal, or inside (no mark). */
    record Joint(String mark, String phase, List<End> ends) {
    }

    /**
     * Groups in series; a reversed group is entered at its finish.
     *
     * @param part which of the parts brought out separately, from 0
     */
    record SeriesRun(String phase, int part, List<CoilGroup> groups) {

        End entry() {
            return end(groups.get(0), true);
        }

        End exit() {
            return end(groups.get(groups.size() - 1), false);
        }

        List<Jumper> jumpers() {
            List<Jumper> jumpers = new ArrayList<>();
            for (int i = 1; i < groups.size(); i++) {
                jumpers.add(new Jumper(end(groups.get(i - 1), false), end(groups.get(i), true)));
            }
            return jumpers;
        }

        private static End end(CoilGroup group, boolean entry) {
            return new End(group, entry != Boolean.TRUE.equals(group.reversed()));
        }
    }

    private final WindingData data;
    private final List<SeriesRun> runs = new ArrayList<>();
    private final Map<String, Joint> leads = new LinkedHashMap<>();
    private final List<End> star = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    /** The connections of the groups given, which are those that can be drawn. */
    Connections(WindingData data, List<CoilGroup> groups) {
        this.data = data;
        Map<String, List<CoilGroup>> phases = new TreeMap<>();
        groups.forEach(g -> phases.computeIfAbsent(Phases.name(g), p -> new ArrayList<>()).add(g));
        if (phases.size() > 1 && phases.remove("") != null) {
            notes.add("note.phaseMissing");
        }
        Map<String, List<List<CoilGroup>>> circuits = new LinkedHashMap<>();
        phases.forEach((phase, of) -> circuits.put(phase, circuits(of)));
        if (circuits.values().stream().anyMatch(List::isEmpty)) {
            notes.add("note.circuitsUnknown");
            return;
        }
        if (data.circuits() != null && circuits.values().stream().anyMatch(c -> c.size() != data.circuits())) {
            notes.add("note.circuitsDiffer");
        }
        connect(circuits);
    }

    /** Groups in series, in as many circuits as they name; empty when the data do not say which belong together. */
    private List<List<CoilGroup>> circuits(List<CoilGroup> groups) {
        long named = groups.stream().filter(g -> g.circuit() != null).count();
        if (named == groups.size()) {
            Map<Integer, List<CoilGroup>> by = new TreeMap<>();
            groups.forEach(g -> by.computeIfAbsent(g.circuit(), c -> new ArrayList<>()).add(g));
            return List.copyOf(by.values());
        }
        if (named > 0) {
            return List.of();
        }
        int asked = data.connection() == Connection.PARALLEL_POLES ? groups.size()
                : data.circuits() == null ? 1 : data.circuits();
        if (asked == groups.size() && asked > 1) {
            return groups.stream().map(List::of).toList();
        }
        return asked > 1 ? List.of() : List.of(groups);
    }

    private void connect(Map<String, List<List<CoilGroup>>> circuits) {
        int phases = circuits.size();
        Integer asked = data.leads();
        boolean inside = asked != null && phases > 1 && (asked == phases || asked == phases + 1 && isStar());
        boolean whole = asked != null && asked > 0 && asked % (2 * phases) == 0;
        int parts = !inside && whole ? asked / (2 * phases) : 1;
        boolean fits = inside || whole;
        for (Map.Entry<String, List<List<CoilGroup>>> phase : circuits.entrySet()) {
            fits &= runs(phase.getKey(), phase.getValue(), parts);
        }
        if (asked == null) {
            notes.add("note.leadsMissing");
        } else if (!fits) {
            notes.add("note.leadsUnclear");
        } else if (inside) {
            closed(List.copyOf(circuits.keySet()), asked > phases);
        } else {
            for (SeriesRun run : runs) {
                join(letter(run.phase()) + (4 * run.part() + 1), run.phase(), run.entry());
                join(letter(run.phase()) + (4 * run.part() + 2), run.phase(), run.exit());
            }
        }
        if (runs.stream().anyMatch(r -> r.groups().size() > 2)) {
            notes.add(data.jumper() == null ? "note.orderAssumed" : "note.orderFrom");
        }
    }

    /** Shares the circuits out among the parts brought out, or parts a single circuit where it has enough groups. */
    private boolean runs(String phase, List<List<CoilGroup>> circuits, int parts) {
        if (circuits.size() >= parts) {
            for (int i = 0; i < circuits.size(); i++) {
                runs.add(new SeriesRun(phase, i * parts / circuits.size(), inOrder(circuits.get(i))));
            }
            return circuits.size() % parts == 0;
        }
        int pieces = parts / circuits.size();
        boolean fits = parts % circuits.size() == 0;
        for (int c = 0; c < circuits.size(); c++) {
            List<CoilGroup> all = circuits.get(c);
            int cut = fits && all.size() % pieces == 0 ? pieces : 1;
            fits &= cut == pieces;
            for (int i = 0; i < cut; i++) {
                runs.add(new SeriesRun(phase, c * cut + i,
                        inOrder(all.subList(i * all.size() / cut, (i + 1) * all.size() / cut))));
            }
        }
        if (!notes.contains("note.partsAssumed")) {
            notes.add("note.partsAssumed");
        }
        return fits;
    }

    /** Round the bore, or with every second group left for the way back where the jumpers are said to skip one. */
    private List<CoilGroup> inOrder(List<CoilGroup> groups) {
        if (data.jumper() == null || !data.jumper().strip().toLowerCase(java.util.Locale.ROOT).startsWith("skip one")) {
            return List.copyOf(groups);
        }
        List<CoilGroup> order = new ArrayList<>();
        for (int first = 0; first < 2; first++) {
            for (int i = first; i < groups.size(); i += 2) {
                order.add(groups.get(i));
            }
        }
        return order;
    }

    private void closed(List<String> phases, boolean neutral) {
        boolean delta = isDelta();
        if (!delta && !isStar()) {
            notes.add("note.connectionMissing");
        } else if (data.connection() == Connection.ZIG_ZAG) {
            notes.add("note.zigzag");
        }
        for (SeriesRun run : runs) {
            join(letter(run.phase()), run.phase(), run.entry());
            if (delta) {
                String next = phases.get((phases.indexOf(run.phase()) + 1) % phases.size());
                join(letter(next), next, run.exit());
            } else if (isStar() && data.connection() != Connection.ZIG_ZAG) {
                if (neutral) {
                    join("N", "", run.exit());
                } else {
                    star.add(run.exit());
                }
            }
        }
    }

    private String letter(String phase) {
        return phase.isEmpty() ? "F" : Phases.letter(phase);
    }

    private void join(String mark, String phase, End end) {
        leads.computeIfAbsent(mark, m -> new Joint(m, phase, new ArrayList<>())).ends().add(end);
    }

    private boolean isDelta() {
        Connection c = data.connection();
        return c == Connection.DELTA || c == Connection.SERIES_DELTA || c == Connection.PARALLEL_DELTA;
    }

    private boolean isStar() {
        Connection c = data.connection();
        return c == Connection.STAR || c == Connection.SERIES_STAR || c == Connection.PARALLEL_STAR
                || c == Connection.ZIG_ZAG;
    }

    /** Groups in series; empty when the data do not say which belong together. */
    List<SeriesRun> runs() {
        return runs;
    }

    /** What is brought out, in order of the marks of each phase. */
    List<Joint> leads() {
        return List.copyOf(leads.values());
    }

    /** Ends joined inside in a star point that is not brought out; may be empty. */
    List<End> star() {
        return star;
    }

    /** Keys of what the data leave open. */
    List<String> notes() {
        return notes;
    }
}
