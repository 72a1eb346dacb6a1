package org.copperbook.office.stock;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.ProposedLines;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.office.AfterChanges;
import org.copperbook.office.Behind;
import org.copperbook.office.Quotes;
import org.copperbook.office.SinglePageEditor;
import org.copperbook.office.WireNeed;
import org.copperbook.office.registers.HistoryWindow;
import org.copperbook.office.registers.ImportWindow;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RegisterWorkbook;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSort;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockEntry;
import org.copperbook.store.stock.StockMove;
import org.copperbook.store.stock.StockRefusedException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/**
 * What is on the shelf: the list above, below it what can be done with the item marked and what became of it. Kept up with
 * every movement, here and elsewhere.
 */
public final class StockEditor extends SinglePageEditor {

    public static final String ID = "org.copperbook.office.editor.wire-and-parts";

    private static final int PAUSE = 200;
    private static final int LEDGER_ROWS = 500;
    private static final int LIST_SHARE = 4;
    private static final int BELOW_SHARE = 6;
    private static final PartKey OLD_WIRE = PartKey.of(PartKind.WIRE_STOCK);

    private final StockWords words = new StockWords(Words.of(Quotes.class));
    private DeskSession session;
    private JobStore.Listening listening;
    private Composite box;
    private Behind behind;
    private Composite old;
    private Label oldSaid;
    private StockList list;
    private CTabFolder tabs;
    private MovePane move;
    private LedgerPane ledger;
    private ItemPane describe;
    private Map<String, String> numbers = Map.of();
    private String shownCode;
    private MovePane.Wish refused;
    /** Place in the chain of what the last list taken in here made; null for none. */
    private volatile Long lastList;

