package org.copperbook.desk.tests.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.Windings;

/** An invented motor stator of 200 coil groups, each with its reading: the largest grid that people meet. */
final class LargeWinding {

    static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);
    static final int GROUPS = 200;

    private LargeWinding() {
    }

    /** Opens a new job whose main stator has 200 groups, with its page shown. */
    static JobEditor open(Desktop desktop) throws Exception {
        desktop.beSomebody();
        desktop.command("org.copperbook.desk.command.newJob");
        JobEditor editor = (JobEditor) desktop.activeEditor();
        desktop.settle(editor);
        ObjectNode tree = new Windings().beginning(STATOR, editor.document().job(), desktop.session().json());
        tree.put("slots", 600).put("poles", 66).put("layers", 2).put("circuits", 2).put("meanTurnM", 0.8);
        tree.putArray("wire").addObject().put("size", "1.18 mm").put("strands", 4);
        ArrayNode groups = tree.putArray("groups");
        String instrument = desktop.session().shop().instruments().instruments().get(0).id();
        for (int g = 1; g <= GROUPS; g++) {
            ObjectNode group = groups.addObject().put("number", g).put("phase", "UVW".substring(g % 3, g % 3 + 1))
                    .put("circuit", g % 2 + 1).put("reversed", g % 2 == 0);
            ArrayNode coils = group.putArray("coils");
            for (int c = 1; c <= 3; c++) {
                int go = 3 * (g - 1) + c;
                coils.addObject().put("goSlot", go).put("returnSlot", (go + 7) % 600 + 1).put("turns", 5);
            }
            ObjectNode reading = group.putObject("resistance").put("id", "r" + g).put("quantity", "RESISTANCE")
                    .put("windingCelsius", 20.0 + g % 5).put("instrument", instrument).put("method", "FOUR_WIRE")
                    .put("by", desktop.session().who().orElseThrow()).put("at", "2026-03-02T08:00:00Z")
                    .put("state", "AS_FOUND");
            reading.putObject("place").put("kind", "COIL_GROUP").put("winding", "main-stator");
            reading.putObject("observed").put("kind", "VALUE").put("value", 0.0461 + g % 7 * 1e-5);
        }
        editor.document().put(STATOR, desktop.session().json().read(STATOR, tree));
        editor.begin(STATOR);
        desktop.settle(editor);
        return editor;
    }
}
