package org.copperbook.desk.reading;

import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.reading.Reading;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A row of fields that state once what holds for the readings typed from now on. */
public final class ConditionsArea {

    private static final int TEMPERATURE_CHARS = 12;

    private final Words words = Words.of(ConditionsArea.class);
    private final NumberEntry celsius = new NumberEntry(FieldUnit.CELSIUS);
    private final List<String> instruments = new ArrayList<>();
    private final Text temperature;
    private final Combo instrument;
    private final Combo method;
    private final Combo isolated;
    private final Label problem;
    private Conditions now;
    private Runnable then;

    /**
     * Builds the row.
     *
     * @param parent      an empty area
     * @param labelled    instruments by id
     * @param start       conditions to begin with
     * @param withLeads   whether "isolated / in circuit" is asked for (diodes) in place of two-wire / four-wire
     */
    public ConditionsArea(Composite parent, Map<String, String> labelled, Conditions start, boolean withLeads) {
        now = start;
        Look look = Look.of(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        Composite row = new Composite(parent, SWT.NONE);
        RowLayout wrapping = new RowLayout(SWT.HORIZONTAL);
        wrapping.marginLeft = 0;
        wrapping.marginTop = 0;
        wrapping.spacing = 16;
        row.setLayout(wrapping);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(row);
        temperature = look.as(Look.Role.TEXT, new Text(pair(row, look, "conditions.temperature"),
                SWT.BORDER | SWT.RIGHT));
        GridDataFactory.fillDefaults().hint(look.chars(TEMPERATURE_CHARS), SWT.DEFAULT).applyTo(temperature);
        temperature.setText(start.windingCelsius() == null ? ""
                : celsius.show(DoubleNode.valueOf(start.windingCelsius())));
        named(temperature, "conditions.temperature", "conditions.windingCelsius");
        instrument = combo(pair(row, look, "conditions.instrument"), look, "conditions.instrument");
        instrument.add("");
        instruments.add(null);
        labelled.forEach((id, text) -> {
            instrument.add(text);
            instruments.add(id);
        });
        instrument.select(Math.max(0, instruments.indexOf(start.instrument())));
        Composite last = pair(row, look, withLeads ? "conditions.isolated" : "conditions.method");
        method = withLeads ? null : combo(last, look, "conditions.method");
        isolated = withLeads ? combo(last, look, "conditions.isolated") : null;
        if (withLeads) {
            isolated.setItems("", words.text("conditions.lifted"), words.text("conditions.inCircuit"));
            isolated.select(start.isolated() == null ? 0 : start.isolated() ? 1 : 2);
            isolated.addListener(SWT.Selection, e -> read());
        } else {
            method.setItems("", words.text("conditions.twoWire"), words.text("conditions.fourWire"));
            method.select(start.method() == null ? 0 : start.method().ordinal() + 1);
            method.addListener(SWT.Selection, e -> read());
        }
        problem = look.as(Look.Role.TEXT, new Label(parent, SWT.WRAP));
        problem.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(problem);
        temperature.addListener(SWT.FocusOut, e -> read());
        temperature.addListener(SWT.DefaultSelection, e -> {
            read();
            temperature.traverse(SWT.TRAVERSE_TAB_NEXT);
        });
        instrument.addListener(SWT.Selection, e -> read());
    }

    /** Puts the cursor on the first of the conditions. */
    public boolean focus() {
        return temperature.setFocus();
    }

    /** What holds now. */
    public Conditions conditions() {
        read();
        return now;
    }

    /** Calls this in place of going to the next control when Enter leaves the last condition. */
    public void then(Runnable next) {
        then = next;
    }

    private void goOn(Control from) {
        if (then != null && (from == method || from == isolated)) {
            then.run();
        } else {
            from.traverse(SWT.TRAVERSE_TAB_NEXT);
        }
    }

    private void read() {
        Double degrees = now.windingCelsius();
        String said = "";
        Typed typed = celsius.read(temperature.getText());
        if (typed instanceof Typed.Understood u) {
            degrees = u.node().doubleValue();
            if (!temperature.isFocusControl()) {
                temperature.setText(u.echo());
            }
        } else if (typed instanceof Typed.Blank) {
            degrees = null;
        } else if (typed instanceof Typed.Wrong w) {
            said = w.why();
            degrees = null;
        } else if (typed instanceof Typed.Ambiguous a) {
            said = a.question();
            degrees = null;
        }
        say(said);
        now = new Conditions(degrees, instruments.get(Math.max(0, instrument.getSelectionIndex())), method(), leads());
    }

    private Reading.Method method() {
        if (method == null || method.getSelectionIndex() <= 0) {
            return null;
        }
        return Reading.Method.values()[method.getSelectionIndex() - 1];
    }

    private Boolean leads() {
        return isolated == null || isolated.getSelectionIndex() <= 0 ? null : isolated.getSelectionIndex() == 1;
    }

    private void say(String text) {
        if (!text.equals(problem.getText())) {
            problem.setText(text);
            ((org.eclipse.swt.layout.GridData) problem.getLayoutData()).exclude = text.isEmpty();
            problem.setVisible(!text.isEmpty());
            problem.requestLayout();
        }
    }

    /** A label with room for its control behind it; pairs that do not fit beside each other stand below. */
    private Composite pair(Composite row, Look look, String key) {
        Composite pair = new Composite(row, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(pair);
        Label label = look.as(Look.Role.TEXT, new Label(pair, SWT.NONE));
        label.setText(words.text(key));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        return pair;
    }

    private Combo combo(Composite parent, Look look, String key) {
        Combo c = look.as(Look.Role.TEXT, new Combo(parent, SWT.READ_ONLY));
        c.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_RETURN) {
                e.doit = false;
                read();
                goOn(c);
            }
        });
        named(c, key, key);
        return c;
    }

    private void named(Control control, String key, String id) {
        control.setData(Desk.ID, id);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words.text(key);
            }
        });
    }
}
