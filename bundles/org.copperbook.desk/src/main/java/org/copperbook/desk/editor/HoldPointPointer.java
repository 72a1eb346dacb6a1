package org.copperbook.desk.editor;

import org.copperbook.jobs.signoff.HoldPoint;

/**
 * How the outline asks the page of the sign-offs to show one hold point: {@code PartPage.reveal} gets
 * "#CAPTURE_COMPLETE" and the like, which no field's JSON pointer can be.
 */
public final class HoldPointPointer {

    private HoldPointPointer() {
    }

    /** The text for a hold point. */
    public static String of(HoldPoint point) {
        return "#" + point.name();
    }
}
