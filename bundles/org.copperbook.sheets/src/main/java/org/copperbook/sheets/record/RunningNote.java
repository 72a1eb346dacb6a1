package org.copperbook.sheets.record;

import org.copperbook.sheets.page.SheetPage;

/** A remark under the rows of a table, written once under rows that follow each other and have the same. */
final class RunningNote {

    private final SheetPage page;
    private String first = "";
    private String last = "";
    private String pending = "";

    RunningNote(SheetPage page) {
        this.page = page;
    }

    /** The remark of the row about to be written; "" for none. */
    void next(String row, String remark) {
        if (!remark.equals(pending)) {
            done();
            first = row;
            pending = remark;
        }
        last = row;
    }

    /** Writes what is still to be said of the rows above. */
    void done() {
        if (!pending.isEmpty()) {
            String rows = first.equals(last) ? first : first + " – " + last;
            page.note(RecordContext.joined(": ", rows, pending));
        }
        pending = "";
    }
}
