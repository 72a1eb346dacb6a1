package org.copperbook.jobs.check;

import java.util.List;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Shop;

/**
 * An insulation reading made ready for judging. "Above range" says that the insulation is at least the top of the range.
 *
 * @param logged  the reading
 * @param meter   the value, or the top of the range when the tester showed more; null when it says nothing in ohm
 * @param atLeast true when the value is the top of the range
 * @param celsius winding temperature with its standard uncertainty; null when it was not taken
 */
record OhmsToEarth(LoggedReading logged, MeterUse meter, boolean atLeast, Uncertain celsius) {

    /** What one limit says about it. */
    record Finding(Outcome outcome, Double expandedU, String reason, String settle) {
    }

    static OhmsToEarth of(LoggedReading logged, double kelvinU, Shop shop) {
        Reading r = logged.reading();
        Observed seen = r.observed();
        Uncertain celsius = r.windingCelsius() == null ? null : new Uncertain(r.windingCelsius(), Math.abs(kelvinU));
        Double ohms = switch (seen.kind()) {
            case VALUE -> seen.value();
            case ABOVE_RANGE -> seen.value() != null ? seen.value() : topOfRange(r.instrument(), shop);
            case BELOW_RESOLUTION -> seen.value() == null ? Double.valueOf(0) : seen.value();
            case UNSTABLE, NOT_POSSIBLE -> null;
        };
        MeterUse meter = ohms == null ? null : MeterUse.of(ohms, "ohm", r.instrument(), r.at(), shop);
        return new OhmsToEarth(logged, meter, seen.kind() == Observed.Kind.ABOVE_RANGE, celsius);
    }

    private static Double topOfRange(String instrument, Shop shop) {
        return shop.instruments().find(instrument == null ? "" : instrument).stream()
                .flatMap(i -> i.ranges().stream()).filter(x -> "ohm".equals(x.quantity()) && x.upTo() != null)
                .map(Instrument.Range::upTo).max(Double::compareTo).orElse(null);
    }

    /**
     * Judges against a lower limit.
     *
     * @param bounds the limit, or null when none is set
     * @param as     the value to judge: as read or corrected; null when the instrument gave none
     */
    Finding against(Bounds bounds, MeterUse as) {
        if (as == null) {
            return withoutValue();
        }
        Ruling ruling = Ruling.on(as.value(), bounds, List.of(as));
        if (bounds == null) {
            return new Finding(Outcome.NO_LIMIT_SET, ruling.expandedU(), Phrases.say("insulation.no-limit", ""), "");
        }
        String limit = Figures.bounds(bounds, "ohm");
        if (atLeast && ruling.outcome() != Outcome.MEETS) {
            return new Finding(Outcome.DOUBTFUL, ruling.expandedU(), Phrases.say("insulation.range-too-low",
                    Figures.show(as.value().value(), "ohm"), limit) + blank(ruling.objection()),
                    ruling.remedy().isEmpty() ? Phrases.say("settle.higher-range") : ruling.remedy());
        }
        String shown = atLeast ? Phrases.say("insulation.more-than", Figures.show(as.value().value(), "ohm"))
                : Figures.show(as.value().value(), ruling.expandedU(), "ohm");
        return new Finding(ruling.outcome(), ruling.expandedU(),
                Phrases.say("insulation." + ruling.word(), shown, limit)
                        + blank(ruling.objection()),
                ruling.outcome() == Outcome.FAILS ? Phrases.say("settle.dry")
                        : ruling.settle(Phrases.say("settle.insulation")));
    }

    private Finding withoutValue() {
        return switch (logged.reading().observed().kind()) {
            case ABOVE_RANGE -> new Finding(Outcome.DOUBTFUL, null, Phrases.say("insulation.top-unknown"),
                    Phrases.say("settle.top-of-range"));
            case UNSTABLE -> new Finding(Outcome.DOUBTFUL, null, Phrases.say("insulation.unstable"),
                    Phrases.say("settle.insulation"));
            default -> new Finding(Outcome.NOT_MEASURED, null, Phrases.say("reading.not-possible",
                    Phrases.say("place.to-earth"), logged.reading().note() == null ? "" : logged.reading().note()), "");
        };
    }

    static String blank(String text) {
        return text.isEmpty() ? "" : " " + text;
    }
}
