package org.copperbook.store.mirror;

import java.util.List;
import org.copperbook.jobs.winding.OldCard;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.memory.CardTaken;
import org.copperbook.store.memory.FoundWinding;
import org.copperbook.store.memory.SameCard;
import org.copperbook.store.memory.WindingMemory;

/** Past windings of the server or, when it does not answer, of the copy. */
record MirroredMemory(MirroredStore store) implements WindingMemory {

    @Override
    public int size() {
        return store.read(s -> s.memory().size());
    }

    @Override
    public List<FoundWinding> nearest(Asked asked, int wanted) {
        return store.read(s -> s.memory().nearest(asked, wanted));
    }

    @Override
    public List<CardTaken> takeIn(List<OldCard> cards, String who, String why, SameCard same) {
        return store.onServer(s -> s.memory().takeIn(cards, who, why, same));
    }

    @Override
    public void rebuild() {
        store.onServer(s -> {
            s.memory().rebuild();
            return s;
        });
    }
}
