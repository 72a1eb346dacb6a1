package org.copperbook.winding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.reading.ReadingEntry;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.CoilGroup;
import org.copperbook.jobs.winding.WindingModel;

/** The coil groups: turns and span of each coil, wires that differ, resistance with its temperature and instrument. */
final class CoilGroupsSection implements WindingSection {

    private static final int COILS_CHARS = 34;

    private final OpenWinding winding;
    private final WindingReadings readings;
    private RecordGrid grid;

    CoilGroupsSection(OpenWinding winding, WindingReadings readings) {
        this.winding = winding;
        this.readings = readings;
    }

    @Override
    public void build(Form here) {
        grid = here.grid("winding.groups", "/groups", this::columns).newRow(this::newGroup);
    }

    /** The grid, once it is built. */
    RecordGrid grid() {
        return grid;
    }

    private void columns(GridColumns columns) {
        connection(columns).entry("/coils", "group.coils", new CoilsEntry(), COILS_CHARS)
                .computedMark("group.turns", "group.turns", CoilGroupsSection::turns);
        reading(columns, readings).says()
                .computed("group.predicted", "group.predicted", this::predicted);
        conditions(columns).entry("/wire", "group.wire", new WiresEntry(), 18);
    }

    /** Number, phase, circuit and sense of a group. */
    static GridColumns connection(GridColumns columns) {
        return columns.integer("/number", "group.number", 1, DescriptionSection.MOST_SLOTS)
                .letter("/phase", "group.phase")
                .integer("/circuit", "group.circuit", 1, 100)
                .flag("/reversed", "group.reversed");
    }

    /** The resistance of a group. */
    static GridColumns reading(GridColumns columns, WindingReadings readings) {
        return columns.entry("/resistance", "group.resistance", ReadingEntry.resistance(
                q -> readings.begin(q, Place.Kind.COIL_GROUP)), 13);
    }

    /** Temperature, instrument, method, moment and person of a group's reading. */
    static GridColumns conditions(GridColumns columns) {
        return columns.number("/resistance/windingCelsius", "group.temperature", FieldUnit.CELSIUS)
                .instrument("/resistance/instrument", "group.instrument")
                .choice("/resistance/method", "reading.method", Reading.Method.class)
                .moment("/resistance/at", "count.at")
                .person("/resistance/by", "count.by");
    }

    /** Turns of the group in series. */
    private static String turns(JsonNode row) {
        int turns = 0;
        for (JsonNode coil : row.path("coils")) {
            if (!coil.has("turns")) {
                return "";
            }
            turns += coil.path("turns").asInt();
        }
        return turns == 0 ? "" : Integer.toString(turns);
    }

    private ObjectNode newGroup() {
        return winding.row().put("number", winding.rows("/groups") + 1);
    }

    /** What the group should read at the temperature of its reading, or at the reference temperature before that. */
    private String predicted(JsonNode row) {
        int number = row.path("number").asInt();
        Optional<CoilGroup> group = winding.data()
                .flatMap(d -> d.groups().stream().filter(g -> g.number() == number).findFirst());
        if (group.isEmpty()) {
            return "";
        }
        double celsius = row.path("resistance").path("windingCelsius")
                .asDouble(winding.site().shop().workshop().referenceCelsius());
        try {
            return new WindingModel(winding.data().get()).predictedOhms(group.get(), celsius)
                    .map(ohms -> new NumberEntry(FieldUnit.OHM).show(DoubleNode.valueOf(
                            new BigDecimal(ohms).round(new MathContext(4)).doubleValue())))
                    .orElse("");
        } catch (OutOfRange e) {
            return e.getMessage();
        }
    }
}
