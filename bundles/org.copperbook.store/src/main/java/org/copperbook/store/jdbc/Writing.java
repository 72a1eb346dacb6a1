package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.check.SentQuoteGuard;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.json.PersonalFields;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.report.MonthFacts;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.store.ConflictException;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.Revision;
import org.copperbook.store.Saved;
import org.copperbook.store.StageOf;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;
import org.copperbook.store.memory.CardTaken;
import org.copperbook.store.memory.SameCard;

/** The steps that write, each to be run inside one writing transaction. */
final class Writing {

    private final Tables tables;
    private final Reading reading;
    private final PartJson json;
    private final StaffRecord staff;
    private final StageOf stageOf;
    private final Clock clock;
    private final StockWriting stock;
    private final DeliveredStock delivered;
    private final ListTakenBack listTakenBack;

    Writing(Tables tables, Reading reading, PartJson json, StaffRecord staff, StageOf stageOf, Clock clock) {
        this.tables = tables;
        this.reading = reading;
        this.json = json;
        this.staff = staff;
        this.stageOf = stageOf;
        this.clock = clock;
        delivered = new DeliveredStock(tables, reading);
        StockWriting.Append shop = (c, key, part, revision, who, why) -> append(c, JobStore.SHOP, "", key, part, revision, who,
                why);
        stock = new StockWriting(tables, reading, json, shop);
        listTakenBack = new ListTakenBack(tables, reading, stock, shop);
    }

    StockWriting stock() {
        return stock;
    }

    ListTakenBack listTakenBack() {
        return listTakenBack;
    }

    DeliveredStock delivered() {
        return delivered;
    }

    JobHandle create(Connection c, String jobId, Booking booking, String who) throws SQLException {
        Optional<String> there = tables.jobs().numberOf(c, jobId);
        if (there.isPresent()) {
            return new JobHandle(jobId, there.get());
        }
        JobHandle job = new JobHandle(jobId, nextNumber(c));
        tables.jobs().add(c, job, now());
        append(c, job.id(), job.number(), PartKey.of(PartKind.BOOKING), booking, 1, who, "");
        register(c, reading.readable(c, job.id(), job.number()));
        return job;
    }

    Saved save(Connection c, String jobId, PartKey key, Part part, int basedOn, String who, String why)
            throws SQLException {
        String number = reading.number(c, jobId);
        if (tables.revisions().latestNumber(c, jobId, key.toString()) != basedOn) {
            throw conflict(c, jobId, key, part, basedOn);
        }
        if (part instanceof Quote quote) {
            refuseToChangeWhatWentOut(c, jobId, number, key, quote);
        }
        if (part instanceof Customer customer) {
            refuseToMergeInACircle(c, key, customer);
        }
        Saved saved = append(c, jobId, number, key, part, basedOn + 1, who, why);
        if (!JobStore.SHOP.equals(jobId)) {
            Reading.Readable job = reading.readable(c, jobId, number);
            register(c, job);
            if (key.kind() == PartKind.WINDING || key.kind() == PartKind.NAMEPLATE) {
                remember(c, job);
            }
        }
        return saved;
    }

    /** After a conflict was told: who sees that the other sent the offer knows why it is closed now. */
    private void refuseToChangeWhatWentOut(Connection c, String jobId, String number, PartKey key, Quote next)
            throws SQLException {
        Quote before = reading.current(c, jobId, key).map(s -> (Quote) s.part()).orElse(null);
        boolean changed = SentQuoteGuard.changesWhatWentOut(number, before, next);
        if (before != null && next.revision() != before.revision()) {
            // A number that went out already belongs to that offer, also where an older one was taken back meanwhile.
            changed |= reading.history(c, jobId, key).stream().map(s -> (Quote) s.part())
                    .filter(q -> SentQuoteGuard.isClosed(q) && q.revision() == next.revision())
                    .anyMatch(q -> SentQuoteGuard.changesWhatWentOut(number, q, next));
        }
        if (changed) {
            throw new StoreException(StoreException.Kind.NOT_ALLOWED, StoreText.of("quote.wentOut"));
        }
    }

    /** Asked of what is kept now: two people may merge two customers into each other at the same time. */
    private void refuseToMergeInACircle(Connection c, PartKey key, Customer customer) throws SQLException {
        if (leadsBack(c, key, customer)) {
            throw new StoreException(StoreException.Kind.NOT_ALLOWED, StoreText.of("customer.circle", called(key, customer)));
        }
    }

    /** Asked once all of them are in, since their order says nothing. */
    private void refuseToTakeInACircle(Connection c, Map<PartKey, Part> taken) throws SQLException {
        for (Map.Entry<PartKey, Part> e : new TreeMap<>(taken).entrySet()) {
            if (e.getValue() instanceof Customer customer && leadsBack(c, e.getKey(), customer)) {
                throw new StoreException(StoreException.Kind.NOT_ALLOWED,
                        StoreText.of("customer.circleTakenIn", called(e.getKey(), customer)));
            }
        }
    }

