package org.copperbook.desk.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * A page of the job editor that shows one part. A plug-in extends this class, names it in the extension point
 * {@code org.copperbook.desk.jobPages}, and declares its sections, fields and grids in {@link #build}; the desk does the
 * rest: typing, undo, verdicts beside the readings, saving, the crash journal.
 */
public abstract class PartPage {

    private PageSite site;
    private Form form;

    /** Opens the page; called once, when it is first shown. */
    public final Control open(Composite parent, PageSite where) {
        site = where;
        document().beginWith(key(), beginning());
        form = new Form(parent, site, words());
        build(form);
        form.relayout();
        refresh();
        judge(site.verdicts());
        return form.control();
    }

    /** The texts of the plug-in. */
    protected abstract Words words();

    /** Declares the sections, fields and grids. */
    protected abstract void build(Form here);

    /** What the record starts as when its first field is filled. Override to offer a checklist or default rows. */
    protected ObjectNode beginning() {
        ObjectNode tree = document().tree(key()).deepCopy();
        return tree.has("schema") ? tree : tree.put("schema", 1);
    }

    /** Called after every change of the draft, typed or otherwise. Override to redraw pictures and the like. */
    protected void changed() {
    }

    /** Called with the new verdicts of the whole job. Override to show more than what stands beside the fields. */
    protected void judged(List<Verdict> ofJob) {
    }

    /** What the page finds around it. */
    protected final PageSite site() {
        return site;
    }

    /** The open job. */
    protected final JobDocument document() {
        return site.document();
    }

    /** The part shown. */
    protected final PartKey key() {
        return site.key();
    }

    /** The form, once built. */
    protected final Form form() {
        return form;
    }

    /** Shows what the draft holds now. */
    public final void refresh() {
        form.editable(site.blocked().isEmpty());
        form.refresh();
        changed();
    }

    /** Shows new verdicts. */
    public final void judge(List<Verdict> ofJob) {
        form.show(ofJob.stream().filter(v -> v.part().equals(key())).toList());
        judged(ofJob);
    }

    /** What people call the place to which a JSON pointer leads, if it is on the page. */
    public Optional<String> nameOf(String pointer) {
        return form.nameOf(pointer);
    }

    /** Puts the cursor where a JSON pointer leads. */
    public boolean reveal(String pointer) {
        return form.reveal(pointer);
    }

    /** Scrolls so that what stands on the page stays where it is on the screen while the page itself moves down. */
    public final void scrollBy(int pixels) {
        form.scrollBy(pixels);
    }

    /** Puts the cursor on what stands first on the page. */
    public boolean focusFirst() {
        return form.focusFirst();
    }
}
