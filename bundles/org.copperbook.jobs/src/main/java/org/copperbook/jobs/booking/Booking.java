package org.copperbook.jobs.booking;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PhotoRef;
import org.copperbook.jobs.customer.Contact;

/**
 * Booking in: who brought which machine, with what, wanting what.
 *
 * @param schema          layout version
 * @param bookedAt        when
 * @param bookedBy        person key
 * @param machineKind     kind of machine
 * @param machine         short name of the machine ("standby set, pump house 2")
 * @param customer        customer's name (a firm)
 * @param contactKey      key of the contact person, who is kept outside the record
 * @param orderNo         customer's order number
 * @param promised        date promised
 * @param priority        how urgent
 * @param spendLimit      spend without asking up to this, in the shop's currency
 * @param arrivedBy       how it arrived
 * @param parts           loose parts received or missing
 * @param transportDamage damage seen on arrival
 * @param reportedFault   fault in the customer's words
 * @param hazards         hazards
 * @param hazardNote      remark on them
 * @param liftingMassKg   mass for the lifting plan, kg
 * @param earlierJob      number of the job this one returns from under warranty
 * @param photos          photos on arrival
 * @param tag             tag fixed to the machine
 * @param customerKey     key of the customer among the shop's customers, or null for one typed here only
 * @param contact         whom to talk to at the customer, kept outside the chained text; null where contactKey says it
 * @param more            fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Booking(int schema, Instant bookedAt, String bookedBy, MachineKind machineKind, String machine,
        String customer, String contactKey, String orderNo, LocalDate promised, Priority priority,
        BigDecimal spendLimit, String arrivedBy, List<ReceivedPart> parts, String transportDamage,
        String reportedFault, List<Hazard> hazards, String hazardNote, Double liftingMassKg, String earlierJob,
        List<PhotoRef> photos, String tag, String customerKey, Contact contact,
        @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    /** How urgent a job is. */
    public enum Priority { NORMAL, URGENT, BREAKDOWN }

    public Booking {
        parts = parts == null ? List.of() : List.copyOf(parts);
        hazards = hazards == null ? List.of() : List.copyOf(hazards);
        photos = photos == null ? List.of() : List.copyOf(photos);
        more = more == null ? Map.of() : more;
    }

    /** Name of whom to talk to, as typed here or else as the shop names the key of a person. */
    public String contactName(UnaryOperator<String> nameOfKey) {
        return contact != null && !contact.name().isEmpty() ? contact.name() : nameOfKey.apply(contactKey);
    }

    /** A booking whose customer is none of the shop's customers. */
    public Booking(int schema, Instant bookedAt, String bookedBy, MachineKind machineKind, String machine,
            String customer, String contactKey, String orderNo, LocalDate promised, Priority priority,
            BigDecimal spendLimit, String arrivedBy, List<ReceivedPart> parts, String transportDamage,
            String reportedFault, List<Hazard> hazards, String hazardNote, Double liftingMassKg, String earlierJob,
            List<PhotoRef> photos, String tag, Map<String, JsonNode> more) {
        this(schema, bookedAt, bookedBy, machineKind, machine, customer, contactKey, orderNo, promised, priority,
                spendLimit, arrivedBy, parts, transportDamage, reportedFault, hazards, hazardNote, liftingMassKg, earlierJob,
                photos, tag, null, null, more);
    }
}
