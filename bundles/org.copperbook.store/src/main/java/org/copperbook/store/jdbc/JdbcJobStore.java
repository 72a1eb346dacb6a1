package org.copperbook.store.jdbc;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.jobs.rights.Right;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.Staff;
import org.copperbook.store.AuditReport;
import org.copperbook.store.BadLink;
import org.copperbook.store.Change;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardSlice;
import org.copperbook.store.Erased;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.LotSearch;
import org.copperbook.jobs.report.MonthDetail;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.PartSave;
import org.copperbook.store.PrivateName;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RunningWork;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.StoreText;
import org.copperbook.store.memory.WindingMemory;
import org.copperbook.store.people.Accounts;
import org.copperbook.store.stock.Stock;
import org.copperbook.store.stock.StockMove;

/** The store over a database engine with SQL. */
public final class JdbcJobStore implements JobStore {

    /** Raised when more of what is kept has to be put under keys. */
    private static final int PERSONAL_EDITION = 1;

    private final Database database;
    private final Tables tables;
    private final Reading reading;
    private final CustomerAliases aliases;
    private final Writing writing;
    private final Guard guard;
    private final StaffRecord staff;
    private final Accounts accounts;
    private final Listeners listeners = new Listeners();
    private final ChangeWatch watch;
    private final JdbcStock stock;
    private final WindingMemory memory;

    /**
     * Takes over an open database, and closes it at the end.
     *
     * @throws StoreException NEWER_SCHEMA when a newer version laid it out so that nothing can be read
     */
    public static JobStore over(Database database, StoreOptions options) {
        try {
            return new JdbcJobStore(database, options);
        } catch (RuntimeException e) {
            database.close();
            if (database.onlyReading().isPresent()) {
                throw new StoreException(StoreException.Kind.NEWER_SCHEMA, StoreText.of("newerUnreadable"), e);
            }
            throw e;
        }
    }

    private JdbcJobStore(Database database, StoreOptions options) {
        PartJson json = new PartJson();
        this.database = database;
        tables = Tables.with(json, database.hasRegisterText());
        reading = new Reading(tables, json);
        aliases = new CustomerAliases(tables, reading);
        staff = new StaffRecord(tables, reading, json);
        writing = new Writing(tables, reading, json, staff, options.stageOf(), options.clock());
        guard = new Guard(tables, reading);
        boolean writable = database.onlyReading().isEmpty();
        if (writable
                && database.read(c -> tables.settings().number(c, SettingTable.PERSONAL_EDITION)) != PERSONAL_EDITION) {
            database.write(c -> {
                tables.personal().protect(c);
                tables.settings().put(c, SettingTable.PERSONAL_EDITION, Integer.toString(PERSONAL_EDITION));
                return null;
            });
            database.scrub();
        }
        if (writable && database.read(c -> tables.settings().number(c, SettingTable.REGISTER_EDITION))
                != RegisterEntry.EDITION) {
            rebuildRegister();
        }
        if (writable && database.read(c -> tables.settings().number(c, SettingTable.STOCK_EDITION)) != StockTable.EDITION) {
            database.write(c -> {
                writing.stock().rebuild(c);
                return null;
            });
        }
        watch = new ChangeWatch(database, tables, listeners, options.lookForChangesEvery());
        accounts = new JdbcAccounts(database, watch, listeners, tables, guard, staff, writing);
        stock = new JdbcStock(database, tables, reading, writing, guard, watch, listeners);
        memory = new JdbcWindingMemory(database, tables.pastWindings(), writing, guard, watch, listeners);
        if (writable && database.read(c -> tables.settings().number(c, SettingTable.PAST_WINDINGS_EDITION))
                != PastWindingEntry.EDITION) {
            memory.rebuild();
        }
    }

    @Override
    public JobHandle create(String jobId, Booking booking, String who) {
        Objects.requireNonNull(booking, "booking");
        if (jobId.isBlank() || SHOP.equals(jobId) || CARDS.equals(jobId)) {
            throw new IllegalArgumentException("\"" + jobId + "\" is no key of a job");
        }
        named(who);
        JobHandle job = watch.write(c -> {
            guard.may(c, Right.BOOK_IN, who);
            return writing.create(c, jobId, booking, who);
        });
        listeners.tell(new Change(job.id(), PartKind.BOOKING.word(), false));
        return job;
    }

    @Override
    public Saved save(String jobId, PartKey key, Part part, int basedOnRevision, String who, String why) {
        fits(SHOP.equals(jobId), key, part);
        if (key.kind() == PartKind.STOCK_ITEM) {
            throw new IllegalArgumentException(key + " is moved and described, see stock()");
        }
        named(who);
        String reason = why == null ? "" : why;
        WithStock kept = watch.write(c -> {
            guard.maySave(c, jobId, key, part, who);
            List<StockMove> moves = part instanceof HandBack next ? writing.delivered().moves(c, jobId, next, writing.now())
                    : List.of();
            Saved saved = writing.save(c, jobId, key, part, basedOnRevision, who, reason);
            return new WithStock(saved, stock.moved(c, moves, who));
        });
        listeners.tell(new Change(jobId, key.toString(), false));
        stock.tell(kept.moved());
        return kept.saved();
    }

