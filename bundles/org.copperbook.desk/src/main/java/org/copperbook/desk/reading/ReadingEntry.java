package org.copperbook.desk.reading;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.ObservedEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.jobs.reading.ReadingQuantity;

/**
 * A whole reading in one field: what is typed is what the instrument showed, and a new reading with its key, time and
 * conditions comes of it.
 */
public final class ReadingEntry implements Entry {

    private final Map<ReadingQuantity, Entry> byQuantity = new EnumMap<>(ReadingQuantity.class);
    private final List<ReadingQuantity> order;
    private final Function<ReadingQuantity, ObjectNode> beginning;

    private ReadingEntry(List<ReadingQuantity> order, Function<ReadingQuantity, ObjectNode> beginning) {
        this.order = order;
        this.beginning = beginning;
        order.forEach(q -> byQuantity.put(q, new ObservedEntry(unit(q))));
    }

    /**
     * Readings of a winding's resistance.
     *
     * @param beginning a new reading without what was observed
     */
    public static ReadingEntry resistance(Function<ReadingQuantity, ObjectNode> beginning) {
        return new ReadingEntry(List.of(ReadingQuantity.RESISTANCE), beginning);
    }

    /** Readings of a diode: volts of the diode-test range, or ohms when an ohm unit is written. */
    public static ReadingEntry diode(Function<ReadingQuantity, ObjectNode> beginning) {
        return new ReadingEntry(List.of(ReadingQuantity.DIODE_VOLTS, ReadingQuantity.DIODE_OHMS), beginning);
    }

    @Override
    public String show(JsonNode value) {
        if (!value.isObject()) {
            return "";
        }
        ReadingQuantity quantity = order.get(0);
        String stated = value.path("quantity").asText("");
        for (ReadingQuantity q : order) {
            if (q.name().equals(stated)) {
                quantity = q;
            }
        }
        return byQuantity.get(quantity).show(value.path("observed"));
    }

    @Override
    public Typed read(String text) {
        Typed first = null;
        for (ReadingQuantity q : order) {
            Typed typed = reading(q, byQuantity.get(q).read(text));
            if (!(typed instanceof Typed.Wrong)) {
                return typed;
            }
            first = first == null ? typed : first;
        }
        return first;
    }

    /** A figure typed over another keeps the conditions beside it: only what was observed is new. */
    @Override
    public JsonNode over(JsonNode before, JsonNode read) {
        if (!(before instanceof ObjectNode kept) || !(read instanceof ObjectNode typed)) {
            return read;
        }
        ObjectNode both = typed.deepCopy();
        both.setAll(kept.deepCopy());
        both.set("quantity", typed.get("quantity"));
        both.set("observed", typed.get("observed"));
        return both;
    }

    @Override
    public boolean isNumeric() {
        return true;
    }

    private Typed reading(ReadingQuantity quantity, Typed observed) {
        if (observed instanceof Typed.Understood u) {
            return whole(quantity, u);
        }
        if (observed instanceof Typed.Ambiguous a) {
            List<Typed.Understood> answers = new ArrayList<>();
            a.answers().forEach(u -> answers.add(whole(quantity, u)));
            return new Typed.Ambiguous(a.question(), answers);
        }
        return observed;
    }

    private Typed.Understood whole(ReadingQuantity quantity, Typed.Understood observed) {
        ObjectNode reading = beginning.apply(quantity);
        reading.set("observed", observed.node());
        return new Typed.Understood(reading, observed.echo());
    }

    private static FieldUnit unit(ReadingQuantity quantity) {
        return switch (quantity) {
            case RESISTANCE, DIODE_OHMS -> FieldUnit.OHM;
            case INSULATION_RESISTANCE -> FieldUnit.OHM.typedIn("MΩ");
            case VOLTAGE, DIODE_VOLTS -> FieldUnit.VOLT;
        };
    }
}
