package org.copperbook.runup.impregnation;

import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.picture.PictureButtons;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.DryingState;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.runup.SignOffsPage;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartScene;
import org.copperbook.sheets.drying.DryingChart;
import org.copperbook.sheets.picture.Scene;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Impregnation and cure, and the drying curve: where it stands, as figures and drawn. */
public final class ImpregnationPage extends PartPage {


    private PictureCanvas curve;

    @Override
    protected Words words() {
        return Words.of(SignOffsPage.class);
    }

    @Override
    protected void build(Form here) {
        here.words("impregnation.caution");
        here.grid("impregnation.treatments", "/treatments", columns -> columns
                .choice("/winding", "impregnation.winding", WindingRole.class)
                .choice("/method", "impregnation.method", Impregnation.Method.class)
                .text("/resin", "impregnation.resin")
                .mark("/lot", "impregnation.lot")
                .number("/preheatCelsius", "impregnation.preheat", FieldUnit.CELSIUS)
                .number("/preheatMinutes", "impregnation.preheatTime", FieldUnit.MINUTE)
                .number("/soakMinutes", "impregnation.soak", FieldUnit.MINUTE)
                .number("/cureCelsius", "impregnation.cure", FieldUnit.CELSIUS)
                .number("/cureMinutes", "impregnation.cureTime", FieldUnit.MINUTE)
                .number("/sheetCureCelsius", "impregnation.sheetCure", FieldUnit.CELSIUS)
                .number("/sheetCureMinutes", "impregnation.sheetCureTime", FieldUnit.MINUTE)
                .says()
                .person("/by", "test.by")
                .moment("/at", "test.at"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("impregnation.dryingTitle")
                .choice("/dryingOf", "impregnation.dryingOf", WindingRole.class)
                .computed("/stage", "impregnation.stage", this::stage);
        picture(here.area("impregnation.curve"));
        here.grid("impregnation.drying", "/drying", columns -> columns
                .number("/minutes", "impregnation.minutes", FieldUnit.MINUTE)
                .number("/windingCelsius", "impregnation.temperature", FieldUnit.CELSIUS)
                .number("/insulationOhm", "impregnation.insulation", FieldUnit.OHM.typedIn("MΩ")))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("impregnation.noteTitle").longText("/note", "test.note");
    }

    private void picture(Composite area) {
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        curve = new PictureCanvas(area);
        curve.setData(Desk.ID, "impregnation.picture");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(curve);
        new PictureButtons(area, curve);
    }

    private String stage() {
        return DryingState.of(document().job(), site().shop())
                .map(s -> s.refused().isEmpty() ? words().of(s.stage()) : s.refused()).orElse("");
    }

    @Override
    protected void changed() {
        curve.show(DryingState.of(document().job(), site().shop()).map(this::drawn).orElse(Scene.EMPTY));
    }

    private Scene drawn(DryingState state) {
        Chart chart = DryingChart.of(state, new DryingChart.Labels(words().text("impregnation.curve"),
                words().text("impregnation.time"), words().text("impregnation.insulation"),
                words().text("impregnation.at40"), words().text("impregnation.asRead"), words().of(state.stage())));
        return chart.isEmpty() ? Scene.EMPTY : ChartScene.of(chart);
    }
}