    /** What was kept, and the items that were moved with it. */
    private record WithStock(Saved saved, List<Saved> moved) {
    }

    @Override
    public List<Saved> saveShopParts(List<PartSave> parts, String who, String why, IntPredicate goOn) {
        parts.forEach(p -> fits(true, p.key(), p.part()));
        named(who);
        String reason = why == null ? "" : why;
        List<Saved> all = watch.write(c -> {
            List<Saved> saved = new ArrayList<>();
            for (PartSave p : parts) {
                goOn(goOn, saved.size());
                guard.maySave(c, SHOP, p.key(), p.part(), who);
                saved.add(writing.save(c, SHOP, p.key(), p.part(), p.basedOnRevision(), who, reason));
            }
            goOn(goOn, saved.size());
            return saved;
        });
        parts.forEach(p -> listeners.tell(new Change(SHOP, p.key().toString(), false)));
        return all;
    }

    /** Ends a transaction that somebody stopped. */
    static void goOn(IntPredicate goOn, int written) {
        if (!goOn.test(written)) {
            throw new CancellationException(StoreText.of("stopped"));
        }
    }

    @Override
    public List<Saved> shopParts(PartKind kind) {
        return database.read(c -> reading.shopParts(c, kind));
    }

    @Override
    public Optional<Saved> current(String jobId, PartKey key) {
        return database.read(c -> reading.current(c, jobId, key));
    }

    @Override
    public Map<PartKey, Saved> currentParts(String jobId) {
        return database.read(c -> reading.currentParts(c, jobId));
    }

    @Override
    public List<Saved> history(String jobId, PartKey key) {
        return database.read(c -> reading.history(c, jobId, key));
    }

    @Override
    public Job load(String jobId) {
        return database.read(c -> reading.load(c, jobId));
    }

    @Override
    public List<String> unknownParts(String jobId) {
        return database.read(c -> reading.unknownParts(c, jobId));
    }

    @Override
    public Optional<String> idOf(String number) {
        return database.read(c -> tables.jobs().idOf(c, number));
    }

    @Override
    public Optional<String> numberOf(String jobId) {
        return database.read(c -> tables.jobs().numberOf(c, jobId));
    }

    @Override
    public RegisterSlice register(RegisterQuery query) {
        return database.read(c -> tables.register().page(c, query,
                query.text().isBlank() ? List.of() : aliases.families(c)));
    }

    @Override
    public List<RegisterRow> withSerial(String serial) {
        return serial == null || serial.isBlank() ? List.of() : database.read(c -> tables.register().withSerial(c, serial.strip()));
    }

    @Override
    public List<RunningWork> runningWork() {
        return database.read(reading::runningWork);
    }

    @Override
    public MonthReport monthReport(YearMonth month) {
        return database.read(c -> tables.months().report(c, month));
    }

    @Override
    public MonthDetail monthDetail(YearMonth month) {
        return database.read(c -> new MonthDetail(tables.months().report(c, month), tables.months().entries(c, month)));
    }

    @Override
    public BoardSlice board(BoardQuery query) {
        return database.read(c -> tables.board().page(c, query));
    }

    @Override
    public Map<BoardStep, Integer> boardCounts() {
        return database.read(tables.board()::counts);
    }

    @Override
    public List<Workload.Due> workAhead() {
        return database.read(tables.board()::workAhead);
    }

    @Override
    public LotSearch usesOfLot(String lot) {
        return database.readApart(c -> reading.usesOfLot(c, lot));
    }

    @Override
    public Shop shop() {
        return database.read(reading::shop);
    }

    @Override
    public Map<String, Person> persons() {
        return database.read(c -> tables.people().all(c));
    }

    @Override
    public void savePerson(Person person, String who) {
        named(who);
        watch.write(c -> {
            boolean staffChanges = guard.mayKeep(c, person, who);
            tables.people().put(c, person);
            if (staffChanges) {
                staff.note(c, who, StoreText.of("staff.kept", person.key()), writing.now());
            }
            return person;
        });
        listeners.tell(new Change(SHOP, Change.PEOPLE, false));
    }

    @Override
    public List<PrivateName> privateNames() {
        return database.read(c -> new PrivateNames(tables).all(c));
    }

    @Override
    public Erased erase(String key) {
        Erased erased = database.readApart(c -> new PrivateNames(tables).before(c, key));
        erased(Map.of(key, writing.now()), c -> guard.mayErase(c, key));
        return erased;
    }

    @Override
    public Map<String, Instant> erasures() {
        return database.read(c -> tables.personal().erased(c));
    }

    @Override
    public void eraseAgain(Map<String, Instant> keys) {
        erased(keys, c -> { });
    }

    private interface Asking {
        void ask(Connection c) throws SQLException;
    }

