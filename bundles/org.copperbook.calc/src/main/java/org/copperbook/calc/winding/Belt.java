package org.copperbook.calc.winding;

/**
 * A phase belt: the phase a slot belongs to and whether its coils are reversed.
 *
 * @param phase phase from 1
 * @param sense +1 or -1
 */
record Belt(int phase, int sense) {

    /**
     * Belt at a place in the order around the electrical circle. With an odd number of phases the belts alternate in
     * sense and step by (m+1)/2 phases backwards, which gives U, -W, V, -U, W, -V for three; with an even number two
     * half circles follow each other, U, V, -U, -V for two.
     */
    static Belt inOrder(int index, int phases) {
        int belt = Math.floorMod(index, 2 * phases);
        int sense = 1;
        if (phases % 2 == 1) {
            sense = belt % 2 == 0 ? 1 : -1;
            int axis = sense > 0 ? belt / 2 : Math.floorMod((belt - phases) / 2, phases);
            return new Belt(axis + 1, sense);
        }
        if (belt >= phases) {
            sense = -1;
        }
        return new Belt(belt % phases + 1, sense);
    }

    /** Belt of a slot, offset from the first slot of the first phase, by its place in the star of slots. */
    static Belt ofSlot(int offset, WindingPlan plan) {
        return ofSlot(offset, plan.slots(), plan.poles(), plan.phases());
    }

    static Belt ofSlot(int offset, int slots, int poles, int phases) {
        int step = (int) Math.floorMod((long) offset * (poles / 2), (long) slots);
        return inOrder((int) ((long) step * 2 * phases / slots), phases);
    }
}
