package org.copperbook.store.mirror;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.Workload;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.store.AuditReport;
import org.copperbook.store.BoardQuery;
import org.copperbook.store.BoardSlice;
import org.copperbook.store.Change;
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
import org.copperbook.store.StoreException.Kind;
import org.copperbook.store.StoreOptions;
import org.copperbook.store.StoreText;
import org.copperbook.store.jdbc.Mirror;
import org.copperbook.store.memory.WindingMemory;
import org.copperbook.store.people.Accounts;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.copperbook.store.stock.Stock;

/**
 * A store on a server with a copy in a local file. While the server answers everything goes there, and the copy follows. When
 * it does not, reading goes on from the copy and every change is refused with UNREACHABLE, so that whoever typed keeps it and
 * saves it later; {@link #unreachable()} says why. The server is asked every two seconds
 * whether it is there.
 *
 * <p>The copy holds what the server's store holds without photos (but those looked at here) and without anybody's secrets. It
 * can be deleted at any time.
 */
public final class MirroredStore implements JobStore {

    private static final System.Logger LOG = System.getLogger(MirroredStore.class.getName());
    private static final long ASK_EVERY_MILLIS = 2_000;
    private static final long FOLLOW_MILLIS = 300;
    private static final Set<Kind> USELESS =
            EnumSet.of(Kind.CORRUPT, Kind.NOT_A_STORE, Kind.FOREIGN_SCHEMA, Kind.NEWER_SCHEMA);

