package org.copperbook.store.memory;

import java.time.Instant;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingRole;

/**
 * A winding the workshop has had.
 *
 * @param jobId      job it belongs to, or {@link org.copperbook.store.JobStore#CARDS} for an old card
 * @param part       its part there
 * @param revision   revision the row was derived from
 * @param number     job number, or number of the old card (may be empty)
 * @param role       which winding
 * @param asWound    whether it is the new winding of its job
 * @param proposed   whether it is itself an unconfirmed proposal
 * @param maker      maker of the machine, may be empty
 * @param type       type of the machine, may be empty
 * @param serial     serial number, may be empty
 * @param figures    figures by which machines are compared
 * @param span       span as recorded, may be empty
 * @param turns      turns per coil, null when not regular or unknown
 * @param wire       wires in hand in words, may be empty
 * @param circuits   parallel circuits, null when unknown
 * @param connection name of the connection constant, may be empty
 * @param recordedAt when it was recorded here
 */
public record Remembered(String jobId, PartKey part, int revision, String number, WindingRole role, boolean asWound,
        boolean proposed, String maker, String type, String serial, MachineFigures figures, String span, Integer turns,
        String wire, Integer circuits, String connection, Instant recordedAt) {

    /** Whether it comes from an old card and not from a job. */
    public boolean isCard() {
        return org.copperbook.store.JobStore.CARDS.equals(jobId);
    }
}
