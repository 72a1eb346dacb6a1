package org.copperbook.runup.impregnation;

import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.runup.SignOffsPage;

/** Impregnation and cure, and the drying curve. */
public final class ImpregnationPage extends PartPage {

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
                .person("/by", "test.by")
                .moment("/at", "test.at"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("impregnation.dryingTitle")
                .choice("/dryingOf", "impregnation.dryingOf", WindingRole.class);
        here.grid("impregnation.drying", "/drying", columns -> columns
                .number("/minutes", "impregnation.minutes", FieldUnit.MINUTE)
                .number("/windingCelsius", "impregnation.temperature", FieldUnit.CELSIUS)
                .number("/insulationOhm", "impregnation.insulation", FieldUnit.OHM.typedIn("MΩ")))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("impregnation.noteTitle").longText("/note", "test.note");
    }
}
