package org.copperbook.desk.document;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;

/**
 * The drafts of one part in the order they were made: undo and redo without limit while the job is open. Changes that
 * name the same place one after the other are one step, so that undo takes back a field and not a letter.
 */
final class DraftHistory {

    /** In place of a step's number. */
    static final long NONE = -1;

    /**
     * One step.
     *
     * @param from  page of another part from which it was made; null when it was made on its own part
     * @param order greater than that of every step that was made or taken back before, in any part of the job
     */
    private record Step(Draft before, Draft after, String where, PartKey from, long order) {

        Step at(long later) {
            return new Step(before, after, where, from, later);
        }

        private boolean of(PartKey page) {
            return page == null || page.equals(from);
        }
    }

    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private Draft now;
    private Part saved;
    private boolean stepOpen;

    DraftHistory(Part saved) {
        this.saved = saved;
        this.now = saved == null ? Draft.EMPTY : Draft.of(saved);
    }

    Draft now() {
        return now;
    }

    /** The record the store holds; null when it holds none. */
    Part saved() {
        return saved;
    }

    /**
     * Puts a draft.
     *
     * @param where place of the change (a JSON pointer); the same place again joins the open step
     * @param from  page of another part from which it is made; null when it is made on its own part
     * @param order number of the step, greater than every one before
     * @return false when nothing changed, so that there is no empty step
     */
    boolean put(Draft next, String where, PartKey from, long order) {
        if (next.equals(now)) {
            return false;
        }
        Step last = done.peek();
        if (stepOpen && last != null && last.where().equals(where) && Objects.equals(last.from(), from)) {
            done.pop();
            if (!last.before().equals(next)) {
                done.push(new Step(last.before(), next, where, from, order));
            } else {
                stepOpen = false;
            }
        } else {
            done.push(new Step(now, next, where, from, order));
            stepOpen = true;
        }
        undone.clear();
        now = next;
        return true;
    }

    /** Ends the open step: what follows is undone by itself even at the same place. */
    void closeStep() {
        stepOpen = false;
    }

    /** Takes the last step back; the place it changed, or empty when there is none. */
    Optional<String> undo(long order) {
        Step s = done.poll();
        if (s == null) {
            return Optional.empty();
        }
        undone.push(s.at(order));
        now = s.before();
        stepOpen = false;
        return Optional.of(s.where());
    }

    /** Does the last step taken back again; the place it changed, or empty when there is none. */
    Optional<String> redo(long order) {
        Step s = undone.poll();
        if (s == null) {
            return Optional.empty();
        }
        done.push(s.at(order));
        now = s.after();
        stepOpen = false;
        return Optional.of(s.where());
    }

    /**
     * Number of the step that undo takes back.
     *
     * @param page only a step that was made from this page of another part; null for any step
     * @return {@link #NONE} when there is none
     */
    long undoable(PartKey page) {
        Step s = done.peek();
        return s != null && s.of(page) ? s.order() : NONE;
    }

    /** Number of the step that redo does again, by the same rule. */
    long redoable(PartKey page) {
        Step s = undone.peek();
        return s != null && s.of(page) ? s.order() : NONE;
    }

    /** Whether anything stands here that the store does not hold: a changed record, or a text not understood. */
    boolean dirty() {
        return !now.asTyped().isEmpty() || !Objects.equals(now.part(), saved);
    }

    /** Notes what the store holds now. */
    void saved(Part part) {
        saved = part;
        stepOpen = false;
    }
}
