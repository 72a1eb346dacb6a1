package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.ConditionsArea;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.reading.ReadingEntry;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.rectifier.Suppressor;

/** The rotating rectifier, position by position: as found, the set fitted, as left. */
public final class RectifierPage extends PartPage {

    private static final String[] LEADS = {"U", "V", "W"};
    private static final int READING_CHARS = 13;
    private static final int SHORT_CHARS = 10;

    private ConditionsArea conditions;

    @Override
    protected Words words() {
        return Words.of(RectifierPage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("rectifier.circuitTitle")
                .choice("/circuit", "rectifier.circuit", RectifierSet.Circuit.class)
                .text("/reasonForChange", "rectifier.reason")
                .text("/note", "rectifier.note");
        here.words("rectifier.caution");
        conditions = new ConditionsArea(here.area("rectifier.conditions"), site().instruments(), lastConditions(), true);
        here.grid("rectifier.asFound", "/positions", columns -> columns
                .letter("/position", "rectifier.position")
                .entry("/plate", "rectifier.plate", here.choice(DiodePosition.Plate.class), SHORT_CHARS)
                .entry("/basePolarity", "rectifier.base", here.choice(DiodePosition.BasePolarity.class), SHORT_CHARS)
                .letter("/lead", "rectifier.lead")
                .entry("/asFoundForward", "rectifier.forward", diode(Reading.State.AS_FOUND), READING_CHARS)
                .entry("/asFoundReverse", "rectifier.reverse", diode(Reading.State.AS_FOUND), READING_CHARS)
                .says()
                .either("/asFoundForward/isolated", "rectifier.leads", "rectifier.isolated", "rectifier.inCircuit"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("rectifier.fitted")
                .text("/fitted/makersPart", "fitted.part")
                .text("/fitted/lot", "fitted.lot")
                .flag("/fitted/complete", "fitted.complete")
                .number("/fitted/repetitivePeakV", "fitted.peak", FieldUnit.VOLT)
                .number("/fitted/averageA", "fitted.average", FieldUnit.AMPERE)
                .text("/fitted/stud", "fitted.stud")
                .number("/fitted/torqueMinNm", "fitted.torqueMin", FieldUnit.NEWTON_METRE)
                .number("/fitted/torqueMaxNm", "fitted.torqueMax", FieldUnit.NEWTON_METRE)
                .instrument("/fitted/wrench", "fitted.wrench")
                .text("/fitted/compound", "fitted.compound")
                .person("/fitted/by", "fitted.by")
                .moment("/fitted/at", "fitted.at");
        here.words("rectifier.torqueHint");
        here.grid("rectifier.asLeft", "/positions", columns -> columns
                .letter("/position", "rectifier.position")
                .entry("/plate", "rectifier.plate", here.choice(DiodePosition.Plate.class), SHORT_CHARS)
                .entry("/basePolarity", "rectifier.base", here.choice(DiodePosition.BasePolarity.class), SHORT_CHARS)
                .number("/torqueNm", "rectifier.torque", FieldUnit.NEWTON_METRE)
                .entry("/asLeftForward", "rectifier.forward", diode(Reading.State.AS_LEFT), READING_CHARS)
                .entry("/asLeftReverse", "rectifier.reverse", diode(Reading.State.AS_LEFT), READING_CHARS)
                .says()
                .either("/asLeftForward/isolated", "rectifier.leads", "rectifier.isolated", "rectifier.inCircuit"));
        here.section("rectifier.suppressorTitle")
                .choice("/suppressor/kind", "suppressor.kind", Suppressor.Kind.class)
                .entry("/suppressor/asFound", "suppressor.asFound", suppressor(Reading.State.AS_FOUND))
                .entry("/suppressor/asLeft", "suppressor.asLeft", suppressor(Reading.State.AS_LEFT))
                .flag("/suppressor/changed", "suppressor.changed")
                .text("/suppressor/note", "suppressor.note");
    }

    private ReadingEntry diode(Reading.State state) {
        return ReadingEntry.diode(q -> new NewReading(site()).of(q, Place.Kind.DIODE, state, conditions.conditions()));
    }

    private ReadingEntry suppressor(Reading.State state) {
        return ReadingEntry.resistance(q -> new NewReading(site()).of(q, Place.Kind.SUPPRESSOR, state,
                conditions.conditions()));
    }

    private Conditions lastConditions() {
        return document().part(key(), RectifierSet.class).stream()
                .flatMap(set -> set.positions().stream())
                .map(p -> p.asLeftForward() != null ? p.asLeftForward() : p.asFoundForward())
                .filter(r -> r != null)
                .reduce((first, second) -> second)
                .map(Conditions::of)
                .orElse(Conditions.NONE);
    }

    @Override
    protected ObjectNode beginning() {
        ObjectNode tree = super.beginning();
        if (!tree.has("positions")) {
            tree.put("circuit", RectifierSet.Circuit.FULL_WAVE.name());
            ArrayNode positions = tree.putArray("positions");
            for (int i = 0; i < RectifierSet.Circuit.FULL_WAVE.diodes(); i++) {
                positions.addObject().put("position", "D" + (i + 1))
                        .put("plate", (i < LEADS.length ? DiodePosition.Plate.POSITIVE
                                : DiodePosition.Plate.NEGATIVE).name())
                        .put("lead", LEADS[i % LEADS.length]);
            }
        }
        return tree;
    }
}
