package org.copperbook.desk.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.store.JobStore;

/** What a page of a job finds around it. All methods are for the window's own thread. */
public interface PageSite {

    /** The open job. */
    JobDocument document();

    /** The part this page shows. */
    PartKey key();

    /** The shop as it stands. */
    Shop shop();

    /** Reader and writer of records. */
    PartJson json();

    /** Person key of whoever works at this screen; empty when nobody has said so yet. */
    Optional<String> who();

    /** The newest verdicts of the whole job, heaviest first. */
    List<Verdict> verdicts();

    /** The hold points of the job. */
    List<HoldPointState> holdPoints();

    /** Why this part may not be edited now; empty when it may. */
    Optional<String> blocked();

    /** The store, for what a page does in a background job (photos, history). */
    JobStore store();

    /** Opens the page of another part of the job. */
    void open(PartKey key);

    /** Instruments by id, labelled for a choice. */
    default Map<String, String> instruments() {
        Map<String, String> labels = new java.util.LinkedHashMap<>();
        shop().instruments().instruments().stream().filter(Instrument::inUse).forEach(i -> labels.put(i.id(), i.id() + "  " + i.name()));
        return labels;
    }

    /** Active people of the shop by key, labelled for a choice. */
    default Map<String, String> people() {
        Map<String, String> labels = new java.util.LinkedHashMap<>();
        shop().people().forEach((k, p) -> {
            if (p.active() && !p.roles().isEmpty()) {
                labels.put(k, p.name());
            }
        });
        return labels;
    }
}
