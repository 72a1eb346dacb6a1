package org.copperbook.store.memory;

import java.util.List;
import org.copperbook.calc.winding.memory.PastWinding;

/**
 * A past winding that answers what was asked.
 *
 * @param winding     the winding
 * @param sameMachine whether its serial number is the one asked for
 * @param distance    scaled distance of the figures, 0 for the same; not a number when no figure was asked
 * @param differences what differs, most telling first
 */
public record FoundWinding(Remembered winding, boolean sameMachine, double distance,
        List<PastWinding.Difference> differences) {

    public FoundWinding {
        differences = List.copyOf(differences);
    }
}
