package org.copperbook.desk.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.PartJson;

/** Says which parts of a kind a job can have beside each other (windings, quotes), for the outline's add action. */
public interface ManyParts {

    /** Keys that can be added to a job now, the likeliest first. */
    List<PartKey> offers(Job job);

    /** The name of one part, e.g. "Main stator, as found". */
    String label(PartKey key);

    /** Place of a part among the others of its kind in the outline, smallest first; equal ones stand by their keys. */
    default int place(PartKey key) {
        return 0;
    }

    /** Whether a part has all that belongs to it, beyond what its page names in its attribute {@code complete}. */
    default boolean isComplete(Part part) {
        return true;
    }

    /** What the record of a part starts as. */
    ObjectNode beginning(PartKey key, Job job, PartJson json);
}
