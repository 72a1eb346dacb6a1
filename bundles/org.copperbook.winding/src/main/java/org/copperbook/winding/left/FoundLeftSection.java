package org.copperbook.winding.left;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.desk.Desk;
import org.copperbook.desk.chart.ChartArea;
import org.copperbook.desk.document.Coalescing;
import org.copperbook.desk.entry.Marks;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.FoundAndLeft;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.record.ResistanceChart;
import org.copperbook.winding.Aside;
import org.copperbook.winding.JobAsked;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.copperbook.winding.Windings;
import org.copperbook.winding.figures.BarTable;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Resistance as found against as left, per phase and coil group on one temperature: a table, and the same as a picture. */
public final class FoundLeftSection implements WindingSection {

    private static final int BAR = 5;
    private static final int DIGITS = 4;
    private static final int DIGITS_OF_U = 2;

    private record Seen(String words, List<FoundAndLeft> rows, Optional<Chart> chart) {
    }

    private final OpenWinding winding;
    private Form form;
    private Label said;
    private BarTable table;
    private ChartArea chart;
    private JobAsked asked;
    private Coalescing<JobAsked, Seen> computing;

    public FoundLeftSection(OpenWinding winding) {
        this.winding = winding;
    }

    @Override
    public void build(Form here) {
        form = here;
        Composite area = here.area("left.title");
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(area);
        Look look = Look.of(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "left.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        String at = reference();
        table = new BarTable(area, "left.rows", words("left.title"), List.of(new BarTable.Column(words("left.place"), 0),
                new BarTable.Column(words("left.found", at), 0), new BarTable.Column(words("left.left", at), 0),
                new BarTable.Column(words("left.state"), 0), new BarTable.Column(words("left.change"), 0),
                new BarTable.Column(words("left.word"), 32), new BarTable.Column(words("left.limit"), 0),
                new BarTable.Column(words("left.why"), 0)), BAR);
        chart = new ChartArea(area, "chart.left");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(chart);
        chart.canvas().output().headed(winding::heading);
        show(table.table(), false);
        show(chart, false);
        computing = Aside.of(area, this::seen, this::show);
    }

    private String words(String key, Object... args) {
        return winding.words().text(key, args);
    }

    private String reference() {
        double celsius = winding.site().shop().workshop().referenceCelsius();
        return QuantityText.format(Quantity.of(Dimension.TEMPERATURE, celsius), DIGITS, Marks.ofLocale());
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

    private Seen seen(JobAsked of) {
        Job job = of.job();
        Optional<WindingData> data = job.part(winding.key()).map(WindingData.class::cast);
        if (data.isEmpty()) {
            return new Seen(words("left.never", reference()), List.of(), Optional.empty());
        }
        WindingRole role = data.get().role();
        if (!data.get().asWound() && job.part(PartKey.windingAsWound(role)).isPresent()) {
            return new Seen(words("left.elsewhere"), List.of(), Optional.empty());
        }
        try {
            List<FoundAndLeft> rows = FoundAndLeft.of(job, of.shop(), role);
            if (rows.stream().noneMatch(r -> r.left() != null)) {
                return new Seen(words("left.never", reference()), List.of(), Optional.empty());
            }
            return new Seen(words("left.note", reference()), rows, ResistanceChart.of(new Windings().label(winding.key()), rows,
                    winding.site().shop().workshop().referenceCelsius(), Locale.getDefault()));
        } catch (OutOfRange e) {
            return new Seen(e.getMessage(), List.of(), Optional.empty());
        }
    }

    private void show(Seen seen) {
        if (said.isDisposed()) {
            return;
        }
        boolean other = !said.getText().equals(seen.words());
        said.setText(seen.words());
        other |= table.show(seen.rows().stream().map(this::row).toList());
        other |= show(table.table(), !seen.rows().isEmpty());
        other |= show(chart, seen.chart().isPresent());
        seen.chart().ifPresent(chart::show);
        if (other) {
            form.relayout();
        }
    }

    private static boolean show(Control control, boolean now) {
        GridData data = (GridData) control.getLayoutData();
        boolean other = data.exclude == now;
        data.exclude = !now;
        control.setVisible(now);
        return other;
    }

    private BarTable.Row row(FoundAndLeft r) {
        Verdict v = r.verdict();
        return new BarTable.Row(List.of(r.label(), at(r.found()), at(r.left()), r.state() == null || r.left() == null ? ""
                : words("left." + r.state().name()), v == null ? "" : VerdictWords.value(v),
                v == null ? "" : VerdictWords.of(v.outcome()), v == null ? "" : v.limitText(), v == null ? "" : v.reason()),
                v);
    }

    private String at(FoundAndLeft.At at) {
        if (at == null) {
            return words("left.notRead");
        }
        String ohms = ohms(at.ohms(), DIGITS);
        return at.expandedU() == null ? ohms : ohms + " \u00b1 " + ohms(at.expandedU(), DIGITS_OF_U);
    }

    private static String ohms(double value, int digits) {
        return QuantityText.format(Quantity.of(Dimension.RESISTANCE, value), digits, Marks.ofLocale());
    }
}
