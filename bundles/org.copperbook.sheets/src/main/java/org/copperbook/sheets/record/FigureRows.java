package org.copperbook.sheets.record;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.check.WindingFigures;
import org.copperbook.sheets.page.Entry;
import org.copperbook.sheets.page.Look;
import org.copperbook.sheets.page.Table;

/** What follows from the data of a winding, figure by figure with its usual range; what cannot be computed says why. */
final class FigureRows {

    private static final int BAR = 3;

    private final RecordContext context;
    private final Sheet12 sheet;

    FigureRows(RecordContext context, Sheet12 sheet) {
        this.context = context;
        this.sheet = sheet;
    }

    void write(PartKey part, String which) {
        List<Verdict> figures = WindingFigures.of(context.job(), context.shop(), part);
        if (figures.isEmpty()) {
            return;
        }
        sheet.page().heading(context.say("figures.heading", which));
        WindingFigures.match(context.job(), context.shop(), part)
                .ifPresent(v -> sheet.page().paragraph(context.say("figures.match", v.reason())));
        Table table = new Table(sheet.page(), 4, 2, 3, 2, 1).head(context.say("figures.what"),
                context.say("figures.value"), context.say("figures.range"), context.say("verdict.bar"),
                context.say("verdict.word"));
        for (Verdict v : figures) {
            if (v.outcome() == Outcome.MEETS && v.id().contains(".figure.resistance.")) {
                // the sentence above speaks for those that fit, and the groups stand below with their readings
                continue;
            }
            int row = table.row(Entry.text(v.title()), Entry.text(sheet.amounts().valueOf(v)), Entry.text(v.limitText()),
                    Entry.blank(), Entry.text(context.words().of(v.outcome())).looks(Look.TABLE_STRONG));
            sheet.bar(row, table.start(BAR), table.span(BAR), v);
            if (v.outcome() != Outcome.MEETS) {
                sheet.page().row(Look.TABLE_CELL, Entry.blank(), Entry.text(v.reason()).over(Sheet12.COLUMNS - 1));
            }
        }
        sheet.page().note(context.say("figures.sources", figures.stream().map(Verdict::source)
                .filter(s -> s != null && !s.isBlank()).distinct().collect(Collectors.joining("; "))));
    }
}
