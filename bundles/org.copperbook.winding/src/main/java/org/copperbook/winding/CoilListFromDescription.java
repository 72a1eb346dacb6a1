package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.calc.winding.Coil;
import org.copperbook.calc.winding.CoilLayout;
import org.copperbook.calc.winding.Grouping;
import org.copperbook.calc.winding.WaveGrouping;
import org.copperbook.calc.winding.Winding;
import org.copperbook.calc.winding.WindingGenerator;
import org.copperbook.calc.winding.WindingPlan;
import org.copperbook.jobs.winding.WindingData;

/**
 * Lays out the coil list of a regular winding from its short description: slots, poles, phases, layers, span, group
 * sequence and turns; for a field winding from poles and turns. Resistances already read stay with their groups.
 */
final class CoilListFromDescription {

    /** The description does not suffice or contradicts itself; the message says what to mend. */
    static final class NotEnough extends Exception {
        private static final long serialVersionUID = 1L;

        NotEnough(String message) {
            super(message);
        }
    }

    private static final Pattern PAIR = Pattern.compile("(\\d+) *[-\u2013/] *(\\d+)");
    private static final String[] PHASES = {"U", "V", "W"};

    private final org.copperbook.desk.text.Words words = org.copperbook.desk.text.Words.of(getClass());

    /** The record with its groups laid out anew, all coils of the turns that the description has. */
    ObjectNode laidOut(ObjectNode record, WindingData data) throws NotEnough {
        return laidOut(record, data, data.turnsPerCoil() == null ? List.of() : List.of(data.turnsPerCoil()));
    }

    /**
     * The record with its groups laid out anew.
     *
     * @param turns turns of every coil, or one number for each place in the group (outer coil first; for a field
     *              winding pole after pole)
     */
    ObjectNode laidOut(ObjectNode record, WindingData data, List<Integer> turns) throws NotEnough {
        ObjectNode next = record.deepCopy();
        ArrayNode groups = data.role().isField() ? poles(next, data, turns) : groups(next, data, turns);
        if (!data.role().isField() && data.layers() == null) {
            next.put("layers", 2);
        }
        for (int i = 0; i < groups.size(); i++) {
            keepReading(record, (ObjectNode) groups.get(i));
        }
        next.set("groups", groups);
        next.put("coilCount", coils(groups));
        return next;
    }

    private static int coils(ArrayNode groups) {
        int coils = 0;
        for (int i = 0; i < groups.size(); i++) {
            coils += groups.get(i).path("coils").size();
        }
        return coils;
    }

    private ArrayNode poles(ObjectNode next, WindingData data, List<Integer> turns) throws NotEnough {
        if (data.poles() == null || turns.isEmpty()) {
            throw new NotEnough(words.text("layout.needsPoles"));
        }
        ArrayNode groups = next.arrayNode();
        for (int i = 0; i < data.poles(); i++) {
            ObjectNode group = groups.addObject().put("number", i + 1);
            if (i % 2 == 1) {
                group.put("reversed", true);
            }
            group.putArray("coils").addObject().put("turns", turns.get(i % turns.size()));
        }
        return groups;
    }

    private ArrayNode groups(ObjectNode next, WindingData data, List<Integer> turns) throws NotEnough {
        if (data.slots() == null || data.poles() == null || data.span() == null || turns.isEmpty()) {
            throw new NotEnough(words.text("layout.needs"));
        }
        int phases = data.phases() == null || data.phases() < 1 ? PHASES.length : data.phases();
        int layers = data.layers() == null ? 2 : data.layers();
        boolean concentric = data.coilType() == WindingData.CoilType.CONCENTRIC;
        Grouping grouping = layers == 2 || data.groupsPerPhase() == null || data.groupsPerPhase() >= data.poles()
                ? Grouping.GROUP_PER_POLE : Grouping.GROUP_PER_POLE_PAIR;
        Winding winding;
        try {
            winding = WindingGenerator.generate(new WindingPlan(data.slots(), data.poles(), phases, layers,
                    concentric ? CoilLayout.CONCENTRIC : CoilLayout.LAP, grouping, spans(data.span(), data.slots()),
                    sizes(data.groupSequence()), turns.stream().map(Integer::doubleValue).toList(), 1));
            if (data.coilType() == WindingData.CoilType.WAVE) {
                winding = WaveGrouping.progressive(winding);
            }
        } catch (org.copperbook.calc.OutOfRange e) {
            throw new NotEnough(e.getMessage());
        }
        int circuits = data.circuits() == null ? 1 : data.circuits();
        ArrayNode groups = next.arrayNode();
        int[] seen = new int[phases + 1];
        for (int number : winding.groups()) {
            List<Coil> coils = winding.coilsOfGroup(number);
            Coil first = coils.get(0);
            ObjectNode group = groups.addObject().put("number", number).put("phase", PHASES[first.phase() - 1]);
            if (circuits > 1) {
                group.put("circuit", seen[first.phase()]++ % circuits + 1);
            }
            if (first.sense() < 0) {
                group.put("reversed", true);
            }
            ArrayNode list = group.putArray("coils");
            for (Coil c : coils) {
                list.addObject().put("goSlot", c.goSlot()).put("returnSlot", c.returnSlot())
                        .put("turns", (int) Math.round(c.turns()));
            }
        }
        return groups;
    }

    /** Spans in slots from slot pairs, outer coil first: "1-12, 2-11, 3-10" is 11, 9, 7. */
    private List<Integer> spans(String text, int slots) throws NotEnough {
        List<Integer> spans = new ArrayList<>();
        Matcher m = PAIR.matcher(text);
        while (m.find()) {
            spans.add(Math.floorMod(Integer.parseInt(m.group(2)) - Integer.parseInt(m.group(1)), slots));
        }
        if (spans.isEmpty()) {
            throw new NotEnough(words.text("layout.spanForm", text));
        }
        return spans;
    }

    private List<Integer> sizes(String sequence) throws NotEnough {
        List<Integer> sizes = new ArrayList<>();
        if (sequence != null && !sequence.isBlank()) {
            for (String s : sequence.strip().split("[ ,;-]+")) {
                try {
                    sizes.add(Integer.parseInt(s));
                } catch (NumberFormatException e) {
                    throw new NotEnough(words.text("layout.sequenceForm", sequence));
                }
            }
        }
        return sizes;
    }

    private static void keepReading(ObjectNode record, ObjectNode group) {
        record.path("groups").forEach(old -> {
            if (old.path("number").asInt() == group.path("number").asInt() && old.has("resistance")) {
                group.set("resistance", old.get("resistance"));
            }
        });
    }
}
