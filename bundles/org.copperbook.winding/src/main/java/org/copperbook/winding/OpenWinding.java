package org.copperbook.winding;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.picture.PictureHeading;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.winding.WindingData;

/**
 * The winding that a page shows, as its sections find it.
 *
 * @param site  what the page finds round it
 * @param words texts of the plug-in
 */
public record OpenWinding(PageSite site, Words words) {

    /** The open job. */
    public JobDocument document() {
        return site.document();
    }

    /** The part shown. */
    public PartKey key() {
        return site.key();
    }

    /** The record as it stands on the screen; empty before anything is filled. */
    public Optional<WindingData> data() {
        return document().part(key(), WindingData.class);
    }

    /** What stands over a picture of this winding on paper. */
    public List<String> heading() {
        return PictureHeading.of(document().job(), new Windings().label(key()), LocalDate.now());
    }

    /** Number of rows that a list of the record has. */
    public int rows(String list) {
        return document().rows(key(), list).size();
    }

    /** An empty row for a list. */
    public ObjectNode row() {
        return site.json().mapper().createObjectNode();
    }
}
