package org.copperbook.store.jdbc;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.DefaultLimits;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.lot.LotUse;
import org.copperbook.jobs.lot.LotUses;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.WireOnShelf;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.jobs.work.Hours;
import org.copperbook.store.JobStore;
import org.copperbook.store.LotSearch;
import org.copperbook.store.NumberPattern;
import org.copperbook.store.Revision;
import org.copperbook.store.RunningWork;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.copperbook.store.StoreText;

/** Makes records of kept revisions. */
final class Reading {

    private static final System.Logger LOG = System.getLogger(Reading.class.getName());

    private final Tables tables;
    private final PartJson json;
    private final LimitProfile shipped;
    private final FaultTables shippedFaults;

    Reading(Tables tables, PartJson json) {
        this.tables = tables;
        this.json = json;
        shipped = DefaultLimits.load(json);
        shippedFaults = DefaultFaultTables.load(json);
    }

    Optional<Saved> current(Connection c, String jobId, PartKey key) throws SQLException {
        Optional<Revision> latest = tables.revisions().latest(c, jobId, key.toString());
        return latest.isPresent() ? Optional.of(saved(c, key, latest.get())) : Optional.empty();
    }

    List<Saved> history(Connection c, String jobId, PartKey key) throws SQLException {
        List<Saved> found = new ArrayList<>();
        for (Revision r : tables.revisions().history(c, jobId, key.toString())) {
            found.add(saved(c, key, r));
        }
        return found;
    }

    Map<PartKey, Saved> currentParts(Connection c, String jobId) throws SQLException {
        number(c, jobId);
        Map<PartKey, Saved> found = new TreeMap<>();
        for (Revision r : tables.revisions().latestOfJob(c, jobId)) {
            Optional<PartKey> key = key(r.part());
            if (key.isPresent()) {
                found.put(key.get(), saved(c, key.get(), r));
            }
        }
        return found;
    }

    /** The current revision of each of the shop's parts of a kind of which there can be many. */
    List<Saved> shopParts(Connection c, PartKind kind) throws SQLException {
        List<Saved> found = new ArrayList<>();
        for (Revision r : tables.revisions().latestOfKind(c, JobStore.SHOP, kind.word())) {
            Optional<PartKey> key = key(r.part());
            if (key.isPresent()) {
                found.add(saved(c, key.get(), r));
            }
        }
        return found;
    }

    List<String> unknownParts(Connection c, String jobId) throws SQLException {
        number(c, jobId);
        return tables.revisions().latestOfJob(c, jobId).stream().filter(r -> key(r.part()).isEmpty()).map(Revision::part)
                .sorted().toList();
    }

    Job load(Connection c, String jobId) throws SQLException {
        String number = number(c, jobId);
        Map<PartKey, Part> parts = new TreeMap<>();
        for (Map.Entry<String, String> t : tables.revisions().jsonOfJob(c, jobId).entrySet()) {
            Optional<PartKey> key = key(t.getKey());
            if (key.isPresent()) {
                try {
                    parts.put(key.get(), part(c, key.get(), t.getValue()));
                } catch (BadRecordException e) {
                    throw unreadable(key.get(), tables.revisions().latest(c, jobId, t.getKey()).orElseThrow(), e);
                }
            }
        }
        return new Job(jobId, number, parts);
    }

    /** The job's number, empty for the shop. */
    String number(Connection c, String jobId) throws SQLException {
        return tables.jobs().numberOf(c, jobId).orElseThrow(() -> new StoreException(StoreException.Kind.NOT_FOUND,
                StoreText.of("noJob", jobId)));
    }

    /** Work begun and not stopped; hours that cannot be read are left out, for the job itself says so when it is opened. */
    List<RunningWork> runningWork(Connection c) throws SQLException {
        Map<String, String> numbers = new HashMap<>();
        tables.jobs().all(c).forEach(j -> numbers.put(j.id(), j.number()));
        List<RunningWork> running = new ArrayList<>();
        tables.revisions().eachLatest(c, PartKind.HOURS.word(), r -> {
            if (numbers.containsKey(r.jobId()) && r.json().contains("\"running\"")) {
                try {
                    Hours hours = (Hours) json.read(PartKey.of(PartKind.HOURS), r.json());
                    hours.running().forEach(w -> running.add(new RunningWork(r.jobId(), numbers.get(r.jobId()), w)));
                } catch (BadRecordException e) {
                    LOG.log(System.Logger.Level.WARNING, "the hours of job " + numbers.get(r.jobId()) + " cannot be read", e);
                }
            }
        });
        return running;
    }

    /** The uses of a lot in the current parts of every job, by number. */
    LotSearch usesOfLot(Connection c, String lot) throws SQLException {
        Map<String, String> numbers = new HashMap<>();
        tables.jobs().all(c).forEach(j -> numbers.put(j.id(), j.number()));
        List<LotUse> uses = new ArrayList<>();
        Set<String> unread = new TreeSet<>(Comparator.comparing(SearchText::natural));
        for (PartKind kind : LotUses.KINDS) {
            tables.revisions().eachLatest(c, kind.word(), r -> {
                String number = numbers.get(r.jobId());
                if (number != null) {
                    try {
                        PartKey key = PartKey.parse(r.part());
                        uses.addAll(LotUses.in(r.jobId(), number, key, json.read(key, r.json()), lot));
                    } catch (BadRecordException e) {
                        unread.add(number);
                    }
                }
            });
        }
        uses.sort(Comparator.comparing(u -> SearchText.natural(u.number())));
        return new LotSearch(uses, List.copyOf(unread));
    }

