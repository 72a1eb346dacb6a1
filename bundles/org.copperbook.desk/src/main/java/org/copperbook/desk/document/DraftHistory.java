package org.copperbook.desk.document;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.Part;

/**
 * The drafts of one part in the order they were made: undo and redo without limit while the job is open. Changes that
 * name the same place one after the other are one step, so that undo takes back a field and not a letter.
 */
final class DraftHistory {

    private record Step(Draft before, Draft after, String where) {
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
     * @return false when nothing changed, so that there is no empty step
     */
    boolean put(Draft next, String where) {
        if (next.equals(now)) {
            return false;
        }
        Step last = done.peek();
        if (stepOpen && last != null && last.where().equals(where)) {
            done.pop();
            if (!last.before().equals(next)) {
                done.push(new Step(last.before(), next, where));
            } else {
                stepOpen = false;
            }
        } else {
            done.push(new Step(now, next, where));
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
    Optional<String> undo() {
        Step s = done.poll();
        if (s == null) {
            return Optional.empty();
        }
        undone.push(s);
        now = s.before();
        stepOpen = false;
        return Optional.of(s.where());
    }

    /** Does the last step taken back again; the place it changed, or empty when there is none. */
    Optional<String> redo() {
        Step s = undone.poll();
        if (s == null) {
            return Optional.empty();
        }
        done.push(s);
        now = s.after();
        stepOpen = false;
        return Optional.of(s.where());
    }

    boolean canUndo() {
        return !done.isEmpty();
    }

    boolean canRedo() {
        return !undone.isEmpty();
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
