package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingData.CoilType;

/** What stands below a drawing: how it is read, and what the data leave open. */
final class WindingNotes {

    private WindingNotes() {
    }

    static List<String> of(Sketch sketch, WindingData data, SlotTable table, Connections connections, boolean wave) {
        List<String> notes = new ArrayList<>();
        notes.add(sketch.say(table.layers() == 1 ? "note.oneLayer" : "note.twoLayers") + " " + sketch.say("note.read"));
        if (data.coilType() == CoilType.WAVE && !wave) {
            notes.add(sketch.say("note.waveWithoutPoles"));
        }
        notes.addAll(table(sketch, table));
        notes.addAll(of(sketch, data, connections));
        return notes;
    }

    static List<String> of(Sketch sketch, WindingData data, Connections connections) {
        return connections.notes().stream().map(key -> sketch.say(key, data.jumper() == null ? "" : data.jumper(),
                data.circuits() == null ? 0 : data.circuits(), data.leads() == null ? 0 : data.leads())).toList();
    }

    static List<String> table(Sketch sketch, SlotTable table) {
        List<String> notes = new ArrayList<>();
        if (table.leftOut() > 0) {
            notes.add(sketch.say("note.leftOut", table.leftOut()));
        }
        if (!table.overfull().isEmpty()) {
            notes.add(sketch.say("note.overfull", table.overfull().stream().map(String::valueOf)
                    .collect(Collectors.joining(", ")), table.layers()));
        }
        if (table.sidesMissing() > 0) {
            notes.add(sketch.say("note.sidesMissing", table.sidesMissing()));
        }
        return notes;
    }
}
