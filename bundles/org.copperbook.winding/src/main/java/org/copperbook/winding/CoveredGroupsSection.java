package org.copperbook.winding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.StringJoiner;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;

/** The coil groups while their turns are covered: spans only, and the readings, which may go on. */
final class CoveredGroupsSection implements WindingSection {

    private final WindingReadings readings;

    CoveredGroupsSection(WindingReadings readings) {
        this.readings = readings;
    }

    @Override
    public void build(Form here) {
        here.grid("winding.groupsCovered", "/groups", this::columns);
    }

    @Override
    public boolean shown(boolean covered) {
        return covered;
    }

    private void columns(GridColumns columns) {
        CoilGroupsSection.connection(columns).computed("group.spans", "group.spans", CoveredGroupsSection::spans);
        CoilGroupsSection.conditions(CoilGroupsSection.reading(columns, readings).says());
    }

    private static String spans(JsonNode row) {
        StringJoiner spans = new StringJoiner(", ");
        for (JsonNode coil : row.path("coils")) {
            if (coil.has("goSlot")) {
                spans.add(coil.path("goSlot").asInt() + "-" + coil.path("returnSlot").asText("?"));
            }
        }
        return spans.toString();
    }
}
