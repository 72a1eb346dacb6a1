package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.runup.WithstandTest;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * What must be tested in the run-up, at what level and in which order: a pure function of machine, scope and limit profile.
 * Cold and still first, then insulation, withstand and insulation again (IEC 60034-1, 9.2: on the machine as it goes out,
 * not on a wet one), then turning without load, with load, and overspeed last.
 */
public final class TestPlan {

    private static final PartKey PART = PartKey.of(PartKind.RUN_UP);
    private static final Comparator<WindingRole> IN_ORDER = Comparator.naturalOrder();

    private final Job job;
    private final Machine machine;
    private final LimitBook limits;
    private final List<Verdict> verdicts;
    private final RunUp run;
    private final ReadingLog log;
    private final List<PlannedStep> steps = new ArrayList<>();

    private TestPlan(Job job, Shop shop, List<Verdict> verdicts) {
        this.job = job;
        this.verdicts = verdicts;
        machine = new Machine(job, shop);
        limits = new LimitBook(job, shop);
        log = new ReadingLog(job);
        run = job.runUp().orElse(new RunUp(RunUp.SCHEMA, null, null, null, null, null, null, null, null, null, null, null,
                null, null, null, null, null, null, null, null, null));
    }

    /** The plan of a job with the state of each step. */
    public static List<PlannedStep> of(Job job, Shop shop) {
        return of(job, shop, JobChecks.verdicts(job, shop));
    }

    /** The same with the verdicts already known. */
    public static List<PlannedStep> of(Job job, Shop shop, List<Verdict> verdicts) {
        return new TestPlan(job, shop, verdicts).plan();
    }

    private List<PlannedStep> plan() {
        List<WindingRole> windings = machine.toBeProved(log).stream().sorted(IN_ORDER).toList();
        for (WindingRole role : windings) {
            reading(role, ReadingQuantity.RESISTANCE, "resistance");
        }
        for (WindingRole role : windings) {
            reading(role, ReadingQuantity.INSULATION_RESISTANCE, "insulation-before");
        }
        withstands(windings);
        boolean alternator = machine.mainWinding() == WindingRole.MAIN_STATOR;
        if (alternator) {
            flashing();
        }
        running(alternator);
        if (alternator) {
            curves();
            step("regulation", regulationLevel(), "run-up.regulation", true, Hazardous.LIVE_RUN_UP, "/regulation",
                    run.regulation() != null);
        }
        mechanical();
        return List.copyOf(steps);
    }

    private void reading(WindingRole role, ReadingQuantity quantity, String key) {
        boolean ohms = quantity == ReadingQuantity.RESISTANCE;
        String prefix = role.word() + (ohms ? ".resistance.as-left" : ".insulation.as-left");
        boolean done = log.of(role, quantity, Reading.State.AS_LEFT).stream().anyMatch(l -> l.reading().observed() != null);
        Optional<Verdict> limit = verdicts.stream().filter(v -> v.id().startsWith(role.word()
                + (ohms ? ".unbalance.as-left" : ".insulation.as-left")) && v.bounds() != null).findFirst();
        add(key + "." + role.word(), Phrases.say("plan." + key, Phrases.word("role", role)),
                limit.map(Verdict::limitText).orElse(""), limit.map(Verdict::source).orElse(""), Phrases.say("plan." + key + ".why"),
                true, ohms ? null : Hazardous.INSULATION_TEST, "/readings", done, List.of(prefix, role.word() + ".unbalance.as-left"));
    }

