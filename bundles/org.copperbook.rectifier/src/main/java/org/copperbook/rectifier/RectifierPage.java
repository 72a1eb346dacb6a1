package org.copperbook.rectifier;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.ConditionsArea;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.reading.ReadingEntry;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.RectifierDemand;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.rectifier.Suppressor;
import org.eclipse.swt.SWT;

/** The rotating rectifier, position by position: as found, the set fitted, as left. */
public final class RectifierPage extends PartPage {

    private static final int READING_CHARS = 13;
    private static final int SHORT_CHARS = 10;

    private ConditionsArea conditions;
    private PositionsArea positions;
    private PlatesArea plates;
    private SetProposal proposal;
    private RecordGrid asFound;
    private RecordGrid asLeft;

    @Override
    protected Words words() {
        return Words.of(RectifierPage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("rectifier.circuitTitle")
                .choice("/circuit", "rectifier.circuit", RectifierSet.Circuit.class)
                .longText("/reasonForChange", "rectifier.reason")
                .longText("/note", "rectifier.note");
        positions = new PositionsArea(here.area(), site(), words());
        plates = new PlatesArea(here.area("plates.title"), site(), words(), this::picked);
        here.words("rectifier.caution");
        conditions = new ConditionsArea(here.area("rectifier.conditions"), site().instruments(), lastConditions(), true);
        asFound = here.grid("rectifier.asFound", "/positions", columns -> columns
                .letter("/position", "rectifier.position")
                .entry("/plate", "rectifier.plate", here.choice(DiodePosition.Plate.class), SHORT_CHARS)
                .entry("/basePolarity", "rectifier.base", here.choice(DiodePosition.BasePolarity.class), SHORT_CHARS)
                .letter("/lead", "rectifier.lead")
                .entry("/asFoundForward", "rectifier.forward", diode(Reading.State.AS_FOUND), READING_CHARS)
                .entry("/asFoundReverse", "rectifier.reverse", diode(Reading.State.AS_FOUND), READING_CHARS)
                .says()
                .either("/asFoundForward/isolated", "rectifier.leadsForward", "rectifier.isolated", "rectifier.inCircuit")
                .either("/asFoundReverse/isolated", "rectifier.leadsReverse", "rectifier.isolated", "rectifier.inCircuit"))
                .newRow(() -> site().json().mapper().createObjectNode()).onRow(this::marked);
        proposal = new SetProposal(here.area("set.title"), site(), words());
        here.section("duty.title")
                .number("/duty/fieldV", "duty.fieldV", FieldUnit.VOLT)
                .number("/duty/fieldA", "duty.fieldA", FieldUnit.AMPERE)
                .number("/duty/exciterLineV", "duty.exciterLineV", FieldUnit.VOLT)
                .computed("/duty/peak", "duty.peak", () -> DutyText.peak(demand(), words()))
                .computed("/duty/mean", "duty.mean", () -> DutyText.mean(demand(), words()));
        here.words("duty.hint");
        here.section("rectifier.fitted")
                .text("/fitted/makersPart", "fitted.part")
                .text("/fitted/lot", "fitted.lot")
                .flag("/fitted/complete", "fitted.complete")
                .number("/fitted/repetitivePeakV", "fitted.peak", FieldUnit.VOLT)
                .number("/fitted/averageA", "fitted.average", FieldUnit.AMPERE)
                .proposals("/fitted/stud", "fitted.stud", RectifierPage::studs)
                .number("/fitted/torqueMinNm", "fitted.torqueMin", FieldUnit.NEWTON_METRE)
                .number("/fitted/torqueMaxNm", "fitted.torqueMax", FieldUnit.NEWTON_METRE)
                .instrument("/fitted/wrench", "fitted.wrench")
                .computed("/fitted/wrenchDue", "fitted.wrenchDue", this::wrench)
                .longText("/fitted/compound", "fitted.compound")
                .person("/fitted/by", "fitted.by")
                .moment("/fitted/at", "fitted.at");
        here.words("rectifier.torqueHint");
        new LotButton(here.area("lots.title"), words(), () -> document().value(key(), "/fitted/lot").asText(""));
        asLeft = here.grid("rectifier.asLeft", "/positions", columns -> columns
                .letter("/position", "rectifier.position")
                .entry("/plate", "rectifier.plate", here.choice(DiodePosition.Plate.class), SHORT_CHARS)
                .entry("/basePolarity", "rectifier.base", here.choice(DiodePosition.BasePolarity.class), SHORT_CHARS)
                .number("/torqueNm", "rectifier.torque", FieldUnit.NEWTON_METRE)
                .entry("/asLeftForward", "rectifier.forward", diode(Reading.State.AS_LEFT), READING_CHARS)
                .entry("/asLeftReverse", "rectifier.reverse", diode(Reading.State.AS_LEFT), READING_CHARS)
                .says()
                .mark("/lot", "rectifier.lot")
                .either("/asLeftForward/isolated", "rectifier.leadsForward", "rectifier.isolated", "rectifier.inCircuit")
                .either("/asLeftReverse/isolated", "rectifier.leadsReverse", "rectifier.isolated", "rectifier.inCircuit"))
                .onRow(this::marked);
        here.section("rectifier.suppressorTitle")
                .choice("/suppressor/kind", "suppressor.kind", Suppressor.Kind.class)
                .entry("/suppressor/asFound", "suppressor.asFound", suppressor(Reading.State.AS_FOUND))
                .entry("/suppressor/asLeft", "suppressor.asLeft", suppressor(Reading.State.AS_LEFT))
                .flag("/suppressor/changed", "suppressor.changed")
                .text("/suppressor/note", "suppressor.note");
        for (RecordGrid grid : List.of(asFound, asLeft)) {
            grid.table().addListener(SWT.FocusIn, e -> marked(grid.row()));
        }
    }

    /** Threads of the profile's hints; anything else can be typed. */
    private static Map<String, String> studs() {
        Map<String, String> threads = new LinkedHashMap<>();
        List.of("10-32 UNF", "1/4-28 UNF", "3/8-24 UNF", "M6", "M8", "M12").forEach(t -> threads.put(t, t));
        return threads;
    }

    /** Until when the wrench named is calibrated. */
    private String wrench() {
        return site().shop().instruments().find(document().value(key(), "/fitted/wrench").asText(""))
                .map(i -> i.calibrationDue() == null ? words().text("fitted.noCalibration")
                        : words().text("fitted.calibrated", i.calibrationDue(),
                                i.certificate() == null ? "" : i.certificate()).strip()).orElse("");
    }

    private Optional<RectifierDemand> demand() {
        return RectifierDemand.of(document().job(), site().shop());
    }

    /** A diode picked in the picture: its row where the work is, as found while no set is fitted. */
    private void picked(int position) {
        boolean fitted = document().value(key(), "/fitted").isObject();
        (fitted ? asLeft : asFound).reveal("/positions/" + position + (fitted ? "/torqueNm" : "/asFoundForward"));
    }

    private void marked(int position) {
        plates.mark(position);
    }

    @Override
    protected void changed() {
        RectifierSet set = document().part(key(), RectifierSet.class).orElse(null);
        positions.show(set);
        plates.show(set);
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        plates.judged(ofJob);
        proposal.judged(ofJob);
        changed();
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
            PositionsOfCircuit.fit(tree, RectifierSet.Circuit.FULL_WAVE);
        }
        return tree;
    }
}