    private void erased(Map<String, Instant> keys, Asking asking) {
        watch.write(c -> {
            asking.ask(c);
            boolean staffChanges = !Collections.disjoint(keys.keySet(), staffOf(c));
            writing.erase(c, keys);
            if (staffChanges) {
                staff.note(c, guard.signedIn().orElse(StaffRecord.NOT_SIGNED_IN), StoreText.of("staff.erased",
                        String.join(", ", new TreeSet<>(keys.keySet()))), writing.now());
            }
            return keys;
        });
        database.scrub();
        listeners.tell(new Change(SHOP, Change.PEOPLE, false));
    }

    @Override
    public String keepPhoto(byte[] bytes) {
        return database.write(c -> {
            guard.somebody(c);
            return tables.photos().put(c, bytes, writing.now());
        });
    }

    @Override
    public Optional<byte[]> photo(String hash) {
        return database.read(c -> tables.photos().get(c, hash));
    }

    @Override
    public List<JobHandle> takeIn(Intake intake, String who, String why, NumberTaken taken) {
        intake.shopParts().forEach((k, p) -> fits(true, k, p));
        intake.jobs().forEach(j -> j.parts().forEach((k, p) -> fits(false, k, p)));
        named(who);
        String reason = why == null ? "" : why;
        List<JobHandle> jobs = watch.write(c -> {
            guard.mayTakeIn(c, intake, who);
            return writing.takeIn(c, intake, who, reason, taken);
        });
        if (!intake.people().isEmpty()) {
            listeners.tell(new Change(SHOP, Change.PEOPLE, false));
        }
        intake.shopParts().keySet().forEach(k -> listeners.tell(new Change(SHOP, k.toString(), false)));
        for (int i = 0; i < jobs.size(); i++) {
            for (PartKey k : intake.jobs().get(i).parts().keySet()) {
                listeners.tell(new Change(jobs.get(i).id(), k.toString(), false));
            }
        }
        return jobs;
    }

    @Override
    public Accounts accounts() {
        return accounts;
    }

    @Override
    public Stock stock() {
        return stock;
    }

    @Override
    public WindingMemory memory() {
        return memory;
    }

    @Override
    public ChainEnd chainEnd() {
        return database.read(tables.revisions()::end);
    }

    @Override
    public Optional<String> hashOf(long sequence) {
        return database.read(c -> tables.revisions().hashOf(c, sequence));
    }

    @Override
    public AuditReport audit() {
        return database.readApart(this::audit);
    }

    @Override
    public void rebuildRegister() {
        database.write(c -> {
            writing.rebuildRegister(c);
            return null;
        });
    }

    @Override
    public void backup(Path target) {
        database.backup(this, target);
    }

    @Override
    public Optional<String> onlyReading() {
        return database.onlyReading();
    }

    @Override
    public void archive(Path target) {
        database.readApart(c -> {
            new ArchiveWriter(tables.personal()).write(c, target);
            return target;
        });
    }

    @Override
    public void takeInArchive(Path archive) {
        watch.write(c -> {
            if (!ArchiveReader.isEmpty(c)) {
                throw new StoreException(StoreException.Kind.ALREADY_THERE, StoreText.of("archive.notEmpty", file()));
            }
            new ArchiveReader(archive).readInto(c, tables.photos(), writing.now());
            tables.personal().protect(c);
            // People and names that cannot be read are found now and not when somebody looks for one.
            tables.people().all(c);
            tables.personal().names(c);
            writing.rebuildRegister(c);
            writing.rebuildPastWindings(c);
            writing.stock().rebuild(c);
            return archive;
        });
    }

    @Override
    public Path file() {
        return database.file();
    }

    @Override
    public Listening onChange(Consumer<Change> listener) {
        return listeners.add(listener);
    }

    @Override
    public void close() {
        watch.close();
        database.close();
    }

    private AuditReport audit(Connection c) throws SQLException {
        List<String> problems = new ArrayList<>(database.integrityProblems(c));
        ChainAudit chain = new ChainAudit();
        Optional<BadLink> bad = chain.firstBad(c);
        problems.addAll(tables.photos().problems(c));
        List<String> notes = new ArrayList<>(chain.notes());
        staff.oddity(c).ifPresent(notes::add);
        return new AuditReport(chain.read(), tables.jobs().all(c).size(), bad, problems, notes);
    }

    Database database() {
        return database;
    }

    Tables tables() {
        return tables;
    }

    Writing writing() {
        return writing;
    }

    private Set<String> staffOf(Connection c) throws SQLException {
        return Staff.of(tables.people().all(c).values()).members().keySet();
    }

    static void named(String who) {
        if (who == null || who.isBlank()) {
            throw new IllegalArgumentException("every save needs the key of the person who saves");
        }
    }

    private static void fits(boolean shop, PartKey key, Part part) {
        if (!key.kind().type().isInstance(part)) {
            throw new IllegalArgumentException("a part under " + key + " must be a "
                    + key.kind().type().getSimpleName() + ", not " + part);
        }
        if (key.kind() == PartKind.STAFF) {
            throw new IllegalArgumentException(key + " is written by the store itself when people change");
        }
        if (key.kind().ofShop() != shop) {
            throw new IllegalArgumentException(key + (shop ? " belongs to a job, not to the shop"
                    : " belongs to the shop, not to a job"));
        }
    }
}
