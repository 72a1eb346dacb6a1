package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.winding.wire.GaugingArea;

/** The wires in hand while the strands are covered: sizes and gaugings only. */
final class CoveredWireSection implements WindingSection {

    private final OpenWinding winding;
    private GaugingArea gauging;

    CoveredWireSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        here.grid("winding.wireCovered", "/wire", columns -> columns
                .mark("/size", "wire.size")
                .integer("/grade", "wire.grade", 1, 3)
                .number("/bareMm", "wire.bare", FieldUnit.MILLIMETRE)
                .number("/coveredMm", "wire.covered", FieldUnit.MILLIMETRE)
                .computedText("gauged", "wire.gauged", row -> GaugingArea.inWords(winding, row)));
        gauging = new GaugingArea(here.area(), winding);
    }

    @Override
    public void changed() {
        gauging.refresh();
    }

    @Override
    public boolean shown(boolean covered) {
        return covered;
    }
}
