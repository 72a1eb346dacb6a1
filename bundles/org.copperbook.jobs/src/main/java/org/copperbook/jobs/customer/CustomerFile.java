package org.copperbook.jobs.customer;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/** The customers of a shop in one file: an object with each of them under its key. */
public final class CustomerFile {

    /** Name of the file among those of a shop. */
    public static final String NAME = "customers.json";

    private CustomerFile() {
    }

    /**
     * Reads the file.
     *
     * @throws BadRecordException when it does not hold customers; the message names the place
     */
    public static Map<PartKey, Part> read(PartJson json, byte[] bytes) throws BadRecordException, IOException {
        Map<PartKey, Part> customers = new TreeMap<>();
        try {
            JsonNode all = json.mapper().readTree(bytes);
            if (!all.isObject()) {
                throw new BadRecordException("customers", "", "must be an object with a customer under each key");
            }
            for (Iterator<Map.Entry<String, JsonNode>> i = all.fields(); i.hasNext();) {
                Map.Entry<String, JsonNode> e = i.next();
                PartKey key = key(e.getKey());
                customers.put(key, json.read(key, e.getValue()));
            }
        } catch (JsonProcessingException e) {
            throw BadRecordException.from("customers", e);
        }
        return customers;
    }

    private static PartKey key(String name) throws BadRecordException {
        try {
            return Customer.key(name);
        } catch (IllegalArgumentException e) {
            throw new BadRecordException("customers", name, e.getMessage());
        }
    }
}
