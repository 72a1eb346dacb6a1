package org.copperbook.winding.figures;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.document.Coalescing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.form.SaidText;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.desk.verdict.VerdictsPanel;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.check.WindingFigures;
import org.copperbook.winding.Aside;
import org.copperbook.winding.JobAsked;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * What follows from the data captured so far, beside them and as they are typed: the sentence of the capture check, and
 * every figure with its usual range and source. Computed off the window's thread.
 */
public final class LiveFigures implements WindingSection {

    private static final int BAR = 2;

    private record Seen(Optional<Verdict> match, List<Verdict> figures) {
    }

    private final OpenWinding winding;
    private Form form;
    private Text sentence;
    private BarTable rows;
    private Text detail;
    private JobAsked asked;
    private Coalescing<JobAsked, Seen> computing;

    public LiveFigures(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        form = here;
        Composite area = here.area("figures.title");
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(area);
        sentence = SaidText.in(area, "figures.sentence", words("figures.sentence"));
        rows = new BarTable(area, "figures.rows", words("figures.title"), List.of(
                new BarTable.Column(words("figures.what"), 0), new BarTable.Column(words("figures.value"), 0),
                new BarTable.Column(words("figures.word"), 30), new BarTable.Column(words("figures.range"), 0),
                new BarTable.Column(words("figures.why"), 0), new BarTable.Column(words("figures.source"), 0)), BAR);
        rows.table().addListener(SWT.Selection, e -> {
            if (explain()) {
                form.relayout();
            }
        });
        detail = SaidText.in(area, "figures.detail", words("figures.detail"));
        computing = Aside.of(area, this::seen, this::show);
    }

    private String words(String key, Object... args) {
        return winding.words().text(key, args);
    }

    private Seen seen(JobAsked of) {
        return new Seen(WindingFigures.match(of.job(), of.shop(), winding.key()),
                WindingFigures.of(of.job(), of.shop(), winding.key()));
    }

    @Override
    public void changed() {
        JobAsked now = JobAsked.of(winding);
        if (!now.equals(asked)) {
            asked = now;
            computing.ask(now);
        }
    }

    @Override
    public void judged(List<Verdict> ofJob) {
        changed();
    }

    private void show(Seen seen) {
        if (sentence.isDisposed()) {
            return;
        }
        boolean grown = say(sentence, seen.match().map(v -> words("figures.match", v.reason())).orElse(""));
        sentence.setForeground(seen.match().filter(v -> v.outcome() == Outcome.DOUBTFUL)
                .map(v -> Look.of(sentence).palette().of(v.outcome())).orElse(null));
        grown |= rows.show(seen.figures().stream().map(LiveFigures::row).toList());
        grown |= explain();
        if (grown) {
            form.relayout();
        }
    }

    private static BarTable.Row row(Verdict v) {
        return new BarTable.Row(List.of(what(v), VerdictWords.value(v), VerdictWords.of(v.outcome()), v.limitText(),
                v.reason(), v.source()), v);
    }

    /** The title without the winding, which the page names already. */
    private static String what(Verdict v) {
        int cut = v.title().indexOf(": ");
        int comma = v.title().indexOf(", ");
        cut = comma >= 0 && (cut < 0 || comma < cut) ? comma : cut;
        String rest = cut < 0 ? v.title() : v.title().substring(cut + 2);
        return rest.substring(0, 1).toUpperCase(Locale.getDefault()) + rest.substring(1);
    }

    private boolean explain() {
        BarTable.Row chosen = rows.chosen();
        return say(detail, chosen == null ? words("figures.choose") : VerdictsPanel.words(chosen.verdict()));
    }

    /** Says it; true when the words need another height, so that what stands below has to move. */
    private static boolean say(Text where, String text) {
        if (where.getText().equals(text)) {
            return false;
        }
        where.setText(text);
        Point now = where.getSize();
        int inside = now.x - where.computeTrim(0, 0, 0, 0).width;
        return inside <= 0 || where.computeSize(inside, SWT.DEFAULT).y != now.y;
    }
}
