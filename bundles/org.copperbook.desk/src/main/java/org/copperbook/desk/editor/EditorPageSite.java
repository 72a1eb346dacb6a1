package org.copperbook.desk.editor;

import java.util.List;
import java.util.Optional;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.store.JobStore;

/** What a page finds round it in the job editor. */
final class EditorPageSite implements PageSite {

    private final JobEditor editor;
    private final DeskSession session;
    private final PartKey key;

    EditorPageSite(JobEditor editor, DeskSession session, PartKey key) {
        this.editor = editor;
        this.session = session;
        this.key = key;
    }

    @Override
    public JobDocument document() {
        return editor.document();
    }

    @Override
    public PartKey key() {
        return key;
    }

    @Override
    public Shop shop() {
        return session.shop();
    }

    @Override
    public PartJson json() {
        return session.json();
    }

    @Override
    public Optional<String> who() {
        return session.who();
    }

    @Override
    public List<Verdict> verdicts() {
        return editor.judgement().verdicts();
    }

    @Override
    public List<HoldPointState> holdPoints() {
        return editor.judgement().holdPoints();
    }

    @Override
    public Optional<String> blocked() {
        return store().onlyReading().or(editor::ofSomebodyElse).or(() -> Optional.ofNullable(editor.judgement().blocked().get(key)));
    }

    @Override
    public JobStore store() {
        return session.store();
    }

    @Override
    public void open(PartKey other) {
        editor.show(other);
    }
}
