package org.copperbook.office.registers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.quote.OwnTemplate;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.page.AtomicFile;
import org.copperbook.sheets.template.QuoteTemplate;
import org.copperbook.sheets.template.UnusableTemplate;
import org.copperbook.store.JobStore;
import org.copperbook.store.KeptTemplate;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The workbook that every screen of the workshop has its quotes written into. */
final class TemplatePane extends ShopPane {

    private static final PartKey KEY = KeptTemplate.KEY;
    private static final int NAMES_LINES = 9;

    private final Label now;
    private final Label ofScreen;
    private final Text path;
    private final Button choose;
    private final Button remove;
    private final Button copy;
    private Text names;

    TemplatePane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "template");
        copy = button("copy", "template.copy", this::saveCopy);
        remove = button("remove", "template.remove", () -> put(OwnTemplate.none(), words.text("template.removed")));
        historyButton();
        Look look = Look.of(parent);
        now = label(look, Look.Role.STRONG, "now");
        ofScreen = label(look, Look.Role.TEXT, "ofScreen");
        Composite file = new Composite(body(), SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(file);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(file);
        path = look.as(Look.Role.TEXT, new Text(file, SWT.BORDER));
        path.setMessage(words.text("template.path"));
        path.setData(Desk.ID, id("path"));
        SpokenName.give(path, words.text("template.path"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(look.chars(20), SWT.DEFAULT)
                .applyTo(path);
        path.addListener(SWT.DefaultSelection, e -> take());
        choose = PushButton.in(file, id("choose"), words.text("import.choose"), this::choose);
        label(look, Look.Role.TEXT, "about").setText(words.text("template.about"));
        names(look);
        changed();
        editing.open(KEY, OwnTemplate.none(), this::changed);
    }

    private Label label(Look look, Look.Role role, String id) {
        Label label = look.as(role, new Label(body(), SWT.WRAP));
        label.setData(Desk.ID, id(id));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(label);
        return label;
    }

    /** The names, to be copied from here into the workbook. */
    private void names(Look look) {
        names = look.as(Look.Role.TEXT, new Text(body(), SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER));
        names.setData(Desk.ID, id("names"));
        SpokenName.give(names, words().text("template.names"));
        names.setText(words().text("template.namesOf", String.join("  ", QuoteTemplate.NAMES_OF_QUOTE),
                String.join("  ", QuoteTemplate.NAMES_OF_ALTERNATIVE), QuoteTemplate.LINES,
                String.join("  ", QuoteTemplate.NAMES_OF_LINE)));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(40), look.lineHeight() * NAMES_LINES).applyTo(names);
    }

    private OwnTemplate template() {
        return editing().document().part(KEY, OwnTemplate.class).orElse(OwnTemplate.none());
    }

    private void put(OwnTemplate template, String told) {
        editing().document().put(KEY, template);
        say(told);
    }

    private void choose() {
        FileDialog dialog = new FileDialog(control().getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.xlsx", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            path.setText(chosen);
            take();
        }
    }

    /** Looks at the file behind the window; only one that can be used comes into the store. */
    private void take() {
        Path file;
        try {
            file = Path.of(path.getText().strip());
        } catch (InvalidPathException e) {
            say(words().text("import.noPath", path.getText()));
            return;
        }
        JobStore store = session().store();
        busy(true);
        say(words().text("template.looking"));
        DeskJob job = new DeskJob(words().text("template.looking"), monitor -> {
            try {
                QuoteTemplate template = QuoteTemplate.of(file);
                List<String> others = template.check();
                if (!monitor.isCanceled()) {
                    store.keepPhoto(template.bytes());
                    later(() -> put(OwnTemplate.of(template.name(), template.bytes()),
                            chosen(template.name(), others)));
                }
            } catch (UnusableTemplate | StoreException e) {
                later(() -> say(e.getMessage()));
            } finally {
                later(() -> busy(false));
            }
        });
        job.setUser(true);
        job.schedule();
    }

    private String chosen(String name, List<String> others) {
        String chosen = words().text("template.chosen", name);
        return others.isEmpty() ? chosen
                : chosen + " " + words().text("template.others", others.size(), String.join(", ", others));
    }

    private void busy(boolean is) {
        path.setEnabled(!is);
        choose.setEnabled(!is);
        if (!is) {
            path.setFocus();
        }
    }

    private void saveCopy() {
        JobStore store = session().store();
        OwnTemplate template = template();
        Path folder = WorkbookFolder.current();
        new DeskJob(words().text("registers.writing"), monitor -> {
            String told;
            try {
                KeptTemplate kept = KeptTemplate.read(store, template);
                Files.createDirectories(folder);
                Path target = folder.resolve(words().text("template.copyFile", kept.name()));
                new AtomicFile(target).write(out -> out.write(kept.bytes()));
                told = words().text("month.written", target);
            } catch (WorkbookNotWrittenException | StoreException e) {
                told = e.getMessage();
            } catch (IOException e) {
                ILog.of(TemplatePane.class).warn(folder + " could not be made", e);
                told = words().text("month.noFolder", folder, String.valueOf(e.getMessage()));
            }
            String outcome = told;
            later(() -> say(outcome));
        }).schedule();
    }

    @Override
    Optional<PartKey> key() {
        return Optional.of(KEY);
    }

    @Override
    void changed() {
        OwnTemplate template = template();
        now.setText(template.isThere() ? words().text("template.own", template.name()) : words().text("template.shipped"));
        ofScreen.setText(WorkbookFolder.quoteTemplate().map(p -> words().text("template.ofScreen", p)).orElse(""));
        ((GridData) ofScreen.getLayoutData()).exclude = ofScreen.getText().isEmpty();
        ofScreen.setVisible(!ofScreen.getText().isEmpty());
        remove.setEnabled(template.isThere());
        copy.setEnabled(template.isThere());
        body().layout(true, true);
    }

    @Override
    void setFocus() {
        changed();
        path.setFocus();
    }

    @Override
    void resized() {
        Look look = Look.of(names);
        ((GridData) names.getLayoutData()).heightHint = look.lineHeight() * NAMES_LINES;
        changed();
    }
}
