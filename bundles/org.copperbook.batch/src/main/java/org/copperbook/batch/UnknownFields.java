package org.copperbook.batch;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/** Finds the fields of a job that this version does not know; records carry them along unseen. */
final class UnknownFields {

    private final List<String> places = new ArrayList<>();

    private UnknownFields() {
    }

    /** Places of the unknown fields, such as "booking.shelf" or "inspection.readings[3].probe". */
    static List<String> of(Job job) {
        UnknownFields found = new UnknownFields();
        for (Map.Entry<PartKey, Part> e : job.parts().entrySet()) {
            found.look(e.getKey().toString(), e.getValue());
        }
        return found.places;
    }

    private void look(String place, Object value) {
        if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                look(place + "[" + i + "]", list.get(i));
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((name, v) -> {
                if (v instanceof JsonNode) {
                    places.add(place + "." + name);
                }
            });
        } else if (value instanceof Record r) {
            for (RecordComponent c : r.getClass().getRecordComponents()) {
                look(c.getName().equals("more") ? place : place + "." + c.getName(), component(r, c));
            }
        }
    }

    private static Object component(Record holder, RecordComponent c) {
        try {
            return c.getAccessor().invoke(holder);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the field " + c.getName() + " of a record cannot be read", e);
        }
    }
}
