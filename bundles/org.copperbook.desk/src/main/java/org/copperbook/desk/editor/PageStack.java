package org.copperbook.desk.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.copperbook.desk.page.PageContribution;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The pages of an open job, one shown at a time, each built when it is first visited. */
final class PageStack {

    private record Id(String contribution, PartKey key) {
    }

    private record Built(PartPage page, Control control) {
    }

    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final Map<Id, Built> built = new LinkedHashMap<>();
    private final Function<PartKey, PageSite> sites;
    private Id shown;
    private OutlineRow.Page last;

    PageStack(Composite parent, Function<PartKey, PageSite> sites) {
        this.sites = sites;
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(layout);
    }

    /** Shows a page; a page that cannot be made says so in its place, and the others go on. */
    void show(OutlineRow.Page row) {
        Id id = new Id(row.page().id(), row.key());
        Built b = built.computeIfAbsent(id, k -> build(row));
        shown = id;
        last = row;
        if (layout.topControl != b.control()) {
            layout.topControl = b.control();
            stack.layout();
        }
        if (b.page() != null) {
            b.page().refresh();
        }
    }

    /** The part shown, if any. */
    Optional<PartKey> key() {
        return Optional.ofNullable(shown).map(Id::key);
    }

    /** Whether a row is the one shown. */
    boolean shows(OutlineRow.Page row) {
        return new Id(row.page().id(), row.key()).equals(shown);
    }

    /** The page shown, if it could be made. */
    Optional<PartPage> page() {
        return Optional.ofNullable(shown).map(built::get).map(Built::page);
    }

    /** Builds the page shown anew, and the others when they are next visited: sizes and fonts have changed. */
    void rebuild() {
        built.values().forEach(b -> b.control().dispose());
        built.clear();
        layout.topControl = null;
        if (last != null) {
            show(last);
        }
    }

    /** Every page visited so far. */
    void each(java.util.function.BiConsumer<PartKey, PartPage> action) {
        built.forEach((id, b) -> {
            if (b.page() != null) {
                action.accept(id.key(), b.page());
            }
        });
    }

    Composite control() {
        return stack;
    }

    private Built build(OutlineRow.Page row) {
        try {
            PartPage page = row.page().create();
            Control control = page.open(stack, sites.apply(row.key()));
            // Hidden until it has its size, so that nothing in it is laid out at no height.
            control.setVisible(false);
            return new Built(page, control);
        } catch (CoreException | RuntimeException e) {
            ILog.of(PageStack.class).error("page " + row.page().id() + " could not be opened", e);
            Label sorry = Look.of(stack).as(Look.Role.TEXT, new Label(stack, SWT.WRAP));
            sorry.setText(DeskWords.text("editor.pageFailed", row.label(), String.valueOf(e.getMessage())));
            return new Built(null, sorry);
        }
    }
}
