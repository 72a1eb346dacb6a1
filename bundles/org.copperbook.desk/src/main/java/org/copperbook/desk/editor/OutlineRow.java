package org.copperbook.desk.editor;

import org.copperbook.desk.page.PageContribution;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;

/** A row of the outline of a job. */
public sealed interface OutlineRow {

    /** Text of the row. */
    String label();

    /**
     * A page for a part.
     *
     * @param page  who contributes it
     * @param key   the part
     * @param label name shown
     * @param state how far it has come
     * @param dirty whether it holds something unsaved
     */
    record Page(PageContribution page, PartKey key, String label, PartState state, boolean dirty)
            implements OutlineRow {
    }

    /**
     * Adds one more part of a kind.
     *
     * @param page  who contributes its pages
     * @param label text of the action
     */
    record Add(PageContribution page, String label) implements OutlineRow {
    }

    /**
     * A hold point between the parts that it separates.
     *
     * @param state where it stands
     * @param label its name
     */
    record Point(HoldPointState state, String label) implements OutlineRow {
    }
}