    private static String called(PartKey key, Customer customer) {
        return customer.name() == null ? key.name() : customer.name();
    }

    /** Whether who a customer is merged into is, in the end, merged into that customer. */
    private boolean leadsBack(Connection c, PartKey key, Customer customer) throws SQLException {
        Set<String> way = new HashSet<>(Set.of(key.name()));
        Customer at = customer;
        while (at != null && at.mergedInto() != null && Customer.isKey(at.mergedInto())) {
            String into = at.mergedInto();
            if (into.equals(key.name())) {
                return true;
            }
            at = way.add(into) ? reading.current(c, JobStore.SHOP, Customer.key(into)).map(s -> (Customer) s.part()).orElse(null)
                    : null;
        }
        return false;
    }

    List<JobHandle> takeIn(Connection c, Intake intake, String who, String why, NumberTaken taken)
            throws SQLException {
        for (Person p : intake.people()) {
            tables.people().put(c, p);
        }
        if (intake.people().stream().anyMatch(p -> !p.roles().isEmpty())) {
            staff.note(c, who, why, now());
        }
        for (byte[] photo : intake.photos()) {
            tables.photos().put(c, photo, now());
        }
        for (Map.Entry<PartKey, Part> e : new TreeMap<>(intake.shopParts()).entrySet()) {
            if (e.getValue() instanceof StockItem) {
                continue;
            }
            int latest = tables.revisions().latest(c, JobStore.SHOP, e.getKey().toString()).map(Revision::revision)
                    .orElse(0);
            append(c, JobStore.SHOP, "", e.getKey(), e.getValue(), latest + 1, who, why);
        }
        refuseToTakeInACircle(c, intake.shopParts());
        List<JobHandle> handles = new ArrayList<>();
        for (Job job : intake.jobs()) {
            JobHandle handle = handle(c, job, taken);
            Instant changed = now();
            tables.jobs().add(c, handle, changed);
            for (Map.Entry<PartKey, Part> e : job.parts().entrySet()) {
                changed = append(c, handle.id(), handle.number(), e.getKey(), e.getValue(), 1, who, why).revision()
                        .savedAt();
            }
            register(c, handle, job, changed);
            remember(c, PastWindingEntry.of(new Job(handle.id(), handle.number(), job.parts()), Map.of(), changed));
            handles.add(handle);
        }
        takeInStock(c, intake, who, why);
        return handles;
    }

    /** After the jobs, which a movement can name. */
    private void takeInStock(Connection c, Intake intake, String who, String why) throws SQLException {
        for (Map.Entry<PartKey, Part> e : new TreeMap<>(intake.shopParts()).entrySet()) {
            if (e.getValue() instanceof StockItem item) {
                if (!StockItem.isCode(item.code()) || !item.key().equals(e.getKey())) {
                    throw new IllegalArgumentException(e.getKey() + " holds an item with the code " + item.code());
                }
                stock.takeIn(c, item, item.onHand(), null, who, why);
            }
        }
        stock.move(c, intake.stockMoves(), who);
    }

    void rebuildRegister(Connection c) throws SQLException {
        tables.register().clear(c);
        for (JobHandle job : tables.jobs().all(c)) {
            register(c, reading.readable(c, job.id(), job.number()));
        }
        tables.personal().clearUses(c);
        tables.revisions().eachOf(c, PersonalFields.kinds().stream().map(PartKind::word).toList(), this::mention);
        tables.settings().put(c, SettingTable.REGISTER_EDITION, Integer.toString(RegisterEntry.EDITION));
    }

    private void mention(Connection c, String jobId, String part, String chained) throws SQLException {
        for (String key : tables.privateText().mentioned(part, chained)) {
            tables.personal().use(c, key, jobId);
        }
    }

    /** Destroys what is kept under keys, and makes the register rows anew in which it was shown. */
    void erase(Connection c, Map<String, Instant> keys) throws SQLException {
        for (Map.Entry<String, Instant> e : keys.entrySet()) {
            tables.personal().erase(c, e.getKey(), e.getValue());
            for (String job : tables.personal().jobs(c, e.getKey())) {
                if (!JobStore.SHOP.equals(job)) {
                    register(c, reading.readable(c, job, reading.number(c, job)));
                }
            }
        }
        tables.people().changed(c);
    }

