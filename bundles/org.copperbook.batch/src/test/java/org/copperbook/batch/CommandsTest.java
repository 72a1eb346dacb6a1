package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {

    @TempDir
    Path folder;
    private BatchRun batch;

    @BeforeEach
    void begin() {
        batch = new BatchRun(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "dance", "show", "take-in", "show 2026-0001 2026-0002", "list --colour", "calc",
        "calc --list --from x", "verify --store"})
    void badUseGetsOneLineAndExitCode2(String line) {
        BatchRun.Result r = batch.run(line.isEmpty() ? new String[0] : line.split(" "));
        assertEquals(2, r.exit());
        assertEquals("", r.out());
        assertTrue(r.onlyErrorLine().contains("copperbook-batch help"), r.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"take-in", "take-in-cards", "list", "lots", "show", "export", "verify", "verdicts", "workbooks", "demo", "calc"})
    void everyCommandIsExplained(String command) {
        BatchRun.Result all = batch.run("help");
        assertEquals(0, all.exit());
        assertTrue(all.out().contains(command));
        BatchRun.Result one = batch.run("help", command);
        assertEquals(0, one.exit());
        assertTrue(one.out().contains("Usage: copperbook-batch " + command), one.out());
        assertFalse(one.out().contains("option.") || one.out().contains("usage."), one.out());
    }

    @Test
    void withoutAStoreReadingCommandsSayHowToGetOne() {
        for (String[] c : new String[][] {{"list"}, {"show", "2026-0001"}, {"verify"}, {"export", "2026-0001"}}) {
            BatchRun.Result r = batch.on(c);
            assertEquals(2, r.exit());
            assertTrue(r.onlyErrorLine().contains("take-in makes one"), r.err());
        }
        assertFalse(Files.exists(batch.store));
    }

    @Test
    void takenInJobsAreListedAndShown() {
        BatchRun.Result in = batch.on("take-in", BatchRun.demoJob("2026-0001-full-rewind"),
                BatchRun.demoJob("2026-0003-cancelled"));
        assertEquals(0, in.exit(), in.err());
        assertTrue(in.out().contains("2026-0001 taken in from"));
        BatchRun.Result list = batch.on("list");
        assertEquals(3, list.out().lines().count(), list.out());
        assertTrue(list.out().contains("Brackenfold Dairy Co-operative") && list.out().contains("number void"));
        JsonNode jobs = batch.on("list", "--json").json().path("jobs");
        assertEquals(2, jobs.size());
        assertEquals("2026-0001", jobs.get(0).path("number").asText());
        assertTrue(jobs.get(1).path("voided").asBoolean());
        assertEquals(1, batch.on("list", "--json", "--find", "quarry").json().path("jobs").size());
        BatchRun.Result show = batch.on("show", "2026-0001");
        assertEquals(0, show.exit());
        assertTrue(show.out().contains("Wendlock") && show.out().contains("winding/main-stator.as-wound"), show.out());
        JsonNode shown = batch.on("show", "2026-0001", "--json").json();
        assertEquals(15, shown.path("revisions").size());
        assertEquals("W10-20617", shown.at("/job/parts/nameplate/serial").asText());
    }

    @Test
    void anOfferThatWasNotSentIsListedAndShownAsBegun() throws Exception {
        String demo = Files.readString(Path.of(BatchRun.demoJob("2026-0007-motor-quoted")));
        ObjectNode job = (ObjectNode) new ObjectMapper().readTree(demo);
        assertTrue(job.at("/parts/quote~11/sent").isObject());
        ((ObjectNode) job.at("/parts/quote~11")).remove("sent");
        Path draft = Files.writeString(batch.store.resolveSibling("draft.json"), job.toString());
        assertEquals(0, batch.on("take-in", draft.toString()).exit());
        String list = batch.on("list").out();
        assertTrue(list.contains("quote begun, not sent, waiting for"), list);
        String show = batch.on("show", "2026-0007").out();
        assertTrue(show.contains("quote begun, not sent, waiting for the customer"), show);
    }

    @Test
    void aLotLeadsToTheJobsThatGotIt() {
        batch.on("take-in", BatchRun.demoJob("2026-0001-full-rewind"), BatchRun.demoJob("2026-0002-shorted-diode"),
                BatchRun.demoJob("2026-0003-cancelled"));
        JsonNode uses = batch.on("lots", "2026-18", "--json").json().path("uses");
        assertEquals(2, uses.size());
        assertEquals("2026-0002", uses.get(1).path("number").asText());
        assertTrue(batch.on("lots", "cb-2607-3").out().contains("impregnation"));
        BatchRun.Result none = batch.on("lots", "18");
        assertEquals(0, none.exit());
        assertTrue(none.onlyErrorLine().contains("no job got the lot 18"), none.err());
    }

    @Test
    void anUnknownNumberIsBadUse() {
        batch.on("take-in", BatchRun.demoJob("2026-0003-cancelled"));
        for (String command : new String[] {"show", "export"}) {
            BatchRun.Result r = batch.on(command, "2026-0099");
            assertEquals(2, r.exit());
            assertTrue(r.onlyErrorLine().contains("no job is numbered 2026-0099"), r.err());
        }
    }

    @Test
    void aTakenNumberIsRefusedOrReplacedAsAsked() {
        String job = BatchRun.demoJob("2026-0003-cancelled");
        assertEquals(0, batch.on("take-in", job).exit());
        assertEquals(2, batch.on("take-in", job).exit());
        JsonNode taken = batch.on("take-in", "--new-number", "--json", job).json().path("takenIn");
        assertFalse(taken.get(0).path("number").asText().equals("2026-0003"));
        assertEquals(2, batch.on("list", "--json").json().path("jobs").size());
    }

    @ParameterizedTest
    @CsvSource({"2026-0001-full-rewind,2026-0001", "2026-0005-twelve-lead-waiting,2026-0005", "2026-0006-lost-residual,2026-0006"})
    void aJobGoesOutAsItCameIn(String name, String number) throws IOException {
        batch.on("take-in", BatchRun.demoJob(name));
        Path out = folder.resolve("out.json");
        assertEquals(0, batch.on("export", number, "--out", out.toString()).exit());
        BatchRun other = new BatchRun(folder.resolve("other"));
        assertEquals(0, other.on("take-in", out.toString()).exit());
        assertEquals(Files.readString(out), other.on("export", number).out());
        JsonNode before = new ObjectMapper().readTree(Path.of(BatchRun.demoJob(name)).toFile());
        JsonNode after = new ObjectMapper().readTree(out.toFile());
        assertEquals(List.of(), missing("", before, after));
    }

    @Test
    void fieldsOfANewerVersionGoInAndOutAndAreNamed() throws IOException {
        Path file = folder.resolve("newer.json");
        Files.writeString(file, "{\"copperbookJob\":1,\"number\":\"2026-0001\",\"sealed\":true,\"parts\":{\"booking\":{\"schema\":9,"
                + "\"customer\":\"Harbour Ice\",\"shelf\":{\"row\":4,\"bay\":[1,2.50,\"C\"]},\"parts\":[{\"name\":\"fan\","
                + "\"colour\":null}]},\"inspection\":{\"schema\":1,\"readings\":[{\"id\":\"a\",\"probe\":\"long\"}]}}}");
        BatchRun.Result in = batch.on("take-in", file.toString());
        assertEquals(0, in.exit(), in.err());
        assertEquals(2, in.err().lines().count(), in.err());
        assertTrue(in.err().contains("booking.shelf") && in.err().contains("booking.parts[0].colour")
                && in.err().contains("inspection.readings[0].probe"), in.err());
        assertTrue(in.err().contains("not kept") && in.err().contains("sealed"), in.err());
        JsonNode out = batch.on("export", "2026-0001").json();
        assertEquals("C", out.at("/parts/booking/shelf/bay/2").asText());
        assertTrue(out.at("/parts/booking/parts/0/colour").isNull());
        assertEquals(9, out.at("/parts/booking/schema").asInt());
    }

    @Test
    void aReadingWithoutATemperatureIsKeptAndNamed() throws IOException {
        Path file = folder.resolve("cold.json");
        Files.writeString(file, "{\"copperbookJob\":1,\"number\":\"2026-0001\",\"parts\":{\"inspection\":{\"schema\":1,\"readings\":["
                + "{\"id\":\"a\",\"quantity\":\"RESISTANCE\",\"place\":{\"winding\":\"main-stator\",\"kind\":\"TERMINAL_PAIR\","
                + "\"mark\":\"U-V\"},\"observed\":{\"kind\":\"VALUE\",\"value\":0.3}}]}}}");
        BatchRun.Result in = batch.on("take-in", file.toString());
        assertEquals(0, in.exit());
        assertTrue(in.onlyErrorLine().contains("inspection at readings[0].windingCelsius")
                && in.err().contains("add the winding's temperature"), in.err());
    }

    @Test
    void exportWritesNothingWhereItCannot() {
        batch.on("take-in", BatchRun.demoJob("2026-0003-cancelled"));
        BatchRun.Result r = batch.on("export", "2026-0003", "--out", folder.toString());
        assertEquals(2, r.exit());
        assertTrue(r.onlyErrorLine().contains("is a folder"));
    }

    @Test
    void verifyPassesAndFindsARevisionThatWasChangedBehindItsBack() throws Exception {
        batch.on("take-in", BatchRun.demoJob("2026-0003-cancelled"), BatchRun.demoJob("2026-0008-booked-in"));
        BatchRun.Result good = batch.on("verify");
        assertEquals(0, good.exit(), good.out());
        assertTrue(good.out().contains("2 jobs, 3 revisions"), good.out());
        assertTrue(batch.on("verify", "--json").json().path("passed").asBoolean());
        tamper();
        BatchRun.Result bad = batch.on("verify");
        assertEquals(1, bad.exit(), bad.out() + bad.err());
        assertFalse(batch.on("verify", "--json").json().path("passed").asBoolean());
    }

    /** Changes one saved text with plain SQL, as somebody with the file in hand could. */
    private void tamper() throws Exception {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + batch.store); Statement s = c.createStatement()) {
            List<String> guards = new ArrayList<>();
            try (var r = s.executeQuery("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
                while (r.next()) {
                    guards.add(r.getString(1));
                }
            }
            for (String g : guards) {
                s.execute("DROP TRIGGER \"" + g + "\"");
            }
            assertEquals(1, s.executeUpdate("UPDATE revision SET json = replace(json, 'grain dryer', 'grain drier')"
                    + " WHERE json LIKE '%grain dryer%'"));
        }
    }

    @Test
    void calculationsAreListedAndDoneFromTheLineAndFromAFile() throws IOException {
        JsonNode all = batch.run("calc", "--list", "--json").json().path("calculations");
        assertTrue(all.size() > 0);
        String name = all.get(0).path("name").asText();
        assertTrue(batch.run("calc", "--list", name).out().startsWith(name + ":"));
        assertEquals(2, batch.run("calc", "no-such-thing").exit());
        assertEquals(2, batch.run("calc", name, "novalue").exit());
        assertEquals(2, batch.run("calc", name, "no-such-input=1").exit());
        Path cases = folder.resolve("cases.jsonl");
        Files.writeString(cases, "{\"name\":\"no-such-thing\",\"inputs\":{}}\n\nnot json\n");
        BatchRun.Result r = batch.run("calc", "--from", cases.toString());
        assertEquals(2, r.exit());
        List<String> lines = r.out().lines().toList();
        assertEquals(2, lines.size());
        assertEquals(1, new ObjectMapper().readTree(lines.get(0)).path("line").asInt());
        assertEquals(3, new ObjectMapper().readTree(lines.get(1)).path("line").asInt());
        assertTrue(new ObjectMapper().readTree(lines.get(1)).has("error"));
    }

    @Test
    void aCalculationGivesTheFigureOfThePublishedExample() {
        // US Army TM 9-6115-644-24, page 4-41: 29.23 ohm at 25 C is 26.98 ohm at 5 C.
        JsonNode r = batch.run("calc", "resistance-at-temperature", "r=29.23 ohm", "t=25", "to=5", "--json").json();
        double ohms = r.path("values").properties().iterator().next().getValue().asDouble();
        assertEquals(26.98, ohms, 0.005);
    }

    /** Places of the first tree that the second lacks or holds otherwise; numbers are compared as numbers. */
    private static List<String> missing(String place, JsonNode first, JsonNode second) {
        List<String> lost = new ArrayList<>();
        if (first.isContainerNode() && first.getNodeType() == second.getNodeType()) {
            first.properties().forEach(e -> lost.addAll(missing(place + "/" + e.getKey(), e.getValue(), second.path(e.getKey()))));
            if (first.isArray()) {
                for (int i = 0; i < first.size(); i++) {
                    lost.addAll(missing(place + "/" + i, first.get(i), second.path(i)));
                }
            }
        } else if (first.isNumber() ? !second.isNumber() || first.decimalValue().compareTo(second.decimalValue()) != 0
                : !first.equals(second)) {
            lost.add(place);
        }
        return lost;
    }
}
