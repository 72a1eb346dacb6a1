package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.form.Form;

/** The independent counts of the old winding. */
final class CountsSection implements WindingSection {

    private static final int COUNT_CHARS = 34;

    private final OpenWinding winding;

    CountsSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        here.grid("winding.counts", "/counts", columns -> columns
                .integer("/ordinal", "count.ordinal", 1, 3)
                .person("/by", "count.by")
                .moment("/at", "count.at")
                .integer("/strands", "count.strands", 1, 999)
                .entry("/groups", "count.turns", new CountedTurnsEntry(), COUNT_CHARS))
                .newRow(this::newCount);
    }

    private ObjectNode newCount() {
        ObjectNode count = winding.row().put("ordinal", winding.rows("/counts") + 1);
        winding.site().who().ifPresent(who -> count.put("by", who));
        return count.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    }
}