    private void withstands(List<WindingRole> windings) {
        WithstandLevel levels = new WithstandLevel(machine, limits);
        Set<WindingRole> rewound = machine.rewound();
        for (WindingRole role : windings) {
            List<WithstandTest> made = run.withstands().stream().filter(w -> w.winding() == role).toList();
            boolean renewed = rewound.contains(role);
            if (!renewed && made.isEmpty()) {
                continue;
            }
            LimitBook.Applied level = renewed ? levels.ofNew(role) : levels.ofOverhauled(role);
            boolean repeat = made.stream().anyMatch(w -> w.held() != null)
                    && made.stream().noneMatch(w -> Boolean.TRUE.equals(w.held()));
            double share = repeat ? limits.find("withstand.repeat").lower().orElse(1.0) : 1;
            double seconds = limits.find("withstand.seconds").lower().orElse(60.0);
            String said = level.lower().map(v -> Phrases.say(repeat ? "plan.withstand.repeat" : "plan.withstand.level",
                    Figures.show(v * share, "V"), Figures.show(seconds, "s"))).orElse(level.trouble());
            add("withstand." + role.word(), Phrases.say("plan.withstand", Phrases.word("role", role)), said, level.source(),
                    Phrases.say(renewed ? "plan.withstand.new" : "plan.withstand.old"), renewed, Hazardous.WITHSTAND,
                    "/withstands", !made.isEmpty(), List.of("withstand." + role.word()));
            after(role, made);
        }
    }

    /** Insulation once more after the test: the reading must be younger than it. */
    private void after(WindingRole role, List<WithstandTest> made) {
        boolean done = InsulationAfterCheck.read(role, made, log);
        add("insulation-after." + role.word(), Phrases.say("plan.insulation-after", Phrases.word("role", role)), "", "",
                Phrases.say("plan.insulation-after.why"), false, Hazardous.INSULATION_TEST, "/readings", done, List.of());
    }

    private void flashing() {
        boolean asked = !run.flashings().isEmpty() || job.inspection().map(i -> i.findings().stream()
                .anyMatch(f -> String.valueOf(f).toLowerCase(java.util.Locale.ROOT).contains("residual"))).orElse(false)
                || machine.rewound().contains(WindingRole.EXCITER_STATOR);
        if (asked) {
            step("flashing", "", "flashing", false, Hazardous.FLASHING, "/flashings", !run.flashings().isEmpty());
        }
    }

    private void running(boolean alternator) {
        // an open-circuit point is one without load too, and so is the first one with the regulator on
        boolean still = has(RunPoint.Kind.NO_LOAD) || has(RunPoint.Kind.OPEN_CIRCUIT_UP) || has(RunPoint.Kind.REGULATOR_ON);
        String speed = machine.nominalSpeed().map(n -> Phrases.say("plan.no-load.level", Figures.show(n, "r/min"),
                Figures.bounds(limits.find("run-up.voltage-unbalance").bounds(), "1"))).orElse("");
        add("no-load", Phrases.say("plan.no-load"), speed, limits.find("run-up.voltage-unbalance").source(),
                Phrases.say("plan.no-load.why"), true, Hazardous.LIVE_RUN_UP, "/points", still,
                alternator ? pointIds(RunPoint.Kind.NO_LOAD) : List.of());
        step("sequence", "", "run-up.phase-sequence", true, Hazardous.LIVE_RUN_UP, "/sequenceRight", run.sequenceRight() != null);
    }

