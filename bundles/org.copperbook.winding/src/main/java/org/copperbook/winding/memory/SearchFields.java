package org.copperbook.winding.memory;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.winding.memory.MachineFigures;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.Entry;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.IntegerEntry;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.memory.Asked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * The figures that past windings are looked for by. Each field shows what the page and the nameplate say until somebody
 * types into it.
 */
final class SearchFields {

    private enum Field {
        RATING("memory.rating", new NumberEntry(new FieldUnit(Dimension.APPARENT_POWER, "VA", "kVA", null))),
        POWER("memory.power", new NumberEntry(new FieldUnit(Dimension.POWER, "W", "kW", null))),
        VOLTS("memory.volts", new NumberEntry(FieldUnit.VOLT)),
        POLES("memory.poles", new IntegerEntry(2, 200)),
        SLOTS("memory.slots", new IntegerEntry(3, 1000)),
        BORE("memory.bore", new NumberEntry(FieldUnit.METRE_AS_MM)),
        LENGTH("memory.length", new NumberEntry(FieldUnit.METRE_AS_MM)),
        SERIAL("memory.serial", null),
        WORDS("memory.words", null);

        private final String key;
        private final Entry entry;

        Field(String key, Entry entry) {
            this.key = key;
            this.entry = entry;
        }
    }

    private final Map<Field, Text> texts = new EnumMap<>(Field.class);
    private final Map<Field, String> offered = new EnumMap<>(Field.class);
    private final WindingRole role;

    /** @param search called on Enter in any field */
    SearchFields(Composite area, Words words, WindingRole role, Runnable search) {
        this.role = role;
        Look look = Look.of(area);
        RowLayout flow = new RowLayout(SWT.HORIZONTAL);
        flow.wrap = true;
        flow.marginLeft = 0;
        flow.marginTop = 0;
        flow.spacing = 14;
        area.setLayout(flow);
        for (Field f : Field.values()) {
            if (f == (motor() ? Field.RATING : Field.POWER)) {
                continue;
            }
            Composite pair = new Composite(area, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(pair);
            Label label = look.as(Look.Role.TEXT, new Label(pair, SWT.NONE));
            label.setText(words.text(f.key));
            Text text = look.as(Look.Role.TEXT, new Text(pair, SWT.BORDER | SWT.SINGLE));
            text.setData(Desk.ID, f.key);
            text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
                @Override
                public void getName(AccessibleEvent e) {
                    e.result = words.text(f.key);
                }
            });
            GridDataFactory.fillDefaults().hint(look.chars(f.entry == null ? 16 : 9), SWT.DEFAULT).applyTo(text);
            text.addListener(SWT.DefaultSelection, e -> search.run());
            texts.put(f, text);
            offered.put(f, "");
        }
    }

    boolean focus() {
        return texts.get(Field.WORDS).setFocus();
    }

    private boolean motor() {
        return role == WindingRole.MOTOR_STATOR || role == WindingRole.MOTOR_ROTOR;
    }

    /** Shows what the page says, in every field that nobody has typed into. */
    void offer(Optional<Nameplate> plate, Optional<WindingData> data) {
        offer(Field.RATING, plate.map(Nameplate::apparentPowerVA).map(DoubleNode::valueOf));
        offer(Field.POWER, plate.map(Nameplate::powerW).map(DoubleNode::valueOf));
        offer(Field.VOLTS, plate.map(Nameplate::voltageV).map(DoubleNode::valueOf));
        offer(Field.POLES, data.map(WindingData::poles).or(() -> plate.map(Nameplate::poles)).map(IntNode::valueOf));
        offer(Field.SLOTS, data.map(WindingData::slots).map(IntNode::valueOf));
        offer(Field.BORE, data.map(WindingData::boreM).map(DoubleNode::valueOf));
        offer(Field.LENGTH, data.map(WindingData::coreLengthM).map(DoubleNode::valueOf));
        put(Field.SERIAL, plate.map(Nameplate::serial).orElse(""));
    }

    private void offer(Field f, Optional<? extends JsonNode> value) {
        put(f, value.map(v -> f.entry.show(v)).orElse(""));
    }

    private void put(Field f, String text) {
        Text t = texts.get(f);
        if (t != null && t.getText().equals(offered.get(f))) {
            offered.put(f, text);
            if (!t.getText().equals(text)) {
                t.setText(text);
            }
        }
    }

    /** A field that is not understood; the message says which and why. */
    static final class NotUnderstood extends Exception {
        private static final long serialVersionUID = 1L;

        NotUnderstood(String message) {
            super(message);
        }
    }

    /** What is asked for. */
    Asked asked(Words words, String notOf) throws NotUnderstood {
        MachineFigures figures = new MachineFigures(number(motor() ? Field.POWER : Field.RATING, words),
                number(Field.POLES, words), number(Field.SLOTS, words), number(Field.BORE, words),
                number(Field.LENGTH, words), number(Field.VOLTS, words));
        return new Asked(role, figures, texts.get(Field.SERIAL).getText(), texts.get(Field.WORDS).getText(), notOf);
    }

    private double number(Field f, Words words) throws NotUnderstood {
        Text text = texts.get(f);
        Typed typed = f.entry.read(text.getText());
        if (typed instanceof Typed.Understood u) {
            double value = u.node().doubleValue();
            if (!(value > 0)) {
                throw new NotUnderstood(words.text("memory.positive", words.text(f.key)));
            }
            return value;
        }
        if (typed instanceof Typed.Blank) {
            return Double.NaN;
        }
        throw new NotUnderstood(words.text(f.key) + ": " + (typed instanceof Typed.Wrong w ? w.why()
                : ((Typed.Ambiguous) typed).question()));
    }
}
