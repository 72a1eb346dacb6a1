package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;

/** The wires in hand while the strands are covered: sizes and gaugings only. */
final class CoveredWireSection implements WindingSection {

    @Override
    public void build(Form here) {
        here.grid("winding.wireCovered", "/wire", columns -> columns
                .mark("/size", "wire.size")
                .integer("/grade", "wire.grade", 1, 3)
                .number("/bareMm", "wire.bare", FieldUnit.MILLIMETRE)
                .number("/coveredMm", "wire.covered", FieldUnit.MILLIMETRE));
    }

    @Override
    public boolean shown(boolean covered) {
        return covered;
    }
}
