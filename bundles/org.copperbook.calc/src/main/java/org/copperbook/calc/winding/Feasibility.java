package org.copperbook.calc.winding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.copperbook.calc.Require;

/**
 * What a number of slots, poles and phases allows. With {@code q = slots/(poles phases) = a/b} in lowest terms a
 * two-layer winding is balanced when the slots divide by the phases and b has no factor in common with them
 * (Srivastava, Ex. 5.2, refuses 32 slots in 4 poles; Pyrhonen, Jokinen and Hrabovcova, Design of Rotating Electrical
 * Machines, ch. 2, gives the same condition over the greatest common divisor).
 *
 * @param numerator a of q = a/b
 * @param denominator b of q = a/b
 * @param balanced whether a balanced winding exists
 * @param reason why, in one sentence
 * @param coilsPerPhase coils per phase; not whole when the slots do not divide
 * @param circuits numbers of equal parallel circuits that are possible, rising; empty when unbalanced
 * @param groupPattern coils per group in order around the bore, repeating; empty when a group has less than one coil on
 *     average
 */
public record Feasibility(int numerator, int denominator, boolean balanced, String reason, double coilsPerPhase,
        List<Integer> circuits, List<Integer> groupPattern) {
    public Feasibility {
        circuits = List.copyOf(circuits);
        groupPattern = List.copyOf(groupPattern);
    }

    /**
     * @param slots slots, 3 to 1000
     * @param poles poles, even
     * @param phases phases, 1 to 12
     * @param layers 1 or 2
     * @return what they allow
     */
    public static Feasibility of(int slots, int poles, int phases, int layers) {
        Require.between("slots", slots, 3, 1000, "a distributed winding needs at least three");
        Require.poles(poles);
        Require.between("phases", phases, 1, 12, "machines of this trade have no more");
        Require.between("layers", layers, 1, 2, "a slot holds one or two coil sides");
        int common = RegularFactors.greatestCommonDivisor(slots, poles * phases);
        int a = slots / common;
        int b = poles * phases / common;
        int coils = layers == 2 ? slots : slots / 2;
        double coilsPerPhase = layers * slots / 2.0 / phases;
        String refusal = refusal(slots, poles, phases, layers, b);
        if (refusal != null) {
            return new Feasibility(a, b, false, refusal, coilsPerPhase, List.of(), List.of());
        }
        List<Integer> circuits = circuits(slots, poles, phases, layers, a, b);
        String reason = "balanced: " + coils + " coils, " + coils / phases + " a phase, q = " + a
                + (b == 1 ? "" : "/" + b);
        return new Feasibility(a, b, true, reason, coilsPerPhase, circuits, pattern(slots, poles, phases, b));
    }

    private static String refusal(int slots, int poles, int phases, int layers, int b) {
        if (layers * slots % (2 * phases) != 0) {
            return "the coils do not divide evenly between " + phases + " phases";
        }
        if (RegularFactors.greatestCommonDivisor(b, phases) != 1) {
            return "the denominator " + b
                    + " of q has a factor in common with the number of phases, so the phases cannot be displaced evenly";
        }
        int rays = slots / RegularFactors.greatestCommonDivisor(slots, poles / 2);
        if (layers == 1 && rays % (2 * phases) != 0 && rays % 2 == 0) {
            return "the star of slots has " + rays + " rays, which one layer cannot share out between " + phases
                    + " phases";
        }
        return null;
    }

    private static List<Integer> circuits(int slots, int poles, int phases, int layers, int a, int b) {
        int most = poles / b;
        if (layers == 1) {
            boolean halved = b == 1 && a % 2 == 0;
            most = halved ? poles : RegularFactors.greatestCommonDivisor(slots, poles / 2);
        }
        int limit = Math.max(1, most);
        return IntStream.rangeClosed(1, limit).filter(n -> limit % n == 0).boxed().toList();
    }

    /** Sizes that the star of slots gives, over one repetition of b groups. */
    private static List<Integer> pattern(int slots, int poles, int phases, int b) {
        if (slots < poles * phases) {
            return List.of();
        }
        List<Integer> sizes = new ArrayList<>();
        Belt current = null;
        for (int s = 0; s < slots && (sizes.size() <= b); s++) {
            Belt belt = Belt.ofSlot(s, slots, poles, phases);
            if (belt.equals(current)) {
                sizes.set(sizes.size() - 1, sizes.get(sizes.size() - 1) + 1);
            } else {
                sizes.add(1);
                current = belt;
            }
        }
        return sizes.subList(0, Math.min(b, sizes.size()));
    }

    /** @return slots per pole and phase */
    public double slotsPerPoleAndPhase() {
        return (double) numerator / denominator;
    }
}
