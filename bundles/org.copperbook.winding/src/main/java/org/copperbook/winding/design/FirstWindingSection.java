package org.copperbook.winding.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.winding.design.BareCore;
import org.copperbook.calc.winding.design.BareCoreWish;
import org.copperbook.calc.winding.design.DesignQuantity;
import org.copperbook.calc.winding.design.FirstWinding;
import org.copperbook.calc.winding.design.FirstWindingDoubt;
import org.copperbook.calc.winding.design.UsualRange;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.copperbook.winding.memory.Proposal;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Computes a first winding where nothing is left to copy; says what is missing, what stays open and how sure it is. */
public final class FirstWindingSection implements WindingSection {

    private static final int SHOWN = 12;
    private static final int ROWS = 6;
    private static final FieldUnit AREA = new FieldUnit(Dimension.AREA, "m\u00b2", "mm\u00b2", "mm\u00b2");
    private static final String[] TITLES = {"design.column.span", "design.column.turns", "design.column.circuits",
        "design.column.wire", "design.column.factor", "design.column.gap", "design.column.tooth", "design.column.yoke",
        "design.column.density", "design.column.fill", "design.column.remarks"};

    private final OpenWinding winding;
    private final Words words;
    private Form form;
    private Text area;
    private Text gap;
    private Text fill;
    private Text thickest;
    private Label said;
    private Table table;
    private FittedColumns widths;
    private Button take;
    private List<FirstWinding> found = List.of();
    private BareCoreWish wish;

    public FirstWindingSection(OpenWinding winding) {
        this.winding = winding;
        words = winding.words();
    }

    @Override
    public void build(Form here) {
        if (role() != WindingRole.MAIN_STATOR && role() != WindingRole.MOTOR_STATOR) {
            return;
        }
        form = here;
        Composite box = here.area("design.title");
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(0, 0, 0, 10).applyTo(box);
        Look look = Look.of(box);
        label(box).setText(words.text("design.hint"));
        Composite choices = new Composite(box, SWT.NONE);
        RowLayout flow = new RowLayout(SWT.HORIZONTAL);
        flow.marginLeft = 0;
        flow.spacing = 14;
        choices.setLayout(flow);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(choices);
        area = field(choices, "design.slotArea");
        gap = field(choices, "design.gap");
        fill = field(choices, "design.fill");
        thickest = field(choices, "design.thickest");
        Button compute = button(box, "design.compute");
        compute.addListener(SWT.Selection, e -> compute());
        said = label(box);
        said.setData(Desk.ID, "open.design.said");
        table = table(box);
        take = button(box, "design.takeOver");
        take.addListener(SWT.Selection, e -> takeOver());
        listed(false);
    }

    private WindingRole role() {
        String name = winding.key().name();
        int dot = name.indexOf('.');
        return WindingRole.of(dot < 0 ? name : name.substring(0, dot));
    }

    private Label label(Composite box) {
        Look look = Look.of(box);
        Label l = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(l);
        return l;
    }

    private Button button(Composite box, String key) {
        Button b = Look.of(box).as(Look.Role.STRONG, new Button(box, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        GridDataFactory.swtDefaults().applyTo(b);
        return b;
    }

    private Text field(Composite choices, String key) {
        Look look = Look.of(choices);
        Composite pair = new Composite(choices, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(pair);
        Label l = look.as(Look.Role.TEXT, new Label(pair, SWT.NONE));
        l.setText(words.text(key));
        Text t = look.as(Look.Role.TEXT, new Text(pair, SWT.BORDER | SWT.SINGLE));
        t.setData(Desk.ID, key);
        GridDataFactory.fillDefaults().hint(look.chars(9), SWT.DEFAULT).applyTo(t);
        t.addListener(SWT.DefaultSelection, e -> compute());
        t.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text(key);
            }
        });
        return t;
    }

