package org.copperbook.jobs.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.json.PersonalFields;
import org.junit.jupiter.api.Test;

/** Whom to talk to about a machine. Expected: the tests' own inputs. */
class BookingContactTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final UnaryOperator<String> NAMES = key -> "c1".equals(key) ? "Bo Mill" : "";

    private final PartJson json = new PartJson();

    private Booking booking(String fields) throws Exception {
        return (Booking) json.read(BOOKING, "{\"schema\":1,\"customer\":\"Mill\"" + fields + "}");
    }

    @Test
    void theContactTypedGoesBeforeTheOneNamedByKey() throws Exception {
        assertEquals("Ada Brook", booking(",\"contact\":\"Ada Brook\\t040\",\"contactKey\":\"c1\"").contactName(NAMES));
        assertEquals("Bo Mill", booking(",\"contactKey\":\"c1\"").contactName(NAMES));
        assertEquals("", booking("").contactName(NAMES));
    }

    @Test
    void customerAndContactArePersonalAndTheKeyIsNot() throws Exception {
        Booking b = booking(",\"customerKey\":\"k1\",\"contact\":\"Ada Brook\\t040\"");
        List<String> personal = new ArrayList<>();
        PersonalFields.replace(PartKind.BOOKING, json.tree(b), text -> {
            personal.add(text);
            return text;
        });
        assertEquals(List.of("Mill", "Ada Brook\t040"), personal);
        assertEquals(b, json.read(BOOKING, json.write(b)), "and all of it comes back");
    }
}
