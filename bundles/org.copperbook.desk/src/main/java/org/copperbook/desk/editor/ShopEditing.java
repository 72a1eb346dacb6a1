package org.copperbook.desk.editor;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.copperbook.desk.document.Change;
import org.copperbook.desk.document.DraftText;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.document.PendingSave;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.LeftBehind;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/**
 * The shop's own parts while they are changed: undo, saving one revision each, and what somebody else saved meanwhile
 * side by side, as in a job; what is typed and not saved outlives a crash. For the window's thread; the store is asked on another.
 */
public final class ShopEditing {

    private final DeskSession session;
    private final Composite box;
    private final Display display;
    private final JobDocument document;
    private final JobStrips strips;
    private final Function<PartKey, String> label;
    private final Runnable shopChanged;
    private final JobStore.Listening listening;
    private final ScheduledExecutorService writer = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "copperbook-shop-journal");
        t.setDaemon(true);
        return t;
    });
    private final CrashJournal crashes = new CrashJournal(UserFolders.current().journal());
    private final DraftText text;
    private final JobJournal journal;
    private final List<DocumentHandler> commands = new ArrayList<>();
    private String typedBy;
    private boolean saving;

    /**
     * @param box     what the strips stand on top of; has a grid layout of one column
     * @param label   name of a part for people
     * @param differences how what somebody else saved meanwhile is told
     * @param changed told of every change of a draft or of what is saved
     */
    public ShopEditing(Composite box, DeskSession session, Function<PartKey, String> label, DifferenceWords differences,
            Consumer<Change> changed) {
        this.session = session;
        this.box = box;
        this.label = label;
        display = box.getDisplay();
        document = new JobDocument(new Job(JobStore.SHOP, "", Map.of()), Map.of(), session.json());
        strips = new JobStrips(box, session);
        text = new DraftText(session.json());
        journal = new JobJournal(crashes, writer, text, session.store().file().toString(), JobStore.SHOP,
                Clock.systemUTC());
        document.addListener(c -> {
            if (c.what() == Change.What.CONFLICT) {
                strips.conflicts(document, label, differences);
            } else {
                keepForACrash();
            }
            changed.accept(c);
            shownChanged();
        });
        shopChanged = () -> later(strips::askWho);
        session.onShop(shopChanged);
        listening = session.store().onChange(c -> {
            if (JobStore.SHOP.equals(c.jobId())) {
                later(() -> opened(c.part()).ifPresent(k -> read(k, () -> { })));
            }
        });
        strips.askWho();
    }

    /** What is unsaved stays that of who typed it first. */
    private void keepForACrash() {
        if (!document.dirty()) {
            typedBy = null;
        } else if (typedBy == null) {
            typedBy = session.who().orElse(null);
        }
        journal.follow(document, typedBy != null ? typedBy : session.who().orElse(""));
    }

    /**
     * Offers what a crash left of the parts shown here, once it is read.
     *
     * @param mine whether a part is shown here
     * @param show shows a part that was put back
     */
    public void offerLeft(Predicate<PartKey> mine, Consumer<PartKey> show) {
        new DeskJob(DeskWords.text("left.task"), monitor -> {
            List<LeftBehind> left = JobRemains.of(crashes, session.store().file().toString(), JobStore.SHOP).stream()
                    .filter(l -> mine.test(PartKey.parse(l.entry().part()))).toList();
            if (!left.isEmpty()) {
                later(() -> offer(left, show));
            }
        }).schedule();
    }

    private void offer(List<LeftBehind> left, Consumer<PartKey> show) {
        JobRemains remains = new JobRemains(crashes, document, text, session.store());
        strips.offerLeft(left.stream().map(l -> label.apply(PartKey.parse(l.entry().part()))).distinct().toList(),
                JobRemains.authors(left), () -> remains.putBack(left, display, who -> typedBy = who, show),
                () -> remains.throwAway(left));
    }

    /** The parts as they stand on the screen. */
    public JobDocument document() {
        return document;
    }

    /** What a form over one of the parts finds round it. */
    public PageSite site(PartKey key) {
        return new ShopSite(session, document, key);
    }

    /**
     * Reads a part from the store.
     *
     * @param beginning what it starts as while the store has none
     * @param then      called when it is there
     */
    public void open(PartKey key, Part beginning, Runnable then) {
        document.beginWith(key, session.json().tree(beginning));
        read(key, then);
    }

    private void read(PartKey key, Runnable then) {
        JobStore store = session.store();
        new DeskJob(DeskWords.text("editor.opening"), monitor -> {
            try {
                Optional<Saved> now = store.current(JobStore.SHOP, key);
                later(() -> {
                    now.filter(s -> s.number() != document.baseRevision(key) && !document.dirty(key))
                            .ifPresent(s -> document.takeOver(key, s.part(), s.number()));
                    then.run();
                });
            } catch (StoreException e) {
                ILog.of(ShopEditing.class).error("a part of the shop could not be read", e);
                later(() -> say(e.getMessage()));
            }
        }).schedule();
    }

    /** The part under a text, when it is one that was opened here. */
    private Optional<PartKey> opened(String part) {
        return document.job().parts().keySet().stream().filter(k -> k.toString().equals(part)).findFirst();
    }

    /** Takes over what was saved past this window's drafts, as by an import. */
    public void took(List<Saved> saved) {
        saved.forEach(s -> document.takeOver(s.key(), s.part(), s.number()));
    }

    /** Says something across the top; null takes it away. */
    public void say(String text) {
        strips.failed(text, () -> null);
    }

    /**
     * Saves every part that waits, one revision each.
     *
     * @param then called when all that was tried is done
     */
    public void save(Runnable then) {
        List<PendingSave> pending = document.pending();
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            strips.askWho();
            say(DeskWords.text(session.hasSecrets() ? "save.signIn" : "save.who"));
            return;
        }
        if (saving || pending.isEmpty()) {
            return;
        }
        saving = true;
        JobStore store = session.store();
        new DeskJob(DeskWords.text("save.task"), monitor -> {
            JobSaving.Outcome outcome = new JobSaving(store, who.get()).save(JobStore.SHOP, false, pending,
                    new NullProgressMonitor());
            later(() -> {
                if (took(outcome)) {
                    save(then);
                } else {
                    then.run();
                }
            });
        }).schedule();
    }

    /**
     * Takes in what became of a save.
     *
     * @return whether it was put together with what somebody else saved meanwhile, so that it has to be saved again
     */
    private boolean took(JobSaving.Outcome outcome) {
        saving = false;
        boolean merged = false;
        outcome.saved().forEach(s -> document.saved(s.key(), s.part(), s.number()));
        for (ConflictException c : outcome.conflicts()) {
            Saved theirs = c.theirs();
            if (theirs.part().equals(document.draft(theirs.key()).part())) {
                document.saved(theirs.key(), theirs.part(), theirs.number());
            } else if (document.merge(theirs.key(), theirs.part(), theirs.number())) {
                merged = true;
            } else {
                document.conflict(theirs.key(), theirs.part(), theirs.number(), theirs.revision().who(),
                        theirs.revision().savedAt());
            }
        }
        say(outcome.failure().map(e -> DeskWords.text("save.failed", e.getMessage())).orElse(null));
        if (outcome.failure().isEmpty() && outcome.conflicts().isEmpty()) {
            session.say(DeskWords.text("shop.saved"));
        }
        return merged && outcome.failure().isEmpty();
    }

    /** Undo and redo by their standard commands while the part of the window is active and has something for them. */
    public void commands(IServiceLocator site, Supplier<Optional<PartKey>> shown) {
        command(site, IWorkbenchCommandConstants.EDIT_UNDO, () -> shown.get().flatMap(document::undo),
                () -> shown.get().filter(document::canUndo).isPresent());
        command(site, IWorkbenchCommandConstants.EDIT_REDO, () -> shown.get().flatMap(document::redo),
                () -> shown.get().filter(document::canRedo).isPresent());
    }

    private void command(IServiceLocator site, String command, Runnable does, BooleanSupplier enabled) {
        DocumentHandler handler = new DocumentHandler(site, does, enabled);
        commands.add(handler);
        site.getService(IHandlerService.class).activateHandler(command, handler);
    }

    /** Another part is shown, or the one shown was changed: what can be undone is another. */
    public void shownChanged() {
        commands.forEach(DocumentHandler::check);
    }

    /** The window's part is closed: what is not saved by now is thrown away. */
    public void close() {
        journal.forget();
        writer.shutdown();
        listening.close();
        session.removeOnShop(shopChanged);
    }

    private void later(Runnable does) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!box.isDisposed()) {
                    does.run();
                }
            });
        }
    }
}
