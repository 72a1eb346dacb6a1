package org.copperbook.jobs.winding;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * Keeps two counts of a winding blind to each other. From the moment a count is begun until two are handed in, whatever
 * tells turns or strands in hand of that winding is covered: for everybody, so that it does not matter who sits at the
 * screen. Only a count that is still open is shown to whoever makes it.
 */
public final class BlindCounts {

    private BlindCounts() {
    }

    /** Whether the turns and strands of a winding are covered now. */
    public static boolean covers(WindingData winding) {
        return !winding.asWound() && !winding.counts().isEmpty()
                && winding.counts().stream().filter(TurnCount::handedIn).count() < 2;
    }

    /**
     * Whether a person may see the figures of a count.
     *
     * @param who person key of whoever sits at the screen, or null
     */
    public static boolean shows(WindingData winding, TurnCount count, String who) {
        return !covers(winding) || (!count.handedIn() && who != null && who.equals(count.by()));
    }

    /** The job without the turns and strands that are covered now; the same job when none are. */
    public static Job covered(Job job) {
        Map<PartKey, Part> parts = new TreeMap<>(job.parts());
        boolean any = false;
        for (Map.Entry<PartKey, Part> e : parts.entrySet()) {
            if (e.getValue() instanceof WindingData w && covers(w)) {
                e.setValue(withoutTurns(w));
                any = true;
            }
        }
        return any ? new Job(job.id(), job.number(), parts) : job;
    }

    /** A winding without what tells turns and strands; who counted and when stays. */
    public static WindingData withoutTurns(WindingData w) {
        List<CoilGroup> groups = w.groups().stream().map(BlindCounts::withoutTurns).toList();
        List<TurnCount> counts = w.counts().stream()
                .map(c -> new TurnCount(c.ordinal(), c.by(), c.at(), List.of(), null, c.open(), c.more())).toList();
        return new WindingData(w.schema(), w.role(), w.asWound(), w.slots(), w.poles(), w.phases(), w.layers(),
                w.coilType(), w.coilCount(), w.coilsPerGroup(), w.groupsPerPhase(), w.groupSequence(), w.span(), null,
                List.of(), w.circuits(), w.connection(), w.leads(), w.jumper(), w.leadExit(), w.leadLengthM(),
                w.meanTurnM(), w.overhangDEM(), w.overhangNDEM(), w.coreLengthM(), w.boreM(), w.outsideM(),
                w.slotDepthM(), w.slotWidthTopM(), w.slotWidthBottomM(), w.toothWidthM(), w.yokeDepthM(), w.ventCount(),
                w.ventWidthM(), w.skew(), w.slotInsulation(), w.wedge(), w.thermalClass(), w.conductor(),
                w.polaritySequence(), w.copperRemovedKg(), groups, w.readings(), counts, w.proposedFrom(),
                w.takenOver(), w.reason(), w.photos(), w.note(), w.more());
    }

    private static CoilGroup withoutTurns(CoilGroup g) {
        List<CapturedCoil> coils = g.coils().stream()
                .map(c -> new CapturedCoil(c.goSlot(), c.returnSlot(), null, c.reversed(), c.more())).toList();
        return new CoilGroup(g.number(), g.phase(), g.circuit(), g.reversed(), coils, List.of(), g.resistance(),
                g.more());
    }
}
