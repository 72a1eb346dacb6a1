package org.copperbook.desk.tests.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.shared.FirstOpening;
import org.copperbook.desk.shared.FirstOpening.Answer;
import org.copperbook.desk.shared.ServerPasswords;
import org.copperbook.desk.shared.SharedPreference;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.SessionOpening;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.store.UserFolders;
import org.copperbook.store.postgres.ServerConnection;
import org.copperbook.store.postgres.ServerConnection.Tls;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.equinox.security.storage.StorageException;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** A server of the workshop is chosen in the preferences, tried, and may be missing at the start. */
class SharedStoreTest {

    private static final String SECRET = "seven brass slip rings";

    private final Desktop desktop = new Desktop();

    @AfterEach
    void backToTheFile() throws BackingStoreException {
        InstanceScope.INSTANCE.getNode(Desk.BUNDLE).remove("shared.connection");
        SharedPreference.chooseFile();
    }

    @Test
    void tryingAConnectionSaysThatNobodyAnswersAndWhatToDo() throws IOException {
        ServerConnection at = nobodyThere();
        PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(null,
                "org.copperbook.desk.preferences.shared", null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        try {
            desktop.work();
            assertFalse(desktop.field("shared/host").isEnabled(), "the file is chosen at first");
            choose("shared/file", false);
            choose("shared/server", true);
            desktop.press("shared/try");
            assertTrue(outcome().contains("have to be filled in"), outcome());
            enter(at);
            desktop.press("shared/try");
            desktop.until("the outcome is told", () -> outcome().contains("does not answer"));
            assertTrue(outcome().contains(at.place()), outcome());
            assertTrue(outcome().contains("Check the network"), outcome());
            assertEquals(Optional.empty(), SharedPreference.chosen(), "trying chooses nothing");
        } finally {
            dialog.close();
        }
    }

    @Test
    void thePasswordIsKeptEncryptedUnderAKeyThatOnlyTheUserCanRead() throws IOException, StorageException {
        ServerConnection at = nobodyThere();
        ServerPasswords.current().keep(at, SECRET);
        Path home = UserFolders.current().home();
        Path storage = home.resolve("secure-storage");
        String kept = Files.readString(storage);
        assertFalse(kept.contains(SECRET), kept);
        assertTrue(kept.contains("127.0.0.1"), "the right file was looked at: " + kept);
        Path key = home.resolve("secure-storage.key");
        if (Files.getFileStore(key).supportsFileAttributeView("posix")) {
            assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(key)));
        }
        assertEquals(SECRET, ServerPasswords.current().of(at));
        ServerPasswords.current().keep(at, "");
        assertEquals("", ServerPasswords.current().of(at));
    }

    @Test
    void aServerThatIsNotThereIsToldAndTheFileCanBeWorkedOn() throws IOException, BackingStoreException {
        ServerConnection at = nobodyThere();
        SharedPreference.choose(at);
        assertEquals(Optional.of(at), SessionOpening.server(DeskArguments.NONE));
        List<String> told = new ArrayList<>();
        Deque<Answer> answers = new ArrayDeque<>(List.of(Answer.TRY_AGAIN, Answer.USE_FILE));
        FirstOpening opening = new FirstOpening((where, problem) -> {
            told.add(problem);
            return answers.pop();
        }, told::add);
        try (DeskSession session = opening.open(DeskArguments.NONE).orElseThrow()) {
            assertEquals(Optional.empty(), session.server());
            assertEquals(UserFolders.current().store(), session.store().file());
        }
        assertEquals(2, told.size(), "it was tried again");
        assertTrue(told.get(1).contains(at.place()) && told.get(1).contains("try again"), told.get(1));
        assertEquals(Optional.of(at), SharedPreference.chosen(), "the next start tries the server again");
        assertEquals(Optional.empty(), new FirstOpening((where, problem) -> Answer.END, told::add).open(DeskArguments.NONE));
    }

    private void enter(ServerConnection at) {
        ((Text) desktop.field("shared/host")).setText(at.host());
        ((Text) desktop.field("shared/port")).setText(Integer.toString(at.port()));
        ((Text) desktop.field("shared/database")).setText(at.database());
        ((Text) desktop.field("shared/user")).setText(at.user());
        ((Text) desktop.field("shared/password")).setText(SECRET);
    }

    private void choose(String id, boolean on) {
        Button b = (Button) desktop.field(id);
        b.setSelection(on);
        b.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
    }

    private String outcome() {
        return ((Text) desktop.field("shared/outcome")).getText();
    }

    /** A port of this machine that was free a moment ago. */
    private static ServerConnection nobodyThere() throws IOException {
        try (ServerSocket s = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return new ServerConnection("127.0.0.1", s.getLocalPort(), "workshop", "bench", Tls.OFF);
        }
    }
}
