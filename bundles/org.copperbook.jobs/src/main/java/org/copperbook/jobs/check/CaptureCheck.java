package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.winding.CapturedCoil;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.CountComparison;
import org.copperbook.jobs.winding.TurnCount;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.jobs.winding.WireInHand;

/**
 * Whether the old winding is captured well enough to be taken out: two independent counts that agree, wire gauged by two
 * measurements, span, connection, circuits and group sequence, dimensions, photos of both ends.
 */
final class CaptureCheck implements Check {

    private static final int MOST_NAMED = 3;

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
            coilList(role, old.get()).ifPresent(out::add);
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
        CountComparison counts = CountComparison.of(old);
        long in = old.counts().stream().filter(TurnCount::handedIn).count();
        return switch (counts.standing()) {
            case WAITING -> d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("capture.counts-few", in)).done();
            case AGREE -> d.outcome(Outcome.MEETS).reason(Phrases.say("capture.counts-agree", in)).done();
            case SETTLED -> d.outcome(Outcome.MEETS).reason(Phrases.say("capture.counts-settled",
                    counts.differences().size())).done();
            case ONE_PERSON -> d.outcome(Outcome.DOUBTFUL).reason(Phrases.say("capture.counts-one-person"))
                    .settle(Phrases.say("settle.second-count")).done();
            case DIFFER -> d.outcome(Outcome.FAILS)
                    .reason(Phrases.say("capture.counts-differ", differences(counts.open())))
                    .settle(Phrases.say("settle.third-count")).done();
        };
    }

    /** The coil list against the turns and strands that two people counted; nothing before the counts stand. */
    private static Optional<Verdict> coilList(WindingRole role, WindingData old) {
        CountComparison counts = CountComparison.of(old);
        boolean turns = old.groups().stream().anyMatch(g -> g.coils().stream().anyMatch(c -> c.turns() != null));
        if (!counts.stands() || !turns) {
            return Optional.empty();
        }
        List<String> apart = new ArrayList<>();
        for (CoilGroup g : old.groups()) {
            List<Integer> listed = g.coils().stream().map(CapturedCoil::turns).toList();
            List<Integer> counted = counts.agreed().get(g.number());
            if (counted == null) {
                apart.add(Phrases.say("capture.group-uncounted", g.number()));
            } else if (!listed.equals(counted)) {
                apart.add(Phrases.say("capture.group-against-counts", g.number(), listed.toString(), counted.toString()));
            }
        }
        int strands = old.wire().stream().mapToInt(WireInHand::strands).sum();
        boolean own = old.groups().stream().anyMatch(g -> !g.wire().isEmpty());
        if (counts.strands() != null && strands > 0 && !own && strands != counts.strands()) {
            apart.add(Phrases.say("capture.strands-against-counts", strands, counts.strands()));
        }
        VerdictDraft d = draft(role, "coil-list").path("/groups");
        return Optional.of(apart.isEmpty()
                ? d.outcome(Outcome.MEETS).reason(Phrases.say("capture.coil-list-as-counted")).done()
                : d.outcome(Outcome.FAILS).reason(Phrases.say("capture.coil-list-differs", few(apart)))
                        .settle(Phrases.say("settle.coil-list")).done());
    }

    private static String differences(List<CountComparison.Difference> open) {
        return few(open.stream().map(x -> {
            String said = x.said().stream().map(CaptureCheck::said).collect(Collectors.joining(" / "));
            return x.coil() == CountComparison.STRANDS ? Phrases.say("capture.strands-differ", said)
                    : Phrases.say("capture.coil-differs", x.group(), x.coil(), said);
        }).toList());
    }

    private static String said(Integer turns) {
        return turns == null ? "?" : turns == 0 ? "-" : turns.toString();
    }

    /** The first few of a list in words, and how many more there are. */
    private static String few(List<String> all) {
        String first = String.join("; ", all.subList(0, Math.min(MOST_NAMED, all.size())));
        return all.size() <= MOST_NAMED ? first : Phrases.say("capture.and-more", first, all.size() - MOST_NAMED);
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
