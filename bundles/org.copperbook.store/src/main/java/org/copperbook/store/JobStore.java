package org.copperbook.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.report.BoardStep;
import org.copperbook.jobs.report.MonthDetail;
import org.copperbook.jobs.report.MonthReport;
import org.copperbook.jobs.report.Workload;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.store.memory.WindingMemory;
import org.copperbook.store.people.Accounts;
import org.copperbook.store.stock.Stock;

/**
 * Keeps the jobs of a workshop. Saving appends a revision of one part and returns only when it is durable; no revision
 * is ever changed or removed. Everything else (register, search text) is derived from the revisions.
 *
 * <p>Safe for use by several threads, and by several programs on one file. Every method may throw
 * {@link StoreException}; none may be called from a thread that must not wait for a disk.
 *
 * <p>{@code who} is always the key of a person, never a name, because it becomes part of the chained text, from which
 * nothing can be erased.
 */
public interface JobStore extends AutoCloseable {

    /** The job id under which the shop's own parts are kept. */
    String SHOP = "shop";

    /** The job id under which cards taken in from old records are kept. */
    String CARDS = "cards";

    /** Books a machine in: gives the job the next number of the series and keeps the booking, both or neither. */
    default JobHandle create(Booking booking, String who) {
        return create(UUID.randomUUID().toString(), booking, who);
    }

    /**
     * Books a machine in under a key of the caller's. Repeated, as after a connection that broke in the middle, it finds the
     * job that is there and writes nothing: its booking may be another one by then.
     */
    JobHandle create(String jobId, Booking booking, String who);

    /**
     * Appends a revision of a part. What a hand-back's deliveries say was put in stock is received with it, and what they
     * say no more is taken back by reverse movements, in the same transaction.
     *
     * @param basedOnRevision the revision this one was made from; 0 when the job has no such part yet
     * @param why             reason, may be empty
     * @throws ConflictException when the store's current revision is another one; nothing is written
     * @throws StoreException    NOT_FOUND when there is no such job; STOCK when stock cannot be moved so
     */
    Saved save(String jobId, PartKey key, Part part, int basedOnRevision, String who, String why);

    /** The current revision of a part, if the job has it. */
    Optional<Saved> current(String jobId, PartKey key);

    /** The current revision of every part of a job that this version can name, in the order of a job's life. */
    Map<PartKey, Saved> currentParts(String jobId);

    /** Every revision of a part, oldest first. */
    List<Saved> history(String jobId, PartKey key);

    /**
     * A job as it stands. Parts of a kind this version does not know are left out (see {@link #unknownParts}).
     *
     * @throws StoreException NOT_FOUND when there is no such job
     */
    Job load(String jobId);

    /** Keys of parts that a newer version saved in this job and this version cannot show; usually none. */
    List<String> unknownParts(String jobId);

    /** The key of the job with a number. */
    Optional<String> idOf(String number);

    /** The number of the job with a key; nothing else of it is read. */
    Optional<String> numberOf(String jobId);

    /** The earlier job that a job's booking says it returns from; empty when it names none, or none that is here. */
    default Optional<Job> earlierOf(Job job) {
        return job.booking().map(Booking::earlierJob).map(String::strip).filter(n -> !n.equals(job.number()))
                .flatMap(this::idOf).map(this::load);
    }

    /**
     * The customer of the register to whom a job's booking is tied; of merged ones the one that stays. Empty when it is tied to
     * none, or to one that is not here.
     */
    default Optional<Customer> customerOf(Job job) {
        Set<String> seen = new HashSet<>();
        Optional<String> key = job.booking().map(Booking::customerKey);
        while (key.isPresent() && Customer.isKey(key.get()) && seen.add(key.get())) {
            Optional<Customer> found = current(SHOP, Customer.key(key.get())).map(s -> (Customer) s.part());
            if (found.isEmpty() || found.get().mergedInto() == null) {
                return found;
            }
            key = found.map(Customer::mergedInto);
        }
        return Optional.empty();
    }

    /** A page of the register. */
    RegisterSlice register(RegisterQuery query);

    /** Every job whose machine has a serial number, letter case and spaces at its ends aside, the newest first; none for a blank. */
    List<RegisterRow> withSerial(String serial);

    /** Who works on which job now, as far as it is saved; looks through the hours of every job. */
    List<RunningWork> runningWork();

    /** A month in figures, added up from what is derived of every job. */
    MonthReport monthReport(YearMonth month);

    /** A month in figures with what is behind them, of one moment. */
    MonthDetail monthDetail(YearMonth month);

    /** Jobs of the board, each of which stands in exactly one column. */
    BoardSlice board(BoardQuery query);

    /** How many jobs stand in each column of the board; columns without any are left out. */
    Map<BoardStep, Integer> boardCounts();

    /** Hours agreed to and not released yet, added up by trade and day promised. */
    List<Workload.Due> workAhead();

    /**
     * Which jobs got a lot of diodes or resin, as their current parts say. Reads every job once; for a thread of its own.
     *
     * @param lot lot or date code, as on the packet; letter case does not matter
     */
    LotSearch usesOfLot(String lot);

    /** The shop as it stands; what was never saved has its default. */
    Shop shop();

    /** Appends a revision of one of the shop's own parts; as {@link #save} otherwise. */
    default Saved saveShopPart(PartKey key, Part part, int basedOnRevision, String who, String why) {
        return save(SHOP, key, part, basedOnRevision, who, why);
    }

