package org.copperbook.winding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.copperbook.calc.OutOfRange;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.ConditionsArea;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.reading.ReadingEntry;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingModel;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;

/** One winding: its description, its coil groups with their resistances, two counts, and what follows from them. */
public final class WindingPage extends PartPage {

    private static final int COILS_CHARS = 34;
    private static final int MOST_SLOTS = 1000;

    private final CoilListFromDescription layout = new CoilListFromDescription();
    private WindingFigures figures;
    private ConditionsArea conditions;
    private Label said;

    @Override
    protected Words words() {
        return Words.of(WindingPage.class);
    }

    @Override
    protected void build(Form here) {
        figures = new WindingFigures(words());
        description(here);
        here.grid("winding.wireTitle", "/wire", columns -> columns
                .mark("/size", "wire.size")
                .integer("/strands", "wire.strands", 1, 999)
                .integer("/grade", "wire.grade", 1, 3)
                .number("/bareMm", "wire.bare", FieldUnit.MILLIMETRE)
                .number("/coveredMm", "wire.covered", FieldUnit.MILLIMETRE))
                .newRow(() -> site().json().mapper().createObjectNode().put("strands", 1));
        layoutButton(here.area("winding.layoutTitle"));
        conditions = new ConditionsArea(here.area("winding.conditions"), site().instruments(), lastConditions(), false);
        here.grid("winding.groups", "/groups", this::groupColumns).newRow(this::newGroup);
        here.section("winding.figures")
                .computed("winding.factor", "winding.factor", () -> figure(figures::factor))
                .computed("winding.balance", "winding.balance", () -> figure(figures::balance))
                .computed("winding.copper", "winding.copper", () -> figure(figures::copper))
                .number("/copperRemovedKg", "winding.copperRemoved", FieldUnit.KILOGRAM);
        here.grid("winding.readings", "/readings", this::readingColumns).newRow(this::newReading);
        here.grid("winding.counts", "/counts", columns -> columns
                .integer("/ordinal", "count.ordinal", 1, 3)
                .person("/by", "count.by")
                .moment("/at", "count.at")
                .integer("/strands", "count.strands", 1, 999)
                .entry("/groups", "count.turns", new CountedTurnsEntry(), COILS_CHARS))
                .newRow(this::newCount);
        RecordGrid photos = here.grid("winding.photos", "/photos", columns -> columns
                .text("/caption", "photos.caption")
                .computed("name", "photos.name", row -> row.path("name").asText("")));
        new PhotosArea(here.area("winding.photosAdd"), site(), words(), photos, () -> chosenFiles(photos.table()));
        dimensions(here);
    }

