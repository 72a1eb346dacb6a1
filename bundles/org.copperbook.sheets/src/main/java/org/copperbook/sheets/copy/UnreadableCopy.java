package org.copperbook.sheets.copy;

import java.nio.file.Path;
import java.util.Locale;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.page.Words;

/** A file that cannot be read as a job record; the message says why and what to do. */
public final class UnreadableCopy extends Exception {

    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Reason { MISSING, TOO_LARGE, NO_WORKBOOK, NO_RECORD }

    private final Reason reason;

    UnreadableCopy(Reason reason, Path file, Throwable cause) {
        super(new Words(JobRecordWorkbook.class, "record", Locale.ENGLISH).get("copy." + reason.name(), file), cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