    /**
     * Appends a revision of each of several of the shop's own parts in one transaction: all of them or none.
     *
     * @param goOn asked before each and before all of it is made durable, with how many are written; false stops
     * @return what was saved, in the order given
     * @throws ConflictException     when the store's current revision of one is another one; nothing is written
     * @throws CancellationException when it was stopped; nothing is written
     */
    List<Saved> saveShopParts(List<PartSave> parts, String who, String why, IntPredicate goOn);

    /** The same, without a way to stop it. */
    default List<Saved> saveShopParts(List<PartSave> parts, String who, String why) {
        return saveShopParts(parts, who, why, written -> true);
    }

    /** The current revision of each of the shop's own parts of a kind of which there can be many, by name. */
    List<Saved> shopParts(PartKind kind);

    /** The people by key; they stand outside the chain so that they can be erased lawfully. */
    Map<String, Person> persons();

    /**
     * Keeps a person, in place of one known under the same key. A change of the shop's own people is noted in the chain,
     * by keys, with who made it.
     */
    void savePerson(Person person, String who);

    /** Everybody and every typed name that can be erased, people first. */
    List<PrivateName> privateNames();

    /**
     * Erases a person, a typed name or a photo for good: its key is destroyed, and what is derived from it is made anew.
     * The chain still holds, because it has the key's name only. Copies that were taken earlier are another matter:
     * {@link org.copperbook.store.backup.Erasure}.
     *
     * @param key key of a person or of a typed name, or the hash of a photo
     * @throws StoreException NOT_FOUND when nothing is kept under the key
     */
    Erased erase(String key);

    /** What was erased from this store, and when. */
    Map<String, Instant> erasures();

    /** Erases what was erased elsewhere already; keys that are not here are noted all the same. */
    void eraseAgain(Map<String, Instant> keys);

    /** Keeps the bytes of a photo unchanged and returns their SHA-256 in lower-case hex, the key for PhotoRef. */
    String keepPhoto(byte[] bytes);

    /** The bytes of a photo. */
    Optional<byte[]> photo(String hash);

    /**
     * Takes in people, shop parts and whole jobs in one transaction: all of it or nothing.
     *
     * @return the jobs' keys and numbers, in the order given
     * @throws StoreException ALREADY_THERE when a number or key is taken and {@code taken} says to refuse; NOT_ALLOWED when
     *     customers would be merged in a circle
     */
    List<JobHandle> takeIn(Intake intake, String who, String why, NumberTaken taken);

    /** Takes in one job; as above. */
    default JobHandle takeIn(Job job, String who, String why, NumberTaken taken) {
        return takeIn(Intake.of(job), who, why, taken).get(0);
    }

    /**
     * Who is signed in, and the secrets. Once they are in force every change below is refused with NOT_ALLOWED unless
     * {@code who} is signed in here and may make it. {@link #eraseAgain} only repeats what was allowed elsewhere, and
     * {@link #takeInArchive} needs an empty store: both ask nobody.
     */
    Accounts accounts();

    /** What is on the shelf. */
    Stock stock();

    /** The windings the workshop has had. */
    WindingMemory memory();

    /**
     * Where the chain ends.
     *
     * @param sequence number of links
     * @param hash     hash of the last one
     */
    record ChainEnd(long sequence, String hash) {
    }

    /** The end of the chain as it stands. */
    ChainEnd chainEnd();

    /** The hash of a link; nothing when the chain is not that long. */
    Optional<String> hashOf(long sequence);

    /** Verifies the whole store and names the first bad link. Reads a snapshot; others may go on saving. */
    AuditReport audit();

    /** Makes the register anew from the revisions. */
    void rebuildRegister();

    /**
     * Writes a complete copy while others go on working. The target appears only when the copy is whole and checked.
     *
     * @throws StoreException ALREADY_THERE when the target exists
     */
    void backup(Path target);

    /**
     * Writes the whole store as a zip of JSON lines, photos and a manifest with their SHA-256, from which another program
     * can read everything: every revision with its hash, jobs, people, number series.
     *
     * @throws StoreException ALREADY_THERE when the target exists
     */
    void archive(Path target);

    /**
     * Takes in an archive, all of it or nothing: every revision keeps its text, its time and its hash.
     *
     * @throws StoreException ALREADY_THERE when anything was saved in this store before; CORRUPT when the archive is not
     *                        whole, was changed, or its chain does not hold
     */
    void takeInArchive(Path archive);

    /** The file that holds the store; of a store on a server the local file that stands for it, which need not be. */
    Path file();

    /** Why this store can only be read, for people; nothing when it can be written. */
    default Optional<String> onlyReading() {
        return Optional.empty();
    }

    /** Why the server of this store does not answer now, for people; nothing while it does, and for a store in a file. */
    default Optional<String> unreachable() {
        return Optional.empty();
    }

    /** Since when {@link #unreachable()}. */
    default Optional<Instant> unreachableSince() {
        return Optional.empty();
    }

    /**
     * Calls the listener after every change, from whichever thread noticed it. A listener that throws is logged and
     * does not disturb the save.
     *
     * @return closes the subscription
     */
    Listening onChange(Consumer<Change> listener);

    /** A subscription to changes. */
    interface Listening extends AutoCloseable {
        @Override
        void close();
    }

    @Override
    void close();
}
