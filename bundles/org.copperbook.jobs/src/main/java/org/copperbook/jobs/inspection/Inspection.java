package org.copperbook.jobs.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PhotoRef;
import org.copperbook.jobs.reading.Reading;

/**
 * The machine as found: what was seen, what was read, what it means.
 *
 * @param schema           layout version
 * @param checklist        mechanical and visual points
 * @param readings         electrical readings as found
 * @param excitationRuns   separate-excitation runs, every attempt
 * @param findings         findings
 * @param recommendedScope scope proposed to the customer
 * @param photos           photos as found, before anything is taken apart
 * @param fits             bearing seats as measured
 * @param runouts          runout as measured
 * @param more             fields of newer versions
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Inspection(int schema, List<ChecklistItem> checklist, List<Reading> readings,
        List<ExcitationRun> excitationRuns, List<Finding> findings, String recommendedScope,
        List<PhotoRef> photos, List<BearingFit> fits, List<Runout> runouts, @KeepUnknown Map<String, JsonNode> more) implements Part {

    public static final int SCHEMA = 1;

    public Inspection {
        checklist = checklist == null ? List.of() : List.copyOf(checklist);
        readings = readings == null ? List.of() : List.copyOf(readings);
        excitationRuns = excitationRuns == null ? List.of() : List.copyOf(excitationRuns);
        findings = findings == null ? List.of() : List.copyOf(findings);
        photos = photos == null ? List.of() : List.copyOf(photos);
        fits = fits == null ? List.of() : List.copyOf(fits);
        runouts = runouts == null ? List.of() : List.copyOf(runouts);
        more = more == null ? Map.of() : more;
    }
}
