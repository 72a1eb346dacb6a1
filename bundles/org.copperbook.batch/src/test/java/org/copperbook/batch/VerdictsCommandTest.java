package org.copperbook.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo jobs tell their stories through the verdicts. */
class VerdictsCommandTest {

    @TempDir
    Path folder;
    private BatchRun batch;

    @BeforeEach
    void begin() throws IOException {
        batch = new BatchRun(folder);
        List<String> arguments = new ArrayList<>(List.of("take-in", "--shop", BatchRun.DEMO.resolve("shop").toString()));
        try (var jobs = Files.list(BatchRun.DEMO.resolve("jobs"))) {
            jobs.sorted().forEach(j -> arguments.add(j.toString()));
        }
        BatchRun.Result in = batch.on(arguments.toArray(String[]::new));
        assertEquals(0, in.exit(), in.err());
        assertEquals("", in.err());
        assertTrue(in.out().startsWith("7 files of the shop and 13 people taken in"), in.out());
    }

    /** What each job is about fails as found, and only that. */
    @ParameterizedTest
    @CsvSource({
        "2026-0001, main-stator.unbalance.as-found;main-stator.resistance.as-found.group-6;excitation-run.1.balance",
        "2026-0002, excitation-run.1.output;diode.d5.as-found;vibration.drive-end.horizontal",
        "2026-0004, main-stator.insulation;main-rotor.insulation;exciter-rotor.insulation",
        "2026-0007, motor-stator.unbalance.as-found;motor-stator.resistance.as-found.group-3;motor-stator.insulation"})
    void theFaultFails(String number, String faults) {
        BatchRun.Result r = batch.on("verdicts", number, "--json");
        assertEquals(1, r.exit());
        List<String> failing = failing(r.json());
        for (String fault : faults.split(";")) {
            assertTrue(failing.stream().anyMatch(id -> id.startsWith(fault)), fault + " is not among " + failing);
        }
        for (String id : failing) {
            assertTrue(id.contains("as-found") || id.startsWith("excitation-run") || id.startsWith("vibration"), id);
        }
    }

    @ParameterizedTest
    @CsvSource({"2026-0003", "2026-0005", "2026-0006", "2026-0008"})
    void whatIsSoundOrNotYetReadFailsNowhere(String number) {
        BatchRun.Result r = batch.on("verdicts", number, "--json");
        assertEquals(List.of(), failing(r.json()));
        assertEquals(0, r.exit());
    }

    @ParameterizedTest
    @CsvSource({"2026-0001,SIGNED", "2026-0002,SIGNED", "2026-0006,READY", "2026-0004,OPEN", "2026-0005,NOT_REACHED"})
    void theReleaseStandsWhereTheJobStands(String number, String state) {
        JsonNode points = batch.on("verdicts", number, "--json").json().path("holdPoints");
        String release = "";
        for (JsonNode p : points) {
            release = p.path("point").asText().equals("RELEASE") ? p.path("state").asText() : release;
        }
        assertEquals(state, release, points.toString());
    }

    @Test
    void aMeterOutOfCalibrationIsNamed() {
        String out = batch.on("verdicts", "2026-0005").out();
        assertTrue(out.contains("MM-2") && out.contains("2026-03-04"), out);
    }

    @Test
    void theShopsOwnLimitNamesTheOneItStandsInPlaceOf() {
        String out = batch.on("verdicts", "2026-0002").out();
        assertTrue(out.contains("workshop rule 7") && out.contains("IEC 60034-14"), out);
    }

    @Test
    void everyVerdictOfTheTextHasItsOutcomeLimitAndSource() {
        String out = batch.on("verdicts", "2026-0001").out();
        assertTrue(out.contains("FAILS: Main stator: resistance unbalance as found"), out);
        assertTrue(out.contains("limit from: IEEE 43"), out);
        assertTrue(out.contains("Hold point Release: signed"), out);
        assertFalse(out.contains("null") || out.contains("{"), out);
    }

    @Test
    void noMeasuredResistanceIsShownWithoutDoubt() {
        int seen = 0;
        for (String number : new String[] {"2026-0001", "2026-0005", "2026-0007"}) {
            for (JsonNode v : batch.on("verdicts", number, "--json").json().path("verdicts")) {
                if (v.path("unit").asText().equals("ohm") && v.path("value").isNumber() && v.path("expandedU").isNumber()) {
                    assertTrue(v.path("expandedU").asDouble() > 1e-4 * v.path("value").asDouble(), v.toString());
                    seen++;
                }
            }
        }
        assertTrue(seen > 50);
    }

    private static List<String> failing(JsonNode document) {
        List<String> ids = new ArrayList<>();
        for (JsonNode v : document.path("verdicts")) {
            if (v.path("outcome").asText().equals("FAILS") && v.path("current").asBoolean()) {
                ids.add(v.path("id").asText());
            }
        }
        return ids;
    }
}
