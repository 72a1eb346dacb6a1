package org.copperbook.desk.shared;

import java.io.IOException;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.SessionOpening;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.store.StoreException;
import org.copperbook.store.postgres.ServerConnection;
import org.copperbook.store.postgres.ServerConnection.Tls;
import org.copperbook.store.postgres.ServerTrial;
import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.security.storage.StorageException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;

/** Chooses between the file on this computer and a server of the workshop, and tries the connection. */
public final class SharedStorePage extends PreferencePage implements IWorkbenchPreferencePage {

    private static final int WIDTH_CHARS = 48;
    private static final int LINES = 4;

    private Button useFile;
    private Button useServer;
    private Text host;
    private Text port;
    private Text database;
    private Text user;
    private Text password;
    private Combo tls;
    private Button trial;
    private Text outcome;

    @Override
    public void init(IWorkbench workbench) {
        noDefaultAndApplyButton();
        setDescription(DeskWords.text("shared.words"));
    }

    @Override
    protected Control createContents(Composite parent) {
        Look look = Look.of(parent);
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
        useFile = choice(page, "shared.file", "shared/file");
        useServer = choice(page, "shared.server", "shared/server");
        host = line(page, "shared.host", "shared/host", SWT.NONE);
        port = line(page, "shared.port", "shared/port", SWT.NONE);
        database = line(page, "shared.database", "shared/database", SWT.NONE);
        user = line(page, "shared.user", "shared/user", SWT.NONE);
        password = line(page, "shared.password", "shared/password", SWT.PASSWORD);
        label(page, "shared.tls");
        tls = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
        tls.setItems(DeskWords.text("shared.tls.off"), DeskWords.text("shared.tls.encrypted"),
                DeskWords.text("shared.tls.verified"));
        tls.setData(Desk.ID, "shared/tls");
        SpokenName.give(tls, DeskWords.text("shared.tls"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(tls);
        wide(page, "shared.protects", look);
        trial = new Button(page, SWT.PUSH);
        trial.setText(DeskWords.text("shared.try"));
        trial.setData(Desk.ID, "shared/try");
        trial.addListener(SWT.Selection, e -> tryOut());
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.BEGINNING, SWT.CENTER).applyTo(trial);
        outcome = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER);
        outcome.setData(Desk.ID, "shared/outcome");
        SpokenName.give(outcome, DeskWords.text("shared.outcome"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true)
                .hint(look.chars(WIDTH_CHARS), LINES * look.lineHeight()).applyTo(outcome);
        fill();
        look.dress(page);
        Reach.ensure(page);
        return page;
    }

    private void fill() {
        Optional<ServerConnection> known = SharedPreference.known();
        port.setText(Integer.toString(known.map(ServerConnection::port).orElse(ServerConnection.USUAL_PORT)));
        known.ifPresent(at -> {
            host.setText(at.host());
            database.setText(at.database());
            user.setText(at.user());
            try {
                password.setText(ServerPasswords.current().of(at));
            } catch (IOException | StorageException e) {
                ILog.of(SharedStorePage.class).warn("the password of the server cannot be read", e);
                outcome.setText(DeskWords.text("shared.passwordLost"));
            }
        });
        tls.select(known.map(ServerConnection::tls).orElse(Tls.VERIFIED).ordinal());
        boolean server = SharedPreference.chosen().isPresent();
        useFile.setSelection(!server);
        useServer.setSelection(server);
        enable();
    }

    private Button choice(Composite page, String key, String id) {
        Button b = new Button(page, SWT.RADIO);
        b.setText(DeskWords.text(key));
        b.setData(Desk.ID, id);
        b.addListener(SWT.Selection, e -> enable());
        GridDataFactory.fillDefaults().span(2, 1).applyTo(b);
        return b;
    }

    private Text line(Composite page, String key, String id, int style) {
        label(page, key);
        Text t = new Text(page, SWT.SINGLE | SWT.BORDER | style);
        t.setData(Desk.ID, id);
        SpokenName.give(t, DeskWords.text(key));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(t);
        return t;
    }

    private static void label(Composite page, String key) {
        new Label(page, SWT.NONE).setText(DeskWords.text(key));
    }

    private static void wide(Composite page, String key, Look look) {
        Label words = new Label(page, SWT.WRAP);
        words.setText(DeskWords.text(key));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.chars(WIDTH_CHARS), SWT.DEFAULT)
                .applyTo(words);
    }

