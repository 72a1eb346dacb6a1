package org.copperbook.jobs.check;

import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.signoff.HoldPoint;

/** Which hold point waits for what. */
final class Points {

    private Points() {
    }

    /** As found diagnoses; in process proves the winding; as left decides the release. */
    static HoldPoint of(Reading.State state) {
        return switch (state) {
            case AS_FOUND -> null;
            case IN_PROCESS -> HoldPoint.WINDING_PROVED;
            case AS_LEFT -> HoldPoint.RELEASE;
        };
    }

    /** The state as it stands in the ids of verdicts. */
    static String word(Reading.State state) {
        return switch (state) {
            case AS_FOUND -> "as-found";
            case IN_PROCESS -> "in-process";
            case AS_LEFT -> "as-left";
        };
    }
}
