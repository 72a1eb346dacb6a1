package org.copperbook.store.journal;

import java.nio.file.Path;
import java.util.List;

/**
 * What is found in the journal after a crash.
 *
 * @param entries entries of programs that no longer run, latest typed first
 * @param damaged files that cannot be read; they are left where they are
 */
public record Remains(List<LeftBehind> entries, List<Path> damaged) {

    public Remains {
        entries = List.copyOf(entries);
        damaged = List.copyOf(damaged);
    }
}
