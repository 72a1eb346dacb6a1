package org.copperbook.desk.shell;

import java.util.function.Consumer;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.postgres.ServerConnection;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.eclipse.swt.widgets.Display;

/** What the status line always says: where the store lies, whether it is the demo, who works here. */
final class StatusItems {

    private static final int WHO_CHARS = 40;
    private static final int STORE_CHARS = 40;

    private final DeskSession session;
    private final StatusLineContributionItem store = new StatusLineContributionItem("org.copperbook.store", STORE_CHARS);
    private final StatusLineContributionItem who = new StatusLineContributionItem("org.copperbook.who", WHO_CHARS);
    private final Runnable follow;
    private Consumer<String> said;

    StatusItems(DeskSession session) {
        this.session = session;
        Display display = Display.getCurrent();
        this.follow = () -> display.asyncExec(this::write);
    }

    void addTo(IStatusLineManager line) {
        line.add(who);
        line.add(store);
        write();
        session.onShop(follow);
        said = line::setMessage;
        session.onSaid(said);
    }

    void forget() {
        session.removeOnShop(follow);
        session.removeOnSaid(said);
    }

    private void write() {
        String file = session.server().map(ServerConnection::place).orElseGet(session.store().file()::toString);
        store.setText(session.store().unreachable().isPresent() ? DeskWords.text("status.silent", session.waiting())
                : session.isDemo() ? DeskWords.text("status.demoStore", file)
                : DeskWords.text("status.store", file));
        who.setText(session.who().map(k -> DeskWords.text(session.hasSecrets() ? "status.signedIn" : "status.who",
                session.shop().nameOf(k)))
                .orElseGet(() -> DeskWords.text(session.hasSecrets() ? "status.nobodySignedIn" : "status.nobody")));
    }
}
