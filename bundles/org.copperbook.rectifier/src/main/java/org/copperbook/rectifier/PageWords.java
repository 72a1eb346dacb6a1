package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.node.DoubleNode;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.reading.ReadingEntry;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.Suppressor;
import org.copperbook.sheets.plates.PlateWords;

/** The picture's words as the page says them: readings look as in the grid. */
final class PageWords implements PlateWords {

    private final Words words;
    private final PageSite site;
    private final NumberEntry torque = new NumberEntry(FieldUnit.NEWTON_METRE);

    PageWords(Words words, PageSite site) {
        this.words = words;
        this.site = site;
    }

    @Override
    public String title() {
        return words.text("plates.picture", site.document().number());
    }

    @Override
    public String plate(DiodePosition.Plate plate) {
        return words.text(plate == DiodePosition.Plate.POSITIVE ? "plates.positive" : "plates.negative");
    }

    @Override
    public String base(DiodePosition.BasePolarity base) {
        return words.text("plates.base", words.of(base));
    }

    @Override
    public String reading(Reading reading) {
        boolean diode = reading.place() == null || reading.place().kind() == Place.Kind.DIODE;
        ReadingEntry entry = diode ? ReadingEntry.diode(q -> null) : ReadingEntry.resistance(q -> null);
        return entry.show(site.json().mapper().valueToTree(reading));
    }

    @Override
    public String asFound(String forward, String reverse) {
        return words.text("plates.found", forward, reverse);
    }

    @Override
    public String asLeft(String forward, String reverse) {
        return words.text("plates.left", forward, reverse);
    }

    @Override
    public String torque(double newtonMetres) {
        return torque.show(DoubleNode.valueOf(newtonMetres));
    }

    @Override
    public String outcome(Outcome outcome) {
        return VerdictWords.of(outcome);
    }

    @Override
    public String suppressor(Suppressor.Kind kind) {
        return words.of(kind);
    }
}
