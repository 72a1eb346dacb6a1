package org.copperbook.winding.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.Quantity;
import org.copperbook.calc.quantity.QuantityText;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.Marks;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.winding.stock.WireProposal;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The proposals one below the other, best first. */
final class ProposalRows {

    private static final int MOST_ROWS = 10;
    private static final int DIGITS = 3;
    private static final List<String> COLUMNS = List.of("wire", "strands", "area", "areaChange", "fill", "ohms", "need",
            "left", "warnings");

    private final Words words;
    private final Table table;
    private final FittedColumns widths;
    private List<WireProposal> rows = List.of();

    ProposalRows(Composite parent, Words words) {
        this.words = words;
        Look look = Look.of(parent);
        table = look.as(Look.Role.TEXT, new Table(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL
                | SWT.H_SCROLL));
        table.setData(Desk.ID, "stock.rows");
        table.setHeaderVisible(true);
        for (int i = 0; i < COLUMNS.size(); i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(words.text("stock." + COLUMNS.get(i)));
        }
        Rows.dress(table, column -> false);
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text("stock.title");
            }
        });
        widths = new FittedColumns(table, new int[COLUMNS.size()]);
        height();
    }

    Table table() {
        return table;
    }

    WireProposal chosen() {
        int i = table.getSelectionIndex();
        return i >= 0 && i < rows.size() ? rows.get(i) : null;
    }

    /** All that is said of the chosen one, in sentences; empty when none is chosen. */
    String inWords() {
        WireProposal p = chosen();
        if (p == null) {
            return "";
        }
        String[] c = cells(p);
        String mind = p.warnings().isEmpty() ? words.text("stock.noWarning") : words.text("stock.mind", c[8]);
        return words.text("stock.inWords", c[0], c[2], c[3], c[4], c[5], c[6], c[7]) + " " + mind;
    }

    /** Shows other proposals; true when their number changed. */
    boolean show(List<WireProposal> next) {
        if (next.equals(rows)) {
            return false;
        }
        boolean other = rows.size() != next.size();
        rows = List.copyOf(next);
        table.setItemCount(0);
        for (WireProposal p : rows) {
            new TableItem(table, SWT.NONE).setText(cells(p));
        }
        widths.fit();
        if (other) {
            height();
        }
        return other;
    }

    private void height() {
        int lines = Math.max(1, Math.min(MOST_ROWS, rows.size()));
        int bar = table.getHorizontalBar() == null ? 0 : table.getHorizontalBar().getSize().y;
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Look.of(table).chars(40),
                table.getHeaderHeight() + bar + lines * Math.max(table.getItemHeight(), Look.of(table).rowHeight()))
                .applyTo(table);
    }

    private String[] cells(WireProposal p) {
        List<String> cells = new ArrayList<>();
        cells.add(p.isOriginal() ? words.text("stock.asOriginal", p.label()) : p.label());
        cells.add(String.valueOf(p.strands()));
        cells.add(plain(p.area() * 1e6, 4) + " mm\u00b2");
        cells.add(change(p.areaChange()));
        cells.add(p.fill() != null ? words.text("stock.fillAndRoom", percent(p.fill()), change(p.roomChange()))
                : p.roomChange() != null ? words.text("stock.room", change(p.roomChange())) : words.text("stock.unknown"));
        cells.add(change(p.ohmsChange()));
        cells.add(p.needs().stream().map(n -> n.needKg() == null ? words.text("stock.unknown") : kilograms(n.needKg()))
                .collect(Collectors.joining(" + ")));
        cells.add(p.needs().stream().map(n -> n.leftKg() == null ? words.text("stock.held", kilograms(n.heldKg()))
                : words.text("stock.leftOf", kilograms(n.leftKg()), kilograms(n.heldKg())))
                .collect(Collectors.joining("; ")));
        cells.add(p.warnings().stream().map(words::of).collect(Collectors.joining("; ")));
        return cells.toArray(String[]::new);
    }

    private static String change(double share) {
        return (share > 0.00005 ? "+" : "") + percent(share);
    }

    private static String percent(double share) {
        double rounded = Math.round(share * 1e4) / 1e4 + 0.0;
        return QuantityText.formatIn(Quantity.of(Dimension.RATIO, rounded), "%", DIGITS, Marks.ofLocale());
    }

    private static String kilograms(double kg) {
        return plain(kg, DIGITS) + " kg";
    }

    private static String plain(double value, int digits) {
        DecimalMark mark = Marks.ofLocale();
        return QuantityText.format(Quantity.of(Dimension.RATIO, Double.parseDouble(String.format(Locale.ROOT, "%."
                + digits + "g", value))), digits, mark);
    }
}
