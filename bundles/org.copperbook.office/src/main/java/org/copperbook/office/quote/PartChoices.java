package org.copperbook.office.quote;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.quote.PartsOnShelf.Fit;
import org.copperbook.jobs.stock.StockItem;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * Asks on the page which of several fitting items in stock each line is to have. Nothing is put in until the button is
 * pressed; Escape leaves it.
 */
final class PartChoices {

    private final Words words;
    private final Composite box;
    private final Runnable relayout;
    private final String currency;
    private Control askedFrom;

    /**
     * @param area     an area of the page whose layout is a grid of one column
     * @param currency of the stock's prices
     */
    PartChoices(Composite area, Words words, String currency, Runnable relayout) {
        this.words = words;
        this.currency = currency;
        this.relayout = relayout;
        box = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(box);
        GridDataFactory.fillDefaults().exclude(true).applyTo(box);
        box.setVisible(false);
    }

    /**
     * Asks, with the likeliest chosen.
     *
     * @param open   what fits, by the text of the line
     * @param chosen gets the item chosen for each line
     * @param left   called when nothing is to be put in
     */
    void ask(Map<String, Fit> open, Consumer<Map<String, StockItem>> chosen, Runnable left) {
        Control focused = box.getDisplay().getFocusControl();
        askedFrom = isInside(focused) ? askedFrom : focused;
        clear();
        Map<String, Combo> asked = new LinkedHashMap<>();
        open.forEach((line, fit) -> asked.put(line, choice(line, fit, asked.size())));
        Composite buttons = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(buttons);
        PushButton.in(buttons, words, "proposal.take", () -> {
            Map<String, StockItem> taken = new LinkedHashMap<>();
            asked.forEach((line, combo) -> taken.put(line, all(open.get(line)).get(combo.getSelectionIndex())));
            close();
            goBack();
            chosen.accept(taken);
        });
        PushButton.in(buttons, words, "proposal.leave", () -> leave(left));
        Look.of(box).dress(box);
        Reach.ensure(box);
        leaveByEscape(box, left);
        show(true);
        asked.values().iterator().next().setFocus();
        // What is said above the question is laid out after this and moves it down.
        box.getDisplay().asyncExec(this::bringIntoSight);
    }

    private void bringIntoSight() {
        if (!box.isDisposed() && box.getVisible()) {
            for (Composite around = box.getParent(); around != null; around = around.getParent()) {
                if (around instanceof ScrolledComposite page) {
                    page.showControl(box);
                }
            }
        }
    }

    private boolean isInside(Control control) {
        for (Control c = control; c != null; c = c.getParent()) {
            if (c == box) {
                return true;
            }
        }
        return false;
    }

    /** The keyboard goes on where the question came from, and not to whatever stands first on the page. */
    private void goBack() {
        if (askedFrom != null && !askedFrom.isDisposed()) {
            askedFrom.setFocus();
        }
    }

    /** Takes the question away. */
    void close() {
        clear();
        show(false);
    }

    private Combo choice(String line, Fit fit, int at) {
        Look look = Look.of(box);
        Label label = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        label.setText(words.text("proposal.choice", line, fit.pieces()));
        GridDataFactory.fillDefaults().hint(look.wrapping(), SWT.DEFAULT).grab(true, false).applyTo(label);
        Combo combo = look.as(Look.Role.TEXT, new Combo(box, SWT.DROP_DOWN | SWT.READ_ONLY));
        all(fit).forEach(i -> combo.add(text(i)));
        combo.select(0);
        combo.setToolTipText(combo.getText());
        combo.addListener(SWT.Selection, e -> combo.setToolTipText(combo.getText()));
        combo.setData(Desk.ID, "proposal.choice." + at);
        SpokenName.give(combo, label.getText());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(20), SWT.DEFAULT).applyTo(combo);
        return combo;
    }

    private String text(StockItem item) {
        String what = item.size() == null ? item.name() : item.size();
        return item.price() == null ? words.text("proposal.choiceUnpriced", item.code(), what, item.free())
                : words.text("proposal.choiceItem", item.code(), what, Money.of(item.price(), currency), item.free());
    }

    private static List<StockItem> all(Fit fit) {
        List<StockItem> all = new ArrayList<>(List.of(fit.taken()));
        all.addAll(fit.others());
        return all;
    }

    private void leaveByEscape(Control at, Runnable left) {
        at.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                leave(left);
            }
        });
        if (at instanceof Composite c) {
            for (Control child : c.getChildren()) {
                leaveByEscape(child, left);
            }
        }
    }

    private void leave(Runnable left) {
        close();
        goBack();
        left.run();
    }

    private void clear() {
        for (Control c : box.getChildren()) {
            c.dispose();
        }
    }

    private void show(boolean now) {
        ((GridData) box.getLayoutData()).exclude = !now;
        box.setVisible(now);
        box.getParent().layout(true, true);
        relayout.run();
    }
}
