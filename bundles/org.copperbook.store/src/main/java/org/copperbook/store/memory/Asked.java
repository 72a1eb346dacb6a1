package org.copperbook.store.memory;

import java.util.Objects;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.jobs.winding.WindingRole;

/**
 * What past windings are looked for by.
 *
 * @param role    which winding of the machine
 * @param figures figures of the machine on the bench; each may be unknown (not a number), all of them too
 * @param serial  its serial number, or empty: windings of the same machine come first
 * @param words   words that must all stand in number, maker, type or serial; empty for any
 * @param notOf   job whose own windings are left out, or empty
 */
public record Asked(WindingRole role, MachineFigures figures, String serial, String words, String notOf) {

    public Asked {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(figures, "figures");
        serial = serial == null ? "" : serial.strip();
        words = words == null ? "" : words.strip();
        notOf = notOf == null ? "" : notOf;
    }
}
