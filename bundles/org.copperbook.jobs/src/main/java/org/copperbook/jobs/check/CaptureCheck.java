package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Whether the old winding is captured well enough to be taken out: two independent counts that agree, wire gauged by two
 * measurements, span, connection, circuits and group sequence, dimensions, photos of both ends.
 */
final class CaptureCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : new Machine(job, shop).captured()) {
            Optional<WindingData> old = job.windingAsFound(role);
            if (old.isEmpty()) {
                out.add(draft(role, "record").outcome(Outcome.NOT_MEASURED)
                        .reason(Phrases.say("capture.no-record", Phrases.word("role", role))).done());
                continue;
            }
            out.add(counts(role, old.get()));
            out.add(missing(role, "wire", "/wire", wire(old.get())));
            out.add(missing(role, "layout", "", layout(old.get(), role)));
            out.add(missing(role, "dimensions", "", dimensions(old.get(), role)));
            out.add(missing(role, "photos", "/photos",
                    old.get().photos().size() >= 2 ? List.of() : List.of(Phrases.say("capture.both-ends"))));
        }
        return out;
    }

    private static VerdictDraft draft(WindingRole role, String what) {
        return VerdictDraft.of(role.word() + ".capture." + what, PartKey.windingAsFound(role),
                Phrases.say("title.capture." + what, Phrases.word("role", role)))
                .limitText(Phrases.say("capture.limit." + what)).source(Phrases.say("capture.source"))
                .point(HoldPoint.CAPTURE_COMPLETE);
    }

    private static Verdict missing(WindingRole role, String what, String path, List<String> missing) {
        VerdictDraft d = draft(role, what).path(path);
        return missing.isEmpty() ? d.outcome(Outcome.MEETS).reason(Phrases.say("capture.recorded")).done()
                : d.outcome(Outcome.NOT_MEASURED)
                        .reason(Phrases.say("capture.missing", String.join(", ", missing))).done();
    }

    private static Verdict counts(WindingRole role, WindingData old) {
        VerdictDraft d = draft(role, "counts").path("/counts").takenAt(old.counts().stream().map(TurnCount::at)
                .filter(Objects::nonNull).max(Comparator.naturalOrder()).orElse((Instant) null));
        List<TurnCount> counts = old.counts().stream().filter(c -> !c.groups().isEmpty()).toList();
        if (counts.size() < 2) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("capture.counts-few", counts.size())).done();
        }
        boolean agreeAlone = false;
        for (int i = 0; i < counts.size(); i++) {
            for (int j = i + 1; j < counts.size(); j++) {
                if (agree(counts.get(i), counts.get(j))) {
                    boolean two = counts.get(i).by() != null && counts.get(j).by() != null
                            && !counts.get(i).by().equals(counts.get(j).by());
                    if (two) {
                        return d.outcome(Outcome.MEETS).reason(Phrases.say("capture.counts-agree",
                                counts.get(i).ordinal(), counts.get(j).ordinal())).done();
                    }
                    agreeAlone = true;
                }
            }
        }
        return agreeAlone ? d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("capture.counts-one-person"))
                .settle(Phrases.say("settle.second-count")).done()
                : d.outcome(Outcome.FAILS).reason(Phrases.say("capture.counts-differ", difference(counts)))
                        .settle(Phrases.say("settle.third-count")).done();
    }

    private static boolean agree(TurnCount a, TurnCount b) {
        return turns(a).equals(turns(b)) && Objects.equals(a.strands(), b.strands());
    }

    private static TreeMap<Integer, List<Integer>> turns(TurnCount c) {
        TreeMap<Integer, List<Integer>> map = new TreeMap<>();
        c.groups().forEach(g -> map.put(g.group(), g.turns()));
        return map;
    }

    /** Where the last two counts part. */
    private static String difference(List<TurnCount> counts) {
        TurnCount a = counts.get(counts.size() - 2);
        TurnCount b = counts.get(counts.size() - 1);
        if (!Objects.equals(a.strands(), b.strands())) {
            return Phrases.say("capture.strands-differ", String.valueOf(a.strands()), String.valueOf(b.strands()));
        }
        TreeMap<Integer, List<Integer>> other = turns(b);
        for (var e : turns(a).entrySet()) {
            if (!e.getValue().equals(other.get(e.getKey()))) {
                return Phrases.say("capture.group-differs", e.getKey(), e.getValue().toString(),
                        String.valueOf(other.get(e.getKey())));
            }
        }
        return Phrases.say("capture.groups-differ");
    }

    private static List<String> wire(WindingData w) {
        List<String> missing = new ArrayList<>();
        if (w.wire().isEmpty() && w.groups().stream().allMatch(g -> g.wire().isEmpty())) {
            missing.add(Phrases.say("capture.wire"));
        }
        w.wire().forEach(x -> {
            if (x.bareMm() == null || x.coveredMm() == null) {
                missing.add(Phrases.say("capture.two-gaugings", x.size()));
            }
        });
        return missing;
    }

    private static List<String> layout(WindingData w, WindingRole role) {
        List<String> missing = new ArrayList<>();
        boolean coils = w.groups().stream().anyMatch(g -> !g.coils().isEmpty());
        need(w.poles(), "capture.poles", missing);
        need(w.connection(), "capture.connection", missing);
        if (role.isField()) {
            need(coils ? Integer.valueOf(1) : w.turnsPerCoil(), "capture.turns", missing);
            return missing;
        }
        need(w.slots(), "capture.slots", missing);
        need(w.circuits(), "capture.circuits", missing);
        need(coils ? "" : w.span(), "capture.span", missing);
        need(coils ? "" : w.groupSequence() != null ? w.groupSequence() : w.coilsPerGroup(), "capture.sequence",
                missing);
        return missing;
    }

    private static List<String> dimensions(WindingData w, WindingRole role) {
        List<String> missing = new ArrayList<>();
        need(w.meanTurnM(), "capture.mean-turn", missing);
        if (!role.isField()) {
            need(w.coreLengthM(), "capture.core-length", missing);
            need(w.boreM(), "capture.bore", missing);
        }
        return missing;
    }

    private static void need(Object value, String key, List<String> missing) {
        if (value == null) {
            missing.add(Phrases.say(key));
        }
    }
}