    @Override
    public void createPartControl(Composite parent) {
        session = DeskSession.ofWorkbench();
        Display display = parent.getDisplay();
        Look look = Look.of(display);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(box);
        behind = new Behind("copperbook-stock", box, e -> {
            ILog.of(StockEditor.class).info("the stock could not be read or moved", e);
            move.say(String.valueOf(e.getMessage()), false);
        });
        old = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(old);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(old);
        old.setVisible(false);
        oldSaid = look.as(Look.Role.TEXT, new Label(old, SWT.WRAP));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(look.wrapping(), SWT.DEFAULT)
                .applyTo(oldSaid);
        PushButton.in(old, "stock.takeOver", words.text("stock.takeOver"), this::takeOver);
        SashForm halves = new SashForm(box, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        list = new StockList(halves, words, this::chosen, this::into, this::copy);
        tabs = look.as(Look.Role.TEXT, new CTabFolder(halves, SWT.TOP | SWT.FLAT));
        tabs.setData(Desk.ID, "stock.tabs");
        tabs.setTabHeight(look.rowHeight());
        Composite moving = new Composite(tabs, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 6).applyTo(moving);
        move = new MovePane(moving, words, this::wish, this::propose, this::allTheSame);
        ledger = new LedgerPane(moving, words, this::copy);
        Composite row = new Composite(moving, SWT.NONE);
        RowLayout wraps = new RowLayout(SWT.HORIZONTAL);
        wraps.marginLeft = 0;
        wraps.spacing = 8;
        row.setLayout(wraps);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(row);
        PushButton.in(row, "stock.takeBack", words.text("stock.takeBack"), this::takeBack);
        PushButton.in(row, "stock.ledgerOut", words.text("stock.ledgerOut"), this::ledgerOut);
        PushButton.in(row, "stock.listOut", words.text("stock.listOut"), this::listOut);
        PushButton.in(row, "stock.listIn", words.text("stock.listIn"), this::listIn);
        PushButton.in(row, "stock.listBack", words.text("stock.listBack"), this::listBack);
        ItemDrafts drafts = ItemDrafts.of(display, session);
        describe = new ItemPane(tabs, words, drafts, this::keep, item -> new HistoryWindow(box.getShell(), session, Words.of(Quotes.class),
                item.code(), JobStore.SHOP, item.key(), null).open());
        tab("stock.moving", moving);
        tab("stock.description", describe.control());
        tabs.setSelection(0);
        halves.setWeights(LIST_SHARE, BELOW_SHARE);
        Reach.ensure(row);
        Reach.ensure(old);
        look.onResize(box, () -> {
            look.dress(box);
            tabs.setTabHeight(look.rowHeight());
            Reach.ensure(box);
            list.fit();
            ledger.fit();
            box.layout(true, true);
        });
        move.show(Optional.empty(), currency());
        box.addDisposeListener(e -> describe.close());
        drafts.takeOver(this::typedBefore);
        AfterChanges again = new AfterChanges(box, PAUSE, this::reload);
        listening = session.store().onChange(change -> {
            if (JobStore.SHOP.equals(change.jobId())) {
                display.asyncExec(again::changed);
            }
        });
        reload();
    }

    /** Shows what was typed when the program ended: of these items the one typed about last. */
    private void typedBefore(List<String> codes) {
        if (box.isDisposed()) {
            return;
        }
        tabs.setSelection(1);
        if (codes.get(0).isEmpty()) {
            describe.show(Optional.empty());
        } else {
            list.mark(codes.get(0));
            describe.recall();
        }
    }

    @Override
    public void setFocus() {
        list.setFocus();
    }

    @Override
    public void dispose() {
        if (listening != null) {
            listening.close();
        }
        if (behind != null) {
            behind.close();
        }
        super.dispose();
    }

    private String currency() {
        return session.shop().workshop().currency();
    }

    private record Read(List<StockItem> items, int oldSpools) {
    }

    private void reload() {
        if (box.isDisposed()) {
            return;
        }
        behind.run(() -> {
            List<StockItem> items = session.store().stock().items().stream().map(s -> (StockItem) s.part()).toList();
            int spools = session.store().current(JobStore.SHOP, OLD_WIRE).map(s -> ((WireStock) s.part()).spools().size())
                    .orElse(0);
            behind.later(() -> show(new Read(items, spools)));
        });
    }

    private void show(Read read) {
        boolean older = read.oldSpools() > 0;
        if (older) {
            oldSaid.setText(words.text("stock.older", read.oldSpools()));
        }
        if (older != old.getVisible()) {
            old.setVisible(older);
            ((org.eclipse.swt.layout.GridData) old.getLayoutData()).exclude = !older;
            box.layout(true, true);
        }
        list.show(read.items(), currency());
    }

    /** The ledger of what is marked is read behind; what is typed about an item stays while the same one is marked. */
    private void chosen(Optional<StockItem> item) {
        move.show(item, currency());
        String code = item.map(StockItem::code).orElse(null);
        if (code == null || !code.equals(shownCode)) {
            shownCode = code;
            refused = null;
            if (code != null) {
                // What was done may have taken the item out of what is looked for; the answer stays all the same.
                move.say("", false);
            }
            describe.show(item);
        } else {
            describe.follow(item.get());
        }
        if (item.isEmpty()) {
            ledger.show(List.of(), numbers, this::nameOf);
            return;
        }
        behind.run(() -> {
            List<StockEntry> entries = session.store().stock().ledger(code, LEDGER_ROWS);
            Map<String, String> jobs = new HashMap<>();
            for (StockEntry e : entries) {
                String job = e.movement().job();
                if (job != null && !jobs.containsKey(job)) {
                    session.store().numberOf(job).ifPresent(number -> jobs.put(job, number));
                }
            }
            behind.later(() -> {
                if (code.equals(shownCode)) {
                    numbers = jobs;
                    ledger.show(entries, numbers, this::nameOf);
                }
            });
        });
    }

    private String nameOf(String key) {
        return session.shop().nameOf(key);
    }

    private void into() {
        if (tabs.getSelectionIndex() == 0) {
            move.setFocus();
        } else {
            describe.setFocus();
        }
    }

    private void wish(MovePane.Wish wish) {
        wish(wish, false);
    }

    /** @param beyond whether it was said that more may be promised than is there */
    private void wish(MovePane.Wish wish, boolean beyond) {
        Optional<String> who = session.who();
        Optional<StockItem> item = list.marked();
        if (who.isEmpty() || item.isEmpty()) {
            move.say(words.text(who.isEmpty() ? "stock.whoFirst" : "stock.noneChosen"), false);
            return;
        }
        behind.run(() -> {
            Optional<String> job = wish.job().isEmpty() ? Optional.empty() : jobOf(wish.job());
            if (job.isEmpty() && !wish.job().isEmpty()) {
                behind.later(() -> move.say(words.text("stock.noJob", wish.job()), false));
                return;
            }
            boolean counted = wish.kind() == StockMovement.Kind.ADJUST;
            BigDecimal onHand = session.store().stock().item(item.get().code()).map(s -> ((StockItem) s.part()).onHand())
                    .orElse(BigDecimal.ZERO);
            BigDecimal quantity = counted ? wish.quantity().subtract(onHand) : wish.quantity();
            if (counted && quantity.signum() == 0) {
                behind.later(() -> move.say(words.text("stock.countedSame", StockWords.amount(onHand, item.get())), false));
                return;
            }
            boolean ofJob = wish.kind() != StockMovement.Kind.RECEIVE && !counted;
            StockMovement m = StockMovement.of(wish.kind(), quantity, ofJob ? job.orElse(null) : null, Instant.now())
                    .withUnit(wish.unit().orElse(null)).withLot(wish.lot().isEmpty() ? null : wish.lot())
                    .withNote(wish.note().isEmpty() ? null : wish.note())
                    .withPrice(wish.kind() == StockMovement.Kind.RECEIVE ? wish.price().orElse(null) : null);
            make(new StockMove(item.get().code(), beyond ? m.allTheSame() : m), wish, who.get());
        });
    }

    /** How much of the wire marked the windings of a job need that it does not have yet, and where the figure comes from. */
    private void propose(String typed) {
        Optional<StockItem> item = list.marked().filter(WireNeed::isWire);
        if (item.isEmpty()) {
            move.say(words.text("stock.typeAmount"), false);
            move.setFocus();
            return;
        }
        String code = item.get().code();
        String size = item.get().size();
        behind.run(() -> {
            Optional<String> id = jobOf(typed);
            if (id.isEmpty()) {
                behind.later(() -> move.say(words.text("stock.noJob", typed), false));
                return;
            }
            Job job = session.store().load(id.get());
            List<StockItem> items = session.store().stock().items().stream().map(s -> (StockItem) s.part()).toList();
            WireNeed need = WireNeed.of(size, WireNeed.bySize(job, session.store().shop()), items,
                    session.store().stock().movesFor(id.get()), id.get());
            behind.later(() -> {
                if (code.equals(shownCode)) {
                    proposed(need, size, job.number());
                }
            });
        });
    }

    private void proposed(WireNeed need, String size, String number) {
        if (need.needed().signum() == 0) {
            move.say(words.text("stock.needsNone", number, size), false);
            move.setFocus();
            return;
        }
        boolean more = need.still().signum() > 0;
        if (more) {
            move.propose(need.still());
        }
        move.say(words.text(more ? "stock.needs" : "stock.needsNoMore", number, StockWords.amount(need.needed()), size,
                StockWords.amount(need.setAside()), StockWords.amount(need.issued()), StockWords.amount(need.still()),
                NumberFormat.getPercentInstance().format(ProposedLines.ALLOWANCE)), false);
    }

    /** The key of the job with a number, or of the only one in the register that has what was typed. */
    private Optional<String> jobOf(String typed) {
        Optional<String> exact = session.store().idOf(typed);
        if (exact.isPresent()) {
            return exact;
        }
        List<RegisterRow> rows = session.store().register(new RegisterQuery(typed, 0, 2, RegisterSort.NEWEST_FIRST)).rows();
        return rows.size() == 1 ? Optional.of(rows.get(0).jobId()) : Optional.empty();
    }

    /**
     * Makes a movement; for the background.
     *
     * @param wish what was asked for, to be asked for again all the same; null where it cannot be
     */
    private void make(StockMove what, MovePane.Wish wish, String who) {
        try {
            StockItem now = (StockItem) session.store().stock().move(List.of(what), who).get(0).part();
            String number = Optional.ofNullable(what.movement().job()).flatMap(session.store()::numberOf).orElse("");
            behind.later(() -> {
                refused = null;
                move.made();
                move.say(words.text(number.isEmpty() ? "stock.made" : "stock.madeFor", words.of(what.movement().kind()),
                        StockWords.amount(what.movement().quantity(), now), now.code(), StockWords.amount(now.onHand(), now),
                        StockWords.amount(now.free(), now), number), false);
                reload();
            });
        } catch (StockRefusedException e) {
            behind.later(() -> {
                boolean canBeSaid = wish != null && e.refusal().canBeSaid();
                refused = canBeSaid ? wish : null;
                move.say(e.getMessage(), canBeSaid);
            });
        }
    }

    /** Worked out anew: what was counted may differ by another amount by now. */
    private void allTheSame() {
        if (refused != null) {
            wish(refused, true);
        }
    }

    private void takeBack() {
        Optional<String> who = session.who();
        Optional<StockEntry> entry = ledger.marked();
        if (who.isEmpty() || entry.isEmpty()) {
            move.say(words.text(who.isEmpty() ? "stock.whoFirst" : "stock.nothingToTakeBack"), false);
            return;
        }
        StockMove back = new StockMove(entry.get().item().code(), entry.get().movement().reverse(Instant.now()));
        behind.run(() -> make(back, null, who.get()));
    }

    private void keep(StockItem item, StockItem before) {
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            describe.say(words.text("stock.whoFirst"));
            return;
        }
        behind.run(() -> {
            try {
                StockItem kept = (StockItem) session.store().stock().describe(item, before, who.get(), "").part();
                behind.later(() -> {
                    describe.kept(kept);
                    shownCode = kept.code();
                    list.mark(item.code());
                    reload();
                    describe.say(words.text("stock.kept", item.code()));
                });
            } catch (StoreException e) {
                behind.later(() -> describe.say(e.getMessage()));
            }
        });
    }

