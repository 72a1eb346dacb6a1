package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.Require;

/**
 * Coil list of a single-layer winding, one coil side per slot.
 *
 * <p>Three ways are wound. With a group per pole pair the whole belt of one pole goes out and comes back in the next
 * belt of its phase. With a group per pole each belt is halved: its second half goes out, the first half of the next
 * belt comes back. Lap coils of odd span may also lie with their go sides in every second slot (a basket winding),
 * which allows fractional slots too.
 */
final class SingleLayer {
    private final WindingPlan plan;

    SingleLayer(WindingPlan plan) {
        this.plan = plan;
    }

    List<Coil> coils() {
        if (plan.layout() == CoilLayout.LAP && plan.grouping() == Grouping.GROUP_PER_POLE && !fitsHalvedBelts()) {
            return everySecondSlot();
        }
        int q = wholeSlotsPerBelt();
        return plan.grouping() == Grouping.GROUP_PER_POLE_PAIR ? wholeBelts(q) : halvedBelts(q);
    }

    private int beltSlots() {
        return plan.poles() * plan.phases();
    }

    private boolean fitsHalvedBelts() {
        if (plan.slots() % beltSlots() != 0) {
            return false;
        }
        int q = plan.slots() / beltSlots();
        return q % 2 == 0 && plan.spans().get(0) == plan.phases() * q - q / 2;
    }

    private int wholeSlotsPerBelt() {
        Require.that(plan.slots() % beltSlots() == 0, "slots of a single-layer winding", Integer.toString(plan.slots()),
                "the multiples of " + beltSlots() + " (poles x phases)",
                "out-going and returning belts must be of equal size; only lap coils of odd span allow other numbers");
        return plan.slots() / beltSlots();
    }

    private List<Coil> everySecondSlot() {
        int span = plan.spans().get(0);
        Require.that(span % 2 == 1 && plan.slots() % 2 == 0, "span of a single-layer lap coil", Integer.toString(span),
                "the odd spans in an even number of slots", "go sides take every second slot, return sides the others");
        boolean separate = plan.slots() < 2 * beltSlots();
        List<Coil> coils = new ArrayList<>();
        int group = 0;
        int place = 0;
        Belt previous = null;
        for (int s = 0; s < plan.slots(); s += 2) {
            Belt belt = Belt.ofSlot(s, plan);
            if (separate || !belt.equals(previous)) {
                group++;
                place = 0;
            }
            coils.add(coil(belt, group, s, s + span, place++));
            previous = belt;
        }
        return coils;
    }

    private List<Coil> wholeBelts(int q) {
        checkMeanSpan(plan.phases() * q);
        List<Coil> coils = new ArrayList<>();
        int group = 0;
        for (int g = 0; g < beltSlots(); g++) {
            Belt belt = Belt.inOrder(g, plan.phases());
            if (belt.sense() > 0) {
                group++;
                addGroup(coils, belt, group, g * q, g * q + plan.phases() * q, q);
            }
        }
        return coils;
    }

    private List<Coil> halvedBelts(int q) {
        Require.that(q % 2 == 0, "slots per pole and phase", Integer.toString(q), "the even numbers",
                "each belt is halved between two groups");
        checkMeanSpan(plan.phases() * q - q / 2);
        List<Coil> coils = new ArrayList<>();
        for (int g = 0; g < beltSlots(); g++) {
            addGroup(coils, Belt.inOrder(g, plan.phases()), g + 1, g * q, g * q + plan.phases() * q - q / 2, q / 2);
        }
        return coils;
    }

    private void addGroup(List<Coil> coils, Belt belt, int group, int go, int back, int size) {
        for (int i = 0; i < size; i++) {
            int partner = plan.layout() == CoilLayout.LAP ? i : size - 1 - i;
            coils.add(coil(belt, group, go + i, back + partner, i));
        }
    }

    private Coil coil(Belt belt, int group, int go, int back, int place) {
        double turns = plan.turnsAt(plan.turns().size() == 1 ? 0 : place);
        return new Coil(belt.phase(), group, slot(go), slot(back), turns, belt.sense());
    }

    private int slot(int offset) {
        return Math.floorMod(plan.firstSlot() - 1 + offset, plan.slots()) + 1;
    }

    private void checkMeanSpan(int needed) {
        Require.that(plan.meanSpan() == needed, "mean coil span", Double.toString(plan.meanSpan()), needed + " slots",
                "with this grouping out-going and returning belts lie that far apart");
    }
}
