package org.copperbook.office.board;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.office.AskingDialog;
import org.copperbook.store.BoardRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what a job waits for, since when and why. */
final class WaitingDialog extends AskingDialog {

    private static final int CHARS = 44;

    private final Words words;
    private final BoardRow row;
    private final LocalDate today;
    private final Days days = Days.ofLocale();
    private final Consumer<WaitingAnswer> then;
    private final List<Button> whats = new ArrayList<>();
    private Text since;
    private Text reason;
    private Label said;

    WaitingDialog(Shell parent, Words words, BoardRow row, LocalDate today, Consumer<WaitingAnswer> then) {
        super(parent);
        this.words = words;
        this.row = row;
        this.today = today;
        this.then = then;
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(words.text("waiting.title", row.job().number()));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Look look = Look.of(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).spacing(8, 6).applyTo(area);
        WaitingFor now = row.waiting().flatMap(BoardRow.Wait::what).orElse(null);
        what(area, look, words.text("waiting.nothing"), "NOTHING", row.waiting().isEmpty());
        for (WaitingFor w : WaitingFor.values()) {
            what(area, look, words.of(w), w.name(), w == now);
        }
        Instant began = row.waiting().map(BoardRow.Wait::since).orElse(null);
        since = text(area, look, "waiting.since",
                days.day(began == null ? today : LocalDate.ofInstant(began, ZoneId.systemDefault())));
        reason = text(area, look, "waiting.reason", row.waiting().map(BoardRow.Wait::reason).orElse(""));
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "waiting/said");
        said.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(said);
        Reach.ensure(area);
        return area;
    }

    private void what(Composite area, Look look, String text, String id, boolean chosen) {
        Button b = look.as(Look.Role.TEXT, new Button(area, SWT.RADIO));
        b.setText(text.replace("&", "&&"));
        b.setData(Desk.ID, "waiting/" + id);
        b.setSelection(chosen);
        GridDataFactory.fillDefaults().span(2, 1).hint(SWT.DEFAULT, look.rowHeight()).applyTo(b);
        whats.add(b);
    }

    private Text text(Composite area, Look look, String key, String value) {
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        l.setText(words.text(key));
        Text t = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER));
        t.setText(value);
        t.setData(Desk.ID, key.replace('.', '/'));
        SpokenName.give(t, words.text(key));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(t);
        return t;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        answers(parent, words.text("waiting.keep"), "waiting/keep", "waiting/cancel");
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        whats.stream().filter(Button::getSelection).findFirst().ifPresent(Button::setFocus);
        return contents;
    }

    @Override
    protected void okPressed() {
        int chosen = 0;
        while (chosen < whats.size() && !whats.get(chosen).getSelection()) {
            chosen++;
        }
        Optional<LocalDate> read = days.read(since.getText());
        if (read.isEmpty()) {
            say(words.text("waiting.badDay", since.getText().strip(), days.day(today)));
            return;
        }
        LocalDate day = read.get();
        if (day.isAfter(today)) {
            say(words.text("waiting.future", days.day(day)));
            return;
        }
        if (chosen == whats.size()) {
            say(words.text("waiting.chooseFirst"));
            return;
        }
        WaitingAnswer answer = new WaitingAnswer(chosen == 0 ? null : WaitingFor.values()[chosen - 1], day, reason.getText());
        close();
        then.accept(answer);
    }

    private void say(String text) {
        said.setText(text);
        getShell().layout(true, true);
        getShell().pack();
    }
}
