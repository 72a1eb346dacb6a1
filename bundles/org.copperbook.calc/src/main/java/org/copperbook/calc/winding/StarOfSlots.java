package org.copperbook.calc.winding;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The star of slots: the phasor that the working field induces in a conductor of each slot.
 *
 * @param slots slots
 * @param poles poles
 */
public record StarOfSlots(int slots, int poles) {

    /**
     * One ray of the star.
     *
     * @param slot slot from 1
     * @param degrees electrical angle, 0 to below 360; slot 1 lies at 0
     */
    public record Ray(int slot, double degrees) {
    }

    /** @return rays in the order of the slots */
    public List<Ray> inSlotOrder() {
        return IntStream.range(0, slots)
                .mapToObj(s -> new Ray(s + 1, (long) s * (poles / 2) % slots * 360.0 / slots)).toList();
    }

    /** @return rays in the order of their angles, slots at one angle in rising number */
    public List<Ray> inAngleOrder() {
        return inSlotOrder().stream()
                .sorted(java.util.Comparator.comparingDouble(Ray::degrees).thenComparingInt(Ray::slot)).toList();
    }

    /** @return number of slots on each ray: the greatest common divisor of slots and pole pairs */
    public int slotsPerRay() {
        return RegularFactors.greatestCommonDivisor(slots, poles / 2);
    }
}
