package org.copperbook.jobs.lot;

import java.time.Instant;
import java.util.List;
import org.copperbook.jobs.PartKey;

/**
 * One place where a lot went into a machine.
 *
 * @param jobId     key of the job
 * @param number    its number
 * @param part      part of the job that names the lot
 * @param makersPart what the lot is of: the diodes' maker's part, or the resin; empty when not stated
 * @param lot       the lot as recorded
 * @param positions diode positions that got it; empty when the whole set did, and for resin
 * @param at        when it went in; null when not stated
 */
public record LotUse(String jobId, String number, PartKey part, String makersPart, String lot, List<String> positions,
        Instant at) {

    public LotUse {
        positions = List.copyOf(positions);
    }
}
