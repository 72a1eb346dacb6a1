package org.copperbook.jobs.check;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.nameplate.PlateCrossCheck;

/** What the figures of a plate say about each other, in sentences; the page and the workbook show the same ones. */
public final class PlateWords {

    private static final PlateCrossCheck CROSS_CHECK = new PlateCrossCheck();

    private PlateWords() {
    }

    /** The contradictions of one rating: 0 is the plate's first, 1 the first of the others; empty when there are none. */
    public static List<String> of(Nameplate plate, int rating) {
        List<String> said = new ArrayList<>();
        for (PlateCrossCheck.Contradiction c : CROSS_CHECK.findings(plate)) {
            if (c.rating() == rating) {
                said.add(sentence(c));
            }
        }
        return List.copyOf(said);
    }

    /** All contradictions, those of further ratings with their number; one sentence of agreement when there are none. */
    public static List<String> of(Nameplate plate) {
        List<String> said = new ArrayList<>();
        for (PlateCrossCheck.Contradiction c : CROSS_CHECK.findings(plate)) {
            said.add(c.rating() == 0 ? sentence(c)
                    : Phrases.say("plate.of-rating", Integer.toString(c.rating()), sentence(c)));
        }
        return said.isEmpty() ? List.of(Phrases.say("plate.agrees")) : List.copyOf(said);
    }

    private static String sentence(PlateCrossCheck.Contradiction c) {
        Object[] figures = c.arguments().stream().map(a -> a instanceof Number n ? Figures.number(n.doubleValue(), 4) : a).toArray();
        return Phrases.say("plate.contradicts." + c.what(), figures);
    }
}
