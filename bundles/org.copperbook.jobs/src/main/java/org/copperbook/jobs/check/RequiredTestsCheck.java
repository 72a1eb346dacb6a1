package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.WindingRole;

/** Tests that a hold point waits for and nobody has recorded yet: not measured, never silently passed. */
final class RequiredTestsCheck implements Check {

    private static final PartKey IN_PROCESS = PartKey.of(PartKind.IN_PROCESS);
    private static final PartKey RUN_UP = PartKey.of(PartKind.RUN_UP);

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : machine.rewound()) {
            readings(role, Reading.State.IN_PROCESS, log, IN_PROCESS, out);
            if (!role.isField()) {
                boolean none = job.runUp().map(r -> r.surges().stream().noneMatch(s -> s.winding() == role))
                        .orElse(true) && job.inProcess().map(p -> p.surges().stream()
                        .noneMatch(s -> s.winding() == role)).orElse(true);
                add(none, IN_PROCESS, "surge." + role.word(), "required.surge", role, HoldPoint.WINDING_PROVED, out);
                boolean unseen = job.inProcess().map(p -> p.polarities().stream().noneMatch(t -> t.winding() == role))
                        .orElse(true);
                add(unseen, IN_PROCESS, "polarity." + role.word(), "required.polarity", role, HoldPoint.WINDING_PROVED,
                        out);
            }
        }
        job.runUp().ifPresent(run -> {
            for (WindingRole role : machine.toBeProved(log)) {
                readings(role, Reading.State.AS_LEFT, log, RUN_UP, out);
            }
            for (WindingRole role : machine.rewound()) {
                boolean none = run.withstands().stream().noneMatch(w -> w.winding() == role);
                add(none, "withstand." + role.word(), "required.withstand", role, HoldPoint.RELEASE, out);
            }
            running(run, machine, out);
        });
        return out;
    }

    private static void running(RunUp run, Machine machine, List<Verdict> out) {
        add(run.points().isEmpty(), "run-up.points", "required.points", null, HoldPoint.RELEASE, out);
        boolean alternator = machine.mainWinding() == WindingRole.MAIN_STATOR;
        add(alternator && run.regulation() == null, "run-up.regulation", "required.regulation", null,
                HoldPoint.RELEASE, out);
        add(run.vibration().isEmpty(), "vibration", "required.vibration", null, HoldPoint.RELEASE, out);
        vibration(run, out);
        add(run.bearingTemperatures().isEmpty(), "bearing.steady", "required.bearing", null, HoldPoint.RELEASE, out);
    }

    /** Both bearings in three directions (IEC 60034-14); a machine read at some of them is not yet read. */
    private static void vibration(RunUp run, List<Verdict> out) {
        List<String> missing = new ArrayList<>();
        for (RunUp.End end : RunUp.End.values()) {
            for (RunUp.Direction direction : RunUp.Direction.values()) {
                if (run.vibration().stream().noneMatch(v -> v.end() == end && v.direction() == direction)) {
                    missing.add(Phrases.word("end", end) + " " + Phrases.word("direction", direction));
                }
            }
        }
        if (!run.vibration().isEmpty() && !missing.isEmpty()) {
            out.add(VerdictDraft.of("vibration.places", RUN_UP, Phrases.say("required.vibration.title"))
                    .outcome(Outcome.NOT_MEASURED).path("/vibration").point(HoldPoint.RELEASE)
                    .reason(Phrases.say("required.vibration.places", String.join(", ", missing))).done());
        }
    }

    private static void readings(WindingRole role, Reading.State state, ReadingLog log, PartKey part,
            List<Verdict> out) {
        for (ReadingQuantity q : List.of(ReadingQuantity.RESISTANCE, ReadingQuantity.INSULATION_RESISTANCE)) {
            boolean none = log.of(role, q, state).stream().noneMatch(l -> l.reading().observed() != null);
            if (none) {
                boolean ohms = q == ReadingQuantity.RESISTANCE;
                String roleWord = Phrases.word("role", role);
                String stateWord = Phrases.word("state", state);
                out.add(VerdictDraft.of(role.word() + (ohms ? ".resistance." : ".insulation.") + Points.word(state),
                        part, Phrases.say(ohms ? "title.resistance" : "title.insulation", roleWord,
                                Phrases.say("place.whole"), stateWord))
                        .outcome(Outcome.NOT_MEASURED).point(Points.of(state))
                        .reason(Phrases.say(ohms ? "required.resistance" : "required.insulation", roleWord, stateWord))
                        .done());
            }
        }
    }

    private static void add(boolean missing, String id, String key, WindingRole role, HoldPoint point,
            List<Verdict> out) {
        add(missing, RUN_UP, id, key, role, point, out);
    }

    private static void add(boolean missing, PartKey part, String id, String key, WindingRole role, HoldPoint point,
            List<Verdict> out) {
        if (missing) {
            String roleWord = role == null ? "" : Phrases.word("role", role);
            out.add(VerdictDraft.of(id, part, Phrases.say(key + ".title", roleWord)).outcome(Outcome.NOT_MEASURED)
                    .reason(Phrases.say(key, roleWord)).point(point).done());
        }
    }
}