    /** Takes in one card unless it is in already. */
    CardTaken takeInCard(Connection c, OldCard card, String who, String why, SameCard same) throws SQLException {
        PartKey key = PastWindingEntry.key(card, json);
        Optional<Revision> latest = tables.revisions().latest(c, JobStore.CARDS, key.toString());
        if (latest.isPresent()) {
            boolean known = tables.pastWindings().fingerprint(c, JobStore.CARDS, key)
                    .filter(PastWindingEntry.fingerprint(card, json)::equals).isPresent();
            if (known || same == SameCard.REFUSE) {
                return known ? CardTaken.KNOWN : CardTaken.CONTRADICTS;
            }
        }
        int revision = latest.map(Revision::revision).orElse(0) + 1;
        append(c, JobStore.CARDS, "", key, card, revision, who, why);
        remember(c, PastWindingEntry.of(card, key, revision, now(), json).stream().toList());
        return latest.isPresent() ? CardTaken.REVISED : CardTaken.NEW;
    }

    void rebuildPastWindings(Connection c) throws SQLException {
        tables.pastWindings().clear(c);
        for (JobHandle job : tables.jobs().all(c)) {
            remember(c, reading.readable(c, job.id(), job.number()));
        }
        for (String part : tables.revisions().partsOf(c, JobStore.CARDS)) {
            Optional<Revision> latest = tables.revisions().latest(c, JobStore.CARDS, part);
            if (latest.isPresent()) {
                rememberCard(c, latest.get());
            }
        }
        tables.settings().put(c, SettingTable.PAST_WINDINGS_EDITION, Integer.toString(PastWindingEntry.EDITION));
    }

    /** Makes anew what is derived of one job. */
    void derive(Connection c, String jobId) throws SQLException {
        Reading.Readable job = reading.readable(c, jobId, reading.number(c, jobId));
        register(c, job);
        remember(c, job);
    }

    /** Remembers the winding on a card; of one that cannot be read there is none. */
    void rememberCard(Connection c, Revision card) throws SQLException {
        remember(c, reading.pastWinding(card).stream().toList());
    }

    private void remember(Connection c, Reading.Readable job) throws SQLException {
        List<PastWindingEntry> entries = PastWindingEntry.of(job.job(), job.revisions(), job.changed());
        tables.pastWindings().keepOnly(c, job.job().id(), entries);
        remember(c, entries);
    }

    private void remember(Connection c, List<PastWindingEntry> entries) throws SQLException {
        for (PastWindingEntry e : entries) {
            tables.pastWindings().put(c, e);
        }
    }

    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private Saved append(Connection c, String jobId, String number, PartKey key, Part part, int revision, String who,
            String why) throws SQLException {
        Saved saved = new Saved(key, part, tables.revisions().append(c, jobId, number, key.toString(), revision, now(), who,
                why, tables.privateText().chained(c, jobId, key, json.write(part))));
        if (part instanceof StockItem item) {
            tables.stock().note(c, saved.revision(), item);
        }
        return saved;
    }

    private void register(Connection c, Reading.Readable r) throws SQLException {
        register(c, new JobHandle(r.job().id(), r.job().number()), r.job(), r.changed());
    }

    /** The same for a job whose parts need not be read back. */
    private void register(Connection c, JobHandle handle, Job job, Instant changed) throws SQLException {
        Job numbered = new Job(handle.id(), handle.number(), job.parts());
        tables.register().put(c, RegisterEntry.of(numbered, changed, stageOf));
        tables.board().put(c, handle.id(), BoardPlace.workAhead(numbered, stageOf));
        tables.months().put(c, handle.id(), MonthFacts.of(numbered, changed, clock.getZone()));
    }

    private String nextNumber(Connection c) throws SQLException {
        return tables.numbers().next(c, reading.numberPattern(c), LocalDate.now(clock).getYear());
    }

    private JobHandle handle(Connection c, Job job, NumberTaken taken) throws SQLException {
        Optional<String> sameId = tables.jobs().numberOf(c, job.id());
        boolean sameNumber = !job.number().isEmpty() && tables.jobs().idOf(c, job.number()).isPresent();
        if (taken == NumberTaken.REFUSE && (sameId.isPresent() || sameNumber)) {
            throw new StoreException(StoreException.Kind.ALREADY_THERE,
                    sameNumber ? StoreText.of("numberTaken", job.number())
                            : StoreText.of("jobThere", sameId.get().isEmpty() ? job.id() : sameId.get()));
        }
        return new JobHandle(sameId.isPresent() ? UUID.randomUUID().toString() : job.id(),
                job.number().isEmpty() || sameNumber ? nextNumber(c) : job.number());
    }

    private ConflictException conflict(Connection c, String jobId, PartKey key, Part part, int basedOn)
            throws SQLException {
        Optional<Saved> theirs = reading.current(c, jobId, key);
        String message = theirs.map(t -> StoreText.of("conflict", key, t.revision().who(), t.revision().savedAt(),
                t.number(), basedOn)).orElseGet(() -> StoreText.of("conflict.gone", key, basedOn));
        return new ConflictException(message, theirs.orElse(null), part, basedOn);
    }
}
