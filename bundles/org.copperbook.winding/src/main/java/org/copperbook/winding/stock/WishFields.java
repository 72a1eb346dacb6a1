package org.copperbook.winding.stock;

import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.stock.WireWish;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What a proposal has to keep to, to be changed beside the proposals: area band, strands, sizes, room, stock. */
final class WishFields {

    private static final int CHARS = 7;

    private final Words words;
    private final Runnable changed;
    private final Composite row;
    private final Text lowest;
    private final Text highest;
    private final Text strands;
    private final Text sizes;
    private final Button fill;
    private final Button stock;
    private final Label problem;
    private boolean offered;

    WishFields(Composite parent, Words words, Runnable changed) {
        this.words = words;
        this.changed = changed;
        row = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().wrap(true).spacing(10).applyTo(row);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(Look.of(parent).chars(60), SWT.DEFAULT)
                .applyTo(row);
        lowest = field("stock.lowest");
        highest = field("stock.highest");
        strands = field("stock.mostStrands");
        sizes = field("stock.mostSizes");
        fill = check("stock.keepFill");
        stock = check("stock.onlyStock");
        problem = Look.of(row).as(Look.Role.TEXT, new Label(parent, SWT.WRAP));
        problem.setForeground(Look.of(row).palette().problem());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).exclude(true).applyTo(problem);
        problem.setVisible(false);
    }

    private Text field(String key) {
        Look look = Look.of(row);
        // A line and its words stay together when the row wraps, and the line grows to what a glove can hit.
        Composite pair = new Composite(row, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(pair);
        Label label = look.as(Look.Role.TEXT, new Label(pair, SWT.NONE));
        label.setText(words.text(key));
        Text text = look.as(Look.Role.TEXT, new Text(pair, SWT.BORDER | SWT.SINGLE));
        GridDataFactory.fillDefaults().hint(look.chars(CHARS), SWT.DEFAULT).applyTo(text);
        named(text, key);
        text.addListener(SWT.Modify, e -> {
            if (offered) {
                changed.run();
            }
        });
        return text;
    }

    private Button check(String key) {
        Button b = Look.of(row).as(Look.Role.TEXT, new Button(row, SWT.CHECK));
        b.setText(words.text(key));
        b.setSelection(true);
        named(b, key);
        b.addListener(SWT.Selection, e -> changed.run());
        return b;
    }

    private void named(Control control, String key) {
        control.setData(Desk.ID, key);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text(key);
            }
        });
    }

    /** Fills in the usual wish, once, when the original is first known. */
    void offer(int original) {
        if (!offered) {
            WireWish usual = WireWish.usual(original);
            lowest.setText(number(usual.lowest() * 100));
            highest.setText(number(usual.highest() * 100));
            strands.setText(String.valueOf(usual.mostStrands()));
            sizes.setText(String.valueOf(usual.mostSizes()));
            offered = true;
        }
    }

    private static String number(double percent) {
        return String.valueOf(Math.round(percent));
    }

    /** The wish as it stands; empty while a field cannot be understood, which is said below the fields. */
    Optional<WireWish> read(int original) {
        try {
            double low = value(lowest, "stock.lowest", -50, 50);
            double high = value(highest, "stock.highest", low, 100);
            int most = (int) value(strands, "stock.mostStrands", 1, 60);
            int different = (int) value(sizes, "stock.mostSizes", 1, 3);
            say("");
            return Optional.of(new WireWish(low / 100, high / 100, most, different, fill.getSelection(),
                    stock.getSelection()));
        } catch (OutOfRange e) {
            say(e.getMessage());
            return Optional.empty();
        }
    }

    private double value(Text field, String key, double from, double to) {
        String text = field.getText().strip().replace(',', '.').replace("%", "").replace('\u2212', '-').strip();
        try {
            double v = Double.parseDouble(text);
            if (v >= from && v <= to) {
                return v;
            }
        } catch (NumberFormatException e) {
            // said below like a number out of range
        }
        throw new OutOfRange(words.text(key), "\"" + field.getText() + "\"", words.text("stock.range", number(from),
                number(to)), words.text("stock.kept"));
    }

    private void say(String text) {
        if (text.equals(problem.getText())) {
            return;
        }
        problem.setText(text);
        problem.setVisible(!text.isEmpty());
        ((org.eclipse.swt.layout.GridData) problem.getLayoutData()).exclude = text.isEmpty();
        problem.requestLayout();
    }
}
