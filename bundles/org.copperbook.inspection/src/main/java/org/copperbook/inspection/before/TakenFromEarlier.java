package org.copperbook.inspection.before;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;

/**
 * What a booking takes from an earlier job of the same machine: whose it is, what it is, and its rating plate. Only blanks are
 * filled: the machine on the bench goes before the one on paper, and who brings it before who did then.
 */
final class TakenFromEarlier {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey NAMEPLATE = PartKey.of(PartKind.NAMEPLATE);
    /** Whose the machine is; these go together, so that nobody's contact stands with another customer. */
    private static final List<String> OF_THE_OWNER = List.of("customer", "customerKey", "contact", "contactKey");
    /** What belongs to the machine and not to one visit. */
    private static final List<String> OF_THE_MACHINE = List.of("machine", "machineKind", "liftingMassKg");

    /** Texts that name what was left as typed; {@link #OTHER} names the rest of the plate. */
    private static final Map<String, String> CALLED = Map.ofEntries(Map.entry("machine", "booking.machine"),
            Map.entry("machineKind", "booking.machineKind"), Map.entry("liftingMassKg", "booking.lifting"),
            Map.entry("maker", "plate.maker"), Map.entry("type", "plate.type"), Map.entry("serial", "plate.serial"),
            Map.entry("year", "plate.year"), Map.entry("apparentPowerVA", "plate.apparentPower"),
            Map.entry("powerW", "plate.power"), Map.entry("voltageV", "plate.voltage"),
            Map.entry("connection", "plate.connection"), Map.entry("currentA", "plate.current"),
            Map.entry("frequencyHz", "plate.frequency"), Map.entry("speedRpm", "plate.speed"),
            Map.entry("phases", "plate.phases"), Map.entry("poles", "plate.poles"),
            Map.entry("powerFactor", "plate.powerFactor"), Map.entry("massKg", "plate.mass"));
    private static final String OTHER = "before.otherOfPlate";

    private final JobDocument document;
    private final PartJson json;

    TakenFromEarlier(JobDocument document, PartJson json) {
        this.document = document;
        this.json = json;
    }

    /**
     * Fills what is blank in booking and plate; each is one undo step.
     *
     * @return keys of the texts that name what the earlier job has otherwise and what stays as it was typed
     */
    Set<String> take(Job earlier) {
        Set<String> left = new LinkedHashSet<>();
        earlier.booking().map(json::tree).ifPresent(was -> document.change(BOOKING, "/customer", now -> {
            takeOwner(now, was, left);
            OF_THE_MACHINE.forEach(name -> fill(now, was, name, left));
            return now;
        }));
        earlier.nameplate().map(json::tree).ifPresent(was -> document.change(NAMEPLATE, "/serial", now -> {
            was.fieldNames().forEachRemaining(name -> fill(now, was, name, left));
            return now;
        }));
        return left;
    }

    /** Whoever is named already is whom to talk to now, and not whoever was at the earlier visit. */
    private static void takeOwner(ObjectNode now, ObjectNode was, Set<String> left) {
        if (!blank(now.path("customer")) && !sameOwner(now, was)) {
            if (was.has("customer")) {
                left.add("booking.customer");
            }
            return;
        }
        boolean named = now.hasNonNull("contact") || now.hasNonNull("contactKey");
        OF_THE_OWNER.stream().filter(name -> was.has(name) && blank(now.path(name)))
                .filter(name -> !named || !name.startsWith("contact")).forEach(name -> now.set(name, was.get(name)));
    }

    private static boolean sameOwner(ObjectNode now, ObjectNode was) {
        String key = now.path("customerKey").asText();
        return key.isBlank() ? now.path("customer").asText().strip().equalsIgnoreCase(was.path("customer").asText().strip())
                : key.equals(was.path("customerKey").asText());
    }

    private static void fill(ObjectNode now, ObjectNode was, String name, Set<String> left) {
        if (!was.has(name)) {
            return;
        }
        if (blank(now.path(name))) {
            now.set(name, was.get(name));
        } else if (!now.get(name).equals(was.get(name)) && !name.equals("schema")) {
            left.add(CALLED.getOrDefault(name, OTHER));
        }
    }

    private static boolean blank(JsonNode here) {
        return here.isMissingNode() || here.isNull() || here.isTextual() && here.asText().isBlank()
                || here.isArray() && here.isEmpty();
    }

    /** Says that the machine returns from a job under warranty. */
    void returnsFrom(String number) {
        document.change(BOOKING, "/earlierJob", now -> now.put("earlierJob", number));
    }
}
