package org.copperbook.inspection;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.inspection.ChecklistTemplate;

/** The checklist of a workshop that has none of its own: common practice, no source. */
final class ShippedChecklist {

    private static final List<String> MECHANICAL =
            List.of("shaft", "fits", "runout", "bearings", "fan", "coupling", "airGap");
    private static final List<String> VISUAL =
            List.of("burns", "contamination", "moisture", "wedges", "lacing", "leads", "terminals", "rectifier");

    private ShippedChecklist() {
    }

    /** The list in the words of the page. */
    static ChecklistTemplate of(Words words) {
        List<ChecklistTemplate.Point> points = new ArrayList<>();
        MECHANICAL.forEach(p -> points.add(point(words, "mechanical", p)));
        VISUAL.forEach(p -> points.add(point(words, "visual", p)));
        return new ChecklistTemplate(ChecklistTemplate.SCHEMA, points, null);
    }

    private static ChecklistTemplate.Point point(Words words, String area, String point) {
        String work = "inspection.workOf." + point;
        return new ChecklistTemplate.Point(words.text("inspection.area." + area), words.text("inspection.point." + point),
                words.has(work) ? words.text(work) : "", null);
    }
}
