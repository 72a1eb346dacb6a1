package org.copperbook.desk.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToLongBiFunction;
import java.util.function.UnaryOperator;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.winding.CountsMerge;
import org.copperbook.jobs.winding.WindingData;

/**
 * A job that is open on the screen: the current draft of each part with its own undo and redo, what is not saved, and
 * where the store went another way. It knows neither the store nor any widget. Not thread-safe: the editor's thread
 * owns it; {@link #job()} is an immutable snapshot to hand to others.
 */
public final class JobDocument {

    private final PartJson json;
    private String id;
    private String number;
    private long steps;
    private PartKey madeFrom;
    private final Map<PartKey, DraftHistory> parts = new TreeMap<>();
    private final Map<PartKey, Integer> revisions = new TreeMap<>();
    private final Map<PartKey, ObjectNode> beginnings = new TreeMap<>();
    private final Map<PartKey, ObjectNode> trees = new TreeMap<>();
    private final Map<PartKey, Draft> underHand = new TreeMap<>();
    private final Map<PartKey, Conflict> conflicts = new TreeMap<>();
    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();

    /**
     * Opens a job.
     *
     * @param job       the job as the store holds it
     * @param revisions current revision of each of its parts
     * @param json      reader and writer of records
     */
    public JobDocument(Job job, Map<PartKey, Integer> revisions, PartJson json) {
        this.id = job.id();
        this.number = job.number();
        this.json = json;
        this.revisions.putAll(revisions);
        job.parts().forEach((k, p) -> parts.put(k, new DraftHistory(p)));
    }

    /** Key of the job that never changes. */
    public String id() {
        return id;
    }

    /** The job number people use. */
    public String number() {
        return number;
    }

    /** The job has been booked in: its key and number are the store's from now on. */
    public void bookedIn(String storeId, String storeNumber) {
        id = storeId;
        number = storeNumber;
    }

    /** The job as it stands on the screen, saved or not. */
    public Job job() {
        Map<PartKey, Part> now = new TreeMap<>();
        parts.forEach((k, h) -> {
            if (h.now().part() != null) {
                now.put(k, h.now().part());
            }
        });
        return new Job(id, number, now);
    }

    /** The draft of a part; {@link Draft#EMPTY} when it has not been begun. */
    public Draft draft(PartKey key) {
        DraftHistory h = parts.get(key);
        return h == null ? Draft.EMPTY : h.now();
    }

    /** The record of a part as it stands on the screen. */
    public Optional<Part> part(PartKey key) {
        return Optional.ofNullable(draft(key).part());
    }

    /** The record of a part as it stands on the screen, by its class. */
    public <T extends Part> Optional<T> part(PartKey key, Class<T> type) {
        return part(key).map(type::cast);
    }

    /** Says what the record of a part starts as when its first field is filled. */
    public void beginWith(PartKey key, ObjectNode blank) {
        beginnings.put(key, blank.deepCopy());
        if (draft(key).part() == null) {
            trees.remove(key);
        }
    }

    /** The part as a tree, its beginning when it has not been begun. Read only: changes go through {@link #change}. */
    public ObjectNode tree(PartKey key) {
        return trees.computeIfAbsent(key, k -> {
            Part p = draft(k).part();
            return p != null ? json.tree(p) : beginning(k);
        });
    }

    /** The value at a JSON pointer of a part; a missing node when there is none. */
    public JsonNode value(PartKey key, String pointer) {
        return PartTree.at(tree(key), pointer);
    }

    /** The text of a field that was typed and not understood. */
    public Optional<String> typed(PartKey key, String pointer) {
        return Optional.ofNullable(draft(key).asTyped().get(pointer));
    }

    /**
     * Puts the value of one field; null takes it out. Changes at one pointer in a row are one undo step.
     *
     * @return empty when done; else why the record cannot hold the value, and nothing was changed
     */
    public Optional<String> set(PartKey key, String pointer, JsonNode value) {
        return apply(key, pointer, t -> PartTree.with(t, pointer, value), d -> d.withTyped(pointer, null));
    }

