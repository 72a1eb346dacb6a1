package org.copperbook.desk.reading;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.copperbook.desk.page.PageSite;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;

/** Begins readings: key, quantity, place, state, who, when, and the conditions that hold now. */
public final class NewReading {

    private final PageSite site;

    public NewReading(PageSite site) {
        this.site = site;
    }

    /** A reading taken now, still without what was observed. */
    public ObjectNode of(ReadingQuantity quantity, Place.Kind place, Reading.State state, Conditions conditions) {
        ObjectNode reading = site.json().mapper().createObjectNode();
        reading.put("id", UUID.randomUUID().toString());
        reading.put("quantity", quantity.name());
        reading.putObject("place").put("kind", place.name());
        conditions.writeTo(reading);
        site.who().ifPresent(who -> reading.put("by", who));
        reading.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        reading.put("state", state.name());
        return reading;
    }
}
