package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.winding.WindingRole;

/**
 * Insulation resistance to earth and between phases: the common-practice floor as read, the minimum of IEEE 43 at 40
 * degrees Celsius, and the polarisation index where it applies. Both limits are shown; the profile says which decides.
 */
final class InsulationCheck implements Check {

    @Override
    public List<Verdict> judge(Job job, Shop shop) {
        Machine machine = new Machine(job, shop);
        LimitBook limits = new LimitBook(job, shop);
        ReadingLog log = new ReadingLog(job);
        List<Verdict> out = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            for (Reading.State state : Reading.State.values()) {
                InsulationRun.byPlace(log.of(role, ReadingQuantity.INSULATION_RESISTANCE, state)).forEach((place, readings) ->
                        new OnePlace(role, state, place, readings, machine, limits, shop).judge(out));
            }
        }
        return out;
    }

    private record OnePlace(WindingRole role, Reading.State state, String place, List<LoggedReading> readings,
            Machine machine, LimitBook limits, Shop shop) {

        void judge(List<Verdict> out) {
            LoggedReading minute = ReadingLog.newest(readings, l -> InsulationRun.near(l, InsulationRun.ONE_MINUTE)).orElse(
                    ReadingLog.newest(readings, l -> l.reading().afterSeconds() == null).orElse(
                            ReadingLog.newest(readings, l -> true).orElseThrow()));
            OhmsToEarth at = OhmsToEarth.of(minute, machine.kelvinU(minute.reading().temperatureU()), shop);
            Verdict floor = floor(at);
            LimitBook.Applied minimum = minimum();
            InsulationAt40 hot = InsulationAt40.of(at, machine.thermalClass(role, state != Reading.State.AS_FOUND));
            out.add(minimum(at, hot, minimum, floor.outcome() == Outcome.FAILS));
            out.add(floor);
            indices(at, hot, out);
        }

        private VerdictDraft draft(String what, String title, LoggedReading beside) {
            String id = role.word() + "." + what + "." + Points.word(state) + (place.isEmpty() ? "" : "." + place);
            String where = place.isEmpty() ? Phrases.say("place.to-earth") : place.toUpperCase(Locale.ROOT);
            return VerdictDraft.of(id, beside.part(), Phrases.say(title, Phrases.word("role", role), where,
                    Phrases.word("state", state))).path(beside.path()).takenAt(beside.reading().at());
        }

        private Verdict floor(OhmsToEarth at) {
            LimitBook.Applied limit = limits.find("insulation.practice");
            VerdictDraft d = draft("insulation-practice", "title.insulation-practice", at.logged()).limit(limit)
                    .point(limit.decides() ? Points.of(state) : null);
            OhmsToEarth.Finding f = at.against(limit.bounds(), at.meter());
            d.outcome(f.outcome()).reason(f.reason()).settle(f.settle());
            if (at.meter() != null) {
                d.value(at.meter().value().value(), f.expandedU(), "ohm");
            }
            return (f.outcome() == Outcome.FAILS ? d.notConcedable() : d).done();
        }

        private LimitBook.Applied minimum() {
            String id;
            Map<String, Double> quantities = machine.ratedVolts(role).map(v -> Map.of("kV", v / 1000)).orElse(Map.of());
            if (role.isField()) {
                id = quantities.isEmpty() ? "field-volts-unknown" : "old-or-field";
            } else if (machine.beforeAbout1970(role, state != Reading.State.AS_FOUND) && !quantities.isEmpty()) {
                id = "old-or-field";
            } else if (machine.below1kV(role) || machine.formWound(role).map(f -> !f).orElse(false)) {
                id = "random";
            } else {
                id = "form";
            }
            return limits.find("insulation.ieee43." + id, quantities);
        }

        private Verdict minimum(OhmsToEarth at, InsulationAt40 hot, LimitBook.Applied limit, boolean earthFault) {
            VerdictDraft d = draft("insulation", "title.insulation", at.logged()).limit(limit)
                    .point(limit.decides() ? Points.of(state) : null);
            if (earthFault) {
                d.notConcedable();
            }
            if (!limit.isSet()) {
                return d.outcome(Outcome.NO_LIMIT_SET).reason(Phrases.say("insulation.no-limit", limit.trouble()))
                        .settle(Phrases.say("settle.judgement")).done();
            }
            if (at.meter() != null && hot.isEmpty()) {
                return d.outcome(Outcome.NOT_MEASURED)
                        .reason(Phrases.say("insulation.no-temperature",
                                Figures.show(at.meter().value().value(), "ohm"), hot.trouble()))
                        .settle(Phrases.say("settle.temperature")).done();
            }
            OhmsToEarth.Finding f = at.meter() == null ? at.against(limit.bounds(), null) : hot.against(at, limit.bounds());
            if (at.meter() != null) {
                d.value(hot.lowest(), f.expandedU(), "ohm");
            }
            return d.outcome(f.outcome()).reason(f.reason()).addReason(hot.remark()).addReason(testVolts(at.logged()))
                    .settle(f.settle()).done();
        }

        /** Says so when the test voltage was not the one for the rating. */
        private String testVolts(LoggedReading l) {
            Double used = l.reading().testVolts();
            Double rated = machine.ratedVolts(role).orElse(null);
            if (used == null || rated == null || rated > 50_000) {
                return "";
            }
            var range = org.copperbook.calc.insulation.InsulationTestVoltage.forRating(rated);
            boolean fits = used >= range.lowest() * 0.9 && used <= range.highest() * 1.1;
            return fits ? "" : Phrases.say("insulation.test-volts", Figures.show(used, "V"),
                    range.lowest() == range.highest() ? Figures.show(range.lowest(), "V")
                            : Figures.bounds(Bounds.between(range.lowest(), range.highest()), "V"));
        }

        private void indices(OhmsToEarth at, InsulationAt40 hot, List<Verdict> out) {
            ratio("polarisation-index", InsulationRun.TEN_MINUTES, InsulationRun.ONE_MINUTE, pi(), hot, out);
            ratio("absorption-ratio", InsulationRun.ONE_MINUTE, InsulationRun.HALF_MINUTE, limits.find("insulation.dar"), hot, out);
        }

        private LimitBook.Applied pi() {
            boolean low = machine.thermalClass(role, state != Reading.State.AS_FOUND)
                    .map(InsulationAt40::class105OrLower).orElse(false);
            return limits.find(low ? "insulation.pi.class-105" : "insulation.pi.class-130");
        }

        /** Both readings of an index come from one run, the newest that has them. */
        private void ratio(String what, double late, double early, LimitBook.Applied limit, InsulationAt40 hot,
                List<Verdict> out) {
            List<List<LoggedReading>> runs = InsulationRun.split(readings);
            for (int i = runs.size() - 1; i >= 0; i--) {
                LoggedReading a = at(runs.get(i), late);
                LoggedReading b = at(runs.get(i), early);
                if (a != null && b != null) {
                    out.add(new AbsorptionVerdict(limit, limits, machine.formWound(role).orElse(false), hot)
                            .judge(draft(what, "title." + what, a), a, b, role, Points.of(state), shop));
                    return;
                }
            }
        }

        private static LoggedReading at(List<LoggedReading> run, double seconds) {
            return run.stream().filter(l -> InsulationRun.near(l, seconds)).findFirst().orElse(null);
        }
    }
}