    private List<String> pointIds(RunPoint.Kind kind) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < run.points().size(); i++) {
            if (run.points().get(i).kind() == kind) {
                ids.add("run-up.point-" + (i + 1) + ".");
            }
        }
        return ids;
    }

    private boolean has(RunPoint.Kind kind) {
        return run.points().stream().anyMatch(p -> p.kind() == kind);
    }

    private void curves() {
        String volts = machine.ratedLineVolts().map(u -> Phrases.say("plan.open-circuit.level", Figures.show(u, "V"),
                Figures.show(1.2 * u, "V"))).orElse("");
        boolean rewound = machine.rewound().contains(WindingRole.MAIN_STATOR) || machine.rewound().contains(WindingRole.MAIN_ROTOR);
        add("open-circuit", Phrases.say("plan.open-circuit"), volts, "IEC 60034-4-1; IEEE 115", Phrases.say("plan.open-circuit.why"),
                false, Hazardous.LIVE_RUN_UP, "/points", has(RunPoint.Kind.OPEN_CIRCUIT_UP) && has(RunPoint.Kind.OPEN_CIRCUIT_DOWN),
                List.of("run-up.curve"));
        if (rewound || has(RunPoint.Kind.SHORT_CIRCUIT)) {
            add("short-circuit", Phrases.say("plan.short-circuit"), Phrases.say("plan.short-circuit.level"),
                    "IEC 60034-4-1; IEEE 115", Phrases.say("plan.short-circuit.why"), false, Hazardous.LIVE_RUN_UP, "/points",
                    has(RunPoint.Kind.SHORT_CIRCUIT), List.of("run-up.short-circuit"));
        }
    }

    private String regulationLevel() {
        for (String id : List.of("run-up.regulation", "run-up.regulation.g1", "run-up.regulation.g2", "run-up.regulation.g3")) {
            LimitBook.Applied l = limits.find(id);
            if (l.isSet() && l.decides()) {
                return Figures.bounds(l.bounds(), "1");
            }
        }
        return "";
    }

    private void mechanical() {
        boolean read = run.vibration().stream().filter(v -> v.mmPerSecond() != null && v.end() != null && v.direction() != null)
                .map(v -> v.end() + "/" + v.direction()).distinct().count() == 6;
        Optional<Verdict> vibration = verdicts.stream().filter(v -> v.id().startsWith("vibration.") && v.bounds() != null).findFirst();
        add("vibration", Phrases.say("plan.vibration"), vibration.map(Verdict::limitText).orElse(Phrases.say("plan.vibration.level")),
                vibration.map(Verdict::source).orElse("IEC 60034-14, table 1"), Phrases.say("plan.vibration.why"), true,
                Hazardous.LIVE_RUN_UP, "/vibration", read, List.of("vibration"));
        LimitBook.Applied steady = limits.find("bearing.steady");
        add("bearing", Phrases.say("plan.bearing"), Figures.bounds(steady.bounds(), "K/h"), steady.source(),
                Phrases.say("plan.bearing.why"), true, Hazardous.LIVE_RUN_UP, "/bearingTemperatures",
                run.bearingTemperatures().size() > 1, List.of("bearing."));
        add("heat-run", Phrases.say("plan.heat-run"), "", "IEC 60034-1, 8.6.2.3", Phrases.say("plan.heat-run.why"), false,
                Hazardous.LIVE_RUN_UP, "/heatRuns", !run.heatRuns().isEmpty(), List.of("heat-run."));
        LimitBook.Applied factor = limits.find("overspeed.speed");
        String over = machine.nominalSpeed().flatMap(n -> factor.lower().map(f -> Phrases.say("overspeed.limit",
                Figures.show(f * n, "r/min"), Figures.show(limits.find("overspeed.seconds").lower().orElse(0.0), "s")))).orElse("");
        add("overspeed", Phrases.say("plan.overspeed"), over, factor.source(), Phrases.say("plan.overspeed.why"), false,
                Hazardous.OVERSPEED, "/overspeed", run.overspeed() != null, List.of("run-up.overspeed"));
    }

    private void step(String id, String level, String verdict, boolean required, Hazardous caution, String path, boolean done) {
        String source = verdicts.stream().filter(v -> v.id().equals(verdict)).map(Verdict::source).findFirst()
                .orElse(limits.find(verdict).source());
        add(id, Phrases.say("plan." + id), level, source, Phrases.say("plan." + id + ".why"), required, caution, path, done,
                List.of(verdict));
    }

    private void add(String id, String title, String level, String source, String why, boolean required, Hazardous caution,
            String path, boolean recorded, List<String> verdictIds) {
        List<Verdict> on = verdicts.stream().filter(v -> v.part().equals(PART) || v.point() != null)
                .filter(v -> v.current() && verdictIds.stream().anyMatch(i -> v.id().startsWith(i))).toList();
        boolean against = on.stream().anyMatch(v -> v.outcome() == Outcome.FAILS || v.outcome() == Outcome.DOUBTFUL
                || v.outcome() == Outcome.NOT_MEASURED || v.blocks());
        PlannedStep.State state = !recorded ? PlannedStep.State.OPEN : against ? PlannedStep.State.NOT_MET : PlannedStep.State.DONE;
        steps.add(new PlannedStep(id, title, level, source, why, required, caution, PART, path, state,
                on.stream().map(Verdict::id).toList()));
    }
}
