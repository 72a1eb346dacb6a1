package org.copperbook.jobs.faults;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;

/** The fault tables that ship with the product; a readable data file beside this class. */
public final class DefaultFaultTables {

    private static final String FILE = "fault-tables.json";

    private DefaultFaultTables() {
    }

    /** The tables to rank by: a shop's own where they can be used, else the shipped ones. */
    public static FaultTables unlessSound(FaultTables own, PartJson json) {
        return own.problems().isEmpty() ? own : load(json);
    }

    /** Reads the shipped tables. */
    public static FaultTables load(PartJson json) {
        try (InputStream in = DefaultFaultTables.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the shipped fault tables " + FILE + " are missing from their bundle");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return (FaultTables) json.read(PartKey.of(PartKind.FAULT_TABLES), text);
        } catch (IOException | BadRecordException e) {
            throw new IllegalStateException("the shipped fault tables cannot be read", e);
        }
    }
}
