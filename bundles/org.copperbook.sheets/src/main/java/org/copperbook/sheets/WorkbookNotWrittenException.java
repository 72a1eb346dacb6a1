package org.copperbook.sheets;

import java.io.IOException;

/** A workbook that was not written; the target is as it was before. The message says why and what to do. */
public class WorkbookNotWrittenException extends IOException {

    private static final long serialVersionUID = 1L;

    /** Why it was not written. */
    public enum Reason {
        /** Another program has the target open. */
        TARGET_LOCKED,
        /** The target exists and may not be overwritten. */
        TARGET_READ_ONLY,
        /** The target is a folder or another thing that is not a file. */
        TARGET_NOT_A_FILE,
        /** The folder of the target does not exist. */
        FOLDER_MISSING,
        /** No file may be made in the folder of the target. */
        FOLDER_READ_ONLY,
        /** The disk is full or does not answer. */
        DISK,
        /** The record cannot be put into a workbook. */
        CONTENT
    }

    private final Reason reason;

    public WorkbookNotWrittenException(Reason reason, String message, Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
