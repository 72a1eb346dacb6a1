package org.copperbook.calc.winding;

import org.copperbook.calc.Require;

/**
 * One coil as it lies in the slots.
 *
 * @param phase phase it belongs to, from 1 (1 is U, 2 is V, 3 is W)
 * @param group coil group it belongs to, from 1, numbered around the bore over all phases
 * @param goSlot slot of the first coil side, from 1
 * @param returnSlot slot of the second coil side, from 1, not the go slot
 * @param turns turns, above 0 (a field coil may end on half a turn)
 * @param sense +1 when the coil is connected as wound, -1 when it is connected reversed
 */
public record Coil(int phase, int group, int goSlot, int returnSlot, double turns, int sense) {
    public Coil {
        String counted = "phases, groups and slots are counted from one";
        Require.between("phase of a coil", phase, 1, 12, counted);
        Require.between("group of a coil", group, 1, 10_000, counted);
        Require.between("go slot", goSlot, 1, 1000, counted);
        Require.between("return slot", returnSlot, 1, 1000, counted);
        Require.that(goSlot != returnSlot, "return slot", Integer.toString(returnSlot),
                "the slots other than the go slot",
                "a coil lies in two slots");
        Require.between("turns of a coil", Require.positive("turns of a coil", turns, ""), 0, 100_000, "",
                "more turns are a slip of the pen");
        Require.that(sense == 1 || sense == -1, "sense of a coil", Integer.toString(sense), "+1 and -1",
                "a coil is connected as wound or reversed");
    }

    /**
     * @param slots slots of the machine
     * @return coil span in slots, counted forward from the go slot
     */
    public int span(int slots) {
        return Math.floorMod(returnSlot - goSlot, slots);
    }

    /**
     * @param turns other number of turns
     * @return the same coil with these turns
     */
    public Coil withTurns(double turns) {
        return new Coil(phase, group, goSlot, returnSlot, turns, sense);
    }
}
