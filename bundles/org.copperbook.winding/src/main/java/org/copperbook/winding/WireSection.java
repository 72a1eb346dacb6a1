package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;

/** The wires in hand, each size with its strands and its two gaugings. */
final class WireSection implements WindingSection {

    private final OpenWinding winding;

    WireSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        here.grid("winding.wireTitle", "/wire", columns -> columns
                .mark("/size", "wire.size")
                .integer("/strands", "wire.strands", 1, 999)
                .integer("/grade", "wire.grade", 1, 3)
                .number("/bareMm", "wire.bare", FieldUnit.MILLIMETRE)
                .number("/coveredMm", "wire.covered", FieldUnit.MILLIMETRE))
                .newRow(() -> winding.row().put("strands", 1));
    }
}
