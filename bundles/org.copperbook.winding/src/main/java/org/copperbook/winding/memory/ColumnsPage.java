package org.copperbook.winding.memory;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.CardField;
import org.copperbook.sheets.cards.CardMapping;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Which column is what: guessed by the titles or remembered, and to be corrected. */
final class ColumnsPage extends WizardPage {

    private final CardImport cards;
    private final Words words;
    private ScrolledComposite scroll;
    private Composite list;
    private Combo role;

    ColumnsPage(CardImport cards, Words words) {
        super("columns", words.text("cards.columnsTitle"), null);
        this.cards = cards;
        this.words = words;
        setDescription(words.text("cards.columnsHint"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(box);
        Composite top = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(top);
        Label l = new Label(top, SWT.NONE);
        l.setText(words.text("cards.role"));
        role = new Combo(top, SWT.READ_ONLY);
        role.setData(Desk.ID, "cards.role");
        for (WindingRole r : WindingRole.values()) {
            role.add(words.of(r));
        }
        role.addListener(SWT.Selection, e -> {
            cards.map(cards.mapping().withRole(WindingRole.values()[role.getSelectionIndex()]));
            check();
        });
        scroll = new ScrolledComposite(box, SWT.V_SCROLL | SWT.BORDER);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(Look.of(box).chars(80), 200).applyTo(scroll);
        setControl(box);
    }

    /** Shows the columns of the file chosen. */
    void fill() {
        if (list != null) {
            list.dispose();
        }
        CardFile file = cards.file().orElseThrow();
        role.select(cards.mapping().role().ordinal());
        list = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(8, 8).spacing(12, 4).applyTo(list);
        for (String key : List.of("cards.column", "cards.example", "cards.holds", "cards.unit")) {
            Label title = Look.of(list).as(Look.Role.STRONG, new Label(list, SWT.NONE));
            title.setText(words.text(key));
        }
        for (int i = 0; i < cards.mapping().columns().size(); i++) {
            line(i, file.example(i));
        }
        Look.of(list).dress(list);
        scroll.setContent(list);
        scroll.setMinSize(list.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        check();
    }

    private void line(int column, String example) {
        String header = cards.mapping().columns().get(column).header();
        label(header, 30);
        label(example, 30);
        Combo field = new Combo(list, SWT.READ_ONLY);
        Combo unit = new Combo(list, SWT.READ_ONLY);
        field.setData(Desk.ID, "cards.field." + column);
        unit.setData(Desk.ID, "cards.unit." + column);
        named(field, words.text("cards.holds") + " " + header);
        named(unit, words.text("cards.unit") + " " + header);
        field.add(words.text("cards.leaveOut"));
        for (CardField f : CardField.values()) {
            field.add(f.inWords());
        }
        field.setVisibleItemCount(20);
        CardMapping.Column now = cards.mapping().columns().get(column);
        field.select(now.field() == null ? 0 : now.field().ordinal() + 1);
        units(unit, now.field(), now.unit());
        GridDataFactory.fillDefaults().hint(Look.of(list).chars(26), SWT.DEFAULT).applyTo(field);
        GridDataFactory.fillDefaults().hint(Look.of(list).chars(10), SWT.DEFAULT).applyTo(unit);
        field.addListener(SWT.Selection, e -> {
            CardField chosen = field.getSelectionIndex() < 1 ? null : CardField.values()[field.getSelectionIndex() - 1];
            units(unit, chosen, null);
            cards.map(cards.mapping().with(column, chosen, unit.isEnabled() ? unit.getText() : null));
            check();
        });
        unit.addListener(SWT.Selection, e -> {
            cards.map(cards.mapping().with(column, cards.mapping().columns().get(column).field(), unit.getText()));
            check();
        });
    }

    private static void units(Combo unit, CardField field, String chosen) {
        List<String> units = field == null ? List.of() : field.units();
        unit.setItems(units.toArray(String[]::new));
        unit.setEnabled(!units.isEmpty());
        if (!units.isEmpty()) {
            unit.select(chosen == null ? 0 : Math.max(0, units.indexOf(chosen)));
        }
    }

    private void label(String text, int most) {
        Label l = new Label(list, SWT.NONE);
        String shown = text.length() > most ? text.substring(0, most) + "\u2026" : text;
        l.setText(shown.replace("&", "&&").replace('\n', ' '));
        l.setToolTipText(text);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(l);
    }

    private static void named(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name;
            }
        });
    }

    private void check() {
        List<String> problems = new ArrayList<>(cards.mapping().problems());
        setErrorMessage(problems.isEmpty() ? null : String.join(" ", problems));
        setMessage(words.text(cards.remembered() ? "cards.remembered" : "cards.columnsHint"),
                cards.remembered() ? IMessageProvider.INFORMATION : IMessageProvider.NONE);
        setPageComplete(problems.isEmpty());
    }
}
