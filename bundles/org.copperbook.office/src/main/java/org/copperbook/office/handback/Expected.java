package org.copperbook.office.handback;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.json.PartJson;

/** Rows of what is to go back, not ticked yet. */
final class Expected {

    private Expected() {
    }

    static ObjectNode row(PartJson json, HandBack.Item item) {
        ObjectNode row = json.mapper().createObjectNode().put("name", item.name());
        if (Boolean.TRUE.equals(item.machine())) {
            row.put("machine", true);
        }
        return row;
    }
}
