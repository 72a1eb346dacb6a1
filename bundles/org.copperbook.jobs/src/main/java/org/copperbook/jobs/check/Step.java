package org.copperbook.jobs.check;

import java.util.List;
import org.copperbook.jobs.signoff.HoldPoint;

/** Work that waits for hold points. */
public enum Step {
    /** Taking the old winding out. */
    STRIP(HoldPoint.CAPTURE_COMPLETE),
    /** Winding a new one into the core. */
    WIND(HoldPoint.CAPTURE_COMPLETE, HoldPoint.CORE_PROVED),
    /** Impregnating and curing it. */
    IMPREGNATE(HoldPoint.WINDING_PROVED),
    /** Turning the machine live. */
    RUN_UP(HoldPoint.WINDING_PROVED, HoldPoint.RECTIFIER_COMPLETE),
    /** Giving it back to the customer. */
    HAND_BACK(HoldPoint.RELEASE);

    private final List<HoldPoint> waitsFor;

    Step(HoldPoint... points) {
        waitsFor = List.of(points);
    }

    /** The hold points that must be signed before it, where they apply to the job. */
    public List<HoldPoint> waitsFor() {
        return waitsFor;
    }
}
