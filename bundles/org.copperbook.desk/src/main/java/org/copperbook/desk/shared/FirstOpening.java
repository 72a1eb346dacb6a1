package org.copperbook.desk.shared;

import java.util.Optional;
import java.util.function.Consumer;
import org.copperbook.desk.shell.DeskArguments;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.SessionOpening;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.StoreException;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;

/**
 * Opens the store that the preferences name, and leaves nobody standing before a server that is not there, or before a
 * backup that cannot be restored.
 */
public final class FirstOpening {

    /** What somebody wants to do about a server that could not be opened. */
    public enum Answer { TRY_AGAIN, USE_FILE, END }

    /** Asks what to do about a server that could not be opened. */
    public interface Question {
        Answer ask(ServerConnection at, String problem);
    }

    private final Question question;
    private final Consumer<String> notice;

    /** An opening that asks and tells in a dialog. */
    public FirstOpening() {
        this(FirstOpening::dialog, text -> MessageDialog.openWarning(null, DeskWords.text("restore.title"), text));
    }

    /**
     * An opening that asks and tells in another way.
     *
     * @param notice is told why a backup was not restored
     */
    public FirstOpening(Question question, Consumer<String> notice) {
        this.question = question;
        this.notice = notice;
    }

    /**
     * Opens the store.
     *
     * @return empty when the server could not be opened and the answer was to end
     * @throws StoreException when a file cannot be opened
     */
    public Optional<DeskSession> open(DeskArguments arguments) {
        Optional<ServerConnection> server = SessionOpening.server(arguments);
        if (server.isEmpty()) {
            return Optional.of(file(arguments));
        }
        while (true) {
            String problem;
            try {
                return Optional.of(SessionOpening.open(server.get(), arguments));
            } catch (StoreException e) {
                ILog.of(FirstOpening.class).warn("the server's store could not be opened", e);
                problem = e.getMessage();
            }
            switch (question.ask(server.get(), problem)) {
                case USE_FILE -> {
                    return Optional.of(file(arguments));
                }
                case END -> {
                    return Optional.empty();
                }
                default -> {
                }
            }
        }
    }

    private DeskSession file(DeskArguments arguments) {
        try {
            SessionOpening.restoreWhatWasAskedFor(arguments);
        } catch (StoreException e) {
            ILog.of(FirstOpening.class).warn("a backup was not restored", e);
            notice.accept(DeskWords.text("restore.refused", e.getMessage()));
        }
        return SessionOpening.open(arguments);
    }

    private static Answer dialog(ServerConnection at, String problem) {
        int pressed = MessageDialog.open(MessageDialog.ERROR, null, DeskWords.text("shared.cannotOpen"),
                DeskWords.text("shared.wayOut", problem, at.place()), SWT.NONE, DeskWords.text("shared.again"),
                DeskWords.text("shared.useFile"), DeskWords.text("shared.end"));
        return switch (pressed) {
            case 0 -> Answer.TRY_AGAIN;
            case 1 -> Answer.USE_FILE;
            default -> Answer.END;
        };
    }
}