    /**
     * Puts the value of one field that another one excludes; a value takes the other and what was typed there out.
     *
     * @param other JSON pointer of the field that is emptied
     */
    public Optional<String> setInPlaceOf(PartKey key, String pointer, JsonNode value, String other) {
        if (value == null || value.isNull() || value.isMissingNode()) {
            return set(key, pointer, value);
        }
        return apply(key, pointer, t -> PartTree.with(PartTree.with(t, other, null), pointer, value),
                d -> d.withTyped(pointer, null).withTyped(other, null));
    }

    /**
     * Puts the value of one field together with that of another one that hangs on it; the first pointer is the place of
     * the change.
     *
     * @param hanging JSON pointer of the field that hangs on the first
     * @param with    its value; null takes it out
     */
    public Optional<String> setWith(PartKey key, String pointer, JsonNode value, String hanging, JsonNode with) {
        return apply(key, pointer, t -> PartTree.with(PartTree.with(t, hanging, with), pointer, value),
                d -> d.withTyped(pointer, null));
    }

    /**
     * Changes a part as one undo step.
     *
     * @param where  place to show after undo (a JSON pointer)
     * @param change gets a copy of the tree and gives the changed tree
     * @return empty when done; else why the record cannot hold it, and nothing was changed
     */
    public Optional<String> change(PartKey key, String where, UnaryOperator<ObjectNode> change) {
        closeStep(key);
        Optional<String> problem = apply(key, where, t -> change.apply(t.deepCopy()), d -> d);
        closeStep(key);
        return problem;
    }

    /**
     * Changes another part than the one whose page is shown, as one undo step that is also taken back from that page.
     *
     * @param page part whose page the change is made from
     * @return as {@link #change}
     */
    public Optional<String> changeFrom(PartKey page, PartKey key, String where, UnaryOperator<ObjectNode> change) {
        closeStep(page);
        madeFrom = page.equals(key) ? null : page;
        try {
            return change(key, where, change);
        } finally {
            madeFrom = null;
        }
    }

    /** Puts a whole record as one undo step, for pages that work on the record itself. */
    public void put(PartKey key, Part part) {
        closeStep(key);
        putDraft(key, new Draft(part, draft(key).asTyped()), "");
        closeStep(key);
    }

    /** Keeps a text that a field cannot understand. The field's value is taken out, so that nothing hides behind it. */
    public void keepTyped(PartKey key, String pointer, String text) {
        Optional<String> problem = apply(key, pointer, t -> PartTree.with(t, pointer, null),
                d -> d.withTyped(pointer, text));
        if (problem.isPresent()) {
            putDraft(key, draft(key).withTyped(pointer, text), pointer);
        }
    }

    /** Why the record could not hold a value at a pointer; empty when it could. Changes nothing. */
    public Optional<String> misfit(PartKey key, String pointer, JsonNode value) {
        try {
            json.read(key, PartTree.with(tree(key), pointer, value));
            return Optional.empty();
        } catch (BadRecordException e) {
            return Optional.of(e.problem());
        }
    }

    /** Notes a text that is being typed and not put yet, so that the crash journal has it. Not an undo step. */
    public void beingTyped(PartKey key, String pointer, String text) {
        underHand.put(key, draft(key).withTyped(pointer, text));
        tell(new Change(Change.What.TYPING, key));
    }

    /** The typing noted by {@link #beingTyped} has been put or given up. */
    public void typingEnded(PartKey key) {
        underHand.remove(key);
    }

    /** Puts a row into a list before an index, as one undo step. */
    public Optional<String> insertRow(PartKey key, String list, int index, JsonNode row) {
        closeStep(key);
        Optional<String> problem = apply(key, list + "/" + index, t -> PartTree.withRow(t, list, index, row),
                d -> TypedRows.shifted(d, list, index, 1));
        closeStep(key);
        return problem;
    }

    /** Takes a row out of a list, as one undo step. */
    public Optional<String> removeRow(PartKey key, String list, int index) {
        closeStep(key);
        Optional<String> problem = apply(key, list, t -> PartTree.withoutRow(t, list, index),
                d -> TypedRows.shifted(d, list, index, -1));
        closeStep(key);
        return problem;
    }

