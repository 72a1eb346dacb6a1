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

/** What a form over one of the shop's own parts finds round it: no verdicts, no hold points. */
final class ShopSite implements PageSite {

    private final DeskSession session;
    private final JobDocument document;
    private final PartKey key;

    ShopSite(DeskSession session, JobDocument document, PartKey key) {
        this.session = session;
        this.document = document;
        this.key = key;
    }

    @Override
    public JobDocument document() {
        return document;
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
        return List.of();
    }

    @Override
    public List<HoldPointState> holdPoints() {
        return List.of();
    }

    @Override
    public Optional<String> blocked() {
        return Optional.empty();
    }

    @Override
    public JobStore store() {
        return session.store();
    }

    @Override
    public void open(PartKey other) {
        throw new IllegalStateException("the shop's parts have no outline to open " + other + " in");
    }
}
