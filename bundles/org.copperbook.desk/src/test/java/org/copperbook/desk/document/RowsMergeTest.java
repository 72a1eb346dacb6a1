package org.copperbook.desk.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.work.Hours;
import org.junit.jupiter.api.Test;

/** Two people at one list: each writes from the same beginning, one saves first. */
class RowsMergeTest {

    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);
    private static final PartKey INSTRUMENTS = PartKey.of(PartKind.INSTRUMENTS);
    private static final String ANNA = "{\"who\":\"anna\",\"trade\":\"winder\",\"date\":\"2026-03-02\",\"hours\":4}";
    private static final String BORIS = "{\"who\":\"boris\",\"trade\":\"fitter\",\"date\":\"2026-03-02\",\"hours\":2}";
    private static final String CLARA = "{\"who\":\"clara\",\"trade\":\"winder\",\"date\":\"2026-03-03\",\"hours\":1}";

    private final ObjectMapper mapper = new ObjectMapper();
    private final PartJson json = new PartJson();

    @Test
    void hoursThatTwoWroteDownAtTheSameTimeAreBothKeptAndWaitToBeSaved() throws Exception {
        JobDocument mine = opened(HOURS, hours(ANNA));
        mine.insertRow(HOURS, "/entries", 1, mapper.readTree(BORIS));
        assertTrue(mine.merge(HOURS, read(HOURS, hours(ANNA, CLARA)), 4));
        assertEquals(read(HOURS, hours(ANNA, CLARA, BORIS)), mine.part(HOURS).orElseThrow());
        assertEquals(4, mine.pending().get(0).basedOnRevision());
        assertTrue(mine.conflicts().isEmpty());
        mine.undo(HOURS);
        assertEquals(read(HOURS, hours(ANNA, CLARA)), mine.part(HOURS).orElseThrow(), "undo leaves the other's row");
    }

    @Test
    void theFirstHoursOfAJobWrittenByTwoAreBothKept() throws Exception {
        JobDocument mine = new JobDocument(new Job("id", "2026-0001", Map.of()), Map.of(), json);
        mine.insertRow(HOURS, "/entries", 0, mapper.readTree(BORIS));
        assertTrue(mine.merge(HOURS, read(HOURS, hours(CLARA)), 1));
        assertEquals(read(HOURS, hours(CLARA, BORIS)), mine.part(HOURS).orElseThrow());
    }

    @Test
    void oneStopsWhileAnotherBegins() throws Exception {
        String anna = "{\"who\":\"anna\",\"since\":\"2026-03-02T07:00:00Z\"}";
        String boris = "{\"who\":\"boris\",\"since\":\"2026-03-02T08:00:00Z\"}";
        String began = "{\"schema\":1,\"running\":[" + anna + "]}";
        JobDocument mine = opened(HOURS, began);
        mine.change(HOURS, "/entries", t -> {
            t.remove("running");
            t.putArray("entries").add(node(ANNA));
            return t;
        });
        assertTrue(mine.merge(HOURS, read(HOURS, "{\"schema\":1,\"running\":[" + anna + "," + boris + "]}"), 4));
        Hours now = mine.part(HOURS, Hours.class).orElseThrow();
        assertEquals(List.of("boris"), now.running().stream().map(Hours.Running::who).toList());
        assertEquals(1, now.entries().size());
    }

    @Test
    void aRowThatBothChangedIsAskedForAsAWholeAndTheAddedOnesAreNot() throws Exception {
        JobDocument mine = opened(HOURS, hours(ANNA, CLARA));
        mine.change(HOURS, "/entries", t -> {
            ((ObjectNode) t.path("entries").get(1)).put("hours", 3);
            return t;
        });
        mine.insertRow(HOURS, "/entries", 2, mapper.readTree(BORIS));
        String theirClara = CLARA.replace("\"hours\":1", "\"hours\":5");
        String dora = CLARA.replace("clara", "dora");
        Part theirs = read(HOURS, hours(dora, ANNA, theirClara));
        assertFalse(mine.merge(HOURS, theirs, 4));
        Conflict c = mine.conflict(HOURS, theirs, 4, "dora", Instant.EPOCH);
        assertEquals(List.of("/entries/2"), c.differences().stream().map(FieldDifference::pointer).toList());
        mine.insertRow(HOURS, "/entries", 0, mapper.readTree(BORIS.replace("boris", "emil")));
        assertEquals(Optional.empty(), mine.settle(c, Set.of("/entries/2")));
        assertEquals(List.of("dora", "emil", "anna", "clara", "boris"), who(mine));
        assertEquals("5", mine.value(HOURS, "/entries/3/hours").asText());
    }

    @Test
    void whatIsTypedIntoARowStaysBesideItWhenOthersComeBefore() throws Exception {
        JobDocument mine = opened(HOURS, hours(ANNA));
        mine.insertRow(HOURS, "/entries", 1, mapper.readTree(BORIS));
        mine.keepTyped(HOURS, "/entries/1/hours", "two");
        assertTrue(mine.merge(HOURS, read(HOURS, hours(ANNA, CLARA)), 4));
        assertEquals(Optional.of("two"), mine.typed(HOURS, "/entries/2/hours"));
        assertEquals(Optional.empty(), mine.typed(HOURS, "/entries/1/hours"));
    }

    @Test
    void instrumentsAreMatchedByTheirIdWhereverTheyStand() throws Exception {
        JobDocument mine = opened(INSTRUMENTS, instruments("A", "old", "B", "old"));
        mine.change(INSTRUMENTS, "/instruments", t -> {
            ((ObjectNode) t.path("instruments").get(1)).put("name", "new");
            t.withArray("instruments").addObject().put("id", "C").put("name", "mine");
            return t;
        });
        assertTrue(mine.merge(INSTRUMENTS, read(INSTRUMENTS, instruments("D", "theirs", "A", "newer", "B", "old")), 4));
        assertEquals(Set.of("A newer", "B new", "C mine", "D theirs"), Set.copyOf(named(mine)));
        assertEquals(4, mine.rows(INSTRUMENTS, "/instruments").size());
    }

    @Test
    void twoInstrumentsUnderOneIdAreAskedFor() throws Exception {
        JobDocument mine = opened(INSTRUMENTS, instruments("A", "old"));
        mine.insertRow(INSTRUMENTS, "/instruments", 1, mapper.readTree("{\"id\":\"C\",\"name\":\"mine\"}"));
        Part theirs = read(INSTRUMENTS, instruments("C", "theirs", "A", "old"));
        assertFalse(mine.merge(INSTRUMENTS, theirs, 4));
        Conflict c = mine.conflict(INSTRUMENTS, theirs, 4, "dora", Instant.EPOCH);
        assertEquals(1, c.differences().size());
        mine.settle(c, Set.of(c.differences().get(0).pointer()));
        assertEquals(List.of("C theirs", "A old"), named(mine));
    }

    @Test
    void valuesOutsideTheListsAreStillAskedFor() throws Exception {
        PartKey plate = PartKey.of(PartKind.NAMEPLATE);
        JobDocument mine = opened(plate, "{\"schema\":1,\"poles\":4}");
        mine.set(plate, "/poles", mapper.readTree("6"));
        assertFalse(mine.merge(plate, read(plate, "{\"schema\":1,\"poles\":4,\"maker\":\"Anvil\"}"), 4));
    }

    /** The laws, on lists without names: whoever saves first, the same rows are there, and none of either side is gone. */
    @Test
    void mergingCommutesUpToOrderAndLosesNothing() {
        Random random = new Random(20260302);
        for (int round = 0; round < 3000; round++) {
            ObjectNode base = list(random, random.nextInt(5), 0);
            ObjectNode one = changed(base, random, 100);
            ObjectNode other = changed(base, random, 200);
            RowsMerge oneFirst = new RowsMerge(PartKind.HOURS, base, other, one);
            RowsMerge otherFirst = new RowsMerge(PartKind.HOURS, base, one, other);
            String about = base + "\n" + one + "\n" + other + "\n" + oneFirst.mixed();
            assertEquals(oneFirst.differences().size(), otherFirst.differences().size(), about);
            List<String> there = rows(oneFirst.mixed());
            oneFirst.differences().forEach(d -> there.add(d.theirs().toString()));
            List<String> started = rows(base);
            for (ObjectNode side : List.of(one, other)) {
                for (String row : rows(side)) {
                    assertTrue(started.contains(row) || there.contains(row), row + " is lost from\n" + about);
                }
            }
            if (oneFirst.differences().isEmpty()) {
                assertEquals(rows(oneFirst.mixed()).stream().sorted().toList(),
                        rows(otherFirst.mixed()).stream().sorted().toList(), about);
            }
            for (String row : rows(base)) {
                if (rows(one).contains(row) && rows(other).contains(row)) {
                    assertTrue(rows(oneFirst.mixed()).contains(row), row + " is lost from\n" + about);
                }
            }
        }
    }

    @Test
    void whatOnlyOneSideChangedIsTheResult() {
        Random random = new Random(7);
        for (int round = 0; round < 1000; round++) {
            ObjectNode base = list(random, random.nextInt(6), 0);
            ObjectNode one = changed(base, random, 100);
            assertEquals(one.path("entries").size(), new RowsMerge(PartKind.HOURS, base, base, one).mixed().path("entries").size());
            assertEquals(rows(one), rows(new RowsMerge(PartKind.HOURS, base, base, one).mixed()));
            assertEquals(rows(one), rows(new RowsMerge(PartKind.HOURS, base, one, base).mixed()));
            assertEquals(rows(one), rows(new RowsMerge(PartKind.HOURS, base, one, one).mixed()));
        }
    }

    private ObjectNode list(Random random, int rows, int from) {
        ObjectNode part = mapper.createObjectNode().put("schema", 1);
        ArrayNode list = part.putArray("entries");
        for (int i = 0; i < rows; i++) {
            list.addObject().put("note", "n" + (from + i)).put("hours", random.nextInt(3));
        }
        return part;
    }

    /** Rows taken out, changed and put in anywhere; every new text is unlike every other. */
    private ObjectNode changed(ObjectNode base, Random random, int names) {
        ObjectNode side = base.deepCopy();
        ArrayNode list = side.withArray("entries");
        int next = names;
        for (int step = random.nextInt(4); step > 0; step--) {
            int at = list.isEmpty() ? 0 : random.nextInt(list.size());
            switch (random.nextInt(list.isEmpty() ? 1 : 3)) {
                case 0 -> list.insert(random.nextInt(list.size() + 1), mapper.createObjectNode().put("note", "n" + next++));
                case 1 -> ((ObjectNode) list.get(at)).put("note", "n" + next++);
                default -> list.remove(at);
            }
        }
        return side;
    }

    private static List<String> rows(ObjectNode part) {
        List<String> rows = new ArrayList<>();
        part.path("entries").forEach(r -> rows.add(r.toString()));
        return rows;
    }

    private List<String> who(JobDocument document) {
        List<String> who = new ArrayList<>();
        document.rows(HOURS, "/entries").forEach(r -> who.add(r.path("who").asText()));
        return who;
    }

    private List<String> named(JobDocument document) {
        List<String> all = new ArrayList<>();
        document.rows(INSTRUMENTS, "/instruments")
                .forEach(r -> all.add(r.path("id").asText() + " " + r.path("name").asText()));
        return all;
    }

    private static String hours(String... entries) {
        return "{\"schema\":1,\"entries\":[" + String.join(",", entries) + "]}";
    }

    private static String instruments(String... idsAndNames) {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < idsAndNames.length; i += 2) {
            rows.add("{\"id\":\"" + idsAndNames[i] + "\",\"name\":\"" + idsAndNames[i + 1] + "\"}");
        }
        return "{\"schema\":1,\"instruments\":[" + String.join(",", rows) + "]}";
    }

    private JsonNode node(String text) {
        try {
            return mapper.readTree(text);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private Part read(PartKey key, String text) throws Exception {
        return json.read(key, text);
    }

    private JobDocument opened(PartKey key, String text) throws Exception {
        return new JobDocument(new Job("id", "2026-0001", Map.of(key, read(key, text))), Map.of(key, 3), json);
    }
}