    /** Puts a row of a list in another place among the others, as one undo step. */
    public Optional<String> moveRow(PartKey key, String list, int from, int to) {
        closeStep(key);
        Optional<String> problem = apply(key, list + "/" + to, t -> {
            JsonNode row = PartTree.at(t, list + "/" + from);
            return PartTree.withRow(PartTree.withoutRow(t, list, from), list, to, row);
        }, d -> TypedRows.moved(d, list, from, to));
        closeStep(key);
        return problem;
    }

    /**
     * Puts a block of cells as one undo step, all of it: a cell that does not fit keeps its text and says why.
     *
     * @param prepare makes the rows that the block needs
     * @return how many cells do not fit
     */
    public int putBlock(PartKey key, String where, UnaryOperator<ObjectNode> prepare, List<CellEdit> cells) {
        closeStep(key);
        Draft before = draft(key);
        ObjectNode tree = tree(key).deepCopy();
        Part part = before.part();
        try {
            ObjectNode prepared = prepare.apply(tree.deepCopy());
            if (!prepared.equals(tree)) {
                part = json.read(key, prepared);
                tree = prepared;
            }
        } catch (BadRecordException e) {
            throw new IllegalArgumentException("rows made for " + where + " do not fit the record: " + e.problem(), e);
        }
        BlockPut block = new BlockPut(json, key, tree, part);
        block.put(cells);
        Map<String, String> typed = new TreeMap<>(before.asTyped());
        Set<CellEdit> refused = Set.copyOf(block.refused());
        int misfits = 0;
        for (CellEdit cell : cells) {
            String open = refused.contains(cell) ? cell.text() : cell.typed();
            typed.remove(cell.pointer());
            if (open != null) {
                typed.put(cell.pointer(), open);
                misfits++;
            }
        }
        part = block.part();
        putDraft(key, new Draft(part, typed), where);
        closeStep(key);
        return misfits;
    }

    /** Rows of a list of a part. */
    public ArrayNode rows(PartKey key, String list) {
        return value(key, list) instanceof ArrayNode a ? a : json.mapper().createArrayNode();
    }

    /** Ends the open undo step of a part, as when a field is left. */
    public void closeStep(PartKey key) {
        DraftHistory h = parts.get(key);
        if (h != null) {
            h.closeStep();
        }
    }

    /**
     * Takes the last step of a part back, or one that was made later from its page in another part.
     *
     * @return the place it changed, or empty when there is nothing to take back
     */
    public Optional<String> undo(PartKey key) {
        return stepped(last(key, DraftHistory::undoable), h -> h.undo(++steps));
    }

    /** Does the last step taken back again. */
    public Optional<String> redo(PartKey key) {
        return stepped(last(key, DraftHistory::redoable), h -> h.redo(++steps));
    }

    private Optional<String> stepped(Optional<PartKey> key, Function<DraftHistory, Optional<String>> step) {
        Optional<String> where = key.flatMap(k -> step.apply(parts.get(k)));
        where.ifPresent(w -> draftChanged(key.get()));
        return where;
    }

    /** The part with the newest step among that of a page and those changed from it. */
    private Optional<PartKey> last(PartKey page, ToLongBiFunction<DraftHistory, PartKey> order) {
        PartKey newest = null;
        long most = DraftHistory.NONE;
        for (Map.Entry<PartKey, DraftHistory> e : parts.entrySet()) {
            long number = order.applyAsLong(e.getValue(), e.getKey().equals(page) ? null : page);
            if (number > most) {
                most = number;
                newest = e.getKey();
            }
        }
        return Optional.ofNullable(newest);
    }

    public boolean canUndo(PartKey key) {
        return last(key, DraftHistory::undoable).isPresent();
    }

    public boolean canRedo(PartKey key) {
        return last(key, DraftHistory::redoable).isPresent();
    }

    /** Whether a part holds anything the store does not. */
    public boolean dirty(PartKey key) {
        return parts.containsKey(key) && parts.get(key).dirty();
    }

    /** Whether any part holds anything the store does not. */
    public boolean dirty() {
        return parts.values().stream().anyMatch(DraftHistory::dirty);
    }