    private final Supplier<JobStore> opening;
    private final Path standsFor;
    private final Path copyFile;
    private final StoreOptions options;
    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
    private final ScheduledExecutorService clockwork = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "copperbook-mirror");
        t.setDaemon(true);
        return t;
    });
    private final Accounts accounts = new MirroredAccounts(this);
    private final Stock stock = new MirroredStock(this);
    private final WindingMemory memory = new MirroredMemory(this);
    private volatile JobStore copy;
    private volatile JobStore server;
    private volatile StoreException silence;
    private volatile Instant silentSince;
    private volatile long knownWhenSilent;

    private MirroredStore(Supplier<JobStore> opening, Path standsFor, StoreOptions options) {
        this.opening = opening;
        this.standsFor = standsFor;
        this.options = options;
        copyFile = standsFor.resolveSibling(standsFor.getFileName().toString().replaceFirst("\\.sqlite$", "")
                + "-copy.sqlite");
    }

    /**
     * Opens the server's store and its copy; only the copy when the server does not answer and there is one.
     *
     * @param opening   opens the store on the server
     * @param standsFor the local file that stands for the server's store; the copy lies beside it
     * @throws StoreException as opening does; UNREACHABLE when nothing of this store was copied here yet
     */
    public static MirroredStore open(Supplier<JobStore> opening, Path standsFor, StoreOptions options) {
        MirroredStore store = new MirroredStore(opening, standsFor, options);
        try {
            store.openCopyIfPossible();
            try {
                store.came(opening.get());
            } catch (StoreException e) {
                if (e.kind() != Kind.UNREACHABLE || store.copy == null || !Mirror.isWhole(store.copy)) {
                    throw e;
                }
                store.silent(e);
            }
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
        store.clockwork.scheduleWithFixedDelay(store::askAgain, ASK_EVERY_MILLIS, ASK_EVERY_MILLIS,
                TimeUnit.MILLISECONDS);
        store.followSoon();
        return store;
    }

    /** Trouble of the copy alone, such as a full disk, is no reason not to work on the server. */
    private void openCopyIfPossible() {
        try {
            copy = openCopy();
        } catch (StoreException | UncheckedIOException e) {
            copy = null;
            LOG.log(System.Logger.Level.WARNING, "work goes on without a copy on this computer", e);
        }
    }

    private JobStore openCopy() {
        try {
            return SqliteJobStore.open(copyFile, options);
        } catch (StoreException e) {
            if (!USELESS.contains(e.kind())) {
                throw e;
            }
            LOG.log(System.Logger.Level.WARNING, "the copy of the server's store is of no use and is made anew", e);
            deleteCopy();
            return SqliteJobStore.open(copyFile, options);
        }
    }

    private void deleteCopy() {
        try {
            for (String end : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(copyFile.resolveSibling(copyFile.getFileName() + end));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Waits until the copy holds what the server holds now; for tests and before a computer leaves the network. */
    public void follow() {
        if (server == null || silence != null) {
            throw silence == null ? notOpen() : silence;
        }
        pull();
    }

    private synchronized void pull() {
        if (copy == null) {
            return;
        }
        try {
            new Mirror(server, copy).pull();
        } catch (Mirror.OtherStore e) {
            LOG.log(System.Logger.Level.WARNING, "the copy is not of this server's store and is made anew", e);
            JobStore useless = copy;
            copy = null;
            useless.close();
            deleteCopy();
            openCopyIfPossible();
            if (copy != null) {
                new Mirror(server, copy).pull();
            }
        }
    }

    /** The same where nothing depends on it; what goes wrong with the copy is tried again at the next change. */
    private void tryToPull() {
        try {
            pull();
        } catch (StoreException e) {
            notice(e);
            LOG.log(System.Logger.Level.WARNING, "the copy on this computer could not follow", e);
        } catch (RuntimeException e) {
            LOG.log(System.Logger.Level.ERROR, "the copy on this computer could not follow", e);
        }
    }

    private void came(JobStore opened) {
        server = opened;
        opened.onChange(change -> {
            tell(change);
            followSoon();
        });
    }

    private void followSoon() {
        try {
            clockwork.schedule(() -> {
                if (silence == null) {
                    tryToPull();
                }
            }, FOLLOW_MILLIS, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "a change came after the end", e);
        }
    }

    private void askAgain() {
        try {
            if (silence == null) {
                // Said before somebody saves and waits in vain.
                server.chainEnd();
            } else {
                if (server == null) {
                    came(opening.get());
                } else {
                    server.chainEnd();
                }
                Set<Change> missed = Mirror.writtenAfter(server, knownWhenSilent);
                silence = null;
                tryToPull();
                missed.forEach(this::tell);
                tell(new Change(SHOP, Change.REACH, true));
            }
        } catch (StoreException e) {
            notice(e);
            LOG.log(System.Logger.Level.DEBUG, "the server is asked again later", e);
        } catch (RuntimeException e) {
            // Thrown on, it would end the asking for good.
            LOG.log(System.Logger.Level.ERROR, "asking the server again failed", e);
        }
    }

    private void silent(StoreException e) {
        silentSince = options.clock().instant();
        knownWhenSilent = copy == null ? Long.MAX_VALUE : copy.chainEnd().sequence();
        silence = e;
    }

    private void notice(StoreException e) {
        if (e.silent() && silence == null) {
            silent(e);
            tell(new Change(SHOP, Change.REACH, true));
        }
    }

    private void tell(Change change) {
        for (Consumer<Change> l : listeners) {
            try {
                l.accept(change);
            } catch (RuntimeException e) {
                LOG.log(System.Logger.Level.ERROR, "a listener failed on the change of " + change.part(), e);
            }
        }
    }

    private StoreException notOpen() {
        return new StoreException(Kind.UNREACHABLE, StoreText.of("mirror.notYet"));
    }

    /** Reads from the server or, when it does not answer, from the copy. */
    <T> T read(Function<JobStore, T> work) {
        JobStore now = server;
        if (now != null && silence == null) {
            try {
                return work.apply(now);
            } catch (StoreException e) {
                if (!e.silent()) {
                    throw e;
                }
                notice(e);
            }
        }
        JobStore known = copy;
        if (known == null) {
            throw new StoreException(Kind.UNREACHABLE, StoreText.of("mirror.refused"), silence);
        }
        return work.apply(known);
    }

    /** Does what only the server can; refused at once while it does not answer. */
    <T> T onServer(Function<JobStore, T> work) {
        JobStore now = server;
        StoreException why = silence;
        if (now == null || why != null) {
            throw new StoreException(Kind.UNREACHABLE, StoreText.of("mirror.refused"), why);
        }
        try {
            return work.apply(now);
        } catch (StoreException e) {
            notice(e);
            throw e;
        }
    }

    /** The server's store, when it was ever reached; whether it answers now is another matter. */
    Optional<JobStore> server() {
        return Optional.ofNullable(server);
    }

    Path copyFile() {
        return copyFile;
    }

    @Override
    public Optional<String> unreachable() {
        StoreException e = silence;
        return e == null ? Optional.empty() : Optional.of(e.getMessage());
    }

    @Override
    public Optional<Instant> unreachableSince() {
        return silence == null ? Optional.empty() : Optional.of(silentSince);
    }

    @Override
    public JobHandle create(String jobId, Booking booking, String who) {
        return onServer(s -> s.create(jobId, booking, who));
    }

    @Override
    public Saved save(String jobId, PartKey key, Part part, int basedOnRevision, String who, String why) {
        return onServer(s -> s.save(jobId, key, part, basedOnRevision, who, why));
    }

    @Override
    public Optional<Saved> current(String jobId, PartKey key) {
        return read(s -> s.current(jobId, key));
    }

    @Override
    public Map<PartKey, Saved> currentParts(String jobId) {
        return read(s -> s.currentParts(jobId));
    }

    @Override
    public List<Saved> history(String jobId, PartKey key) {
        return read(s -> s.history(jobId, key));
    }

    @Override
    public Job load(String jobId) {
        return read(s -> s.load(jobId));
    }

    @Override
    public List<String> unknownParts(String jobId) {
        return read(s -> s.unknownParts(jobId));
    }

    @Override
    public Optional<String> idOf(String number) {
        return read(s -> s.idOf(number));
    }

    @Override
    public Optional<String> numberOf(String jobId) {
        return read(s -> s.numberOf(jobId));
    }

    @Override
    public RegisterSlice register(RegisterQuery query) {
        return read(s -> s.register(query));
    }

    @Override
    public List<RegisterRow> withSerial(String serial) {
        return read(s -> s.withSerial(serial));
    }

    @Override
    public List<RunningWork> runningWork() {
        return read(JobStore::runningWork);
    }

    @Override
    public BoardSlice board(BoardQuery query) {
        return read(s -> s.board(query));
    }

    @Override
    public Map<BoardStep, Integer> boardCounts() {
        return read(JobStore::boardCounts);
    }

    @Override
    public List<Workload.Due> workAhead() {
        return read(JobStore::workAhead);
    }

    @Override
    public MonthReport monthReport(YearMonth month) {
        return read(s -> s.monthReport(month));
    }

    @Override
    public MonthDetail monthDetail(YearMonth month) {
        return read(s -> s.monthDetail(month));
    }

    @Override
    public LotSearch usesOfLot(String lot) {
        return read(s -> s.usesOfLot(lot));
    }

    @Override
    public Shop shop() {
        return read(JobStore::shop);
    }

    @Override
    public Map<String, Person> persons() {
        return read(JobStore::persons);
    }

    @Override
    public void savePerson(Person person, String who) {
        onServer(s -> {
            s.savePerson(person, who);
            return person;
        });
    }

    @Override
    public List<PrivateName> privateNames() {
        return read(JobStore::privateNames);
    }

    @Override
    public Erased erase(String key) {
        return onServer(s -> s.erase(key));
    }

    @Override
    public Map<String, Instant> erasures() {
        return read(JobStore::erasures);
    }

    @Override
    public void eraseAgain(Map<String, Instant> keys) {
        onServer(s -> {
            s.eraseAgain(keys);
            return keys;
        });
    }

    @Override
    public String keepPhoto(byte[] bytes) {
        return onServer(s -> s.keepPhoto(bytes));
    }

    /** A photo that was looked at here can be looked at again without the server. */
    @Override
    public Optional<byte[]> photo(String hash) {
        Optional<byte[]> found = copied(c -> c.photo(hash)).orElse(Optional.empty());
        if (found.isEmpty()) {
            found = read(s -> s.photo(hash));
            found.ifPresent(bytes -> copied(c -> c.keepPhoto(bytes)));
        }
        return found;
    }

    /** Asks the copy for what the server has too; nothing when there is none or it is in trouble. */
    private <T> Optional<T> copied(Function<JobStore, T> work) {
        JobStore known = copy;
        try {
            return known == null ? Optional.empty() : Optional.of(work.apply(known));
        } catch (StoreException e) {
            LOG.log(System.Logger.Level.WARNING, "the copy on this computer was no help", e);
            return Optional.empty();
        }
    }

    @Override
    public List<Saved> shopParts(PartKind kind) {
        return read(s -> s.shopParts(kind));
    }

    @Override
    public List<Saved> saveShopParts(List<PartSave> parts, String who, String why, IntPredicate goOn) {
        return onServer(s -> s.saveShopParts(parts, who, why, goOn));
    }

    @Override
    public List<JobHandle> takeIn(Intake intake, String who, String why, NumberTaken taken) {
        return onServer(s -> s.takeIn(intake, who, why, taken));
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
        return read(JobStore::chainEnd);
    }

    @Override
    public Optional<String> hashOf(long sequence) {
        return read(s -> s.hashOf(sequence));
    }

    @Override
    public AuditReport audit() {
        return onServer(JobStore::audit);
    }

    @Override
    public void rebuildRegister() {
        onServer(s -> {
            s.rebuildRegister();
            return s;
        });
    }

    @Override
    public void backup(Path target) {
        onServer(s -> {
            s.backup(target);
            return target;
        });
    }

    @Override
    public void archive(Path target) {
        onServer(s -> {
            s.archive(target);
            return target;
        });
    }

    @Override
    public void takeInArchive(Path archive) {
        onServer(s -> {
            s.takeInArchive(archive);
            return archive;
        });
    }

    @Override
    public Path file() {
        return standsFor;
    }

    @Override
    public Optional<String> onlyReading() {
        return server().flatMap(JobStore::onlyReading);
    }

    @Override
    public Listening onChange(Consumer<Change> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    @Override
    public void close() {
        clockwork.shutdownNow();
        try {
            // What is being copied ends first; its store must not be closed under it.
            clockwork.awaitTermination(options.patience().toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (server != null) {
            server.close();
        }
        if (copy != null) {
            copy.close();
        }
    }
}
