package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.Require;
import org.copperbook.calc.Tables;

/**
 * A way to connect the leads of a machine: which leads join, and the voltages and resistances that follow. Both follow
 * from the joins alone: volts by walking the sections as phasors, ohms by solving the network.
 *
 * @param id name of the connection, for instance "series-star-12"
 * @param leads leads of the machine: 4, 6, 9 or 12
 * @param phases phases at the terminals: 3 or 1
 * @param joins leads connected together, by T-number
 * @param inside joins made inside the machine, whose leads are not brought out; a machine of nine leads has them
 * @param lines leads of each line terminal, by T-number
 * @param neutral leads of the neutral or middle point; empty when there is none
 */
public record LeadConnection(String id, int leads, int phases, List<List<Integer>> joins, List<List<Integer>> inside,
        List<List<Integer>> lines, List<Integer> neutral) {
    private static final List<LeadConnection> ALL = Tables.rows(LeadConnection.class, "connections.csv").stream()
            .map(row -> new LeadConnection(row.get(0), Integer.parseInt(row.get(1)), Integer.parseInt(row.get(2)),
                    groups(row.get(3)), groups(row.get(4)), groups(row.get(5)),
                    groups(row.get(6)).stream().findFirst().orElse(List.of())))
            .toList();

    public LeadConnection {
        joins = joins.stream().map(List::copyOf).toList();
        inside = inside.stream().map(List::copyOf).toList();
        lines = lines.stream().map(List::copyOf).toList();
        neutral = List.copyOf(neutral);
    }

    /**
     * A part of a phase with two leads of its own.
     *
     * @param start lead at its start, by T-number
     * @param finish lead at its end
     * @param degrees electrical angle of its electromotive force from finish to start
     */
    public record Section(int start, int finish, double degrees) {
    }

    /** @return every connection known, from the table that travels with this library */
    public static List<LeadConnection> all() {
        return ALL;
    }

    /**
     * @param id name of a connection
     * @return that connection
     * @throws OutOfRange when there is none of that name
     */
    public static LeadConnection named(String id) {
        return all().stream().filter(c -> c.id().equals(id)).findFirst()
                .orElseThrow(() -> new OutOfRange("connection", id,
                String.join(", ", all().stream().map(LeadConnection::id).toList()), "no other is known"));
    }

    private static List<List<Integer>> groups(String text) {
        return Stream.of(text.split(" ")).filter(group -> !group.isEmpty())
                .map(g -> Arrays.stream(g.split("-")).map(Integer::valueOf).toList()).toList();
    }

    /** @return sections of the machine with their angles: phases V and W lag by 120 and 240 degrees */
    public List<Section> sections() {
        if (leads == 4) {
            return List.of(new Section(1, 2, 0), new Section(3, 4, 0));
        }
        List<Section> sections = new ArrayList<>();
        for (int base = 0; base < allLeads(); base += 6) {
            for (int phase = 0; phase < 3; phase++) {
                sections.add(new Section(base + phase + 1, base + phase + 4, -120.0 * phase));
            }
        }
        return sections;
    }

    /** Leads brought out and those ending inside; nine leads are twelve with three ends inside. */
    private int allLeads() {
        return leads == 9 ? 12 : leads;
    }

    private Stream<List<Integer>> everyJoin() {
        return Stream.concat(joins.stream(), inside.stream());
    }

    /**
     * Mark of a lead by IEC 60034-8: U1-U2 and U5-U6 for the two parts of the first phase (memory).
     *
     * @param lead T-number
     * @return mark
     */
    public String iecMark(int lead) {
        Require.between("lead number", lead, 1, leads, "the machine has no further lead");
        if (leads == 4) {
            return "U" + lead;
        }
        String phase = List.of("U", "V", "W").get((lead - 1) % 3);
        return phase + List.of("1", "2", "5", "6").get((lead - 1) / 3);
    }

    /** @return leads that are neither joined nor a line, to be insulated one by one */
    public List<Integer> idle() {
        List<Integer> idle = new ArrayList<>();
        for (int lead = 1; lead <= leads; lead++) {
            int one = lead;
            boolean used = Stream.of(joins, lines, List.of(neutral)).flatMap(List::stream)
                    .anyMatch(group -> group.contains(one));
            if (!used) {
                idle.add(lead);
            }
        }
        return idle;
    }

    /**
     * Voltage between two line terminals.
     *
     * @param sectionVolts electromotive force of one section in V
     * @param first number of a line terminal from 1
     * @param second number of another
     * @return V
     */
    public double lineVolts(double sectionVolts, int first, int second) {
        return potential(lines.get(first - 1).get(0)).minus(potential(lines.get(second - 1).get(0)))
                .magnitude() * sectionVolts;
    }

    /**
     * Voltage from a line terminal to the neutral or middle point.
     *
     * @param sectionVolts electromotive force of one section in V
     * @param line number of a line terminal from 1
     * @return V
     * @throws OutOfRange when the connection has no such point
     */
    public double neutralVolts(double sectionVolts, int line) {
        Require.that(!neutral.isEmpty(), "connection", id, "connections with a neutral or middle point", "it has none");
        return potential(lines.get(line - 1).get(0)).minus(potential(neutral.get(0))).magnitude() * sectionVolts;
    }

    /**
     * Resistance between two line terminals.
     *
     * @param sectionOhms resistance of each section in ohm
     * @param first number of a line terminal from 1
     * @param second number of another
     * @return ohm
     */
    public double lineOhms(double sectionOhms, int first, int second) {
        ResistanceNetwork network = new ResistanceNetwork();
        for (Section section : sections()) {
            network.resistance("T" + section.start(), "T" + section.finish(), sectionOhms);
        }
        everyJoin().forEach(join -> network.join(join.stream().map(lead -> "T" + lead).toList()));
        return network.between("T" + lines.get(first - 1).get(0), "T" + lines.get(second - 1).get(0));
    }

    /**
     * Largest voltage left over around a closed path, over the voltage of a section; it must be zero, or current
     * circulates at no load.
     *
     * @return volts per volt
     */
    public double circulating() {
        Map<Integer, Phasor> potentials = potentials();
        return sections().stream().mapToDouble(s -> potentials.get(s.start()).minus(potentials.get(s.finish()))
                .minus(unit(s.degrees())).magnitude()).max().orElse(0);
    }

    private Phasor potential(int lead) {
        return potentials().get(lead);
    }

    /**
     * Walks from lead to lead along sections and joins; leads without connection to the first keep a potential of their
     * own.
     */
    private Map<Integer, Phasor> potentials() {
        Map<Integer, Phasor> known = new TreeMap<>();
        Map<Integer, List<Integer>> joined = new HashMap<>();
        everyJoin().forEach(join -> join.forEach(lead -> joined.put(lead, join)));
        Stream.concat(lines.stream().map(line -> line.get(0)), IntStream.rangeClosed(1, allLeads()).boxed())
                .forEach(lead -> reach(lead, new Phasor(0, 0), known, joined));
        return known;
    }

    private void reach(int lead, Phasor potential, Map<Integer, Phasor> known, Map<Integer, List<Integer>> joined) {
        if (known.putIfAbsent(lead, potential) != null) {
            return;
        }
        joined.getOrDefault(lead, List.of()).forEach(other -> reach(other, potential, known, joined));
        for (Section section : sections()) {
            Phasor rise = unit(section.degrees());
            if (section.start() == lead) {
                reach(section.finish(), potential.minus(rise), known, joined);
            } else if (section.finish() == lead) {
                reach(section.start(), potential.minus(rise.times(-1)), known, joined);
            }
        }
    }

    private static Phasor unit(double degrees) {
        return new Phasor(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
    }
}