    private void enable() {
        for (Control c : new Control[] {host, port, database, user, password, tls, trial}) {
            c.setEnabled(useServer.getSelection());
        }
    }

    /** What is entered; empty, with a word about it, when something is missing. */
    private Optional<ServerConnection> entered() {
        try {
            ServerConnection at = new ServerConnection(host.getText().strip(),
                    Integer.parseInt(port.getText().strip()), database.getText().strip(), user.getText().strip(),
                    Tls.values()[tls.getSelectionIndex()]);
            // It is kept as one line of text; what that line cannot carry is refused here and not at the next start.
            if (ServerConnection.parse(at.toString()).equals(at)) {
                return Optional.of(at);
            }
        } catch (IllegalArgumentException e) {
            ILog.of(SharedStorePage.class).info("what was entered is no connection", e);
        }
        outcome.setText(DeskWords.text("shared.incomplete"));
        return Optional.empty();
    }

    private void tryOut() {
        entered().ifPresent(at -> {
            String secret = password.getText();
            Display display = getShell().getDisplay();
            trial.setEnabled(false);
            outcome.setText(DeskWords.text("shared.trying", at.place()));
            DeskJob job = new DeskJob(DeskWords.text("shared.trying", at.place()), monitor -> {
                String found = found(at, secret);
                display.asyncExec(() -> {
                    if (!outcome.isDisposed()) {
                        outcome.setText(found);
                        enable();
                    }
                });
            });
            job.schedule();
        });
    }

    private static String found(ServerConnection at, String secret) {
        try {
            return switch (ServerTrial.of(at, secret)) {
                case STORE -> DeskWords.text("shared.found.store", at.place());
                case OLDER_STORE -> DeskWords.text("shared.found.older", at.place());
                case NEWER_STORE -> DeskWords.text("shared.found.newer", at.place());
                case NOTHING -> DeskWords.text("shared.found.nothing", at.place());
            };
        } catch (StoreException e) {
            return e.getMessage();
        }
    }

    @Override
    public boolean performOk() {
        if (useServer == null) {
            return true;
        }
        Optional<ServerConnection> wanted = Optional.empty();
        if (useServer.getSelection()) {
            wanted = entered();
            if (wanted.isEmpty()) {
                return false;
            }
        }
        try {
            keep(wanted);
        } catch (IOException | StorageException | BackingStoreException e) {
            ILog.of(SharedStorePage.class).error("the connection could not be kept", e);
            outcome.setText(DeskWords.text("shared.notKept", String.valueOf(e.getMessage())));
            return false;
        }
        offerRestart();
        return true;
    }

    private void keep(Optional<ServerConnection> wanted) throws IOException, StorageException, BackingStoreException {
        if (wanted.isPresent()) {
            ServerPasswords.current().keep(wanted.get(), password.getText());
            SharedPreference.choose(wanted.get());
        } else {
            SharedPreference.chooseFile();
        }
    }

    /** The dialog is closed first; the window asks by itself about unsaved work. */
    private void offerRestart() {
        DeskSession session = DeskSession.ofWorkbench();
        if (SessionOpening.server(session.arguments()).equals(session.server())) {
            return;
        }
        getShell().getDisplay().asyncExec(() -> {
            if (MessageDialog.open(MessageDialog.QUESTION, null, DeskWords.text("shared.restart.title"),
                    DeskWords.text("shared.restart.ask"), SWT.NONE, DeskWords.text("shared.restart.now"),
                    DeskWords.text("shared.restart.later")) == 0) {
                PlatformUI.getWorkbench().restart();
            }
        });
    }
}
