package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;

/** Dimensions of the core, and what is noted of ends, leads and insulation. */
final class DimensionsSection implements WindingSection {

    @Override
    public void build(Form here) {
        here.section("winding.core")
                .number("/coreLengthM", "core.length", FieldUnit.METRE_AS_MM)
                .number("/boreM", "core.bore", FieldUnit.METRE_AS_MM)
                .number("/outsideM", "core.outside", FieldUnit.METRE_AS_MM)
                .number("/slotDepthM", "core.slotDepth", FieldUnit.METRE_AS_MM)
                .number("/slotWidthTopM", "core.slotTop", FieldUnit.METRE_AS_MM)
                .number("/slotWidthBottomM", "core.slotBottom", FieldUnit.METRE_AS_MM)
                .number("/toothWidthM", "core.tooth", FieldUnit.METRE_AS_MM)
                .number("/yokeDepthM", "core.yoke", FieldUnit.METRE_AS_MM)
                .integer("/ventCount", "core.vents", 0, 200)
                .number("/ventWidthM", "core.ventWidth", FieldUnit.METRE_AS_MM)
                .number("/skew", "core.skew", FieldUnit.NUMBER);
        here.section("winding.ends")
                .longText("/jumper", "winding.jumper")
                .text("/leadExit", "winding.leadExit")
                .number("/leadLengthM", "winding.leadLength", FieldUnit.METRE)
                .number("/overhangDEM", "winding.overhangDE", FieldUnit.METRE_AS_MM)
                .number("/overhangNDEM", "winding.overhangNDE", FieldUnit.METRE_AS_MM)
                .longText("/slotInsulation", "winding.slotInsulation")
                .text("/wedge", "winding.wedge")
                .text("/thermalClass", "winding.thermalClass")
                .longText("/note", "winding.note");
    }

    @Override
    public boolean shown(boolean covered) {
        return true;
    }
}
