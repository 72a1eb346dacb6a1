package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.nameplate.PlateCrossCheck;

/** What the figures of a plate say about each other, in sentences; the page and the workbook show the same ones. */
public final class PlateWords {

    private static final PlateCrossCheck CROSS_CHECK = new PlateCrossCheck();

    private PlateWords() {
    }

    /** The contradictions of one rating: 0 is the plate's first, 1 the first of the others; empty when there are none. */
    public static List<String> of(Nameplate plate, MachineKind kind, int rating) {
        List<String> said = new ArrayList<>();
        for (PlateCrossCheck.Contradiction c : CROSS_CHECK.findings(plate, kind)) {
            if (c.rating() == rating) {
                said.add(sentence(c));
            }
        }
        return List.copyOf(said);
    }

    /**
     * All contradictions, those of further ratings with their number. Without any, one sentence: that those compared agree, or
     * that too few are given, and which is missing.
     *
     * @param kind what the machine was booked in as, or null
     */
    public static List<String> of(Nameplate plate, MachineKind kind) {
        List<String> said = new ArrayList<>();
        for (PlateCrossCheck.Contradiction c : CROSS_CHECK.findings(plate, kind)) {
            said.add(c.rating() == 0 ? sentence(c)
                    : Phrases.say("plate.of-rating", Integer.toString(c.rating()), sentence(c)));
        }
        if (!said.isEmpty()) {
            return List.copyOf(said);
        }
        boolean compared = IntStream.rangeClosed(0, plate.otherRatings().size())
                .anyMatch(i -> CROSS_CHECK.compares(plate, kind, i));
        return List.of((Phrases.say(compared ? "plate.agrees" : "plate.too-few") + " " + notCompared(plate, kind, 0)).strip());
    }

    /** What keeps power, volts and amps of a rating from being compared, in words; empty when nothing does. */
    public static String notCompared(Nameplate plate, MachineKind kind, int rating) {
        Set<PlateCrossCheck.Missing> missing = CROSS_CHECK.missing(plate, kind, rating);
        return missing.isEmpty() ? "" : Phrases.say("plate.not-compared", missing.stream()
                .map(m -> Phrases.word("plate-missing", m)).collect(Collectors.joining(", ")));
    }

    private static String sentence(PlateCrossCheck.Contradiction c) {
        Object[] figures = c.arguments().stream().map(a -> a instanceof Number n ? Figures.number(n.doubleValue(), 4)
                : a instanceof PlateCrossCheck.Figure f ? Phrases.word("plate-figure", f) : a).toArray();
        return Phrases.say("plate.contradicts." + c.what(), figures);
    }
}