    Shop shop(Connection c) throws SQLException {
        return new Shop(
                ofShop(c, PartKind.WORKSHOP, Workshop.class).orElseGet(Reading::workshop),
                ofShop(c, PartKind.INSTRUMENTS, Instruments.class)
                        .orElseGet(() -> new Instruments(Instruments.SCHEMA, List.of(), Map.of())),
                wire(c),
                ofShop(c, PartKind.LIMITS, LimitProfile.class).map(own -> own.laidOn(shipped)).orElse(shipped),
                ofShop(c, PartKind.FAULT_TABLES, FaultTables.class).filter(FaultTables::isThere).orElse(shippedFaults),
                ofShop(c, PartKind.CHECKLIST, ChecklistTemplate.class).orElse(null),
                ofShop(c, PartKind.LABOUR_RATES, LabourRates.class).orElse(null),
                tables.people().all(c));
    }

    /** The wire among the items in stock; the older list while there is no such item. */
    private WireStock wire(Connection c) throws SQLException {
        List<StockItem> items = new ArrayList<>();
        for (Revision r : tables.stock().items(c, StockItem.Kind.WIRE)) {
            items.add((StockItem) saved(c, r).part());
        }
        Optional<WireStock> wire = WireOnShelf.of(items);
        return wire.isPresent() ? wire.get() : ofShop(c, PartKind.WIRE_STOCK, WireStock.class)
                .orElseGet(() -> new WireStock(WireStock.SCHEMA, List.of(), Map.of()));
    }

    /** Every item in stock as it stands, by code. */
    List<Saved> stockItems(Connection c) throws SQLException {
        List<Saved> items = new ArrayList<>();
        for (Revision r : tables.stock().items(c)) {
            items.add(saved(c, r));
        }
        return items;
    }

    /** A revision of a part that this version can name. */
    Saved saved(Connection c, Revision r) throws SQLException {
        return saved(c, PartKey.parse(r.part()), r);
    }

    /** The pattern by which the shop numbers its jobs. */
    NumberPattern numberPattern(Connection c) throws SQLException {
        Workshop settings = current(c, JobStore.SHOP, PartKey.of(PartKind.WORKSHOP))
                .map(s -> (Workshop) s.part()).orElseGet(Reading::workshop);
        return new NumberPattern(settings.numberSeries());
    }

    /**
     * A job as far as it can be read, for what is derived of it. A part that cannot be read is left out here: the
     * register must not stand in the way of saving.
     */
    Readable readable(Connection c, String jobId, String number) throws SQLException {
        Map<PartKey, Part> parts = new TreeMap<>();
        Map<PartKey, Integer> revisions = new TreeMap<>();
        Instant changed = Instant.EPOCH;
        long last = 0;
        for (RevisionTable.Text t : tables.revisions().textsOfJob(c, jobId)) {
            if (t.sequence() > last) {
                last = t.sequence();
                changed = Kept.time(t.savedAt());
            }
            Optional<PartKey> key = key(t.part());
            if (key.isPresent()) {
                try {
                    parts.put(key.get(), part(c, key.get(), t.json()));
                    revisions.put(key.get(), t.revision());
                } catch (BadRecordException e) {
                    continue;
                }
            }
        }
        return new Readable(new Job(jobId, number, parts), revisions, changed);
    }

    /**
     * What is derived from.
     *
     * @param job       the parts that can be read
     * @param revisions their revisions
     * @param changed   when any part was changed last
     */
    record Readable(Job job, Map<PartKey, Integer> revisions, Instant changed) {
    }

    /** The winding on a card; nothing when the card cannot be read. */
    Optional<PastWindingEntry> pastWinding(Revision r) {
        try {
            return key(r.part()).isEmpty() ? Optional.empty() : PastWindingEntry.of((OldCard) json.read(key(r.part()).get(), r.json()),
                    key(r.part()).get(), r.revision(), r.savedAt(), json);
        } catch (BadRecordException e) {
            return Optional.empty();
        }
    }

    private <T extends Part> Optional<T> ofShop(Connection c, PartKind kind, Class<T> type) throws SQLException {
        return current(c, JobStore.SHOP, PartKey.of(kind)).map(s -> type.cast(s.part()));
    }

    private static Workshop workshop() {
        return new Workshop(Workshop.SCHEMA, null, null, null, null, null, null, null, null, null, null, null);
    }

    /** The key of a revision's part; nothing when the part is of a kind that only newer versions know. */
    private static Optional<PartKey> key(String part) {
        try {
            return Optional.of(PartKey.parse(part));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Saved saved(Connection c, PartKey key, Revision r) throws SQLException {
        try {
            return new Saved(key, part(c, key, r.json()), r);
        } catch (BadRecordException e) {
            throw unreadable(key, r, e);
        }
    }

    private Part part(Connection c, PartKey key, String chained) throws SQLException, BadRecordException {
        return json.readKept(key, tables.privateText().plain(c, key, chained));
    }

    private static StoreException unreadable(PartKey key, Revision r, BadRecordException e) {
        return new StoreException(StoreException.Kind.UNREADABLE_RECORD,
                StoreText.of("unreadableRecord", key, r.revision(), r.savedAt(), e.getMessage()), e);
    }
}
