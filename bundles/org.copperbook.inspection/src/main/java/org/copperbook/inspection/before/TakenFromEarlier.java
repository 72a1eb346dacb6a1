package org.copperbook.inspection.before;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;

/**
 * What a booking takes from an earlier job of the same machine: whose it is, what it is, and its rating plate. What has
 * been typed into the plate already stays: the plate on the bench goes before the one on paper.
 */
final class TakenFromEarlier {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey NAMEPLATE = PartKey.of(PartKind.NAMEPLATE);
    /** Whose the machine is; these go together, so that nobody's contact stands with another customer. */
    private static final List<String> OF_THE_OWNER = List.of("customer", "customerKey", "contact", "contactKey");
    /** What belongs to the machine and not to one visit. */
    private static final List<String> OF_THE_MACHINE = List.of("machine", "machineKind", "liftingMassKg");

    private final JobDocument document;
    private final PartJson json;

    TakenFromEarlier(JobDocument document, PartJson json) {
        this.document = document;
        this.json = json;
    }

    /** Fills booking and plate; each is one undo step. */
    void take(Job earlier) {
        earlier.booking().map(json::tree).ifPresent(was -> document.change(BOOKING, "/customer", now -> {
            takeOwner(now, was);
            OF_THE_MACHINE.stream().filter(was::has).forEach(name -> now.set(name, was.get(name)));
            return now;
        }));
        earlier.nameplate().map(json::tree).ifPresent(was ->
                document.change(NAMEPLATE, "/serial", now -> filled(now, was)));
    }

    /** Whoever is named for the same owner already is whom to talk to now, and not whoever was at the earlier visit. */
    private static void takeOwner(ObjectNode now, ObjectNode was) {
        boolean named = now.hasNonNull("contact") || now.hasNonNull("contactKey");
        if (was.has("customer") && !(named && now.path("customer").equals(was.path("customer")))) {
            now.remove(OF_THE_OWNER);
            OF_THE_OWNER.stream().filter(was::has).forEach(name -> now.set(name, was.get(name)));
        }
    }

    /** Says that the machine returns from a job under warranty. */
    void returnsFrom(String number) {
        document.change(BOOKING, "/earlierJob", now -> now.put("earlierJob", number));
    }

    private static ObjectNode filled(ObjectNode now, ObjectNode was) {
        for (Map.Entry<String, JsonNode> field : was.properties()) {
            JsonNode here = now.path(field.getKey());
            if (here.isMissingNode() || here.isNull() || here.isTextual() && here.asText().isBlank()
                    || here.isArray() && here.isEmpty()) {
                now.set(field.getKey(), field.getValue());
            }
        }
        return now;
    }
}
