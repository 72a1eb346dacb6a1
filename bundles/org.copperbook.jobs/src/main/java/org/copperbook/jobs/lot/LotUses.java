package org.copperbook.jobs.lot;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;

/** Finds the uses of a lot in the parts of jobs that name lots: the diode set and the resin. */
public final class LotUses {

    /** Kinds of part that name lots. */
    public static final List<PartKind> KINDS = List.of(PartKind.RECTIFIER, PartKind.IMPREGNATION);

    private LotUses() {
    }

    /** The uses of a lot in one part; none for parts that name no lots. */
    public static List<LotUse> in(String jobId, String number, PartKey key, Part part, String lot) {
        List<LotUse> uses = new ArrayList<>();
        if (part instanceof RectifierSet set) {
            diodes(jobId, number, key, set, lot, uses);
        } else if (part instanceof Impregnation i) {
            for (Impregnation.Treatment t : i.treatments()) {
                if (LotText.names(t.lot(), lot)) {
                    uses.add(new LotUse(jobId, number, key, text(t.resin()), t.lot(), List.of(), t.at()));
                }
            }
        }
        return uses;
    }

    private static void diodes(String jobId, String number, PartKey key, RectifierSet set, String lot,
            List<LotUse> uses) {
        boolean wholeSet = set.fitted() != null && LotText.names(set.fitted().lot(), lot);
        List<String> at = new ArrayList<>();
        String recorded = wholeSet ? set.fitted().lot() : "";
        for (DiodePosition p : set.positions()) {
            if (LotText.names(p.lot(), lot)) {
                at.add(text(p.position()));
                recorded = recorded.isEmpty() ? p.lot() : recorded;
            }
        }
        if (wholeSet || !at.isEmpty()) {
            uses.add(new LotUse(jobId, number, key, set.fitted() == null ? "" : text(set.fitted().makersPart()),
                    recorded, at, set.fitted() == null ? null : set.fitted().at()));
        }
    }

    private static String text(String s) {
        return s == null ? "" : s;
    }
}
