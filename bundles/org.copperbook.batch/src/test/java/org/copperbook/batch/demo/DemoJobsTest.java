package org.copperbook.batch.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.inspection.ExcitationRun;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.HeatRun;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.seal.QuoteSeal;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Plates, runs and registers of the demo jobs, against plain textbook relations. */
class DemoJobsTest {

    private static final double K = 235;

    static Stream<Path> files() {
        return DemoFiles.jobFiles().stream();
    }

    static Stream<Job> jobs() {
        return DemoFiles.jobs().stream();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileGoesThroughTheRecordsWithoutLoss(Path file) throws Exception {
        Job job = DemoFiles.read(file);
        JsonNode back = new ObjectMapper().readTree(new JobFile(new PartJson()).write(job));
        assertEquals(List.of(), DemoFiles.lost("", DemoFiles.tree(file), back));
        assertTrue(file.getFileName().toString().startsWith(job.number()));
    }

    @Test
    void numbersRunWithoutAGapInTheOrderOfBooking() {
        List<Job> jobs = DemoFiles.jobs();
        assertTrue(jobs.size() >= 6);
        Instant before = Instant.EPOCH;
        for (int i = 0; i < jobs.size(); i++) {
            assertEquals(String.format("2026-%04d", i + 1), jobs.get(i).number());
            Instant at = jobs.get(i).booking().orElseThrow().bookedAt();
            assertTrue(at.isAfter(before));
            before = at;
        }
        assertEquals(jobs.size(), jobs.stream().map(Job::id).distinct().count());
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void thePlateSatisfiesItsOwnIdentities(Job job) {
        Nameplate n = job.nameplate().orElse(null);
        if (n == null) {
            assertTrue(Set.of("2026-0003", "2026-0008").contains(job.number()), "only a machine not yet opened has no plate");
            return;
        }
        double synchronous = 120 * n.frequencyHz() / n.poles();
        double volts = Math.sqrt(3) * n.voltageV() * n.currentA();
        if (job.booking().orElseThrow().machineKind() == MachineKind.BRUSHLESS_ALTERNATOR) {
            assertEquals(n.apparentPowerVA(), volts, 0.003 * volts);
            assertEquals(n.powerW(), n.apparentPowerVA() * n.powerFactor(), 1);
            assertEquals(synchronous, n.speedRpm(), 0.5);
        } else {
            double efficiency = n.powerW() / (volts * n.powerFactor());
            assertTrue(efficiency > 0.85 && efficiency < 0.95, "efficiency " + efficiency);
            double slip = 1 - n.speedRpm() / synchronous;
            assertTrue(slip > 0.005 && slip < 0.06, "slip " + slip);
        }
        for (Nameplate.Rating r : n.otherRatings()) {
            assertEquals(r.apparentPowerVA(), Math.sqrt(3) * r.voltageV() * r.currentA(), 0.003 * r.apparentPowerVA());
            assertEquals(r.speedRpm(), 120 * r.frequencyHz() / n.poles(), 0.5);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void anOfferThatWentOutCarriesTheFingerprintOfWhatStandsInIt(Job job) {
        job.quotes().stream().filter(q -> q.sent() != null)
                .forEach(q -> assertEquals(QuoteSeal.of(job.number(), q), q.sent().fingerprint(), job.number()));
    }

    @ParameterizedTest
    @CsvSource({"2026-0004, AGREED", "2026-0005, AGREED", "2026-0007, QUOTED", "2026-0008, BOOKED_IN"})
    void aJobThatTheWorkshopHasNotBegunOnStandsWhereItsOfferStands(String number, Stage.At at) {
        assertEquals(at, Stage.of(jobs().filter(j -> j.number().equals(number)).findFirst().orElseThrow()).at());
    }

    /** Volts, amps, density and mass of the loop runs follow from the core's dimensions: transformer equation and Ampere. */
    @ParameterizedTest
    @MethodSource("jobs")
    void theLoopRunsFitTheCore(Job job) {
        job.part(PartKind.CORE, CoreTest.class).ifPresent(core -> {
            WindingData w = job.windingAsFound(core.winding()).orElseThrow();
            double area = w.yokeDepthM() * w.coreLengthM() * core.setUp().stacking();
            double path = Math.PI * (w.outsideM() - w.yokeDepthM());
            for (CoreTest.LoopRun run : core.runs()) {
                double tesla = run.volts() / (Math.PI * Math.sqrt(2) * run.frequencyHz() * area * run.turns());
                assertEquals(tesla, run.fluxDensityT(), 0.003 * tesla);
                assertEquals(path * area * core.setUp().ironKgPerM3(), run.yokeMassKg(), 0.1);
                assertEquals(core.setUp().fieldStrengthApm(), run.amps() * run.turns() / path,
                        0.06 * core.setUp().fieldStrengthApm());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theBatteryDrivesTheCurrentThatTheExciterFieldAllows(Job job) {
        job.inspection().ifPresent(i -> {
            for (ExcitationRun run : i.excitationRuns()) {
                Reading field = i.readings().stream()
                        .filter(r -> r.place().winding() == WindingRole.EXCITER_STATOR
                                && r.quantity() == ReadingQuantity.RESISTANCE).findFirst().orElseThrow();
                double amps = run.batteryV() / field.observed().value();
                assertEquals(amps, run.exciterA(), 0.02 * amps);
                assertEquals(1, run.speedRpm() / job.nameplate().orElseThrow().speedRpm(), 0.04);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void runPointsAgreeWithSpeedPolesLoadAndFieldResistance(Job job) {
        job.runUp().ifPresent(up -> {
            Nameplate n = job.nameplate().orElseThrow();
            double field20 = up.readings().stream()
                    .filter(r -> r.place().winding() == WindingRole.EXCITER_STATOR
                            && r.quantity() == ReadingQuantity.RESISTANCE)
                    .mapToDouble(r -> r.observed().value() * (K + 20) / (K + r.windingCelsius())).findFirst().orElse(0);
            double lastAmps = -1;
            double lastVolts = -1;
            for (RunPoint p : up.points()) {
                assertEquals(p.speedRpm() * n.poles() / 120, p.frequencyHz(), 0.03);
                if (p.kind() == RunPoint.Kind.SHORT_CIRCUIT) {
                    continue;
                }
                List<Double> volts = p.lineVolts().values();
                double mean = volts.stream().mapToDouble(v -> v).average().orElseThrow();
                assertEquals(mean, Math.sqrt(3) * p.neutralVolts().values().stream().mapToDouble(v -> v).average()
                        .orElseThrow(), 0.3);
                assertTrue(volts.stream().allMatch(v -> Math.abs(v - mean) <= 0.005 * mean + 0.15), "balance " + volts);
                if (p.exciterA() > 0) {
                    double celsius = p.exciterV() / p.exciterA() / field20 * (K + 20) - K;
                    assertTrue(celsius > 5 && celsius < 130, "exciter field at " + celsius + " C");
                }
                if (p.kind() == RunPoint.Kind.OPEN_CIRCUIT_UP) {
                    assertTrue(p.exciterA() > lastAmps && mean > lastVolts, "curve rises");
                    if (lastAmps > 0) {
                        assertTrue(mean / p.exciterA() < 1.01 * lastVolts / lastAmps, "curve bends down, not up");
                    }
                    lastAmps = p.exciterA();
                    lastVolts = mean;
                }
                if (p.kind() == RunPoint.Kind.ON_LOAD) {
                    double s = Math.hypot(p.loadW(), p.loadVar());
                    assertEquals(s, Math.sqrt(3) * mean * p.loadA(), 0.01 * s);
                }
            }
        });
    }

    /**
     * Short-circuit current rises in proportion to the field, and open circuit, short circuit and load belong to one
     * machine: by the ampere-turn method the field on load is that for the voltage and that for the current added as
     * phasors, the angle between them being 90 degrees less that of the load (textbook, e.g. Say, Alternating Current Machines; memory).
     */
    @Test
    void fieldsOnOpenCircuitOnShortCircuitAndOnLoadBelongToOneMachine() {
        RunUp run = DemoFiles.jobs().get(0).runUp().orElseThrow();
        List<RunPoint> shorted = run.points().stream().filter(p -> p.kind() == RunPoint.Kind.SHORT_CIRCUIT).toList();
        assertTrue(shorted.size() >= 4);
        double ampsPerField = shorted.get(3).loadA() / shorted.get(3).exciterA();
        for (RunPoint p : shorted) {
            assertEquals(ampsPerField * p.exciterA(), p.loadA(), 0.01 * p.loadA());
        }
        double forVolts = run.points().stream().filter(p -> p.kind() == RunPoint.Kind.OPEN_CIRCUIT_UP
                && Math.abs(p.lineVolts().values().get(0) - 400) < 2).findFirst().orElseThrow().exciterA();
        for (RunPoint p : run.points()) {
            if (p.kind() == RunPoint.Kind.ON_LOAD) {
                double forAmps = p.loadA() / ampsPerField;
                double cos = p.loadW() / Math.hypot(p.loadW(), p.loadVar());
                double sin = Math.sqrt(1 - cos * cos);
                assertEquals(Math.hypot(forVolts + forAmps * sin, forAmps * cos), p.exciterA(), 0.02 * p.exciterA());
            }
        }
    }

    /** Copper cools along one exponential to the coolant, from below its class; cold reading and instrument as in the log. */
    @Test
    void theHeatRunCoolsToItsCoolantAndStaysBelowItsClass() {
        Job job = DemoFiles.jobs().get(0);
        HeatRun run = job.runUp().orElseThrow().heatRuns().get(0);
        Reading cold = job.runUp().orElseThrow().readings().get(0);
        assertEquals(cold.observed().value(), run.coldOhm());
        assertEquals(cold.windingCelsius(), run.coldCelsius());
        List<double[]> logs = run.cooling().stream().map(c -> new double[] {c.seconds(), Math.log((K + run.coldCelsius())
                * c.ohm() / run.coldOhm() - K - run.coolantCelsius())}).toList();
        double slope = (logs.get(logs.size() - 1)[1] - logs.get(0)[1]) / (logs.get(logs.size() - 1)[0] - logs.get(0)[0]);
        for (double[] l : logs) {
            assertEquals(logs.get(0)[1] + slope * (l[0] - logs.get(0)[0]), l[1], 0.003);
        }
        double rise = Math.exp(logs.get(0)[1] - slope * logs.get(0)[0]);
        assertTrue(rise > 60 && rise < 125, "rise " + rise);
        assertEquals(job.nameplate().orElseThrow().currentA(), run.loadA(), 1);
        assertTrue(run.hours() * 60 < job.runUp().orElseThrow().durationMinutes());
    }

    @Test
    void theLoopDensityFollowsFromVoltsTurnsAndYoke() {
        Job job = DemoFiles.jobs().get(0);
        CoreTest core = (CoreTest) job.part(PartKey.of(PartKind.CORE)).orElseThrow();
        WindingData w = job.windingAsFound(WindingRole.MAIN_STATOR).orElseThrow();
        double area = w.coreLengthM() * w.yokeDepthM() * 0.97;
        assertEquals(w.outsideM(), w.boreM() + 2 * (w.slotDepthM() + w.yokeDepthM()), 1e-6);
        for (CoreTest.LoopRun r : core.runs()) {
            // transformer equation E = 4.44 f N B A
            assertEquals(r.volts(), 4.443 * r.frequencyHz() * r.turns() * r.fluxDensityT() * area, 0.005 * r.volts());
            double perKg = r.watts() / r.yokeMassKg();
            assertTrue(perKg > 1 && perKg < 5, perKg + " W/kg");
            assertTrue(r.watts() < r.volts() * r.amps(), "watts below volt-amperes");
        }
    }

    @Test
    void insulationFallsTurnsAndLevelsWhileDrying() {
        Job job = DemoFiles.jobs().get(3);
        List<Double> ohms = ((org.copperbook.jobs.impregnation.Impregnation) job
                .part(PartKey.of(PartKind.IMPREGNATION)).orElseThrow()).drying().stream()
                .map(p -> p.insulationOhm()).toList();
        double least = ohms.stream().mapToDouble(x -> x).min().orElseThrow();
        double most = ohms.stream().mapToDouble(x -> x).max().orElseThrow();
        assertTrue(ohms.indexOf(least) > 0 && least < ohms.get(0));
        assertTrue(ohms.subList(ohms.size() - 4, ohms.size()).stream().allMatch(x -> x > 0.9 * most));
        assertTrue(ohms.get(0) < 1e6 && most > 5e6);
    }

    @Test
    void everybodyAndEveryInstrumentNamedIsInTheRegisters() {
        Set<String> people = new TreeSet<>();
        DemoFiles.tree(DemoFiles.FOLDER.resolve("shop/people.json")).forEach(p -> people.add(p.path("key").asText()));
        Set<String> instruments = new TreeSet<>();
        DemoFiles.tree(DemoFiles.FOLDER.resolve("shop/instruments.json")).path("instruments")
                .forEach(i -> instruments.add(i.path("id").asText()));
        assertTrue(instruments.size() >= 12);
        Set<String> personFields = Set.of("by", "bookedBy", "cautionsBy", "contactKey");
        for (Path file : DemoFiles.jobFiles()) {
            DemoFiles.everyField(DemoFiles.tree(file), (name, value) -> {
                if (personFields.contains(name)) {
                    assertTrue(people.contains(value.asText()), file.getFileName() + ": " + name + " " + value);
                }
                if (Set.of("instrument", "wrench").contains(name)) {
                    assertTrue(instruments.contains(value.asText()), file.getFileName() + ": " + name + " " + value);
                }
            });
        }
    }

    @Test
    void photosAreTheBytesTheirHashesName() throws Exception {
        int seen = 0;
        for (Path file : DemoFiles.jobFiles()) {
            for (JsonNode photo : DemoFiles.tree(file).findValues("photos")) {
                for (JsonNode p : photo) {
                    byte[] bytes = Files.readAllBytes(DemoFiles.FOLDER.resolve("photos").resolve(p.path("name").asText()));
                    assertEquals(p.path("hash").asText(),
                            HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
                    seen++;
                }
            }
        }
        assertTrue(seen >= 2);
    }

    @Test
    void theShopFilesFitTheirRecordsAndSayDemo() throws Exception {
        PartJson json = new PartJson();
        for (String kind : List.of("workshop", "instruments")) {
            assertNotNull(json.read(PartKey.parse(kind), Files.readString(DemoFiles.FOLDER.resolve("shop/" + kind + ".json"))));
        }
        assertTrue(DemoFiles.tree(DemoFiles.FOLDER.resolve("shop/workshop.json")).path("demo").asBoolean());
    }

    @Test
    void oneInstrumentIsOutOfCalibrationWhenItIsUsed() {
        JsonNode old = null;
        for (JsonNode i : DemoFiles.tree(DemoFiles.FOLDER.resolve("shop/instruments.json")).path("instruments")) {
            old = i.path("id").asText().equals("MM-2") ? i : old;
        }
        assertNotNull(old);
        Instant due = Instant.parse(old.path("calibrationDue").asText() + "T00:00:00Z");
        List<Reading> used = DemoFiles.jobs().stream().flatMap(j -> j.inspection().stream())
                .flatMap(i -> i.readings().stream()).filter(r -> "MM-2".equals(r.instrument())).toList();
        assertTrue(!used.isEmpty() && used.stream().allMatch(r -> r.at().isAfter(due)));
    }
}
