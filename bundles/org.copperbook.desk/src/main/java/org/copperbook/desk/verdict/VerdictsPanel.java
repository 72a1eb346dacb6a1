package org.copperbook.desk.verdict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * What the readings say: the verdicts with the heaviest first, and for the chosen one its limit, source, reason and
 * next step. Enter goes to the reading.
 */
public final class VerdictsPanel {

    private static final int BESIDE_CHARS = 64;
    private static final int AIR = 6;
    /** Most titles need no more; rows that are always as high are not laid out anew when a longer title comes. */
    private static final int LEAST_LINES = 2;

    private final Composite box;
    private final Label summary;
    private final Button whole;
    private final Table table;
    private final Text detail;
    private List<Verdict> all = List.of();
    private List<Verdict> shown = List.of();
    private PartKey part;
    /** Lines that a title takes at the width and in the font measured last: most titles stay when a reading changes. */
    private final Map<String, Integer> linesOf = new HashMap<>();
    private int measuredWidth;
    private Font measuredFont;
    private int titleLines = LEAST_LINES;

    /** @param go told which verdict's reading to go to */
    public VerdictsPanel(Composite parent, Consumer<Verdict> go) {
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 6).spacing(6, 4).applyTo(box);
        Label title = look.as(Look.Role.STRONG, new Label(box, SWT.WRAP));
        title.setText(DeskWords.text("verdicts.title"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(title);
        whole = look.as(Look.Role.TEXT, new Button(box, SWT.CHECK));
        whole.setText(DeskWords.text("verdicts.whole"));
        whole.setData(Desk.ID, "verdicts/whole");
        whole.addListener(SWT.Selection, e -> write());
        summary = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(summary);
        SashForm split = new SashForm(box, SWT.VERTICAL);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(split);
        table = look.as(Look.Role.TEXT, new Table(split, SWT.VIRTUAL | SWT.SINGLE | SWT.FULL_SELECTION
                | SWT.V_SCROLL | SWT.BORDER));
        table.setData(Desk.ID, "verdicts");
        new TableColumn(table, SWT.LEFT);
        Rows.dress(table, column -> true);
        detail = look.as(Look.Role.TEXT, new Text(split, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL));
        detail.setData(Desk.ID, "verdicts/detail");
        SpokenName.give(detail, DeskWords.text("verdicts.detail"));
        split.setWeights(3, 2);
        split.addListener(SWT.Resize, e -> split.setOrientation(
                split.getClientArea().width >= look.chars(BESIDE_CHARS) ? SWT.HORIZONTAL : SWT.VERTICAL));
        table.addListener(SWT.MeasureItem, e -> e.height = Math.max((titleLines + 1) * look.lineHeight() + AIR,
                look.rowHeight()));
        table.addListener(SWT.EraseItem, e -> e.detail &= ~SWT.FOREGROUND);
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.PaintItem, this::paint);
        table.addListener(SWT.Resize, e -> widths());
        table.addListener(SWT.Selection, e -> explain());
        table.addListener(SWT.DefaultSelection, e -> {
            int i = table.getSelectionIndex();
            if (i >= 0 && i < shown.size()) {
                go.accept(shown.get(i));
            }
        });
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = DeskWords.text("verdicts.title");
            }
        });
        look.onResize(box, () -> {
            look.dress(box);
            widths();
            Reach.ensure(box);
            table.clearAll();
            box.layout(true, true);
        });
        Reach.ensure(box);
    }

    public Control control() {
        return box;
    }

    /** The verdicts shown, heaviest first. */
    public List<Verdict> shown() {
        return shown;
    }

    /** Shows the verdicts of a job. */
    public void show(List<Verdict> ofJob) {
        all = ofJob;
        write();
    }

    /** Shows those of one part, unless the whole job is asked for. */
    public void part(PartKey key) {
        part = key;
        write();
    }

    private void write() {
        if (box.isDisposed()) {
            return;
        }
        List<Verdict> ofPart = all.stream().filter(v -> v.part().equals(part)).toList();
        List<Verdict> next = VerdictWords.byWeight(whole.getSelection() || ofPart.isEmpty() ? all : ofPart);
        String chosen = chosenId();
        String said = summary();
        boolean other = !said.equals(summary.getText());
        if (other) {
            summary.setText(said);
        }
        if (!next.equals(shown) || table.getItemCount() != next.size()) {
            shown = next;
            table.setItemCount(shown.size());
            table.clearAll();
            measure();
            int at = 0;
            for (int i = 0; i < shown.size(); i++) {
                if (shown.get(i).id().equals(chosen)) {
                    at = i;
                }
            }
            if (!shown.isEmpty()) {
                table.setSelection(at);
            }
        }
        explain();
        if (other) {
            box.layout(true, true);
        }
    }

    private String chosenId() {
        int i = table.getSelectionIndex();
        return i >= 0 && i < shown.size() ? shown.get(i).id() : "";
    }

    /** How many of each weight the whole job has, so that nothing heavy hides behind another page. */
    private String summary() {
        String counts = Stream.of(Outcome.FAILS, Outcome.DOUBTFUL, Outcome.NO_LIMIT_SET, Outcome.NOT_MEASURED,
                Outcome.MEETS).map(o -> {
                    long n = all.stream().filter(v -> v.current() && v.outcome() == o).count();
                    return n == 0 ? "" : DeskWords.text("verdicts.count", n, VerdictWords.of(o));
                }).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
        return counts.isEmpty() ? DeskWords.text("verdicts.none") : DeskWords.text("verdicts.summary", counts);
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        if (row >= 0 && row < shown.size()) {
            Verdict v = shown.get(row);
            item.setText(label(v));
        }
    }

    private static String label(Verdict v) {
        return v.current() ? v.title() : DeskWords.text("verdicts.earlier", v.title());
    }

    /** The title on one line or two, bar and word under it: both have the whole width of the panel. */
    private void paint(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        if (row < 0 || row >= shown.size()) {
            return;
        }
        Look look = Look.of(table);
        Palette palette = look.palette();
        Rectangle cell = new Rectangle(0, e.y, table.getClientArea().width, Math.max(e.height,
                (titleLines + 1) * look.lineHeight()));
        // The colours of the outcomes are chosen against the table's own background, not the selection's.
        e.gc.setBackground(palette.paper());
        e.gc.fillRectangle(cell);
        e.gc.setForeground(palette.text());
        e.gc.setFont(look.font(Look.Role.TEXT));
        List<String> title = broken(e.gc, label(shown.get(row)), cell.width - 2 * AIR);
        int top = cell.y + (cell.height - (title.size() + 1) * look.lineHeight()) / 2;
        for (String line : title) {
            e.gc.drawText(line, cell.x + AIR, top, true);
            top += look.lineHeight();
        }
        IntervalBar.paint(e.gc, new Rectangle(cell.x + AIR, top, cell.width - 2 * AIR, look.lineHeight()),
                shown.get(row), look, palette);
        if (row == table.getSelectionIndex()) {
            e.gc.setForeground(palette.chosen());
            e.gc.setLineWidth(2);
            e.gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
        }
    }

    /** A title on as many lines as it needs; it breaks between words, since its end tells as much as its begin. */
    private static List<String> broken(GC gc, String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && gc.textExtent(longer).x > width) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    /** All rows of a table are of one height, so all have room for the longest title. */
    private void measure() {
        GC gc = new GC(table);
        gc.setFont(Look.of(table).font(Look.Role.TEXT));
        int width = table.getClientArea().width - 2 * AIR;
        if (width != measuredWidth || !gc.getFont().equals(measuredFont)) {
            linesOf.clear();
            measuredWidth = width;
            measuredFont = gc.getFont();
        }
        int lines = width <= 0 ? LEAST_LINES : shown.stream().mapToInt(v -> linesOf.computeIfAbsent(label(v),
                title -> broken(gc, title, width).size())).reduce(LEAST_LINES, Math::max);
        gc.dispose();
        if (lines != titleLines) {
            titleLines = lines;
            table.clearAll();
        }
    }

    private void explain() {
        int i = table.getSelectionIndex();
        String text = i >= 0 && i < shown.size() ? words(shown.get(i)) : "";
        if (!text.equals(detail.getText())) {
            detail.setText(text);
        }
    }

    /** Everything a verdict says, line by line. */
    public static String words(Verdict v) {
        StringBuilder b = new StringBuilder();
        String value = VerdictWords.value(v);
        b.append(v.title()).append(": ").append(VerdictWords.of(v.outcome()));
        line(b, "verdicts.value", value);
        line(b, "verdicts.limit", v.limitText());
        line(b, "verdicts.source", v.source());
        line(b, "verdicts.reason", v.reason());
        line(b, "verdicts.next", v.settle());
        return b.toString();
    }

    private static void line(StringBuilder b, String key, String text) {
        if (text != null && !text.isBlank()) {
            b.append('\n').append(DeskWords.text(key, text));
        }
    }

    private void widths() {
        table.getColumn(0).setWidth(Math.max(AIR, table.getClientArea().width - 2));
        measure();
    }
}
