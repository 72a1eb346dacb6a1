package org.copperbook.sheets.record;

import org.copperbook.sheets.page.Book;

/** One sheet of a job record; it writes nothing when the job has nothing for it. */
@FunctionalInterface
public interface RecordSheet {

    void write(RecordContext context, Book book);
}
