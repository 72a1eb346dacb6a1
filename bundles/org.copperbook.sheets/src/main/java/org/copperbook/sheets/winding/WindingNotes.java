package org.copperbook.sheets.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.jobs.winding.WindingData;

/** What stands below a drawing: how it is read, and what the data leave open. */
final class WindingNotes {

    private WindingNotes() {
    }

    static List<String> of(Sketch sketch, SlotTable table, WaveOrder wave) {
        List<String> notes = new ArrayList<>();
        notes.add(sketch.say(table.layers() == 1 ? "note.oneLayer" : "note.twoLayers") + " " + sketch.say("note.read"));
        if (wave.isWave()) {
            notes.addAll(of(sketch, wave));
        }
        notes.addAll(table(sketch, table));
        return notes;
    }

    private static List<String> of(Sketch sketch, WaveOrder wave) {
        if (!wave.hasPoles()) {
            return List.of(sketch.say("note.waveWithoutPoles"));
        }
        if (!wave.isDrawn()) {
            return List.of(sketch.say("note.waveOrder", wave.unclear().stream().map(g -> String.valueOf(g.number()))
                    .collect(Collectors.joining(", "))));
        }
        List<String> notes = new ArrayList<>(List.of(sketch.say("note.wave")));
        wave.creep().ifPresent(slots -> notes.add(sketch.say(slots > 0 ? "note.waveProgressive" : "note.waveRetrogressive",
                Math.abs(slots))));
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
