package org.copperbook.jobs.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * A job as one JSON file: {@code {"copperbookJob":1,"id":...,"number":...,"parts":{"booking":{...},...}}}.
 */
public final class JobFile {

    /** Version of the file layout. */
    public static final int VERSION = 1;

    private final PartJson json;

    public JobFile(PartJson json) {
        this.json = json;
    }

    /** The job as indented JSON. */
    public String write(Job job) {
        ObjectNode root = json.mapper().createObjectNode();
        root.put("copperbookJob", VERSION);
        root.put("id", job.id());
        root.put("number", job.number());
        ObjectNode parts = root.putObject("parts");
        for (Map.Entry<PartKey, Part> e : job.parts().entrySet()) {
            parts.set(e.getKey().toString(), json.tree(e.getValue()));
        }
        try {
            return json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("job " + job.number() + " could not be written as JSON", e);
        }
    }

    /**
     * Reads a job. A file without an id gets a new one; a file without a number is numbered when it is taken in and
     * comes back here with an empty number.
     *
     * @throws BadRecordException when the text is not JSON, is not a job, or a part does not fit its record
     */
    public Job read(InputStream in) throws BadRecordException {
        JsonNode root;
        try {
            root = json.mapper().readTree(in);
        } catch (IOException e) {
            throw BadRecordException.from("job file", e);
        } catch (NumberFormatException e) {
            throw new BadRecordException("job file", "", PartJson.BEYOND);
        }
        if (root == null || !root.isObject()) {
            throw new BadRecordException("job file", "", "is not a JSON object");
        }
        if (!root.path("copperbookJob").isInt()) {
            throw new BadRecordException("job file", "copperbookJob", "is missing: this is not a job file");
        }
        if (root.path("copperbookJob").asInt() != VERSION) {
            throw new BadRecordException("job file", "copperbookJob", "is " + root.path("copperbookJob").asInt()
                    + ", but this version reads job files of layout " + VERSION);
        }
        JsonNode parts = root.path("parts");
        if (!parts.isObject()) {
            throw new BadRecordException("job file", "parts", "must be an object with the job's parts");
        }
        Map<PartKey, Part> read = new TreeMap<>();
        for (Map.Entry<String, JsonNode> e : parts.properties()) {
            PartKey key;
            try {
                key = PartKey.parse(e.getKey());
            } catch (IllegalArgumentException x) {
                throw new BadRecordException("job file", "parts." + e.getKey(), x.getMessage());
            }
            if (key.kind().ofShop()) {
                throw new BadRecordException("job file", "parts." + e.getKey(), "belongs to the shop, not to a job");
            }
            read.put(key, json.read(key, e.getValue()));
        }
        return new Job(text(root, "id", UUID.randomUUID().toString()), text(root, "number", ""), read);
    }

    private static String text(JsonNode root, String field, String otherwise) throws BadRecordException {
        JsonNode n = root.path(field);
        if (n.isMissingNode() || n.isNull()) {
            return otherwise;
        }
        if (!n.isTextual() || n.asText().isBlank()) {
            throw new BadRecordException("job file", field, "must be text");
        }
        return n.asText();
    }
}
