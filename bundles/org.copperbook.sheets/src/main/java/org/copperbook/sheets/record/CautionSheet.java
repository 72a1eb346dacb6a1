package org.copperbook.sheets.record;

import java.util.List;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.sheets.page.Book;

/** The cautions that go with the work recorded. */
public final class CautionSheet implements RecordSheet {

    @Override
    public void write(RecordContext c, Book book) {
        Sheet12 sheet = Sheet12.portrait(c, book, c.say("caution.sheet"));
        sheet.page().paragraph(c.say("caution.intro"));
        for (Hazardous step : Hazardous.values()) {
            List<String> cautions = Cautions.requiredFor(step);
            sheet.page().keepTogether(cautions.size() + 3);
            sheet.page().heading(Cautions.title(step));
            cautions.forEach(caution -> sheet.page().paragraph("• " + caution));
        }
        sheet.page().heading(c.say("caution.after"));
        sheet.page().paragraph("• " + c.say("caution.afterwards"));
    }
}
