package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.Winding;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.copperbook.jobs.winding.WindingRole;

/**
 * One winding whose figures are looked at, with what is around it.
 *
 * @param key part it stands in
 */
record WindingCase(Job job, Shop shop, PartKey key, WindingData data) {

    static Optional<WindingCase> of(Job job, Shop shop, PartKey key) {
        return job.part(key).map(p -> new WindingCase(job, shop, key, (WindingData) p));
    }

    WindingRole role() {
        return data.role();
    }

    Machine machine() {
        return new Machine(job, shop);
    }

    Optional<Nameplate> plate() {
        return job.nameplate();
    }

    /**
     * The coil list, when it is complete.
     *
     * @throws OutOfRange when what was captured cannot be a winding
     */
    Optional<Winding> coils() {
        return new WindingModel(data).coils();
    }

    /** How the phases are joined as captured; empty when it is not recorded or neither of the two. */
    Optional<PhaseJunction> junction() {
        if (data.connection() == null) {
            return Optional.empty();
        }
        return switch (data.connection()) {
            case STAR, SERIES_STAR, PARALLEL_STAR -> Optional.of(PhaseJunction.STAR);
            case DELTA, SERIES_DELTA, PARALLEL_DELTA -> Optional.of(PhaseJunction.DELTA);
            case ZIG_ZAG, OPEN_PHASES, SINGLE_PHASE, SERIES_POLES, PARALLEL_POLES -> Optional.empty();
        };
    }

    /** A figure of this winding, its sentence not yet written. */
    VerdictDraft figure(String what) {
        return figure(what, Phrases.say("title.figure." + what, Phrases.word("role", role())));
    }

    /** A figure under a title of its own. */
    VerdictDraft figure(String what, String title) {
        return VerdictDraft.of(key.name() + ".figure." + what, key, title);
    }

    /** What to say of a figure for which something is missing. */
    Verdict missing(String what, List<String> missing) {
        return figure(what).outcome(Outcome.NOT_MEASURED)
                .reason(Phrases.say("figure.missing", String.join(", ", missing))).done();
    }

    /** What to say of a figure that what was captured does not allow. */
    Verdict refused(String what, String why) {
        return figure(what).outcome(Outcome.NOT_MEASURED).reason(why).settle(Phrases.say("settle.repeat")).done();
    }

    /** A figure with its usual range, which is a guide and no limit: outside of it a second look is asked for. */
    Verdict usual(String what, double value, String unit, double low, double high, double shownIn, String shownUnit,
            String source, String how) {
        double shown = value / shownIn;
        String range = Phrases.say("figure.usually", Figures.show(low / shownIn, shownUnit),
                Figures.show(high / shownIn, shownUnit));
        String where = value < low ? "below" : value > high ? "above" : "inside";
        return figure(what).value(shown, null, unit).limitText(range).source(source)
                .bounds(Bounds.between(low / shownIn, high / shownIn))
                .outcome(where.equals("inside") ? Outcome.MEETS : Outcome.DOUBTFUL)
                .reason(Phrases.say("figure.usual-" + where, Figures.show(shown, shownUnit))).addReason(how)
                .settle(where.equals("inside") ? "" : Phrases.say("settle.figure." + what)).done();
    }

    /** The names of what is null among some values: value, key of its name, value, key ... */
    static List<String> lacking(Object... valuesAndKeys) {
        List<String> missing = new ArrayList<>();
        for (int i = 0; i < valuesAndKeys.length; i += 2) {
            Object value = valuesAndKeys[i];
            if (value == null || value instanceof Optional<?> o && o.isEmpty()) {
                missing.add(Phrases.say((String) valuesAndKeys[i + 1]));
            }
        }
        return missing;
    }

    /** Whether the machine is closed to the air outside: first numeral of its degree of protection 4 or more, or empty. */
    Optional<Boolean> enclosed() {
        return plate().map(Nameplate::ip).map(ip -> ip.toUpperCase(Locale.ROOT).replaceAll("[^0-9]", ""))
                .filter(digits -> digits.length() >= 2).map(digits -> digits.charAt(0) >= '4');
    }
}
