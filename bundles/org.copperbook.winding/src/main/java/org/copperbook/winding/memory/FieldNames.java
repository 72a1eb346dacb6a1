package org.copperbook.winding.memory;

import java.util.Map;
import org.copperbook.desk.text.Words;

/** What the fields of a winding are called on its page. */
final class FieldNames {

    private static final Map<String, String> KEYS = Map.ofEntries(Map.entry("slots", "winding.slots"),
            Map.entry("poles", "winding.poles"), Map.entry("phases", "winding.phases"),
            Map.entry("layers", "winding.layers"), Map.entry("coilType", "winding.coilType"),
            Map.entry("span", "winding.span"), Map.entry("groupSequence", "winding.sequence"),
            Map.entry("turnsPerCoil", "winding.turns"), Map.entry("groupsPerPhase", "winding.groupsPerPhase"),
            Map.entry("coilsPerGroup", "winding.coilsPerGroup"), Map.entry("circuits", "winding.circuits"),
            Map.entry("connection", "winding.connection"), Map.entry("leads", "winding.leads"),
            Map.entry("meanTurnM", "winding.meanTurn"), Map.entry("conductor", "winding.conductor"),
            Map.entry("polaritySequence", "winding.polarity"), Map.entry("wire", "winding.wireTitle"),
            Map.entry("groups", "winding.groups"), Map.entry("coilCount", "memory.coilCount"),
            Map.entry("jumper", "winding.jumper"), Map.entry("leadExit", "winding.leadExit"),
            Map.entry("leadLengthM", "winding.leadLength"), Map.entry("overhangDEM", "winding.overhangDE"),
            Map.entry("overhangNDEM", "winding.overhangNDE"), Map.entry("slotInsulation", "winding.slotInsulation"),
            Map.entry("wedge", "winding.wedge"), Map.entry("thermalClass", "winding.thermalClass"),
            Map.entry("coreLengthM", "core.length"), Map.entry("boreM", "core.bore"),
            Map.entry("outsideM", "core.outside"), Map.entry("slotDepthM", "core.slotDepth"),
            Map.entry("slotWidthTopM", "core.slotTop"), Map.entry("slotWidthBottomM", "core.slotBottom"),
            Map.entry("toothWidthM", "core.tooth"), Map.entry("yokeDepthM", "core.yoke"),
            Map.entry("ventCount", "core.vents"), Map.entry("ventWidthM", "core.ventWidth"),
            Map.entry("skew", "core.skew"));

    private FieldNames() {
    }

    /** The name of a field; the field's own where a newer version added it. */
    static String of(String field, Words words) {
        String key = KEYS.get(field);
        if (key == null) {
            return field;
        }
        String name = words.text(key);
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
