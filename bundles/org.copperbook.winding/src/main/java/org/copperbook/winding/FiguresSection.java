package org.copperbook.winding;

import java.util.function.Function;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.jobs.winding.WindingData;

/** What follows from the data captured so far. */
final class FiguresSection implements WindingSection {

    private final OpenWinding winding;

    FiguresSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        WindingFigures figures = new WindingFigures(winding.words());
        here.section("winding.figures")
                .computed("winding.factor", "winding.factor", () -> figure(figures::factor))
                .computed("winding.balance", "winding.balance", () -> figure(figures::balance))
                .computed("winding.copper", "winding.copper", () -> figure(figures::copper))
                .number("/copperRemovedKg", "winding.copperRemoved", FieldUnit.KILOGRAM);
    }

    private String figure(Function<WindingData, String> of) {
        return winding.data().map(of).orElse("");
    }
}