    private Table table(Composite box) {
        Look look = Look.of(box);
        Table t = look.as(Look.Role.TEXT, new Table(box, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE));
        t.setHeaderVisible(true);
        t.setData(Desk.ID, "design.list");
        for (int i = 0; i < TITLES.length; i++) {
            TableColumn c = new TableColumn(t, SWT.LEFT);
            c.setText(words.text(TITLES[i]));
        }
        Rows.dress(t, column -> false);
        t.addListener(SWT.Selection, e -> enableTake());
        t.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text("design.title");
            }
        });
        widths = new FittedColumns(t, new int[TITLES.length]);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, look.rowHeight() * ROWS).applyTo(t);
        return t;
    }

    private void listed(boolean any) {
        for (Control c : List.of(table, take)) {
            ((GridData) c.getLayoutData()).exclude = !any;
            c.setVisible(any);
        }
        enableTake();
    }

    private void enableTake() {
        take.setEnabled(table.getSelectionIndex() >= 0 && winding.site().blocked().isEmpty());
    }

    @Override
    public void changed() {
        if (table != null) {
            enableTake();
        }
    }

    private void compute() {
        found = List.of();
        table.removeAll();
        String text;
        try {
            text = computed(new BareCoreCase.Choice(number(area, "design.slotArea", AREA),
                    number(gap, "design.gap", FieldUnit.TESLA), number(fill, "design.fill", FieldUnit.NUMBER),
                    number(thickest, "design.thickest", FieldUnit.MILLIMETRE)));
        } catch (NotUnderstood | OutOfRange e) {
            text = e.getMessage();
        }
        widths.fit();
        listed(!found.isEmpty());
        said.setText(text);
        form.relayout();
    }

    private String computed(BareCoreCase.Choice choice) {
        MachineKind kind = winding.document().job().booking().map(Booking::machineKind)
                .orElse(role() == WindingRole.MOTOR_STATOR ? MachineKind.INDUCTION_MOTOR_CAGE
                        : MachineKind.BRUSHLESS_ALTERNATOR);
        BareCoreCase core = BareCoreCase.of(kind, winding.document().job().nameplate(), winding.data(), choice);
        if (core.wish().isEmpty()) {
            return words.text("design.missing", String.join(", ", core.missing().stream().map(this::lower).toList()));
        }
        wish = core.wish().get();
        BareCore design = BareCore.design(wish);
        found = design.proposals().subList(0, Math.min(SHOWN, design.proposals().size()));
        FirstWindingDoubt doubt = FirstWindingDoubt.of(wish.core());
        found.forEach(f -> row(f, doubt));
        List<String> lines = new ArrayList<>();
        if (found.isEmpty()) {
            lines.add(words.text("design.noWire"));
        }
        lines.add(words.text("design.open", two(design.lowestSeriesTurns()), two(design.highestSeriesTurns())));
        lines.add(words.text("design.openSpans", spans(design.spans()), list(design.circuits())));
        UsualRange usual = UsualRange.of(wish.machine(), DesignQuantity.GAP);
        lines.add(words.text("design.target", two(wish.targetGap()), two(usual.low()), two(usual.high())));
        lines.add(words.text("design.targetSource", usual.source(), two(wish.squareCellFill())));
        core.assumed().forEach(a -> lines.add(words.text(a)));
        lines.add(words.text("design.caution"));
        return String.join("\n", lines);
    }

    private String lower(String key) {
        String name = words.text(key);
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    private static String spans(List<Integer> spans) {
        return String.join(", ", spans.stream().map(s -> "1-" + (1 + s)).toList());
    }

    private static String list(List<Integer> numbers) {
        return String.join(", ", numbers.stream().map(String::valueOf).toList());
    }

    private static String two(double value) {
        return String.format(Locale.getDefault(), "%.2f", value);
    }

    private static String doubtful(double value, double relative) {
        return String.format(Locale.getDefault(), "%.2f \u00b1 %.2f", value, 2 * relative * value);
    }

    private void row(FirstWinding f, FirstWindingDoubt doubt) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(new String[] {"1-" + (1 + f.span()), Integer.toString(f.turnsPerCoil()),
            Integer.toString(f.circuits()), f.strands() + " \u00d7 " + f.wire().label(),
            String.format(Locale.getDefault(), "%.4f", f.windingFactor()),
            doubtful(f.densities().gap(), doubt.gap()), doubtful(f.densities().tooth(), doubt.tooth()),
            doubtful(f.densities().yoke(), doubt.yoke()), doubtful(f.currentDensity() * 1e-6, doubt.currentDensity()),
            two(f.squareCellFill()), String.join("; ", f.remarks())});
    }

    private static final class NotUnderstood extends Exception {
        private static final long serialVersionUID = 1L;

        NotUnderstood(String message) {
            super(message);
        }
    }

    private Double number(Text field, String key, FieldUnit unit) throws NotUnderstood {
        Typed typed = new NumberEntry(unit).read(field.getText());
        if (typed instanceof Typed.Blank) {
            return null;
        }
        if (typed instanceof Typed.Understood u) {
            return u.node().doubleValue();
        }
        throw new NotUnderstood(words.text(key) + ": " + (typed instanceof Typed.Wrong w ? w.why()
                : ((Typed.Ambiguous) typed).question()));
    }

    private void takeOver() {
        int at = table.getSelectionIndex();
        Optional<String> who = winding.site().who();
        if (who.isEmpty()) {
            say(words.text("proposal.who"));
            return;
        }
        ObjectNode proposed = proposed(found.get(at));
        Proposal.Outcome outcome = Proposal.take(winding.document().tree(winding.key()), proposed,
                words.text("design.from"), false, who.get(), Instant.now());
        if (outcome.filled().isEmpty()) {
            say(words.text("design.nothingNew"));
            return;
        }
        winding.document().change(winding.key(), "/proposedFrom", tree -> outcome.tree()).ifPresentOrElse(this::say,
                () -> say(words.text(outcome.kept().isEmpty() ? "design.taken" : "design.takenKept")));
    }

    /** What a first winding says of the record's fields. */
    private ObjectNode proposed(FirstWinding f) {
        ObjectNode p = winding.row().put("slots", wish.core().slots()).put("poles", wish.poles()).put("phases", 3)
                .put("layers", 2).put("coilType", WindingData.CoilType.LAP.name()).put("span", "1-" + (1 + f.span()))
                .put("turnsPerCoil", f.turnsPerCoil()).put("circuits", f.circuits())
                .put("connection", (wish.junction() == PhaseJunction.STAR ? WindingData.Connection.STAR
                        : WindingData.Connection.DELTA).name());
        p.putArray("wire").addObject().put("size", f.wire().label()).put("strands", f.strands()).put("grade", 2);
        return p;
    }

    private void say(String text) {
        said.setText(text);
        form.relayout();
    }
}
