package org.copperbook.winding.memory;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.memory.FoundWinding;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** The windings the workshop has had, nearest first, and what may be taken over from them. */
public final class PastWindingsSection implements WindingSection {

    private static final int WANTED = 50;

    private final OpenWinding winding;
    private final Words words;
    private final FoundText texts;
    private Form form;
    private SearchFields fields;
    private FoundTable table;
    private Label said;
    private Label detail;
    private Button take;
    private int search;

    public PastWindingsSection(OpenWinding winding) {
        this.winding = winding;
        words = winding.words();
        texts = new FoundText(words);
    }

    @Override
    public void build(Form here) {
        form = here;
        Composite area = here.area("memory.title");
        GridLayoutFactory.fillDefaults().spacing(0, 6).extendedMargins(0, 0, 0, 10).applyTo(area);
        said(area, "memory.hint");
        Composite asked = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(area).chars(60), SWT.DEFAULT).applyTo(asked);
        fields = new SearchFields(asked, words, role(), this::find);
        Composite buttons = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(buttons);
        button(buttons, "memory.find", Look.Role.STRONG).addListener(SWT.Selection, e -> find());
        button(buttons, "memory.takeIn", Look.Role.TEXT).addListener(SWT.Selection,
                e -> TakeInWizard.open(area.getShell(), DeskSession.ofWorkbench(), words, role(), this::find));
        said = said(area, "open.past.said");
        said.setText("");
        table = new FoundTable(area, texts, words);
        table.onSelection(this::selected);
        table.onOpen(f -> takeOver());
        detail = said(area, "open.past.detail");
        detail.setText("");
        take = button(area, "memory.takeOver", Look.Role.STRONG);
        take.addListener(SWT.Selection, e -> takeOver());
        table.show(List.of());
        found(false);
    }

    /** Puts the cursor into the search; false while the section is not on the screen. */
    public boolean focus() {
        return said != null && !said.isDisposed() && said.getParent().isVisible() && fields.focus();
    }

    private Label said(Composite area, String id) {
        Look look = Look.of(area);
        Label label = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        label.setData(Desk.ID, id);
        if (words.has(id)) {
            label.setText(words.text(id));
        }
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(label);
        return label;
    }

    private Button button(Composite area, String key, Look.Role weight) {
        Button b = Look.of(area).as(weight, new Button(area, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        GridDataFactory.swtDefaults().applyTo(b);
        return b;
    }

    private WindingRole role() {
        String name = winding.key().name();
        int dot = name.indexOf('.');
        return WindingRole.of(dot < 0 ? name : name.substring(0, dot));
    }

    @Override
    public void changed() {
        fields.offer(winding.document().job().nameplate(), winding.data());
        take.setEnabled(table.selected().isPresent() && winding.site().blocked().isEmpty());
    }

    /** Searches outside the window's thread; only the answer to the newest question is shown. */
    private void find() {
        Asked asked;
        try {
            asked = fields.asked(words, winding.document().id());
        } catch (SearchFields.NotUnderstood e) {
            say(e.getMessage());
            return;
        }
        int mine = ++search;
        say(words.text("memory.searching"));
        Display display = said.getDisplay();
        new DeskJob(words.text("memory.task"), monitor -> {
            try {
                List<FoundWinding> found = winding.site().store().memory().nearest(asked, WANTED);
                int all = winding.site().store().memory().size();
                display.asyncExec(() -> show(mine, found, all));
            } catch (StoreException e) {
                display.asyncExec(() -> failed(mine, e));
            }
        }).schedule();
    }

    private void failed(int mine, StoreException e) {
        if (mine == search && !said.isDisposed()) {
            say(e.getMessage());
        }
    }

    private void show(int mine, List<FoundWinding> found, int all) {
        if (mine != search || said.isDisposed()) {
            return;
        }
        table.show(found);
        detail.setText("");
        found(!found.isEmpty());
        say(found.isEmpty() ? words.text("memory.none", all) : words.text("memory.found", found.size(), all));
    }

    /** What belongs to a list of past windings takes no room while there is none. */
    private void found(boolean any) {
        take.setEnabled(false);
        for (Control c : List.of(detail, take)) {
            ((GridData) c.getLayoutData()).exclude = !any;
            c.setVisible(any);
        }
    }

    private void selected(Optional<FoundWinding> found) {
        detail.setText(found.map(texts::detail).orElse(""));
        take.setEnabled(found.isPresent() && winding.site().blocked().isEmpty());
        form.relayout();
    }

    private void takeOver() {
        Optional<FoundWinding> found = table.selected();
        Optional<String> who = winding.site().who();
        if (found.isEmpty() || winding.site().blocked().isPresent()) {
            say(winding.site().blocked().orElse(words.text("memory.choose")));
            return;
        }
        if (who.isEmpty()) {
            say(words.text("proposal.who"));
            return;
        }
        Display display = said.getDisplay();
        FoundWinding chosen = found.get();
        new DeskJob(words.text("memory.task"), monitor -> {
            try {
                Optional<Saved> saved = winding.site().store().current(chosen.winding().jobId(),
                        chosen.winding().part());
                display.asyncExec(() -> write(chosen, saved.map(Saved::part), who.get()));
            } catch (StoreException e) {
                display.asyncExec(() -> failed(search, e));
            }
        }).schedule();
    }

    private void write(FoundWinding chosen, Optional<Part> part, String who) {
        if (said.isDisposed()) {
            return;
        }
        Optional<WindingData> past = part.map(p -> p instanceof OldCard c ? c.winding() : (WindingData) p);
        if (past.isEmpty()) {
            say(words.text("memory.gone"));
            return;
        }
        ObjectNode proposed = winding.site().json().tree(past.get());
        String from = texts.from(chosen.winding());
        Proposal.Outcome outcome = Proposal.take(winding.document().tree(winding.key()), proposed, from,
                chosen.sameMachine(), who, Instant.now());
        if (outcome.filled().isEmpty()) {
            say(words.text("memory.nothingNew", names(outcome.kept())));
            return;
        }
        winding.document().change(winding.key(), "/proposedFrom", tree -> outcome.tree())
                .ifPresentOrElse(this::say, () -> say(outcome.kept().isEmpty()
                        ? words.text("memory.taken", from, names(outcome.filled()))
                        : words.text("memory.takenKept", from, names(outcome.filled()), names(outcome.kept()))));
    }

    private String names(List<String> fields) {
        List<String> names = new ArrayList<>();
        fields.forEach(f -> names.add(FieldNames.of(f, words)));
        return names.isEmpty() ? "\u2013" : String.join(", ", names);
    }

    private void say(String text) {
        said.setText(text);
        form.relayout();
    }
}