    /** The parts whose records wait to be saved; parts in conflict wait until the conflict is settled. */
    public List<PendingSave> pending() {
        List<PendingSave> list = new ArrayList<>();
        parts.forEach((k, h) -> {
            Part now = h.now().part();
            if (now != null && !now.equals(h.saved()) && !conflicts.containsKey(k)) {
                list.add(new PendingSave(k, now, revisions.getOrDefault(k, 0)));
            }
        });
        return list;
    }

    /** The drafts that the store does not hold, for the crash journal. */
    public Map<PartKey, Draft> unsaved() {
        Map<PartKey, Draft> map = new TreeMap<>();
        parts.forEach((k, h) -> {
            if (h.dirty()) {
                map.put(k, h.now());
            }
        });
        map.putAll(underHand);
        return map;
    }

    /** Puts a draft back that a journal kept, as one undo step. */
    public void recover(PartKey key, Draft draft) {
        closeStep(key);
        putDraft(key, draft, "");
        closeStep(key);
    }

    /** Takes every text out that was not understood, of each part as one undo step; what the records hold stays. */
    public void takeOutTyped() {
        for (PartKey key : List.copyOf(parts.keySet())) {
            Draft now = draft(key);
            if (!now.asTyped().isEmpty()) {
                closeStep(key);
                putDraft(key, new Draft(now.part(), Map.of()), now.asTyped().keySet().iterator().next());
                closeStep(key);
            }
        }
    }

    /** Revision a part started from; 0 when the store holds none. */
    public int baseRevision(PartKey key) {
        return revisions.getOrDefault(key, 0);
    }

    /** Notes that the store holds a record now. Typing that went on meanwhile stays and is unsaved. */
    public void saved(PartKey key, Part part, int revision) {
        history(key).saved(part);
        revisions.put(key, revision);
        tell(new Change(Change.What.SAVED, key));
    }

    /** Takes over what the store holds for a part, when nothing of it is changed here. */
    public void takeOver(PartKey key, Part part, int revision) {
        if (!dirty(key)) {
            parts.put(key, new DraftHistory(part));
            trees.remove(key);
            revisions.put(key, revision);
            tell(new Change(Change.What.DRAFT, key));
            tell(new Change(Change.What.SAVED, key));
        }
    }

    /**
     * Puts together what somebody else saved with what is changed here, where nobody has to choose: two people who
     * counted one winding, or who added rows to one list, at the same time. What is undone from then on is undone down to
     * what they saved, never further, so that no undo takes their count or their row out.
     *
     * @return whether it could be; the part waits to be saved then, and there is no conflict
     */
    public boolean merge(PartKey key, Part theirs, int theirRevision) {
        return merge(key, history(key).saved(), theirs, theirRevision);
    }

    /**
     * The same where what is changed here began from another revision than the one this document was opened with.
     *
     * @param base what both began from; null when there was nothing
     */
    public boolean merge(PartKey key, Part base, Part theirs, int theirRevision) {
        if (draft(key).part() == null) {
            return false;
        }
        Optional<Draft> together = together(key, base, theirs);
        together.ifPresent(d -> {
            parts.put(key, new DraftHistory(theirs));
            revisions.put(key, theirRevision);
            history(key).put(d, theirs instanceof WindingData ? "/counts" : "", null, ++steps);
            draftChanged(key);
            closeStep(key);
        });
        return together.isPresent();
    }

    private Optional<Draft> together(PartKey key, Part base, Part theirs) {
        Draft mine = draft(key);
        try {
            if (base instanceof WindingData && theirs instanceof WindingData) {
                Optional<ObjectNode> counts = CountsMerge.of(json.tree(base), tree(key), json.tree(theirs));
                return counts.isEmpty() ? Optional.empty()
                        : Optional.of(new Draft(json.read(key, counts.get()), mine.asTyped()));
            }
            RowsMerge rows = new RowsMerge(key.kind(), began(key, base), tree(key), json.tree(theirs));
            Optional<Map<String, String>> typed = rows.typed(mine.asTyped());
            return !rows.differences().isEmpty() || typed.isEmpty() ? Optional.empty()
                    : Optional.of(new Draft(json.read(key, rows.mixed()), typed.get()));
        } catch (BadRecordException e) {
            return Optional.empty();
        }
    }

