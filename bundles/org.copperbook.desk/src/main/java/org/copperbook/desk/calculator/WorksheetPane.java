package org.copperbook.desk.calculator;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.Input;
import org.copperbook.calc.catalogue.InputType;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Shows one calculation: its inputs, the result as it is typed, formula and source, and a button to copy it all. */
final class WorksheetPane {

    private static final int WAIT_MS = 200;
    private static final int LABEL_CHARS = 22;
    private static final int INPUT_CHARS = 18;

    private final ScrolledComposite scroll;
    private final Words words;
    private Worksheet sheet;
    private Composite body;
    private Control first;
    private Text result;
    private Label said;
    private int asked;

    WorksheetPane(Composite parent, Words words) {
        this.words = words;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        scroll.addListener(SWT.Resize, e -> measure());
    }

    boolean setFocus() {
        return first != null && first.setFocus();
    }

    void show(Worksheet next) {
        sheet = next;
        first = null;
        if (body != null) {
            body.dispose();
        }
        Look look = Look.of(scroll);
        body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).spacing(10, 4).applyTo(body);
        scroll.setContent(body);
        Calculation c = sheet.calculation();
        wide(look.as(Look.Role.HEADING, new Label(body, SWT.WRAP)), c.title(), look);
        c.inputs().forEach(i -> input(look, i));
        said = wide(look.as(Look.Role.TEXT, new Label(body, SWT.WRAP)), "", look);
        said.setForeground(look.palette().problem());
        wide(look.as(Look.Role.STRONG, new Label(body, SWT.NONE)), words.text("calculator.result"), look);
        result = look.as(Look.Role.TEXT, new Text(body, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER));
        result.setData(Desk.ID, "calculator.result");
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(40), 7 * look.rowHeight())
                .applyTo(result);
        wide(look.as(Look.Role.TEXT, new Label(body, SWT.WRAP)), words.text("calculator.formula", c.formula()), look);
        wide(look.as(Look.Role.TEXT, new Label(body, SWT.WRAP)), words.text("calculator.source", c.source()), look);
        Button copy = look.as(Look.Role.TEXT, new Button(body, SWT.PUSH));
        copy.setText(words.text("calculator.copy"));
        copy.setData(Desk.ID, "calculator.copy");
        copy.addListener(SWT.Selection, e -> copy());
        SpokenName.give(result, words.text("calculator.result"));
        compute();
        measure();
    }

    private void input(Look look, Input input) {
        Label label = look.as(Look.Role.TEXT, new Label(body, SWT.WRAP));
        label.setText(input.doc() + (input.required() ? "" : " " + words.text("calculator.optional")));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(look.chars(LABEL_CHARS), SWT.DEFAULT).applyTo(label);
        Control control;
        List<String> options = options(input.type());
        if (options.isEmpty()) {
            Text text = look.as(Look.Role.TEXT, new Text(body, SWT.BORDER));
            text.setMessage(hint(input));
            text.addModifyListener(e -> typed(input.name(), text.getText()));
            text.addListener(SWT.DefaultSelection, e -> text.traverse(SWT.TRAVERSE_TAB_NEXT));
            control = text;
        } else {
            Combo combo = look.as(Look.Role.TEXT, new Combo(body, SWT.READ_ONLY));
            combo.add("");
            options.forEach(combo::add);
            combo.addListener(SWT.Selection, e -> typed(input.name(), combo.getText()));
            control = combo;
        }
        control.setData(Desk.ID, "calculator.input." + input.name());
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = input.doc();
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER)
                .hint(look.chars(INPUT_CHARS), SWT.DEFAULT).applyTo(control);
        first = first == null ? control : first;
    }

    private String hint(Input input) {
        String unit = input.type() instanceof InputType.Number n ? n.unit()
                : input.type() instanceof InputType.Numbers n ? n.unit() + "; " + n.unit() + "; ..."
                : input.type() instanceof InputType.Points p ? p.xUnit() + ":" + p.yUnit() + "; ..."
                : input.type() instanceof InputType.Text t ? t.shape() : "";
        return input.defaultText() == null ? unit : words.text("calculator.default", input.defaultText());
    }

    private static List<String> options(InputType type) {
        return type instanceof InputType.Choice c ? c.options()
                : type instanceof InputType.Flag ? List.of("yes", "no") : List.of();
    }

    /** Computes a moment after the last key, so that typing is never held up. */
    private void typed(String input, String text) {
        sheet.fill(input, text);
        int mine = ++asked;
        scroll.getDisplay().timerExec(WAIT_MS, () -> {
            if (mine == asked && !scroll.isDisposed()) {
                compute();
            }
        });
    }

    private void compute() {
        Worksheet.Answer answer = sheet.answer();
        List<Input> missing = sheet.missing();
        said.setText(!answer.problem().isEmpty() ? answer.problem() : missing.isEmpty() ? ""
                : words.text("calculator.missing", missing.stream().map(Input::name).collect(Collectors.joining(", "))));
        result.setText(answer.lines().stream().map(l -> l.what() + ": " + l.value())
                .collect(Collectors.joining("\n"))
                + answer.warnings().stream().map(w -> "\n\u26a0 " + w).collect(Collectors.joining()));
        said.requestLayout();
    }

    private void copy() {
        Clipboard clipboard = new Clipboard(scroll.getDisplay());
        clipboard.setContents(new Object[] {sheet.copied()}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private Label wide(Label label, String text, Look look) {
        label.setText(text.replace("&", "&&"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(40), SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void measure() {
        if (body != null && !body.isDisposed()) {
            Reach.ensure(body);
            scroll.setMinSize(0, body.computeSize(scroll.getClientArea().width, SWT.DEFAULT, true).y);
            body.layout(true, true);
        }
    }
}
