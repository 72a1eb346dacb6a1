package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.store.JobStore;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** The band that says that the server does not answer, since when, and how many jobs wait to be saved. */
public final class ReachBand {

    private final DeskSession session;
    private final Label words;
    private final Runnable follow;

    private ReachBand(Composite parent, DeskSession session) {
        this.session = session;
        Look look = Look.of(parent);
        words = look.as(Look.Role.STRONG, new Label(parent, SWT.WRAP));
        words.setData(Desk.ID, "band/reach");
        words.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().indent(8, 3).grab(true, false).hint(look.chars(20), SWT.DEFAULT).applyTo(words);
        Display display = parent.getDisplay();
        follow = () -> display.asyncExec(this::show);
        session.onShop(follow);
        words.addDisposeListener(e -> session.removeOnShop(follow));
        show();
    }

    /** Adds the band to a composite with a grid layout when the store is on a server; it is seen while that is silent. */
    public static void addTo(Composite parent, DeskSession session) {
        if (session.server().isPresent()) {
            new ReachBand(parent, session);
        }
    }

    private void show() {
        if (words.isDisposed()) {
            return;
        }
        JobStore store = session.store();
        boolean silent = store.unreachable().isPresent();
        if (silent) {
            String since = store.unreachableSince().map(Days.ofLocale()::moment).orElse("");
            words.setText(DeskWords.text("reach.band", since, session.waiting()));
        }
        words.setToolTipText(store.unreachable().orElse(null));
        words.setVisible(silent);
        ((GridData) words.getLayoutData()).exclude = !silent;
        words.requestLayout();
    }
}