    private ObjectNode began(PartKey key, Part base) {
        return base == null ? beginning(key) : json.tree(base);
    }

    /** Notes that somebody else saved a part that is changed here. */
    public Conflict conflict(PartKey key, Part theirs, int theirRevision, String who, Instant savedAt) {
        return conflict(key, history(key).saved(), theirs, theirRevision, who, savedAt);
    }

    /**
     * The same where what is changed here began from another revision than the one this document was opened with.
     *
     * @param base what both began from; null when there was nothing
     */
    public Conflict conflict(PartKey key, Part base, Part theirs, int theirRevision, String who, Instant savedAt) {
        ObjectNode began = began(key, base);
        Conflict c = new Conflict(key, began, theirs, theirRevision, who, savedAt,
                new RowsMerge(key.kind(), began, tree(key), json.tree(theirs)).differences());
        conflicts.put(key, c);
        tell(new Change(Change.What.CONFLICT, key));
        return c;
    }

    /** Conflicts not settled yet. */
    public List<Conflict> conflicts() {
        return List.copyOf(conflicts.values());
    }

    /**
     * Settles a conflict: the record here becomes mine with the rows that they added and the named fields of theirs, based
     * on their revision. It is one undo step and waits to be saved.
     *
     * @param takeTheirs pointers of the fields to take over
     * @return empty when done; else why the mixed record cannot be, and nothing was changed
     */
    public Optional<String> settle(Conflict conflict, Set<String> takeTheirs) {
        PartKey key = conflict.key();
        // What was typed since the conflict was found may have moved rows, so they are put together anew.
        RowsMerge rows = new RowsMerge(key.kind(), conflict.base(), tree(key), json.tree(conflict.theirs()));
        closeStep(key);
        Optional<String> problem = apply(key, "", t -> {
            ObjectNode mixed = rows.mixed();
            for (FieldDifference d : rows.differences()) {
                if (conflict.differences().stream().anyMatch(c -> takeTheirs.contains(c.pointer()) && c.sameAs(d))) {
                    mixed = PartTree.with(mixed, d.pointer(), d.theirs());
                }
            }
            return mixed;
        }, d -> new Draft(d.part(), rows.typed(d.asTyped()).orElse(d.asTyped())));
        closeStep(key);
        if (problem.isEmpty()) {
            conflicts.remove(key);
            history(key).saved(conflict.theirs());
            revisions.put(key, conflict.theirRevision());
            tell(new Change(Change.What.CONFLICT, key));
        }
        return problem;
    }

    public void addListener(Consumer<Change> listener) {
        listeners.add(listener);
    }

    public void removeListener(Consumer<Change> listener) {
        listeners.remove(listener);
    }

    /** Tells the listeners; the editor uses it for what it computes itself. */
    public void tell(Change change) {
        listeners.forEach(l -> l.accept(change));
    }

    private Optional<String> apply(PartKey key, String where, UnaryOperator<ObjectNode> change,
            UnaryOperator<Draft> typed) {
        Draft before = draft(key);
        try {
            ObjectNode tree = tree(key);
            ObjectNode next = change.apply(tree);
            boolean untouched = before.part() == null && next.equals(beginning(key));
            // Read anew, an equal tree can give an unequal record: 4150 and 4.15E+3 are one amount and two decimals.
            Part part = untouched ? null : next.equals(tree) ? before.part() : json.read(key, next);
            putDraft(key, typed.apply(new Draft(part, before.asTyped())), where);
            return Optional.empty();
        } catch (BadRecordException e) {
            return Optional.of(e.problem());
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void putDraft(PartKey key, Draft next, String where) {
        if (history(key).put(next, where, madeFrom, ++steps)) {
            draftChanged(key);
        }
    }

    private void draftChanged(PartKey key) {
        trees.remove(key);
        tell(new Change(Change.What.DRAFT, key));
    }

    private DraftHistory history(PartKey key) {
        return parts.computeIfAbsent(key, k -> new DraftHistory(null));
    }

    private ObjectNode beginning(PartKey key) {
        ObjectNode b = beginnings.get(key);
        return b != null ? b.deepCopy() : json.mapper().createObjectNode().put("schema", 1);
    }
}
