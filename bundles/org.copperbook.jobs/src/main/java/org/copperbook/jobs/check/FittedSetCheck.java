package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.lot.LotText;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.FittedSet;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;

/** The set fitted as a record: of one lot on each plate, and traceable to what was fitted, how, with what, by whom. */
final class FittedSetCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        List<Verdict> out = new ArrayList<>();
        job.rectifier().filter(set -> set.fitted() != null).ifPresent(set -> {
            out.add(lots(set));
            out.add(traceable(set.fitted()));
        });
        return out;
    }

    private static VerdictDraft draft(String id, FittedSet fitted) {
        return VerdictDraft.of("rectifier." + id, PartKey.of(PartKind.RECTIFIER), Phrases.say("title." + id))
                .point(HoldPoint.RECTIFIER_COMPLETE).takenAt(fitted.at()).path("/fitted/lot");
    }

    /** The two base polarities are two parts and may come of two lots; the diodes of one plate may not. */
    private static Verdict lots(RectifierSet set) {
        VerdictDraft d = draft("lots", set.fitted()).limitText(Phrases.say("lots.limit"))
                .source(Phrases.say("lots.source"));
        Map<DiodePosition.Plate, Set<String>> own = new EnumMap<>(DiodePosition.Plate.class);
        Map<DiodePosition.Plate, Integer> silent = new EnumMap<>(DiodePosition.Plate.class);
        for (DiodePosition p : set.positions()) {
            if (p.plate() != null) {
                if (given(p.lot())) {
                    own.computeIfAbsent(p.plate(), k -> new TreeSet<>()).add(p.lot().strip().toUpperCase(Locale.ROOT));
                } else {
                    silent.merge(p.plate(), 1, Integer::sum);
                }
            }
        }
        for (DiodePosition.Plate plate : own.keySet()) {
            Set<String> lots = own.get(plate);
            boolean ofTheSet = given(set.fitted().lot())
                    && lots.stream().allMatch(l -> LotText.names(set.fitted().lot(), l));
            if (lots.size() > 1 || (silent.containsKey(plate) && !ofTheSet)) {
                return d.outcome(Outcome.FAILS).reason(Phrases.say("lots.mixed", Phrases.word("plate", plate),
                        String.join(", ", lots), given(set.fitted().lot()) ? set.fitted().lot() : "?"))
                        .settle(Phrases.say("settle.change-set")).done();
            }
        }
        if (own.isEmpty() && !given(set.fitted().lot())) {
            return d.outcome(Outcome.NOT_MEASURED).reason(Phrases.say("lots.none")).done();
        }
        return d.outcome(Outcome.MEETS).reason(Phrases.say("lots.one")).done();
    }

    private static Verdict traceable(FittedSet f) {
        List<String> missing = new ArrayList<>();
        missing(f.makersPart(), "part", missing);
        missing(f.stud(), "stud", missing);
        missing(f.wrench(), "wrench", missing);
        missing(f.compound(), "compound", missing);
        missing(f.by(), "by", missing);
        if (f.at() == null) {
            missing.add(Phrases.say("traceable.at"));
        }
        return draft("traceable", f).path("/fitted").limitText(Phrases.say("traceable.limit"))
                .source(Phrases.say("traceable.source"))
                .outcome(missing.isEmpty() ? Outcome.MEETS : Outcome.NOT_MEASURED)
                .reason(missing.isEmpty() ? Phrases.say("traceable.all")
                        : Phrases.say("traceable.missing", String.join(", ", missing))).done();
    }

    private static void missing(String value, String word, List<String> missing) {
        if (!given(value)) {
            missing.add(Phrases.say("traceable." + word));
        }
    }

    private static boolean given(String s) {
        return s != null && !s.isBlank();
    }
}