    private void takeOver() {
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            move.say(words.text("stock.whoFirst"), false);
            return;
        }
        behind.run(() -> {
            int made = session.store().stock().takeOverWire(words.text("stock.wire"), who.get(), words.text("stock.takeOver"))
                    .size();
            behind.later(() -> {
                move.say(words.text("stock.takenOver", made), false);
                reload();
            });
        });
    }

    private void copy(Table t) {
        CopiedBlock.of(t).toClipboard(t.getDisplay());
        move.say(words.text("stock.copied", t.getItemCount()), false);
    }

    /** Rows of a list become items, described and counted, all of them or none. */
    private void listIn() {
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            move.say(words.text("stock.whoFirst"), false);
            return;
        }
        Stock stock = session.store().stock();
        StockSheet sheet = sheet();
        ListTaking taking = new ListTaking(stock, words, who.get(), taken -> taken.stream()
                .mapToLong(s -> s.revision().sequence()).max().ifPresent(last -> lastList = last));
        ImportWindow<Stock.Listed> window = new ImportWindow<>(box.getShell(), Words.of(Quotes.class), words.text("stock.tab"),
                sheet.list(), sheet::listed, taking, told -> {
                    if (!box.isDisposed()) {
                        move.say(told, false);
                        reload();
                    }
                });
        taking.from(window);
        window.open();
    }

    /**
     * The list that made the movement marked, else the last one that was taken in here, else the one that described the item
     * marked last, is taken back as a whole.
     */
    private void listBack() {
        Optional<String> who = session.who();
        Optional<Long> of = ledger.marked().filter(e -> e.movement().list() != null).map(StockEntry::sequence)
                .or(() -> Optional.ofNullable(lastList));
        Optional<String> code = list.marked().map(StockItem::code);
        if (who.isEmpty()) {
            move.say(words.text("stock.whoFirst"), false);
            return;
        }
        DeskJob job = new DeskJob(words.text("stock.listBack"), monitor -> {
            String outcome;
            try {
                Optional<Long> from = of.or(() -> code.flatMap(this::listOf));
                if (from.isEmpty()) {
                    behind.later(() -> move.say(words.text("stock.listFirst"), false));
                    return;
                }
                List<Saved> back = session.store().stock().takeBackList(from.get(), who.get(), words.text("stock.listBackWhy"),
                        n -> !monitor.isCanceled());
                long gone = back.stream().map(s -> (StockItem) s.part()).filter(i -> Boolean.TRUE.equals(i.retired())).count();
                lastList = null;
                outcome = words.text(gone == 0 ? "stock.tookListBack" : "stock.tookListBackNew", back.size(), gone);
            } catch (StoreException | CancellationException e) {
                outcome = e.getMessage();
            }
            String told = outcome;
            behind.later(() -> {
                move.say(told, false);
                reload();
            });
        });
        job.setUser(true);
        job.schedule();
    }

    /** What a list kept of an item, if nothing was kept of it since; a list that counted nothing left no movement to be marked. */
    private Optional<Long> listOf(String code) {
        return session.store().stock().item(code).filter(s -> ListTaking.isReason(s.revision().why(), words))
                .map(s -> s.revision().sequence());
    }

    private StockSheet sheet() {
        Stock stock = session.store().stock();
        return new StockSheet(words, code -> stock.stand(code).map(Stock.Stand::seen).orElse(Stock.Seen.NOTHING));
    }

    private void listOut() {
        StockSheet sheet = sheet();
        List<String> codes = list.shown().stream().map(StockItem::code).toList();
        write(sheet.listOut(), () -> {
            Map<String, Stock.Stand> stands = new HashMap<>();
            session.store().stock().stands().forEach(s -> stands.put(s.item().code(), s));
            return codes.stream().map(stands::get).filter(Objects::nonNull).map(sheet::row).toList();
        }, words.text("stock.listFile"));
    }

    private void ledgerOut() {
        StockSheet sheet = sheet();
        List<Map<String, Object>> rows = ledger.entries().stream().map(e -> sheet.row(e, numbers, this::nameOf)).toList();
        list.marked().ifPresent(item -> write(sheet.ledger(item.code()), () -> rows,
                words.text("stock.ledgerFile", item.code())));
    }

    /** @param rows read behind the window, as they stand when the workbook is written */
    private void write(RegisterShape shape, Supplier<List<Map<String, Object>>> rows, String file) {
        RegisterWorkbook workbook = new RegisterWorkbook(shape, session.shop().workshop(), LocalDate.now());
        Path folder = WorkbookFolder.current();
        Path target = folder.resolve(file);
        DeskJob job = new DeskJob(words.text("stock.writing"), monitor -> {
            String outcome;
            try {
                Files.createDirectories(folder);
                workbook.write(rows.get(), target);
                outcome = words.text("stock.written", target);
            } catch (WorkbookNotWrittenException | StoreException e) {
                outcome = e.getMessage();
            } catch (IOException e) {
                outcome = words.text("month.noFolder", folder, String.valueOf(e.getMessage()));
            }
            String told = outcome;
            behind.later(() -> move.say(told, false));
        });
        job.setUser(true);
        job.schedule();
    }

    private void tab(String key, Control control) {
        CTabItem item = new CTabItem(tabs, SWT.NONE);
        item.setText(words.text(key));
        item.setControl(control);
    }
}
