package org.copperbook.jobs.check;

import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.reading.Reading;

/**
 * A reading with where it stands in the job.
 *
 * @param part    part that holds it
 * @param path    JSON pointer inside that part
 * @param reading the reading
 * @param state   as found, in process or as left; from the part where the reading does not say
 */
record LoggedReading(PartKey part, String path, Reading reading, Reading.State state) {

    /** Id for verdicts: the reading's own id, or its place in the part. */
    String id() {
        return reading.id() == null || reading.id().isBlank() ? path.substring(1).replace('/', '.') : reading.id();
    }
}
