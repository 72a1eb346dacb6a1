package org.copperbook.runup;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.copperbook.desk.page.PageSite;

/** How the row of a test begins: who makes it, and who acknowledged the cautions before. */
public final class TestRows {

    private TestRows() {
    }

    /** A row of now, by the person at the screen. */
    public static ObjectNode begin(PageSite site, Optional<String> cautionsBy) {
        ObjectNode row = site.json().mapper().createObjectNode();
        site.who().ifPresent(who -> row.put("by", who));
        cautionsBy.ifPresent(who -> row.put("cautionsBy", who));
        return row;
    }
}
