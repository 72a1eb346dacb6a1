package org.copperbook.calc.winding;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.copperbook.calc.Require;

/**
 * A distributed winding as data: what lies in the slots, whether generated from a short description or captured from a
 * machine.
 *
 * @param slots slots around the bore, 3 to 1000
 * @param poles number of poles (2p), even, 2 to 200
 * @param phases number of phases, 1 to 12
 * @param layers coil sides per slot, 1 or 2
 * @param coils every coil
 */
public record Winding(int slots, int poles, int phases, int layers, List<Coil> coils) {
    public Winding {
        Require.between("slots", slots, 3, 1000, "a distributed winding needs at least three");
        Require.between("poles", Require.poles(poles), 2, 200, "machines of this trade have no more");
        Require.between("phases", phases, 1, 12, "machines of this trade have no more");
        Require.between("layers", layers, 1, 2, "a slot holds one or two coil sides");
        coils = List.copyOf(coils);
        for (Coil coil : coils) {
            Require.that(coil.goSlot() <= slots && coil.returnSlot() <= slots, "coil",
                    coil.goSlot() + "-" + coil.returnSlot(),
                    "the slots 1 to " + slots, "the machine has no further slot");
            Require.between("phase of a coil", coil.phase(), 1, phases, "the winding has no further phase");
        }
    }

    /** @return pole pairs */
    public int polePairs() {
        return poles / 2;
    }

    /** @return pole pitch in slots */
    public double polePitch() {
        return (double) slots / poles;
    }

    /** @return slots per pole and phase, q */
    public double slotsPerPoleAndPhase() {
        return (double) slots / poles / phases;
    }

    /**
     * @param phase phase from 1
     * @return coils of that phase in the order of the list
     */
    public List<Coil> coilsOf(int phase) {
        return coils.stream().filter(coil -> coil.phase() == phase).toList();
    }

    /**
     * @param group group from 1
     * @return coils of that group in the order of the list
     */
    public List<Coil> coilsOfGroup(int group) {
        return coils.stream().filter(coil -> coil.group() == group).toList();
    }

    /** @return numbers of the groups present, rising */
    public List<Integer> groups() {
        return List.copyOf(new TreeSet<>(coils.stream().map(Coil::group).toList()));
    }

    /**
     * @param phase phase from 1
     * @return numbers of the groups of that phase, rising
     */
    public List<Integer> groupsOf(int phase) {
        return List.copyOf(new TreeSet<>(coilsOf(phase).stream().map(Coil::group).toList()));
    }

    /**
     * @param phase phase from 1
     * @return turns of all coils of that phase, before any division into parallel circuits
     */
    public double turnsOf(int phase) {
        return coils.stream().filter(coil -> coil.phase() == phase).mapToDouble(Coil::turns).sum();
    }

    /** @return number of coil sides in each slot; index 0 is slot 1 */
    public int[] sidesPerSlot() {
        int[] sides = new int[slots];
        for (Coil coil : coils) {
            sides[coil.goSlot() - 1]++;
            sides[coil.returnSlot() - 1]++;
        }
        return sides;
    }

    /** @return what does not fit, one plain sentence each: slots with too many sides or none, phases without coils */
    public List<String> findings() {
        int[] sides = sidesPerSlot();
        List<String> overfull = IntStream.range(0, slots).filter(s -> sides[s] > layers)
                .mapToObj(s -> "slot " + (s + 1) + " holds " + sides[s] + " coil sides in a winding of " + layers
                + " layer(s)")
                .toList();
        List<String> empty = IntStream.range(0, slots).filter(s -> sides[s] < layers)
                .mapToObj(s -> "slot " + (s + 1) + " holds " + sides[s] + " coil side(s) of " + layers).toList();
        List<String> missing = IntStream.rangeClosed(1, phases).filter(p -> coilsOf(p).isEmpty())
                .mapToObj(p -> "phase " + p + " has no coil").toList();
        return java.util.stream.Stream.of(overfull, empty, missing).flatMap(List::stream).toList();
    }

    /**
     * The same winding with its slots numbered from another slot.
     *
     * @param shift how far the numbers move on
     * @return relabelled winding; factors and balance do not change
     */
    public Winding renumbered(int shift) {
        List<Coil> moved = coils.stream().map(coil -> new Coil(coil.phase(), coil.group(), moved(coil.goSlot(), shift),
                moved(coil.returnSlot(), shift), coil.turns(), coil.sense())).toList();
        return new Winding(slots, poles, phases, layers, moved);
    }

    private int moved(int slot, int shift) {
        return Math.floorMod(slot - 1 + shift, slots) + 1;
    }
}
