package org.copperbook.store.journal;

import java.nio.file.Path;

/**
 * An entry that a program did not live to save or discard.
 *
 * @param entry what was typed
 * @param file  where the journal keeps it
 */
public record LeftBehind(JournalEntry entry, Path file) {
}
