package org.copperbook.desk.editor;

/** Family of the desk's background jobs, so that they can be waited for. */
public final class DeskJobs {

    /** The one family. */
    public static final Object FAMILY = new Object();

    private DeskJobs() {
    }
}
