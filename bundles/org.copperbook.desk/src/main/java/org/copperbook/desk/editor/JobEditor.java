package org.copperbook.desk.editor;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Change;
import org.copperbook.desk.document.Coalescing;
import org.copperbook.desk.document.DraftText;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.document.PendingSave;
import org.copperbook.desk.page.ManyParts;
import org.copperbook.desk.page.PageRegistry;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.shell.DemoBand;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.shell.ReachBand;
import org.copperbook.desk.shell.ReadingBand;
import org.copperbook.desk.shell.Judge;
import org.copperbook.desk.shell.Judgement;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.VerdictsPanel;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.ProvisionalTag;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.store.ConflictException;
import org.copperbook.store.JobStore;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.UserFolders;
import org.copperbook.store.journal.CrashJournal;
import org.copperbook.store.journal.LeftBehind;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.operation.ModalContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;

/**
 * An open job: its outline at the left, the part in the middle, what the readings say at the right. Opens and saves
 * outside the window's thread; verdicts follow the typing.
 */
public final class JobEditor extends EditorPart implements ISaveablePart2 {

    private static final int LAST_WRITING_SECONDS = 3;

    private final ScheduledExecutorService writer = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "copperbook-journal");
        t.setDaemon(true);
        return t;
    });
    private final Outline outline = new Outline(PageRegistry.read(Platform.getExtensionRegistry()));
    private final Set<PartKey> opened = new TreeSet<>();
    private final Runnable shopChanged = this::shopChanged;
    private final EditorCommands commands = new EditorCommands(this);
    private DeskSession session;
    private JobDocument document;
    private Judgement judgement = Judgement.NONE;
    private Coalescing<Job, Judgement> judging;
    private int judgementsAsked;
    private int judgementsShown;
    private JobJournal journal;
    private CrashJournal crashes;
    private JobStore.Listening listening;
    private Display display;
    private Composite box;
    private JobStrips strips;
    private OutlineTable table;
    private PageStack stack;
    private VerdictsPanel panel;
    private String savedAt = "";
    private String typedBy;
    private boolean closing;
    private boolean waiting;
    private LastFocus lastFocus;
    /** A page that comes into sight begins at its top, whatever is said above it. */
    private boolean choosing = true;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof JobInput job)) {
            throw new PartInitException("not a job: " + input);
        }
        setSite(site);
        setInput(input);
        setPartName(job.getName());
        session = DeskSession.ofWorkbench();
    }

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(box);
        DemoBand.addTo(box, session);
        ReadingBand.addTo(box, session);
        ReachBand.addTo(box, session);
        strips = new JobStrips(box, session);
        strips.onMoved(by -> page().filter(p -> !choosing).ifPresent(p -> p.scrollBy(by)));
        Label opening = Look.of(box).as(Look.Role.TEXT, new Label(box, SWT.NONE));
        opening.setText(DeskWords.text("editor.opening"));
        GridDataFactory.fillDefaults().indent(12, 12).applyTo(opening);
        Look.of(box).onResize(box, () -> {
            Look.of(box).dress(box);
            if (stack != null) {
                stack.rebuild();
            }
            box.layout(true, true);
        });
        commands.activate();
        session.onShop(shopChanged);
        load(opening);
    }

    /** The open job; null while it is being read. */
    public JobDocument document() {
        return document;
    }

    /** What the checks said last. */
    public Judgement judgement() {
        return judgement;
    }

    /** Whether the job has been read and everything typed so far has been judged. */
    public boolean isSettled() {
        return document != null && judgementsAsked == judgementsShown;
    }

    /** The rows of the outline. */
    public List<OutlineRow> outline() {
        return table == null ? List.of() : table.rows();
    }

    /** What the readings say. */
    public VerdictsPanel verdicts() {
        return panel;
    }

    /** The part shown, if any. */
    public Optional<PartKey> shown() {
        return stack == null ? Optional.empty() : stack.key();
    }

    /** The page shown, if any. */
    public Optional<PartPage> page() {
        return stack == null ? Optional.empty() : stack.page();
    }

    /** When the job was last saved from here, in words; empty when it was not. */
    public String savedAt() {
        return savedAt;
    }

    /** Shows the page of a part; false when no plug-in contributes one. */
    public boolean show(PartKey key) {
        for (OutlineRow row : outline()) {
            if (row instanceof OutlineRow.Page p && p.key().equals(key)) {
                choose(p);
                return true;
            }
        }
        return false;
    }

    /** Begins one more part of a kind and shows its page. */
    public void begin(PartKey key) {
        opened.add(key);
        refreshOutline();
        show(key);
        page().ifPresent(PartPage::focusFirst);
    }

    /** Why nothing may be edited now: what is typed here and not saved is somebody else's. */
    Optional<String> ofSomebodyElse() {
        boolean others = session.hasSecrets() && isDirty() && typedBy != null
                && !session.who().filter(typedBy::equals).isPresent();
        return others ? Optional.of(DeskWords.text("others.blocked", session.shop().nameOf(typedBy)))
                : Optional.empty();
    }

    /** Remembers who typed what is not saved: it stays that person's when somebody else signs in. */
    private void noteTyping() {
        if (!isDirty()) {
            typedBy = null;
        } else if (typedBy == null) {
            typedBy = session.who().orElse(null);
        }
    }

    /** What is put back after a crash stays with who typed it, unless something of somebody is here already. */
    private void wasTypedBy(String key) {
        if (typedBy == null) {
            typedBy = key;
            shopChanged();
        }
    }

    /** Says something at the top of the job: what happened, what was kept, what to do. */
    public void say(String words) {
        if (closing) {
            session.say(words);
        } else {
            strips.failed(words, () -> null);
        }
    }

    /** Says that a workbook has been written, and offers to open it. */
    public void wrote(Path workbook) {
        if (closing) {
            session.say(DeskWords.text("workbook.written", workbook));
        } else {
            strips.wrote(workbook);
        }
    }

    /** Shows the next or the previous page. */
    void turn(int by) {
        List<OutlineRow.Page> pages = outline().stream().filter(OutlineRow.Page.class::isInstance)
                .map(OutlineRow.Page.class::cast).toList();
        for (int i = 0; i < pages.size(); i++) {
            if (stack.shows(pages.get(i))) {
                choose(pages.get(Math.floorMod(i + by, pages.size())));
                boolean took = page().map(PartPage::focusFirst).orElse(false);
                // a page just built is laid out, and so can take the cursor, only after this event
                display.asyncExec(() -> {
                    if (!closing && !box.isDisposed() && (!took || display.getFocusControl() instanceof Composite c
                            && !(c instanceof Table) && !(c instanceof Combo))) {
                        focusPage();
                    }
                });
                return;
            }
        }
    }

    void undo() {
        TypingUnderHand.giveUp(display);
        shown().flatMap(document::undo).ifPresent(this::reveal);
    }

    void redo() {
        TypingUnderHand.giveUp(display);
        shown().flatMap(document::redo).ifPresent(this::reveal);
    }

    boolean canUndo() {
        return document != null && shown().filter(document::canUndo).isPresent();
    }

    boolean canRedo() {
        return document != null && shown().filter(document::canRedo).isPresent();
    }

    @Override
    public boolean isDirty() {
        return document != null && document.dirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        TypingUnderHand.commit(display);
        if (ofSomebodyElse().isPresent()) {
            strips.typedBy(typedBy);
            strips.failed(DeskWords.text("save.others", session.shop().nameOf(typedBy)), () -> null);
            monitor.setCanceled(true);
            InFront.bring(this);
            return;
        }
        if (session.who().isEmpty() && !session.shop().people().isEmpty()) {
            strips.askWho();
            strips.failed(DeskWords.text(session.hasSecrets() ? "save.signIn" : "save.who"), () -> null);
            monitor.setCanceled(true);
            InFront.bring(this);
            return;
        }
        List<PendingSave> pending = document.pending();
        JobInput input = (JobInput) getEditorInput();
        JobSaving saving = new JobSaving(session.store(), session.who().orElse(""));
        JobSaving.Outcome[] outcome = new JobSaving.Outcome[1];
        try {
            ModalContext.run(m -> outcome[0] = saving.save(document.id(), input.isNew(), pending, m), true, monitor,
                    display);
        } catch (InvocationTargetException e) {
            ILog.of(JobEditor.class).error("job " + input.getName() + " could not be saved", e.getCause());
            failed(DeskWords.text("save.failed", e.getCause().getMessage()), monitor);
            return;
        } catch (InterruptedException e) {
            monitor.setCanceled(true);
            return;
        }
        took(outcome[0], monitor);
    }

    /** Nobody throws away what somebody else typed, nor what waits for the server: the job stays open or, when the program ends, the text is kept. */
    @Override
    public int promptToSaveOnClose() {
        if (ofSomebodyElse().isEmpty() && !waiting) {
            return ISaveablePart2.DEFAULT;
        }
        if (PlatformUI.getWorkbench().isClosing()) {
            TypingUnderHand.commit(display);
            keepForTheNextStart();
            return ISaveablePart2.NO;
        }
        if (ofSomebodyElse().isPresent()) {
            strips.typedBy(typedBy);
        }
        strips.failed(ofSomebodyElse().isPresent() ? DeskWords.text("close.others", session.shop().nameOf(typedBy))
                : DeskWords.text("close.waits"), () -> null);
        return ISaveablePart2.CANCEL;
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a job is never saved under another number");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    /** Comes back to where the cursor was, if the page is the same; else to the first field. */
    @Override
    public void setFocus() {
        if (lastFocus == null || !lastFocus.restore()) {
            focusPage();
        }
    }

    /** When somebody had the cursor in it last, by {@link System#nanoTime}. */
    public long workedOnAt() {
        return lastFocus == null ? Long.MIN_VALUE : lastFocus.at();
    }

    private void focusPage() {
        if (page().isEmpty() || !page().get().focusFirst()) {
            (table == null ? box : table.table()).setFocus();
        }
    }

    @Override
    public void dispose() {
        closing = true;
        session.removeOnShop(shopChanged);
        if (listening != null) {
            listening.close();
        }
        if (journal != null && ofSomebodyElse().isEmpty() && !waiting) {
            journal.forget();
        }
        if (document != null) {
            session.waits(document.id(), false);
        }
        writer.shutdown();
        super.dispose();
    }

    private void load(Label opening) {
        JobInput input = (JobInput) getEditorInput();
        JobStore store = session.store();
        crashes = new CrashJournal(UserFolders.current().journal());
        DeskJob job = new DeskJob(DeskWords.text("editor.opening"), monitor -> {
            try {
                Map<PartKey, Saved> parts = input.isNew() ? Map.of() : store.currentParts(input.jobId());
                List<LeftBehind> left = JobRemains.of(crashes, store.file().toString(), input.jobId());
                display.asyncExec(() -> {
                    if (!box.isDisposed()) {
                        opening.dispose();
                        opened(input, parts, left);
                    }
                });
            } catch (StoreException e) {
                display.asyncExec(() -> {
                    if (!box.isDisposed()) {
                        opening.setText(DeskWords.text("editor.cannotOpen", input.getName(), e.getMessage()));
                        box.layout(true, true);
                    }
                });
            }
        });
        job.schedule();
    }

    private void opened(JobInput input, Map<PartKey, Saved> parts, List<LeftBehind> left) {
        Map<PartKey, org.copperbook.jobs.Part> records = new TreeMap<>();
        Map<PartKey, Integer> revisions = new TreeMap<>();
        parts.forEach((k, s) -> {
            records.put(k, s.part());
            revisions.put(k, s.number());
        });
        document = new JobDocument(new Job(input.jobId(), input.number(), records), revisions, session.json());
        journal = new JobJournal(crashes, writer, new DraftText(session.json()), session.store().file().toString(),
                input.jobId(), Clock.systemUTC());
        judging = new Coalescing<>(j -> Judge.of(j, session.shop()), session.background(), this::judged);
        build();
        document.addListener(this::changed);
        listening = session.store().onChange(c -> display.asyncExec(() -> storeChanged(c)));
        refreshOutline();
        showFirst();
        strips.askWho();
        if (!left.isEmpty()) {
            JobRemains remains = new JobRemains(crashes, document, new DraftText(session.json()), session.store());
            strips.offerLeft(left.stream().map(l -> label(PartKey.parse(l.entry().part()))).toList(),
                    JobRemains.authors(left), () -> remains.putBack(left, display, this::wasTypedBy, this::show),
                    () -> remains.throwAway(left));
        }
        askJudgement();
        box.layout(true, true);
        choosing = false;
        if (getSite().getPage().getActivePart() == this) {
            setFocus();
        }
    }

    private void build() {
        JobSplit split = new JobSplit(box, () -> table == null ? 0 : table.wantedWidth());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(split.whole());
        table = new OutlineTable(split.whole(), this::choose, row -> {
            choose(row);
            page().ifPresent(PartPage::focusFirst);
        });
        table.table().moveAbove(split.content());
        table.onWidth(split::divide);
        stack = new PageStack(split.content(), this::site);
        lastFocus = new LastFocus(split.whole());
        panel = new VerdictsPanel(split.content(), this::go);
        split.divide();
    }

    private void showFirst() {
        String group = PerspectiveGroups.current(getSite());
        List<OutlineRow.Page> pages = outline().stream().filter(OutlineRow.Page.class::isInstance)
                .map(OutlineRow.Page.class::cast).toList();
        pages.stream().filter(p -> p.page().group().equals(group)).findFirst()
                .or(() -> pages.stream().findFirst()).ifPresent(this::choose);
    }

    private void choose(OutlineRow row) {
        if (row instanceof OutlineRow.Page p) {
            if (!stack.shows(p) && !table.table().isFocusControl()) {
                lastFocus.forget();
            }
            stack.show(p);
            panel.part(p.key());
            boolean before = choosing;
            choosing = true;
            strips.blocked(judgement.blocked().get(p.key()));
            choosing = before;
            select(p);
            commands.check();
        } else if (row instanceof OutlineRow.Point p) {
            showPoint(p.state().point());
        } else if (row instanceof OutlineRow.Add a) {
            offer(a);
        }
    }

    private void showPoint(HoldPoint point) {
        if (show(PartKey.of(PartKind.SIGN_OFFS))) {
            page().ifPresent(p -> p.reveal(HoldPointPointer.of(point)));
        }
    }

    private void offer(OutlineRow.Add add) {
        ManyParts many = outline.many(add.page());
        List<PartKey> offers = new ArrayList<>(many.offers(document.job()));
        offers.removeAll(opened);
        AddMenu.show(table.table(), offers, many, key -> {
            document.beginWith(key, many.beginning(key, document.job(), session.json()));
            begin(key);
        });
    }

    private void select(OutlineRow.Page p) {
        List<OutlineRow> rows = outline();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i) instanceof OutlineRow.Page q && q.key().equals(p.key())
                    && q.page().id().equals(p.page().id())) {
                table.select(i);
            }
        }
    }

    private void go(Verdict v) {
        if (show(v.part())) {
            reveal(v.path() == null ? "" : v.path());
        }
    }

    private void reveal(String pointer) {
        page().ifPresent(p -> {
            if (pointer.isEmpty() || !p.reveal(pointer)) {
                p.focusFirst();
            }
        });
    }

    private void changed(Change change) {
        switch (change.what()) {
            case DRAFT, SAVED -> {
                stack.each((key, page) -> {
                    if (key.equals(change.key()) || change.key().kind() == PartKind.SIGN_OFFS) {
                        page.refresh();
                    }
                });
                noteTyping();
                journal.follow(document, typist());
                refreshOutline();
                firePropertyChange(IEditorPart.PROP_DIRTY);
                if (change.what() == Change.What.DRAFT) {
                    askJudgement();
                }
            }
            case TYPING -> {
                noteTyping();
                journal.follow(document, typist());
            }
            case CONFLICT -> {
                strips.conflicts(document, this::label, (part, d) -> nameOf(part, d.pointer()));
                refreshOutline();
                firePropertyChange(IEditorPart.PROP_DIRTY);
            }
            case VERDICTS -> {
                panel.show(judgement.verdicts());
                stack.each((key, page) -> page.judge(judgement.verdicts()));
                refreshOutline();
            }
        }
    }

    private String typist() {
        return typedBy != null ? typedBy : session.who().orElse("");
    }

    private void askJudgement() {
        judgementsAsked++;
        judging.ask(document.job());
    }

    private void judged(Judgement next) {
        int answers = judgementsAsked;
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (closing || box.isDisposed()) {
                    return;
                }
                judgementsShown = Math.max(judgementsShown, answers);
                boolean blockedChanged = !next.blocked().equals(judgement.blocked());
                judgement = next;
                document.tell(new Change(Change.What.VERDICTS, null));
                if (blockedChanged) {
                    shown().ifPresent(k -> strips.blocked(judgement.blocked().get(k)));
                    stack.each((k, p) -> p.refresh());
                }
            });
        }
    }

    private void took(JobSaving.Outcome outcome, IProgressMonitor monitor) {
        outcome.booked().ifPresent(handle -> {
            document.bookedIn(handle.id(), handle.number());
            journal.renamed(handle.id());
            setInputWithNotify(new JobInput(handle.id(), handle.number()));
            setPartName(handle.number());
        });
        for (Saved s : outcome.saved()) {
            document.saved(s.key(), s.part(), s.number());
        }
        boolean merged = false;
        for (ConflictException c : outcome.conflicts()) {
            Saved theirs = c.theirs();
            if (theirs != null && theirs.part().equals(document.draft(theirs.key()).part())) {
                // A try of which nothing was heard any more was kept after all.
                document.saved(theirs.key(), theirs.part(), theirs.number());
            } else if (document.merge(theirs.key(), theirs.part(), theirs.number())) {
                merged = true;
            } else {
                document.conflict(theirs.key(), theirs.part(), theirs.number(), theirs.revision().who(),
                        theirs.revision().savedAt());
            }
        }
        if (merged && outcome.failure().isEmpty()) {
            display.asyncExec(() -> {
                if (!closing && !box.isDisposed()) {
                    getSite().getPage().saveEditor(this, false);
                }
            });
        }
        if (outcome.failure().filter(StoreException::silent).isPresent()) {
            waits(monitor);
        } else if (outcome.failure().isPresent()) {
            doesNotWait();
            if (!JobSaving.refusal(outcome.failure().get())) {
                ILog.of(JobEditor.class).error("a part could not be saved", outcome.failure().get());
            }
            failed(DeskWords.text("save.failed", outcome.failure().get().getMessage()), monitor);
        } else if (!outcome.conflicts().isEmpty()) {
            doesNotWait();
            monitor.setCanceled(true);
            InFront.bring(this);
        } else {
            doesNotWait();
            List<String> typed = stillTyped();
            if (typed.isEmpty()) {
                strips.failed(null, () -> null);
            } else {
                strips.notUnderstood(DeskWords.text("save.butTyped", String.join("; ", typed)), this::takeOutTyped);
            }
            savedAt = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).format(LocalTime.now());
            session.say(DeskWords.text(document.dirty() ? "save.doneButTyped" : "save.done", savedAt,
                    document.number()));
        }
        firePropertyChange(IEditorPart.PROP_DIRTY);
    }

    /** A text that was not understood may stand in a part that is closed now; it can be taken out all the same. */
    private void takeOutTyped() {
        document.takeOutTyped();
        strips.failed(null, () -> null);
    }

    /** What could not be saved for want of the server is kept here, and saved when it answers again. */
    private void waits(IProgressMonitor monitor) {
        monitor.setCanceled(true);
        waiting = true;
        session.waits(document.id(), true);
        journal.follow(document, typist());
        journal.keep(durable -> display.asyncExec(() -> {
            if (!closing && !box.isDisposed() && waiting) {
                strips.failed(DeskWords.text(!durable ? "save.notKept" : provisionalTag().isPresent() ? "save.waitsNew"
                        : "save.waits", provisionalTag().map(ProvisionalTag::name).orElse("")), () -> null);
            }
        }));
    }

    private void doesNotWait() {
        waiting = false;
        session.waits(document.id(), false);
    }

    /** The program ends: waits, but not for ever, until the last that was typed is durable. */
    private void keepForTheNextStart() {
        CountDownLatch kept = new CountDownLatch(1);
        journal.follow(document, typist());
        journal.keep(durable -> kept.countDown());
        try {
            kept.await(LAST_WRITING_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What a machine is called that is booked in while the server is silent, until it has a number. */
    public Optional<ProvisionalTag> provisionalTag() {
        return waiting && document.number().isEmpty() ? Optional.of(new ProvisionalTag(document.id())) : Optional.empty();
    }

    /** Saves what waited, once the server answers. */
    private void saveWhatWaits() {
        if (waiting && session.store().unreachable().isEmpty() && ofSomebodyElse().isEmpty()
                && (session.who().isPresent() || session.shop().people().isEmpty())) {
            waiting = false;
            session.waits(document.id(), false);
            if (isDirty()) {
                getSite().getPage().saveEditor(this, false);
            }
        }
    }

    /** The places whose texts could not be understood and so were not saved, by the names that people see. */
    private List<String> stillTyped() {
        List<String> places = new ArrayList<>();
        for (OutlineRow row : outline()) {
            if (row instanceof OutlineRow.Page p && p.dirty()) {
                for (String pointer : document.draft(p.key()).asTyped().keySet()) {
                    String[] place = {p.label()};
                    stack.each((key, page) -> page.nameOf(pointer).filter(n -> key.equals(p.key()))
                            .ifPresent(n -> place[0] = DeskWords.text("save.typedAt", p.label(), n)));
                    places.add(place[0]);
                }
            }
        }
        return places;
    }

    private void failed(String words, IProgressMonitor monitor) {
        monitor.setCanceled(true);
        InFront.bring(this);
        strips.failed(words, () -> () -> getSite().getPage().saveEditor(this, false));
    }

    private void shopChanged() {
        display.asyncExec(() -> {
            if (document != null && !box.isDisposed()) {
                strips.askWho();
                strips.typedBy(ofSomebodyElse().isPresent() ? typedBy : null);
                saveWhatWaits();
                stack.each((key, page) -> page.refresh());
                askJudgement();
            }
        });
    }

    /** Somebody saved a part of this job, elsewhere or in another page of this window: shows it, unless it is changed here too. */
    private void storeChanged(org.copperbook.store.Change change) {
        if (closing || !change.jobId().equals(document.id())) {
            return;
        }
        PartKey key = PartKey.parse(change.part());
        session.background().execute(() -> session.store().current(document.id(), key)
                .ifPresent(s -> display.asyncExec(() -> {
                    if (!closing && s.number() > document.baseRevision(key)) {
                        document.takeOver(key, s.part(), s.number());
                    }
                })));
    }

    private void refreshOutline() {
        if (table != null) {
            table.show(outline.rows(document, opened, judgement));
            shown().filter(k -> !table.isUnderway()).ifPresent(k -> outline().stream().filter(r -> r instanceof OutlineRow.Page p && stack.shows(p))
                    .findFirst().ifPresent(r -> select((OutlineRow.Page) r)));
        }
    }

    private String label(PartKey key) {
        return outline().stream().filter(r -> r instanceof OutlineRow.Page p && p.key().equals(key)).findFirst()
                .map(OutlineRow::label).orElse(key.toString());
    }

    /** What people call a place of a part: the label of its field, or the place itself where no page has been shown. */
    private String nameOf(PartKey part, String pointer) {
        String[] name = {pointer};
        stack.each((key, page) -> page.nameOf(pointer).filter(n -> key.equals(part)).ifPresent(n -> name[0] = n));
        return name[0];
    }

    private PageSite site(PartKey key) {
        return new EditorPageSite(this, session, key);
    }

    /** The control of the whole editor. */
    Control control() {
        return box;
    }
}
