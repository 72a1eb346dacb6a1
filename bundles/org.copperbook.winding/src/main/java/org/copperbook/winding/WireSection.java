package org.copperbook.winding;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.winding.wire.GaugingArea;

/** The wires in hand, each size with its strands and its two gaugings. */
final class WireSection implements WindingSection {

    private final OpenWinding winding;
    private GaugingArea gauging;

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
                .number("/coveredMm", "wire.covered", FieldUnit.MILLIMETRE)
                .computedText("gauged", "wire.gauged", row -> GaugingArea.inWords(winding, row)))
                .newRow(() -> winding.row().put("strands", 1));
        gauging = new GaugingArea(here.area(), winding);
    }

    @Override
    public void changed() {
        gauging.refresh();
    }
}
