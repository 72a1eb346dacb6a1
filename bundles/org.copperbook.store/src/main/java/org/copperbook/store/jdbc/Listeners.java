package org.copperbook.store.jdbc;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.copperbook.store.Change;
import org.copperbook.store.JobStore.Listening;

/** Those who want to hear of changes. */
final class Listeners {

    private static final System.Logger LOG = System.getLogger(Listeners.class.getName());

    private final List<Consumer<Change>> all = new CopyOnWriteArrayList<>();

    Listening add(Consumer<Change> listener) {
        all.add(listener);
        return () -> all.remove(listener);
    }

    /** Tells everyone; a failing listener is logged, since the change it was told of is durable all the same. */
    void tell(Change change) {
        for (Consumer<Change> listener : all) {
            try {
                listener.accept(change);
            } catch (RuntimeException e) {
                LOG.log(System.Logger.Level.ERROR, "a listener failed on the change of " + change.part(), e);
            }
        }
    }
}