    private List<Path> chosenFiles(Control over) {
        FileDialog dialog = new FileDialog(over.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(words().text("photos.choose"));
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.JPG;*.JPEG;*.PNG", "*.*"});
        return dialog.open() == null ? List.of() : Stream.of(dialog.getFileNames())
                .map(name -> Path.of(dialog.getFilterPath(), name)).toList();
    }

    private void description(Form here) {
        here.section("winding.description")
                .integer("/slots", "winding.slots", 1, MOST_SLOTS)
                .integer("/poles", "winding.poles", 2, 200)
                .integer("/phases", "winding.phases", 0, 3)
                .integer("/layers", "winding.layers", 1, 99)
                .choice("/coilType", "winding.coilType", WindingData.CoilType.class)
                .text("/span", "winding.span")
                .text("/groupSequence", "winding.sequence")
                .integer("/turnsPerCoil", "winding.turns", 1, 100_000)
                .integer("/groupsPerPhase", "winding.groupsPerPhase", 1, 200)
                .integer("/coilsPerGroup", "winding.coilsPerGroup", 1, 200)
                .integer("/circuits", "winding.circuits", 1, 100)
                .choice("/connection", "winding.connection", WindingData.Connection.class)
                .integer("/leads", "winding.leads", 1, 48)
                .number("/meanTurnM", "winding.meanTurn", FieldUnit.METRE)
                .choice("/conductor", "winding.conductor", WindingData.Conductor.class)
                .text("/polaritySequence", "winding.polarity")
                .text("/proposedFrom", "winding.proposedFrom")
                .text("/reason", "winding.reason");
    }

    private void dimensions(Form here) {
        here.section("winding.core")
                .number("/coreLengthM", "core.length", FieldUnit.METRE_AS_MM)
                .number("/boreM", "core.bore", FieldUnit.METRE_AS_MM)
                .number("/outsideM", "core.outside", FieldUnit.METRE_AS_MM)
                .number("/slotDepthM", "core.slotDepth", FieldUnit.METRE_AS_MM)
                .number("/slotWidthTopM", "core.slotTop", FieldUnit.METRE_AS_MM)
                .number("/slotWidthBottomM", "core.slotBottom", FieldUnit.METRE_AS_MM)
                .number("/toothWidthM", "core.tooth", FieldUnit.METRE_AS_MM)
                .number("/yokeDepthM", "core.yoke", FieldUnit.METRE_AS_MM)
                .integer("/ventCount", "core.vents", 0, 200)
                .number("/ventWidthM", "core.ventWidth", FieldUnit.METRE_AS_MM)
                .number("/skew", "core.skew", FieldUnit.NUMBER);
        here.section("winding.ends")
                .text("/jumper", "winding.jumper")
                .text("/leadExit", "winding.leadExit")
                .number("/leadLengthM", "winding.leadLength", FieldUnit.METRE)
                .number("/overhangDEM", "winding.overhangDE", FieldUnit.METRE_AS_MM)
                .number("/overhangNDEM", "winding.overhangNDE", FieldUnit.METRE_AS_MM)
                .text("/slotInsulation", "winding.slotInsulation")
                .text("/wedge", "winding.wedge")
                .text("/thermalClass", "winding.thermalClass")
                .longText("/note", "winding.note");
    }

    private void groupColumns(GridColumns columns) {
        columns.integer("/number", "group.number", 1, MOST_SLOTS)
                .letter("/phase", "group.phase")
                .integer("/circuit", "group.circuit", 1, 100)
                .flag("/reversed", "group.reversed")
                .entry("/coils", "group.coils", new CoilsEntry(), COILS_CHARS)
                .entry("/resistance", "group.resistance", ReadingEntry.resistance(
                        q -> reading(q, Place.Kind.COIL_GROUP)), 13)
                .says()
                .computed("group.predicted", "group.predicted", this::predicted)
                .number("/resistance/windingCelsius", "group.temperature", FieldUnit.CELSIUS)
                .instrument("/resistance/instrument", "group.instrument")
                .entry("/wire", "group.wire", new WiresEntry(), 18);
    }

    private void readingColumns(GridColumns columns) {
        columns.choice("/place/kind", "reading.place", Place.Kind.class)
                .mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.ohms", FieldUnit.OHM)
                .number("/windingCelsius", "group.temperature", FieldUnit.CELSIUS)
                .instrument("/instrument", "group.instrument")
                .choice("/method", "reading.method", Reading.Method.class)
                .moment("/at", "count.at")
                .person("/by", "count.by");
    }

    private ObjectNode newGroup() {
        int next = document().rows(key(), "/groups").size() + 1;
        return site().json().mapper().createObjectNode().put("number", next);
    }

    private ObjectNode newReading() {
        return reading(ReadingQuantity.RESISTANCE, Place.Kind.PHASE);
    }

    private ObjectNode newCount() {
        int next = document().rows(key(), "/counts").size() + 1;
        ObjectNode count = site().json().mapper().createObjectNode().put("ordinal", next);
        site().who().ifPresent(who -> count.put("by", who));
        return count.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    }

    private ObjectNode reading(ReadingQuantity quantity, Place.Kind place) {
        Reading.State state = data().map(WindingData::asWound).orElse(false) ? Reading.State.IN_PROCESS
                : Reading.State.AS_FOUND;
        ObjectNode reading = new NewReading(site()).of(quantity, place, state, conditions.conditions());
        data().ifPresent(d -> ((ObjectNode) reading.path("place")).put("winding", d.role().word()));
        return reading;
    }

    /** What the group should read at the temperature of its reading, or at the reference temperature before that. */
    private String predicted(JsonNode row) {
        int number = row.path("number").asInt();
        Optional<CoilGroup> group = data().flatMap(d -> d.groups().stream().filter(g -> g.number() == number).findFirst());
        if (group.isEmpty()) {
            return "";
        }
        double celsius = row.path("resistance").path("windingCelsius")
                .asDouble(site().shop().workshop().referenceCelsius());
        try {
            return new WindingModel(data().get()).predictedOhms(group.get(), celsius)
                    .map(ohms -> new NumberEntry(FieldUnit.OHM).show(com.fasterxml.jackson.databind.node.DoubleNode
                            .valueOf(new java.math.BigDecimal(ohms).round(new java.math.MathContext(4)).doubleValue())))
                    .orElse("");
        } catch (OutOfRange e) {
            return e.getMessage();
        }
    }

    private String figure(Function<WindingData, String> of) {
        return data().map(of).orElse("");
    }

    private Optional<WindingData> data() {
        return document().part(key(), WindingData.class);
    }

    private Conditions lastConditions() {
        return data().stream().flatMap(d -> d.groups().stream()).map(CoilGroup::resistance).filter(r -> r != null)
                .reduce((first, second) -> second).map(Conditions::of).orElse(Conditions.NONE);
    }

    private void layoutButton(Composite area) {
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Look look = Look.of(area);
        Button button = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
        button.setText(words().text("winding.layOut"));
        button.setData(Desk.ID, "winding.layOut");
        button.addListener(SWT.Selection, e -> layOut());
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setText(words().text("winding.layOutHint"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
    }

    private void layOut() {
        Optional<WindingData> data = data();
        if (site().blocked().isPresent() || data.isEmpty()) {
            say(site().blocked().orElse(words().text("layout.needs")));
            return;
        }
        try {
            ObjectNode next = layout.laidOut(document().tree(key()), data.get());
            document().change(key(), "/groups", tree -> next);
            say(words().text("winding.laidOut", next.path("groups").size(), next.path("coilCount").asInt()));
        } catch (CoilListFromDescription.NotEnough e) {
            say(e.getMessage());
        }
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}
